using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Facts;
using LiveHeat.Testing.Simulation;
using Microsoft.Extensions.Logging.Abstractions;
using Xunit.Abstractions;

namespace LiveHeat.Browser.Simulation;

/// <summary>
/// The heats that the simulation makes from numbers, tapped on the pad's own modules: its clock, recorder, outbox, database, steps and lane in a real
/// browser, on clocks, timers and a network of the plot's. LIVEHEAT_SEED=N plays one alone.
/// </summary>
[Collection(OneAtATime.Name)]
public sealed class PadSimulationTests(Chromium chromium, ITestOutputHelper output) : IClassFixture<Chromium>
{
    private const int Seeds = 30;

    [Fact]
    public async Task The_pads_own_modules_lose_double_and_misplace_nothing_and_say_no_time_more_surely_than_they_know_it()
    {
        var folder = Directory.CreateTempSubdirectory("pad-simulation-");
        var ledger = await HeatLedger.Open(Path.Combine(folder.FullName, "calm.db"), TimeProvider.System, NullLogger.Instance, CancellationToken.None);
        await using var performance = await PadPerformance.Open(chromium);
        var (wrong, taps, held, certain, lanes) = (new List<string>(), 0, 0, 0, 0);
        try
        {
            foreach (var seed in int.TryParse(Environment.GetEnvironmentVariable("LIVEHEAT_SEED"), out var one) ? [one] : Enumerable.Range(1, Seeds))
            {
                var plot = Plotting.Of(seed);
                var played = await performance.Play(plot);
                var calm = await Performance.Of(plot.Calm(), new HeatId($"s{seed}"), ledger);
                var unsound = Soundness.Of(played).ToList();
                wrong.AddRange((unsound.Count > 0 ? unsound : Likeness.Of(played, calm)).Select(sentence =>
                    $"Seed {seed} (again: LIVEHEAT_SEED={seed} dotnet test tests/LiveHeat.Browser.Tests --filter PadSimulation): {sentence}"));
                (taps, held, lanes) = (taps + played.Taps.Count, held + played.Held, lanes + plot.Lanes.Count);
                certain += plot.Lanes.Count(lane => unsound.Count == 0 && Likeness.Certain(played, new LaneNumber(lane.Lane)));
            }
        }
        finally
        {
            await ledger.DisposeAsync();
            folder.Delete(recursive: true);
        }

        output.WriteLine($"{taps} taps, {held} held, {lanes} lanes, {certain} compared");
        Assert.True(wrong.Count == 0, $"{wrong.Count} wrong:\n{string.Join('\n', wrong.Take(20))}");
        Assert.True(certain > lanes * 0.8, $"Only {certain} of {lanes} lanes were certain enough to be compared.");
    }
}
