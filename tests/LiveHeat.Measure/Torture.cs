using System.Diagnostics;
using System.Globalization;
using LiveHeat.Testing.Hosting.Torture;

namespace LiveHeat.Measure;

/// <summary>The command <c>torture</c>.</summary>
internal static class Torture
{
    public static async Task<int> Run(string[] args)
    {
        var (kills, cuts, lanes, seed) = (Number(args, "--kills", 20), Number(args, "--cuts", 200), Number(args, "--lanes", 4), Number(args, "--seed", 1));
        var folder = Directory.CreateTempSubdirectory("torture-").FullName;
        var since = Stopwatch.GetTimestamp();
        var report = await new TortureRun(kills, cuts, lanes, seed).Run(folder, Console.WriteLine);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"seed={seed} seconds={Stopwatch.GetElapsedTime(since).TotalSeconds:F0}"));
        Console.WriteLine(report);
        if (report.Sound)
        {
            Directory.Delete(folder, recursive: true);
            return 0;
        }

        Console.WriteLine($"NOT SOUND. The ledger is kept in {folder}; run it again with --seed {seed} --kills {kills} --cuts {cuts} --lanes {lanes}");
        return 1;
    }

    private static int Number(string[] args, string name, int otherwise)
    {
        var at = Array.IndexOf(args, name);
        return at >= 0 && at + 1 < args.Length && int.TryParse(args[at + 1], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;
    }
}
