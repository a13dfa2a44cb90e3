using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Judging;

namespace LiveHeat.Server.Rehearsal.Judging;

public class PaceTests
{
    private const int Many = 4000;
    private static readonly SheetStep Set = DemoSheets.Sheet(1).Lanes[0].Steps.First(step => step.Kind == StepKind.Set);

    private static List<double> Paces(double strength, double doneShare, SheetStep? step = null, double tiring = 0.2)
    {
        var random = new Random(11);
        return [.. Enumerable.Range(0, Many).Select(_ => Pace.Ms(step ?? Set, strength, tiring, doneShare, random)).Order()];
    }

    [Fact]
    public void Lies_around_what_is_expected() => Assert.InRange(Paces(1, 0)[Many / 2] / Set.ExpectedMs, 0.99, 1.02);

    // Computed, with spread 0.13 and 3 of 100 sets half as long again: 0.97 P(below x) = 0.05 at x = exp(-1.63 x 0.13) = 0.809;
    // 0.97 P(above x) + 0.03 P(above x / 1.5) = 0.05 at x = 1.29.
    [Fact]
    public void Spreads_as_people_do()
    {
        var paces = Paces(1, 0);
        Assert.InRange(paces[Many / 20] / Set.ExpectedMs, 0.79, 0.83);
        Assert.InRange(paces[^(Many / 20)] / Set.ExpectedMs, 1.26, 1.32);
    }

    [Fact]
    public void Slows_as_the_relay_goes_on() =>
        Assert.Equal(1.05, Paces(1, 0.5)[Many / 2] / Paces(1, 0)[Many / 2], 6);

    [Fact]
    public void Not_where_the_team_does_not_tire() => Assert.Equal(Paces(1, 0)[Many / 2], Paces(1, 1, tiring: 0)[Many / 2], 6);

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
