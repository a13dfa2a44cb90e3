using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>Three rounds by the clock of 1:00 with 0:30 rest, one athlete each: 10 wall balls and 12 cal row. Steps 1-2 until 1:00, 3-4 from 1:30 to 2:30, 5-6 from 3:00 to 4:00.</summary>
public class WindowsTests
{
    private static Workout Work(bool repeat = false, int capMs = 240_000) =>
        Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: capMs) with { Clock = new WorkClock(60_000, 30_000, repeat) }) with { Scoring = new ScoringRule.MostWork() };

    private static HeatState Play(string score, int lanes = 1, bool repeat = false) => HeatScript.Play($"start\n{score}", Some.Snapshot(lanes, Work(repeat)));

    private static LaneState Lane(string score) => Play(score).Lanes[0];

    [Fact]
    public void Each_round_has_its_time_and_its_athlete_and_nobody_tags()
    {
        var plan = Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(Work(), Some.LineUp())).Relay;

        Assert.Equal([new Window(1, 2, 0, 60_000), new(3, 4, 90_000, 150_000), new(5, 6, 180_000, 240_000)], plan.Windows);
        Assert.Equal([1, 1, 2, 2, 3, 3], plan.Steps.Select(step => step.Athlete));
        Assert.DoesNotContain(plan.Steps, step => step.Kind == StepKind.Tag);
    }

    [Fact]
    public void A_round_that_is_repeated_is_laid_out_as_often_as_the_fastest_could_begin_it()
    {
        // 10 wall balls at 0.5 s and 12 cal at 1 s are 17 s: a fourth time is begun within 60 s.
        var plan = Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(Work(repeat: true), Some.LineUp())).Relay;

        Assert.Equal([(1, 8), (9, 16), (17, 24)], plan.Windows.Select(window => (window.First, window.Last)));
        Assert.Equal([1, 2, 3], plan.Steps.Select(step => step.Round!.Value).Distinct());
    }

    [Fact]
    public void What_is_not_done_when_its_round_is_over_is_worth_nothing_and_later_rounds_do_not_imply_it()
    {
        Assert.Equal(22, Lane("lane 1 step 2 done at 0:59").Worth);
        Assert.Equal(10 + 22, Lane("lane 1 step 1 done at 0:30\nlane 1 step 4 done at 2:20").Worth);
        Assert.Equal(10 + 10, Lane("lane 1 step 1 done at 0:30\nlane 1 step 3 done at 2:00").Worth);
    }

    [Fact]
    public void A_tap_after_the_end_of_its_round_does_not_count_and_says_why()
    {
        var lane = Lane("lane 1 step 1 done at 0:30\nlane 1 step 2 done at 1:00.1 [late]");
        Assert.Equal(10, lane.Worth);
        Assert.Equal(FactFlags.AfterCap, lane.Flagged.Single().Flags & FactFlags.AfterCap);
        Assert.Equal(22, Lane("lane 1 step 2 done at 1:00").Worth);
    }

    [Fact]
    public void A_tap_before_its_round_begins_is_told()
    {
        Assert.True(Lane("lane 1 step 3 done at 1:20").Flagged.Single().Flags.HasFlag(FactFlags.Implausible));
        Assert.True(Lane("lane 1 step 3 done at 1:34").Flagged.Single().Flags.HasFlag(FactFlags.Implausible));
        Assert.Empty(Lane("lane 1 step 3 done at 1:36").Flagged);
    }

    [Fact]
    public void Counts_of_every_round_add_up_with_what_was_told_at_its_end()
    {
        Assert.Equal(7, Lane("lane 1 count 7 of step 1 at 0:30").Worth);
        Assert.Equal(7 + 4, Lane("lane 1 count 7 of step 1 at 0:30\nlane 1 count 4 of step 3 at 1:50").Worth);
        Assert.Equal(8 + 4, Lane("lane 1 count 7 of step 1 at 0:30\nlane 1 count 4 of step 3 at 1:50\nlane 1 8 reps at cap in step 1 at 2:00").Worth);
        Assert.Equal(10 + 5 + 22 + 3, Lane("""
            lane 1 step 1 done at 0:30
            lane 1 5 reps at cap in step 2 at 1:03
            lane 1 step 4 done at 2:20
            lane 1 3 reps at cap in step 5 at 4:03
            """).Worth);
    }

    [Fact]
    public void Where_the_lane_is_goes_on_with_the_clock()
    {
        Assert.Equal(3, Lane("lane 1 count 7 of step 1 at 0:30\nlane 1 count 4 of step 3 at 1:50").DoneSteps + 1);
        Assert.Equal(3, Lane("lane 1 count 7 of step 1 at 0:30\nlane 1 count 4 of step 3 at 1:50").Open);
    }

    [Fact]
    public void A_hold_moves_the_rounds_of_its_lane() =>
        Assert.Equal(22, Lane("hold lane 1 at 0:10\nresume lane 1 at 0:20\nlane 1 step 2 done at 1:09").Worth);

    [Fact]
    public void Undone_and_sent_back_take_it_away_again()
    {
        Assert.Equal(10, Lane("lane 1 step 1 done at 0:30\nlane 1 step 4 done at 2:20 [slip]\nlane 1 undo slip at 2:22").Worth);
        Assert.Equal(10, Lane("lane 1 step 1 done at 0:30\nlane 1 step 4 done at 2:20\nlane 1 sent back to 3 at 2:22").Worth);
    }

    [Fact]
    public void Equal_work_shares_a_place_because_all_had_the_same_time()
    {
        var heat = Play("""
            lane 1 step 1 done at 0:30
            lane 2 step 1 done at 0:20
            lane 3 step 2 done at 0:50
            end at 4:05
            """, lanes: 3);
        Assert.Equal("3 1=2", HeatScript.Board(heat));
        Assert.Equal([(1, 3), (2, 1), (2, 2)], HeatResult.Of(heat, HeatScript.At("9:00")).Select(line => (line.Place!.Value, line.Lane.Lane.Value)));
        Assert.Null(Standings.CapPace.AheadMs(heat.Lanes[0]));
    }

    [Fact]
    public void What_cannot_be_is_said_at_its_field()
    {
        string[] Wrong(Workout workout) => [.. WorkoutCheck.Errors(workout).Select(error => error.Field)];
        Workout Changed(Func<Prescription, Prescription> change) => Work() with { Prescriptions = [change(Work().Prescriptions[0])] };

        Assert.Empty(Wrong(Work()));
        Assert.Equal(["prescriptions[0].capMs"], Wrong(Work(capMs: 600_000)));
        Assert.Equal(["prescriptions[0].clock"], Wrong(Work() with { Scoring = null }));
        Assert.Equal(["prescriptions[0].clock", "prescriptions[0].capMs"], Wrong(Changed(one => one with { Clock = new WorkClock(0, 0, false) })));
        Assert.Equal(["prescriptions[0].rounds"], Wrong(Changed(one => one with { Rounds = 0 })));
        Assert.Equal(["prescriptions[0].after"], Wrong(Changed(one => one with { After = [new("row", 5)] })));
        Assert.Equal(["prescriptions[0].round"], Wrong(Changed(one => one with { Round = [] })));
    }

    /// <summary>Two rounds by the clock of 1:00 with 0:30 rest, one reading each; or one piece of work of two readings with a cap of 2:30.</summary>
    private static LaneState Read(string score, bool byClock)
    {
        var prescription = Some.Prescription(rounds: 2, capMs: 150_000, round: new PrescribedSet("row", 1, Reading: true)) with { Clock = byClock ? new WorkClock(60_000, 30_000, false) : null };
        var workout = Some.Workout(new RelayOrder.Together(), finish: FinishKind.None, prescriptions: prescription) with { Scoring = new ScoringRule.MostReading() };
        return HeatScript.Play($"start\n{score}", Some.Snapshot(1, workout)).Lanes[0];
    }

    [Fact]
    public void A_machine_is_read_when_its_time_is_over_once_and_before_the_next_round()
    {
        Assert.Equal(40, Read("lane 1 value 40 in step 1 at 1:05", byClock: true).Worth);
        Assert.Equal(40 + 35, Read("lane 1 value 40 in step 1 at 1:05\nlane 1 value 35 in step 2 at 2:40", byClock: true).Worth);
        Assert.Equal(0, Read("lane 1 value 40 in step 1 at 1:31", byClock: true).Worth);

        Assert.Equal(40 + 35, Read("lane 1 value 40 in step 1 at 1:20\nlane 1 value 35 in step 2 at 2:40", byClock: false).Worth);
        var twice = Read("lane 1 value 40 in step 1 at 2:35\nlane 1 value 35 in step 2 at 2:40", byClock: false);
        Assert.Equal(40, twice.Worth);
        Assert.Equal(FactFlags.AfterCap, twice.Flagged.Single().Flags & FactFlags.AfterCap);
    }
}
