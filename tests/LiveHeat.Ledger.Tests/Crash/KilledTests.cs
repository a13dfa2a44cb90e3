using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Facts;
using Microsoft.Extensions.Logging.Abstractions;

namespace LiveHeat.Ledger.Crash;

public class KilledTests
{
    private const int Seed = 20261125;
    private const int Rounds = 6;

    [Fact]
    public async Task What_was_acknowledged_is_there_after_every_kill()
    {
        using var folder = new TempFolder();
        var random = new Random(Seed);
        var acknowledged = new List<string>();
        for (var round = 1; round <= Rounds; round++)
        {
            acknowledged.AddRange(await AppendAndKill(folder.File("ledger.db"), $"round {round}", linesBefore: random.Next(1, 1500)));

            await using var ledger = await HeatLedger.Open(folder.File("ledger.db"), TimeProvider.System, NullLogger.Instance, CancellationToken.None);
            var stored = new HashSet<string>();
            foreach (var (heat, _) in await ledger.Heads())
            {
                foreach (var line in await ledger.Read(heat, 0, CancellationToken.None))
                {
                    Assert.True(stored.Add($"{line.Heat} {line.Sequence} {line.Id} {line.Hash}"));
                }
            }

            Assert.Empty(acknowledged.Except(stored));
            await LedgerTest.AssertWhole(ledger);
        }

        Assert.True(acknowledged.Count > Rounds, "The children were to append something before they were killed.");
    }

    /// <summary>Kills the child with SIGKILL once it has printed so many lines, at whatever it is doing then.</summary>
    private static async Task<List<string>> AppendAndKill(string path, string name, int linesBefore)
    {
        using var child = ChildProcess.Start("append", path, name);
        Assert.Equal("open", await child.StandardOutput.ReadLineAsync());
        var printed = new List<string>();
        while (await child.StandardOutput.ReadLineAsync() is { } line)
        {
            printed.Add(line);
            if (printed.Count == linesBefore)
            {
                child.Kill();
            }
        }

        await child.WaitForExitAsync();
        Assert.NotEqual(0, child.ExitCode);

        // The last line may have been cut in two by the kill.
        return [.. printed.Where(line => line.Split(' ') is [_, _, var id, { Length: 64 }] && FactId.TryParse(id, out _))];
    }
}
