using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Judging;

namespace LiveHeat.Server.Rehearsal.Judging;

public class PaceTests
{
    private const int Many = 4000;
    private static readonly SheetStep Set = DemoSheets.Sheet(1).Lanes[0].Steps.First(step => step.Kind == StepKind.Set);

    private static List<double> Paces(double strength, double doneShare, SheetStep? step = null)
    {
        var random = new Random(11);
        return [.. Enumerable.Range(0, Many).Select(_ => Pace.Ms(step ?? Set, strength, doneShare, random)).Order()];
    }

    [Fact]
    public void Lies_around_what_is_expected() => Assert.InRange(Paces(1, 0)[Many / 2] / Set.ExpectedMs, 0.99, 1.01);

    // Computed: 5 % of a log-normal with spread 0.08 lie below exp(-1.645 x 0.08) = 0.877 of its median, 5 % above 1.141.
    [Fact]
    public void Spreads_as_people_do()
    {
        var paces = Paces(1, 0);
        Assert.InRange(paces[Many / 20] / Set.ExpectedMs, 0.86, 0.89);
        Assert.InRange(paces[^(Many / 20)] / Set.ExpectedMs, 1.12, 1.16);
    }

    [Fact]
    public void Slows_as_the_relay_goes_on() =>
        Assert.Equal(1 + Pace.Tiring, Paces(1, 1)[Many / 2] / Paces(1, 0)[Many / 2], 6);

    [Fact]
    public void Follows_the_teams_strength() => Assert.Equal(1.3, Paces(1.3, 0.5)[Many / 2] / Paces(1, 0.5)[Many / 2], 6);

    [Fact]
    public void Is_never_what_nobody_can_do()
    {
        Assert.All(Paces(0.1, 0), ms => Assert.True(ms > Set.EarliestMs));
        var tag = DemoSheets.Sheet(1).Lanes[0].Steps.First(step => step.Kind == StepKind.Tag);
        Assert.All(Paces(1, 0, tag), ms => Assert.True(ms > tag.EarliestMs));
    }
}
