using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Access;

namespace LiveHeat.Server.Hosting;

/// <summary>The command that runs the hub.</summary>
internal static class Serve
{
    /// <summary>The folder when nobody names one.</summary>
    private const string DefaultData = "liveheat-data";

    /// <summary>Said after a backup was put back.</summary>
    private const string Restored = "--restored";

    /// <summary>Runs until it is stopped.</summary>
    public static async Task<int> Run(string[] args)
    {
        var restored = args.Contains(Restored);
        await using var app = await Hub.Build([.. args.Where(arg => arg != Restored)], configuration => new ServeOptions(
            Path.GetFullPath(configuration["Data"] ?? DefaultData), configuration["Urls"] ?? ServeOptions.DefaultUrls));
        if (restored)
        {
            await app.Services.GetRequiredService<HeatLedger>().RenewEpoch();
            Console.WriteLine("The ledger has a new epoch: phones send again what it may lack.");
        }

        if (await app.Services.GetRequiredService<OrganiserPassphrase>().EnsurePassphrase() is { } passphrase)
        {
            TellPassphrase(passphrase);
        }

        await app.RunAsync();
        return 0;
    }

    /// <summary>To the console only, never to a log: it is told once and stored as a hash.</summary>
    private static void TellPassphrase(string passphrase) => Console.WriteLine(
        $"""

        The organiser's passphrase, told this once. Write it down:

            {passphrase}

        """);
}
