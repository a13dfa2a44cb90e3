using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>As many rounds and reps as possible in 4:00: 10 wall balls and 12 cal row, then the tag. Steps of a round: set, set, tag; 22 reps.</summary>
public class MostWorkTests
{
    private static readonly Workout Workout = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 240_000)) with { Scoring = new ScoringRule.MostWork() };

    private static HeatSnapshot Heat(int lanes = 3) => Some.Snapshot(lanes, Workout);

    private static string Lines(HeatState heat, string now = "20:00") => string.Join(" | ", HeatResult.Of(heat, HeatScript.At(now)).Select(line =>
        $"{line.Place?.ToString() ?? "-"} lane {line.Lane.Lane} {line.Outcome} {Said(RoundsAndReps.Of(line.Lane.Plan, line.Lane.DoneSteps, line.Worth))}{(line.Tied ? " tied" : "")}{(line.OfficialMs is null ? "" : " timed")}"));

    private static string Said(RoundsAndReps done) => $"{done.Rounds}+{done.Reps}";

    [Fact]
    public void The_most_work_wins_and_equal_work_goes_to_who_got_there_first() =>
        // The rest by reps completed, more is better: common practice, no source.
        Assert.Equal("1 lane 3 Capped 2+17 | 2 lane 2 Capped 2+5 | 3 lane 1 Capped 2+5", Lines(HeatScript.Play("""
            start
            lane 1 step 6 done at 2:00
            lane 1 count 5 of step 7 at 2:30
            lane 2 step 6 done at 2:10
            lane 2 count 5 of step 7 at 2:20
            lane 3 step 7 done at 3:10
            lane 3 7 reps at cap in step 8 at 4:05
            end at 4:10
            """, Heat())));

    [Fact]
    public void Nobody_is_through_not_even_with_all_that_was_laid_out()
    {
        var heat = HeatScript.Play("start", Heat(1));
        var last = heat.Lanes[0].Plan.LastStep;
        heat = HeatScript.Play($"start\nlane 1 step {last} done at 3:59", Heat(1));

        Assert.False(heat.Lanes[0].Finished);
        Assert.Null(heat.Lanes[0].Finish);
        Assert.Equal("1 lane 1 Working 15+0", Lines(heat, "3:59.5"));
    }

    [Fact]
    public void Timekeepers_of_a_finish_change_nothing() =>
        Assert.Equal("1 lane 1 Capped 1+0", Lines(HeatScript.Play("""
            lane 1 seat w-1 taken as timekeeper at -0:30
            start
            lane 1 step 3 done at 2:00
            lane 1 finish timed from seat w-1 at 3:00
            end at 4:10
            """, Heat(1))));

    [Fact]
    public void There_is_no_cap_pace_and_no_forecast_of_a_finish()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:20
            lane 1 step 2 done at 0:56
            lane 1 step 3 done at 0:58
            lane 1 step 4 done at 1:20
            lane 2 step 1 done at 0:22
            lane 2 step 2 done at 0:57
            lane 2 step 3 done at 0:59
            lane 2 step 4 done at 1:21
            """, Heat(2));

        Assert.All(heat.Lanes, lane => Assert.Null(CapPace.AheadMs(lane)));
        Assert.Empty(Forecast.Of(heat, HeatScript.At("1:30"), PacePriors.None, 1));
        Assert.Equal([0L, 1_000], LiveOrder.Of(heat).Select(placing => placing.GapMs));
    }

    [Fact]
    public void Penalty_reps_may_take_a_whole_round_away()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 7 done at 3:00
            penalise lane 1 by 11 reps
            end at 4:10
            """, Heat(1));

        Assert.Equal("1 lane 1 Capped 1+21", Lines(heat));
    }

    [Fact]
    public void Rounds_are_whole_when_all_their_sets_are_done_though_the_last_is_worth_nothing()
    {
        var workout = Workout with { Prescriptions = [Some.Prescription(rounds: 0, capMs: 240_000, round: [new("wall-ball", 10), new("row", 12, Worth: 0)]) with { Before = [new("row", 30)] }] };
        var plan = Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(workout, Some.LineUp())).Relay;

        // 30 cal before, then 10 wall balls, a row without worth, the tag.
        Assert.Equal(["0+0", "0+30", "0+40", "1+0", "1+0", "1+10", "2+0"], Enumerable.Range(0, 7).Select(done => Said(RoundsAndReps.Of(plan, done, plan.WorthThrough(done)))));
        Assert.Equal("0+35", Said(RoundsAndReps.Of(plan, 3, 35)));
    }

    [Fact]
    public void A_heat_is_played_frozen_and_signed()
    {
        var script = new HeatScript(Heat(2)).Then("""
            start
            lane 1 step 3 done at 1:00
            lane 2 step 3 done at 1:02
            lane 2 no-rep step 4 at 1:10
            lane 1 step 6 done at 2:01
            lane 2 step 6 done at 2:00
            lane 1 step 7 done at 4:00.5
            lane 2 4 reps at cap in step 7 at 4:06
            lane 1 9 reps at cap in step 7 at 4:07
            """);
        Assert.Equal("2 1", HeatScript.Board(new HeatScript(Heat(2)).Then("start\nlane 2 step 3 done at 1:02").State));
        Assert.IsType<Verdict.Refused>(HeatRules.Decide(script.State, new HeatCommand.Freeze { Id = Some.Id("asks", 1), Head = script.State.Head }, Some.Asking(Some.Organiser, HeatScript.At("4:08"))));

        script.Then("end at 4:10");
        Assert.IsType<Verdict.Accepted>(HeatRules.Decide(script.State, new HeatCommand.Freeze { Id = Some.Id("asks", 1), Head = script.State.Head }, Some.Asking(Some.Organiser, HeatScript.At("4:12"))));
        script.Then("freeze at 4:20");
        Assert.IsType<Verdict.Accepted>(HeatRules.Decide(script.State, new HeatCommand.Certify { Id = Some.Id("asks", 2), Head = script.State.SignedHead }, Some.Asking(Some.HeadJudge, HeatScript.At("4:30"))));
        script.Then("sign organiser\nsign head judge");

        Assert.Equal(Phase.Certified, script.State.Told);
        Assert.Equal("1 lane 1 Capped 2+9 | 2 lane 2 Capped 2+4", Lines(script.State));
    }
}
