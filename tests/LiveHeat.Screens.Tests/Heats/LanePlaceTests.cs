using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;
using LiveHeat.Testing.Places;

namespace LiveHeat.Screens.Heats;

/// <summary>What the screens say of rounds by the clock, held to the table that board and pad are held to as well.</summary>
public sealed class LanePlaceTests
{
    /// <summary>Three rounds of 1:00 with 0:30 rest, one athlete each: steps 1-2, 3-4, 5-6.</summary>
    private static readonly Workout ByTheClock = Some.Workout(
        finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000) with { Clock = new WorkClock(60_000, 30_000, Repeat: false) }) with
    { Scoring = new ScoringRule.MostWork() };

    private static readonly Workout InOneGo = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000));

    [Fact]
    public void Every_case_of_the_table_is_where_it_says()
    {
        var (lane, plain) = (Lane("start", ByTheClock), Lane("start", InOneGo));
        Assert.Equal(PlaceCases.Windows, lane.Sheet.Windows);

        Assert.True(PlaceCases.All.Count >= 15, $"The table has {PlaceCases.All.Count} cases.");
        Assert.Equal(
            PlaceCases.All.Select(one => (one.Name, new LanePlace(one.Open, one.Round, one.Resting, one.TurnsMs))),
            PlaceCases.All.Select(one => (one.Name, LanePlace.Of((one.Plain ? plain : lane).Sheet, lane.State with { Open = one.Confirmed }, one.LaneMs))));
    }

    [Theory]
    [InlineData("0:20", "Ann", "Bo", "10 wall balls")]
    [InlineData("1:10", "rest", "Bo", "until 1:30, then Bo: 10 wall balls")]
    [InlineData("1:31", "Bo", "Cy", "10 wall balls")]
    [InlineData("3:10", "Cy", "", "10 wall balls")]
    public void The_next_athlete_is_named_when_the_clock_says_so_and_not_at_the_first_tap(string at, string works, string next, string work)
    {
        var lane = Lane("start", ByTheClock);
        lane = lane with { State = lane.State with { Status = LaneStatus.Working }, Now = () => Ms(at) };

        Assert.Equal((works, next, work), (WorkWords.Worker(lane), lane.Next, WorkWords.Work(lane)));
    }

    [Fact]
    public void A_lane_that_stopped_for_good_does_not_rest() =>
        Assert.Null((Lane("start\nlane 1 stopped medical at 0:40", ByTheClock) with { Now = () => 70_000 }).RestsUntilMs);

    private static LaneView Lane(string score, Workout workout) => SomeHeat.Lane(score, 1, Some.Snapshot(1, workout));

    private static long Ms(string time) => time.Split(':') is [var minutes, var seconds] ? (int.Parse(minutes, null) * 60_000L) + (int.Parse(seconds, null) * 1000L) : 0;
}
