using LiveHeat.Ledger.Registry;
using LiveHeat.Rehearsal;
using LiveHeat.Rehearsal.Rehearse;

namespace LiveHeat.Server.Hosting;

/// <summary>The command that runs an invented competition with simulated judges over real connections.</summary>
internal static class Demo
{
    /// <summary>Ends when the heats are certified, or when it is stopped.</summary>
    public static async Task<int> Run(string[] args)
    {
        var (options, wrong) = DemoOptions.Read(args);
        if (options is null)
        {
            Console.Error.WriteLine(wrong);
            return 2;
        }

        await using var app = await Hub.Build([], _ => new ServeOptions(options.Data, options.Urls, options.Speed, Quiet: true));
        var passphrase = await app.Services.GetRequiredService<HeatRegistry>().Passphrase.Renew(CancellationToken.None);
        await app.StartAsync();
        var address = AddressOf(app);
        var freeLane = options.Speed == 1 && !options.UntilCertified;
        var say = new Speech();
        say.Report($"An invented competition, on data of its own in {options.Data}");

        var rehearsal = new HeatRehearsal(new RehearsalOptions
        {
            Server = address,
            Passphrase = passphrase,
            Seed = options.Seed,
            FreeLane = freeLane,
            UntilCertified = options.UntilCertified,
            Time = app.Services.GetRequiredService<TimeProvider>(),
            CodesMade = codes => TellAddresses(address, passphrase, codes),
        });
        var stopping = app.Lifetime.ApplicationStopping;
        try
        {
            var outcome = await rehearsal.Run(say, stopping);
            foreach (var result in outcome.Results)
            {
                Console.WriteLine();
                Console.WriteLine(ResultText.Of(result));
            }
        }
        catch (OperationCanceledException) when (stopping.IsCancellationRequested)
        {
            // Stopped from the keyboard: all there is to say is on the screens and on the ledger.
        }
        finally
        {
            await app.StopAsync();
        }

        return 0;
    }

    private static Uri AddressOf(WebApplication app)
    {
        var listening = new UriBuilder(app.Urls.First().Replace("://*", "://localhost", StringComparison.Ordinal).Replace("://+", "://localhost", StringComparison.Ordinal));
        if (listening.Host is "0.0.0.0" or "[::]")
        {
            listening.Host = "localhost";
        }

        return listening.Uri;
    }

    private static void TellAddresses(Uri address, string passphrase, VisitorCodes codes)
    {
        Console.WriteLine(
            $"""

              Board          {new Uri(address, "board")}
              Announcer      {codes.Announcer.Url}
              Desk           {new Uri(address, "screens/")}   passphrase {passphrase}
              Head judge     {codes.HeadJudge.Url}
              Result         {new Uri(address, "result/h1")}
            """);
        if (codes.FreeLane is { } free)
        {
            Console.WriteLine($"  Judge lane {free.Lane}   {free.Url}   yours to judge; if nobody comes, a simulated judge takes it");
        }

        Console.WriteLine();
    }

    private sealed class Speech : IProgress<string>
    {
        public void Report(string value) => Console.WriteLine(value);
    }
}
