using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Facts;
using Microsoft.Extensions.Logging.Abstractions;

namespace LiveHeat.Ledger.Crash;

public class KilledTests
{
    private const int Seed = 20261125;
    private const int Rounds = 3;

    /// <summary>Beyond any line the child gets to print: it does not kill itself.</summary>
    private const int Never = int.MaxValue;

    [Fact]
    public async Task What_was_acknowledged_is_there_when_it_dies_right_after()
    {
        var random = new Random(Seed);
        await KillAgainAndAgain(() => (ItselfAfter: random.Next(1, 1000), Never));
    }

    [Fact]
    public async Task What_was_acknowledged_is_there_when_it_is_killed_at_any_moment()
    {
        var random = new Random(Seed);
        await KillAgainAndAgain(() => (Never, FromOutsideAfter: random.Next(1, 1000)));
    }

    private static async Task KillAgainAndAgain(Func<(int ItselfAfter, int FromOutsideAfter)> next)
    {
        using var folder = new TempFolder();
        var acknowledged = new List<string>();
        for (var round = 1; round <= Rounds; round++)
        {
            var (itselfAfter, fromOutsideAfter) = next();
            acknowledged.AddRange(await AppendAndDie(folder.File("ledger.db"), $"round {round}", itselfAfter, fromOutsideAfter));

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

        Assert.True(acknowledged.Count > Rounds, "The children were to append something before they died.");
    }

    private static async Task<List<string>> AppendAndDie(string path, string name, int itselfAfter, int fromOutsideAfter)
    {
        using var child = ChildProcess.Start("append", path, name, $"{itselfAfter}");
        Assert.Equal("open", await child.StandardOutput.ReadLineAsync());
        var printed = new List<string>();
        while (await child.StandardOutput.ReadLineAsync() is { } line)
        {
            printed.Add(line);
            if (printed.Count == fromOutsideAfter)
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
