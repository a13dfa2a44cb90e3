using System.Diagnostics;
using System.Globalization;
using LiveHeat.Testing.Simulation;

namespace LiveHeat.Measure;

/// <summary>The command <c>simulate</c>.</summary>
internal static class Simulate
{
    /// <summary>So many heats share a ledger file.</summary>
    private const int HeatsAFile = 500;

    public static async Task<int> Run(string[] args)
    {
        var (one, seeds, from) = (Number(args, "--seed", 0), Number(args, "--seeds", 1_000), Number(args, "--from", 1));
        (from, seeds) = one > 0 ? (one, 1) : (from, seeds);
        var (since, failed, taps, held, others) = (Stopwatch.GetTimestamp(), 0, 0, 0, 0);
        for (var next = from; next < from + seeds; next += HeatsAFile)
        {
            await using var simulation = new Testing.Simulation.Simulation();
            for (var seed = next; seed < Math.Min(next + HeatsAFile, from + seeds); seed++)
            {
                var report = await simulation.Play(seed);
                (taps, held) = (taps + report.Taps, held + report.Held);
                if (report.Wrong.Count > 0)
                {
                    failed++;
                    Console.WriteLine(report);
                }
            }

            foreach (var heat in await simulation.ReadAgain())
            {
                others++;
                Console.WriteLine($"Heat {heat} read again from its file is another.");
            }
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"seeds={seeds} from={from} taps={taps} held={held} failed={failed} another={others} seconds={Stopwatch.GetElapsedTime(since).TotalSeconds:F0}"));
        return failed + others == 0 ? 0 : 1;
    }

    private static int Number(string[] args, string name, int otherwise)
    {
        var at = Array.IndexOf(args, name);
        return at >= 0 && at + 1 < args.Length && int.TryParse(args[at + 1], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : otherwise;
    }
}
