using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Live;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using LiveHeat.Testing.Places;

namespace LiveHeat.Server.Live;

/// <summary>What other people's pages are told of rounds by the clock, held to the table that board, pad and screens are held to as well.</summary>
public sealed class LiveMakingTests
{
    /// <summary>Three rounds of 1:00 with 0:30 rest, one athlete each: steps 1-2, 3-4, 5-6.</summary>
    private static readonly HeatSnapshot ByTheClock = Some.Snapshot(1, Some.Workout(
        finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000) with { Clock = new WorkClock(60_000, 30_000, Repeat: false) }) with
    { Scoring = new ScoringRule.MostWork() });

    private static readonly HeatSnapshot InOneGo = Some.Snapshot(1, Some.Workout(new RelayOrder.Together(), finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000)));

    private static LiveLane Told(string score, HeatSnapshot heat, Instant at, int? open = null)
    {
        var state = HeatScript.Play(score, heat);
        var frame = FrameMaking.Of(state, LiveOrder.Of(state), [], "e1", at);
        return LiveMaking.Of(frame with { Lanes = frame.Lanes.Select(lane => lane with { Open = open ?? lane.Open }).ToItems() }, SheetMaking.Of(state, "e1")!).Lanes[0];
    }

    [Fact]
    public void Every_case_of_the_table_is_where_it_says() => Assert.Equal(
        PlaceCases.All.Select(one => (
            one.Name, Round: one.Plain ? one.Open > 6 ? null : (one.Open + 1) / 2 : one.Round, Doing: one.Resting || one.Open > 6 ? null : one.Open % 2 == 1 ? "10 wall balls" : "12 cal row",
            Resting: one.Plain ? (bool?)null : one.Resting, TurnsAt: one.LaneMs is null || one.TurnsMs is not { } turnsMs ? (Instant?)null : Some.Go + turnsMs)),
        PlaceCases.All.Select(one => (one.Name, Told(one.LaneMs is null ? "" : "start", one.Plain ? InOneGo : ByTheClock, Some.Go + (one.LaneMs ?? 0), one.Confirmed)))
            .Select(one => (one.Name, one.Item2.Round, one.Item2.Doing, one.Item2.Resting, one.Item2.TurnsAt)));

    [Theory]
    [InlineData("start\nhalt at 0:20\nresume at 0:30\nhold lane 1 at 0:40\nresume lane 1 at 0:45", 75_000)]    // 0:10 halted, 0:05 held
    [InlineData("start\nhalt at 0:20", null)]
    [InlineData("start\nhold lane 1 at 0:40", null)]
    [InlineData("start\nend at 0:40", null)]
    [InlineData("start\nlane 1 stopped medical at 0:40", null)]
    public void When_it_turns_is_an_instant_and_nothing_is_told_while_a_clock_stands(string score, int? afterGo) =>
        Assert.Equal(afterGo is { } ms ? Some.Go + ms : (Instant?)null, Told(score, ByTheClock, HeatScript.At("0:50")).TurnsAt);

    [Fact]
    public void Who_stopped_stays_where_the_team_stopped() =>
        Assert.Equal((1, "12 cal row", null), Told("start\nlane 1 step 1 done at 0:30\nlane 1 stopped medical at 0:40", ByTheClock, HeatScript.At("2:00")) is { } lane ? (lane.Round, lane.Doing, lane.Resting) : default);
}
