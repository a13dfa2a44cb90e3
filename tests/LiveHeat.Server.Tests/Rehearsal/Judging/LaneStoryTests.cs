using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Rehearsal.Judging;

namespace LiveHeat.Server.Rehearsal.Judging;

public class LaneStoryTests
{
    private const int Days = 60;
    private static readonly LaneNumber Spared = new(5);

    /// <summary>A whole relay without a phone: how long the team takes, milliseconds.</summary>
    private static double RelayMs(Sheet sheet, SheetLane lane, LaneStory story, int day)
    {
        var team = new SimulatedTeam(sheet, lane, story, MistakeRates.Usual, new Random(day));
        return lane.Steps.Sum(step => team.Play(lane, step).EndMs);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void One_team_never_makes_the_cap_and_the_others_nearly_always_do(int heat)
    {
        var sheet = DemoSheets.Sheet(heat);
        var late = 0;
        for (var day = 1; day <= Days; day++)
        {
            var stories = LaneStory.Of(sheet, day, Spared);
            var slowest = stories.MaxBy(story => story.Value.Strength).Key;
            foreach (var lane in sheet.Lanes)
            {
                var made = RelayMs(sheet, lane, stories[lane.Lane], day) <= lane.CapMs;
                Assert.False(made && lane.Lane == slowest, $"Day {day}: lane {slowest} made the cap.");
                late += made || lane.Lane == slowest ? 0 : 1;
            }
        }

        Assert.InRange(late, 0, Days * sheet.Lanes.Count / 25);
    }

    [Fact]
    public void Troubles_three_different_lanes_and_never_the_spared_one()
    {
        for (var day = 1; day <= Days; day++)
        {
            var stories = LaneStory.Of(DemoSheets.Sheet(1), day, Spared);
            var lost = Assert.Single(stories, story => story.Value.NetworkLostAt is not null).Key;
            var called = Assert.Single(stories, story => story.Value.CallsAt is not null).Key;
            var slow = stories.MaxBy(story => story.Value.Strength).Key;
            Assert.Distinct([lost, called, slow, Spared]);
        }
    }

    [Fact]
    public void Is_the_same_for_the_same_seed_and_another_for_another()
    {
        var sheet = DemoSheets.Sheet(2);
        Assert.Equal(LaneStory.Of(sheet, 3, null), LaneStory.Of(sheet, 3, null));
        Assert.NotEqual(LaneStory.Of(sheet, 3, null), LaneStory.Of(sheet, 4, null));
    }
}
