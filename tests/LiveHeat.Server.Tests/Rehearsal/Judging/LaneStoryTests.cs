using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Judging;

namespace LiveHeat.Server.Rehearsal.Judging;

public class LaneStoryTests
{
    private const int Days = 60;
    private static readonly LaneNumber Spared = new(5);

    /// <summary>A whole relay without a phone: how long the team takes, milliseconds.</summary>
    private static double RelayMs(Sheet sheet, SheetLane lane, LaneStory story, FloorDay floor, int day)
    {
        var team = new SimulatedTeam(sheet, lane, story, floor, MistakeRates.Usual, new Random(day));
        return lane.Steps.Sum(step => team.Play(lane, step).EndMs);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_cap_is_in_doubt_most_teams_make_it_and_on_most_days_one_does_not(int heat)
    {
        var sheet = DemoSheets.Sheet(heat);
        var (made, near, daysOfAll) = (0, 0, 0);
        for (var day = 1; day <= Days; day++)
        {
            var floor = new FloorDay(day);
            var stories = LaneStory.Of(sheet, floor, day, Spared);
            var shares = sheet.Lanes.Select(lane => RelayMs(sheet, lane, stories[lane.Lane], floor, (day * 100) + lane.Lane.Value) / lane.CapMs).ToList();
            made += shares.Count(share => share <= 1);
            near += shares.Count(share => Math.Abs(share - 1) < 0.05);
            daysOfAll += shares.All(share => share <= 1) ? 1 : 0;
        }

        var teams = (double)Days * sheet.Lanes.Count;
        Assert.InRange(made / teams, 0.55, 0.85);
        Assert.InRange(near / teams, 0.15, 0.5);
        Assert.InRange(daysOfAll, 0, Days / 10);
    }

    /// <summary>Two heats of a day go alike: what a movement takes there, all teams find.</summary>
    [Fact]
    public void A_day_makes_movements_slower_or_faster_and_tags_as_expected()
    {
        var steps = DemoSheets.Sheet(1).Lanes[0].Steps;
        var (set, tag) = (steps.First(step => step.Kind == StepKind.Set), steps.First(step => step.Kind == StepKind.Tag));
        var factors = Enumerable.Range(1, 400).Select(day => new FloorDay(day).Factor(set)).ToList();

        Assert.Equal(new FloorDay(3).Factor(set), new FloorDay(3).Factor(set));
        Assert.InRange(factors.Average(Math.Log), -0.02, 0.02);
        Assert.InRange(Math.Sqrt(factors.Average(factor => Math.Pow(Math.Log(factor), 2))), 0.105, 0.135);
        Assert.Equal(1, new FloorDay(3).Factor(tag));
    }

    [Fact]
    public void Troubles_different_lanes_and_never_the_spared_one()
    {
        for (var day = 1; day <= Days; day++)
        {
            var stories = LaneStory.Of(DemoSheets.Sheet(1), new FloorDay(day), day, Spared);
            var lost = Assert.Single(stories, story => story.Value.NetworkLostAt is not null).Key;
            var called = Assert.Single(stories, story => story.Value.CallsAt is not null).Key;
            Assert.Distinct([lost, called, Spared]);
        }
    }

    [Fact]
    public void Is_the_same_for_the_same_seed_and_another_for_another()
    {
        var sheet = DemoSheets.Sheet(2);
        var day = new FloorDay(3);
        Assert.Equal(LaneStory.Of(sheet, day, 3, null), LaneStory.Of(sheet, day, 3, null));
        Assert.NotEqual(LaneStory.Of(sheet, day, 3, null), LaneStory.Of(sheet, day, 4, null));
    }
}
