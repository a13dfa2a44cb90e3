using System.Globalization;
using LiveHeat.Contracts.Language;
using LiveHeat.Ledger.Facts;

namespace LiveHeat.Server.Hosting;

/// <summary>What can be typed behind the program's name.</summary>
internal static class Commands
{
    private const string Help =
        """
        serve   run the hub on this machine's data
                  --data FOLDER        where ledger and registry are kept (default: liveheat-data)
                  --urls ADDRESS       where it listens (default: http://localhost:5280; http://0.0.0.0:5280 lets phones in)
                  --restored           after a backup was put back: phones send everything again
        demo    run an invented competition with simulated judges, on data of its own
                  --speed N            N times as fast, without a free lane
                  --until-certified    freeze and certify by itself, print the result and stop
                  --seed N             another day
                  --data, --urls       as above (default: a new folder among the temporary files)
        verify  check an exported heat without a server
                  FILE --key FINGERPRINT   the fingerprint stands on every result
        help    this page
        """;

    public static async Task<int> Run(string[] args)
    {
        // Console and logs speak English whatever language the machine has; every request has its own.
        CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(Tongue.All[0]);
        // A test's host, and a service unit, may give settings only.
        var command = args.Length > 0 && !args[0].StartsWith('-') ? args[0] : "serve";
        var rest = args.Length > 0 && args[0] == command ? args[1..] : args;
        switch (command)
        {
            case "serve":
                return await Told(() => Serve.Run(rest));
            case "demo":
                return await Told(() => Demo.Run(rest));
            case "verify":
                return await Verify.Run(rest);
            case "help":
                Console.WriteLine(Help);
                return 0;
            default:
                Console.Error.WriteLine($"There is no command \"{command}\".\n\n{Help}");
                return 2;
        }
    }

    /// <summary>What an operator can put right is said in a sentence, without a stack trace.</summary>
    private static async Task<int> Told(Func<Task<int>> run)
    {
        try
        {
            return await run();
        }
        catch (IOException wrong) when (wrong is LedgerUnavailable || wrong.InnerException is Microsoft.AspNetCore.Connections.AddressInUseException)
        {
            Console.Error.WriteLine(wrong.Message);
            return 1;
        }
    }
}
