using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Server.Result;

public sealed class HowFarTests
{
    private static readonly PrescribedSet[] Pool = [new("row", 60) { MinimumEach = 15 }, new("wall-ball", 10)];

    [Fact]
    public void Who_has_work_left_is_told_with_the_step_what_is_done_of_it_and_whose_it_was()
    {
        var far = Of("lane 1 count 4 of step 1 at 0:20\nlane 2 step 2 done at 1:00\nlane 3 step 9 done at 5:00\nend at 10:10");

        Assert.Equal(["10 wall balls, 4 done · Ann", "tag Bo", ""], Told(far));
    }

    [Fact]
    public void Before_GO_there_is_nothing_to_show()
    {
        var called = HeatScript.Play("");

        Assert.Null(HowFar.Of(called, LiveOrder.Of(called), Some.Go));
    }

    /// <summary>Endless work, rounds by the clock, attempts at a load, a set that the team shares: each has its strip, and the strip a scale.</summary>
    [Theory]
    [InlineData("endless", "lane 1 step 8 done at 4:00", "tag Ann")]
    [InlineData("clock", "lane 1 step 1 done at 0:30", "")]
    [InlineData("load", "lane 1 lifts 100 in step 1 at 0:30\nlane 1 fails 110 in step 2 at 1:00", "one lift, attempt 3 · Ann")]
    [InlineData("pool", "lane 1 count 20 of step 1 at 1:00", "60 cal row, 20 done")]
    public void Every_kind_of_workout_has_strips(string kind, string score, string where)
    {
        var far = Of($"{score}\nend at 10:10", Some.Snapshot(1, Work(kind)));
        var lane = Json(far).GetProperty("sheet").GetProperty("lanes")[0];

        Assert.Equal(where, Told(far).Single());
        Assert.Equal(kind == "clock", far.ByTheClock);
        Assert.Equal(far.Sheet.Lanes[0].ExpectedSteps ?? far.Sheet.Lanes[0].Steps.Count, lane.GetProperty("steps").GetArrayLength());
        Assert.Contains(lane.GetProperty("steps").EnumerateArray(), step => step.GetProperty("expectedMs").GetInt32() > 0);
    }

    [Fact]
    public void The_page_carries_where_everybody_was_and_nobodys_judge()
    {
        var far = Of("lane 1 count 4 of step 1 at 0:20\nlane 3 step 9 done at 5:00\nend at 10:10");
        var lanes = Json(far).GetProperty("frame").GetProperty("lanes").EnumerateArray().ToList();

        Assert.All(far.Frame.Lanes, lane => Assert.NotNull(lane.Seat));
        Assert.Equal(["capped 1 4", "capped 1 ", "finished 10 "], lanes.Select(lane => $"{lane.GetProperty("status")} {lane.GetProperty("open")} {lane.GetProperty("count")}"));
        Assert.All(lanes, lane => Assert.Equal((JsonValueKind.Null, JsonValueKind.Null), (lane.GetProperty("judge").ValueKind, lane.GetProperty("seat").ValueKind)));
    }

    private static HowFar Of(string score, HeatSnapshot? heat = null)
    {
        var state = HeatScript.Play($"start\n{score}", heat);
        return HowFar.Of(state, LiveOrder.Of(state), Some.Go + 620_000)!;
    }

    private static IEnumerable<string> Told(HowFar far) => far.Sheet.Lanes.Select(lane => far.Where(lane.Lane));

    private static JsonElement Json(HowFar far) => JsonDocument.Parse(far.ToJson()).RootElement;

    private static Workout Work(string kind) => kind switch
    {
        "load" => Some.Lifting(),
        "pool" => Some.Workout(new RelayOrder.Together(), prescriptions: Some.Prescription(rounds: 1, round: Pool)),
        "clock" => Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000) with { Clock = new WorkClock(60_000, 30_000, Repeat: false) }) with { Scoring = new ScoringRule.MostWork() },
        _ => Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 600_000)) with { Scoring = new ScoringRule.MostWork() },
    };
}
