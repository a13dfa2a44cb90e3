using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Time;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Testing.Simulation;

/// <summary>What one seed came to.</summary>
/// <param name="Seed">The number.</param>
/// <param name="Taps">Taps made on phones.</param>
/// <param name="Held">Of those, waited for the head judge at the end.</param>
/// <param name="Lanes">Lanes played.</param>
/// <param name="Compared">Of those, compared with the same lane without faults; the others' taps were too uncertain.</param>
/// <param name="Wrong">What is wrong, in sentences; empty when all is well.</param>
/// <param name="Digest">The ledger's taps in their order: the same each time the seed is played.</param>
internal sealed record SeedReport(int Seed, int Taps, int Held, int Lanes, int Compared, IReadOnlyList<string> Wrong, string Digest)
{
    /// <summary>How to play it again.</summary>
    public string Again => $"dotnet run --project tests/LiveHeat.Measure -c Release -- simulate --seed {Seed}";

    /// <inheritdoc/>
    public override string ToString() => string.Join('\n', [$"Seed {Seed} fails. Again: {Again}", .. Wrong]);
}

/// <summary>Heats from seeds, one after another, on one ledger file.</summary>
internal sealed class Simulation : IAsyncDisposable
{
    private readonly DirectoryInfo folder = Directory.Exists("/dev/shm") ? Directory.CreateDirectory($"/dev/shm/simulation-{Guid.NewGuid():N}") : Directory.CreateTempSubdirectory("simulation-");
    private readonly Dictionary<HeatId, (HeatState State, string Hash)> ended = [];
    private HeatLedger? ledger;

    /// <summary>Plays one seed with its faults and without, and looks at what came of it.</summary>
    public async Task<SeedReport> Play(int seed)
    {
        ledger ??= await OpenFile();
        var plot = Plotting.Of(seed);
        var (heat, quiet) = (new HeatId($"s{seed}"), new HeatId($"s{seed}-calm"));
        try
        {
            var played = await Performance.Of(plot, heat, ledger);
            var calm = await Performance.Of(plot.Calm(), quiet, ledger);
            ended[heat] = (played.State, played.Result.HeadHash);
            var wrong = Soundness.Of(played).Concat(Soundness.Of(calm).Select(sentence => $"Without faults: {sentence}")).ToList();
            return new SeedReport(
                seed, played.Taps.Count, played.Held, plot.Lanes.Count, plot.Lanes.Count(lane => wrong.Count == 0 && Likeness.Certain(played, new LaneNumber(lane.Lane))),
                wrong.Count > 0 ? wrong : [.. Likeness.Of(played, calm)], string.Join('\n', played.Lines.Select(line => line.Body)));
        }
        catch (Exception wrong) when (wrong is not OutOfMemoryException)
        {
            return new SeedReport(seed, 0, 0, 0, 0, [wrong.ToString()], "");
        }
    }

    /// <summary>Closes the file, opens it as another process would, and compares every heat in it with the one that ran.</summary>
    /// <returns>The heats that came out another.</returns>
    public async Task<IReadOnlyList<HeatId>> ReadAgain()
    {
        await Close();
        ledger = await OpenFile();
        var others = new List<HeatId>();
        foreach (var (heat, (state, hash)) in ended)
        {
            using var again = await HeatSession.Open(heat, ledger, new Timebase(new FakeTimeProvider()), CancellationToken.None);
            if (again.State != state || again.HeadHash != hash || again.BrokenAt is not null)
            {
                others.Add(heat);
            }
        }

        return others;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await Close();
        folder.Delete(recursive: true);
    }

    private Task<HeatLedger> OpenFile() => HeatLedger.Open(Path.Combine(folder.FullName, "ledger.db"), TimeProvider.System, NullLogger.Instance, CancellationToken.None);

    private async Task Close()
    {
        if (ledger is not null)
        {
            await ledger.DisposeAsync();
            ledger = null;
        }
    }
}
