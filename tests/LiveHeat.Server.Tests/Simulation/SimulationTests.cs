using LiveHeat.Testing.Simulation;
using Xunit.Abstractions;

namespace LiveHeat.Server.Simulation;

/// <summary>
/// Heats made from numbers: phones that drop, delay, repeat, reorder, sleep, drift, reboot and are replaced, and a server that restarts, on a clock
/// that stands still between two happenings. <c>LiveHeat.Measure simulate</c> plays more of them.
/// </summary>
public sealed class SimulationTests(ITestOutputHelper output)
{
    private const int Seeds = 200;

    [Fact]
    public async Task Whatever_goes_wrong_on_the_way_a_heat_comes_to_what_it_comes_to_without_faults()
    {
        await using var simulation = new Testing.Simulation.Simulation();
        var reports = new List<SeedReport>();
        for (var seed = 1; seed <= Seeds; seed++)
        {
            reports.Add(await simulation.Play(seed));
        }

        var others = await simulation.ReadAgain();
        var (taps, held, lanes, compared) = (reports.Sum(report => report.Taps), reports.Sum(report => report.Held), reports.Sum(report => report.Lanes), reports.Sum(report => report.Compared));
        output.WriteLine($"{taps} taps, {held} held, {lanes} lanes, {compared} compared");
        Assert.True(reports.TrueForAll(report => report.Wrong.Count == 0), string.Join("\n\n", reports.Where(report => report.Wrong.Count > 0).Take(5)));
        Assert.Empty(others);
        Assert.True(compared > lanes * 0.9, $"Only {compared} of {lanes} lanes were certain enough to be compared.");
        Assert.True(taps > Seeds * 20, $"So few taps prove nothing: {taps}.");
    }

    [Fact]
    public async Task The_same_number_gives_the_same_heat()
    {
        await using var one = new Testing.Simulation.Simulation();
        await using var other = new Testing.Simulation.Simulation();

        Assert.Equal((await one.Play(7)).Digest, (await other.Play(7)).Digest);
        Assert.NotEqual((await one.Play(8)).Digest, (await other.Play(9)).Digest);
    }
}
