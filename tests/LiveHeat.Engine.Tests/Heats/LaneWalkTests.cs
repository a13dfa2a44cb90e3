using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>Steps of the default plan: 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish.</summary>
public class LaneWalkTests
{
    private static LaneState Lane1(string score) => HeatScript.Play(score).Lanes[0];

    private static long?[] Splits(LaneState lane) => [.. lane.Splits.Select(split => split?.LaneMs)];

    [Fact]
    public void Steps_done_open_the_next_and_leave_splits()
    {
        var lane = Lane1("""
            start
            lane 1 step 1 done at 0:40.0
            lane 1 step 2 done at 1:12.3
            lane 1 tag 3 at 1:14.0
            """);

        Assert.Equal((4, 3, 22), (lane.Open, lane.DoneSteps, lane.Worth));
        Assert.Equal([40_000, 72_300, 74_000, null, null, null, null, null, null], Splits(lane));
        Assert.Equal(74_000, lane.ReachedMs);
        Assert.Empty(lane.Flagged);
    }

    [Fact]
    public void A_step_done_implies_those_before_it_and_invents_no_splits()
    {
        var lane = Lane1("""
            start
            lane 1 step 5 done at 2:00
            """);

        Assert.Equal((6, 44), (lane.Open, lane.Worth));
        Assert.Equal([null, null, null, null, 120_000, null, null, null, null], Splits(lane));
    }

    [Fact]
    public void A_step_done_at_an_unknown_time_moves_the_lane_and_has_no_split()
    {
        var lane = Lane1("""
            start
            lane 1 step 1 done at 0:40
            lane 1 step 2 done at 1:10
            lane 1 tag 3 at 1:25 time unknown
            """);

        Assert.Equal(4, lane.Open);
        Assert.Null(lane.Splits[2]);
        Assert.Equal((2, 70_000L), (lane.LastSplit()!.Value.Step, lane.LastSplit()!.Value.Split.LaneMs));
    }

    [Fact]
    public void The_earliest_tap_for_a_step_is_its_time_and_the_others_are_repeats()
    {
        var lane = Lane1("""
            start
            lane 1 seat s-new taken as primary at 0:40.500
            lane 1 step 1 done at 0:41 from seat s-new
            lane 1 step 1 done at 0:40 from seat s-1 arriving 1:00
            """);

        Assert.Equal(40_000, lane.Splits[0]!.Value.LaneMs);
        Assert.Single(lane.Flagged, flagged => flagged.Flags == FactFlags.Repeat);
    }

    [Fact]
    public void A_count_is_shown_in_its_set_and_gone_with_it()
    {
        Assert.Equal((6, 6), (Lane1("""
            start
            lane 1 count 6 of step 1 at 0:15
            """) is var counted ? counted.Count : 0, counted.Worth));
        Assert.Equal(0, Lane1("""
            start
            lane 1 count 6 of step 1 at 0:15
            lane 1 step 1 done at 0:30
            """).Count);
    }

    [Fact]
    public void A_count_never_moves_the_open_step()
    {
        var lane = Lane1("""
            start
            lane 1 count 12 of step 2 at 1:00
            """);

        Assert.Equal((1, 0, 0), (lane.Open, lane.Count, lane.Worth));
    }

    [Fact]
    public void A_count_is_not_counted_in_a_heat_that_counts_sets()
    {
        var sets = Some.Snapshot(workout: Some.Workout(counting: Workouts.Counting.Sets));
        var heat = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:40
            lane 2 step 1 done at 0:40
            lane 2 count 6 of step 2 at 0:50
            """, sets);

        Assert.Equal((0, 10), (heat.Lanes[1].Count, heat.Lanes[1].Worth));
        Assert.Equal("1=2 3", HeatScript.Board(heat));
    }

    [Fact]
    public void Only_whole_increments_of_the_open_set_are_worth_anything()
    {
        // A 20 m carry worth 4 that counts in fives.
        var carry = Some.Workout(prescriptions: Some.Prescription(round: new Workouts.PrescribedSet("carry", 20, Worth: 4, Increment: 5)));
        LaneState At(int metres) => HeatScript.Play($"""
            start
            lane 1 count {metres} of step 1 at 0:10
            """, Some.Snapshot(workout: carry)).Lanes[0];

        Assert.Equal([0, 1, 1, 2, 3], new[] { 4, 5, 9, 10, 19 }.Select(metres => At(metres).Worth));
        Assert.Equal(19, At(19).Count);
    }

    [Fact]
    public void A_count_that_adds_no_worth_makes_nobody_later()
    {
        var carry = Some.Workout(prescriptions: Some.Prescription(round: new Workouts.PrescribedSet("carry", 20, Worth: 4, Increment: 5)));
        var heat = HeatScript.Play("""
            start
            lane 1 count 5 of step 1 at 0:10
            lane 2 count 5 of step 1 at 0:12
            lane 1 count 8 of step 1 at 0:15
            """, Some.Snapshot(workout: carry));

        Assert.Equal("1 2 3", HeatScript.Board(heat));
        Assert.Equal(10_000, heat.Lanes[0].ReachedMs);
    }

    [Fact]
    public void A_value_completes_its_step_and_is_kept()
    {
        var lift = Some.Workout(prescriptions: Some.Prescription(round: new Workouts.PrescribedSet("bar", 1, Worth: 0, Reading: true)));
        var lane = HeatScript.Play("""
            start
            lane 1 value 132.5 in step 1 at 0:30
            """, Some.Snapshot(workout: lift)).Lanes[0];

        Assert.Equal((2, 0), (lane.Open, lane.Worth));
        Assert.Equal([(1, 132.5m)], lane.Values);
    }

    [Fact]
    public void No_reps_and_tag_faults_are_counted_and_change_no_count()
    {
        // A no-rep does not count, is repeated and does not stop the clock: common practice, no source.
        var lane = Lane1("""
            start
            lane 1 count 6 of step 1 at 0:10
            lane 1 no-rep step 1 at 0:11
            lane 1 no-rep step 1 at 0:13
            lane 1 step 1 done at 0:30
            lane 1 step 2 done at 1:00
            lane 1 tag fault step 3 at 1:02
            """);

        Assert.Equal(2, lane.NoReps[0]);
        Assert.Equal(1, lane.TagFaults);
        Assert.Equal((3, 22), (lane.Open, lane.Worth));
    }

    [Fact]
    public void Somebody_else_working_is_noted_with_the_step()
    {
        Assert.Equal([(4, 3)], Lane1("""
            start
            lane 1 step 3 done at 1:10
            lane 1 athlete 3 works step 4 at 1:12
            """).Substitutes);
    }

    [Fact]
    public void An_athlete_the_team_does_not_have_is_kept_and_held()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 athlete 4 works step 4 at 1:12 [nobody]
            """);

        Assert.Empty(heat.State.Lanes[0].Substitutes);
        Assert.True(heat.State.Lanes[0].FlagsOf(heat["nobody"]).HasFlag(FactFlags.Quarantined));
    }

    [Fact]
    public void Finished_is_the_last_step_done_with_its_time()
    {
        var lane = Lane1("""
            start
            lane 1 step 8 done at 5:00
            lane 1 step 9 done at 5:03.4
            """);

        Assert.True(lane.Finished);
        Assert.Equal((10, 303_400L, 66), (lane.Open, lane.Finish!.Value.LaneMs, lane.Worth));
        Assert.Null(lane.OpenStep());
    }

    [Fact]
    public void Exactly_at_the_cap_counts_and_a_millisecond_later_does_not()
    {
        // A finish exactly at the cap counts: common practice, no source.
        Assert.True(Lane1("""
            start
            lane 1 step 9 done at 10:00.000
            """).Finished);

        var late = new HeatScript().Then("""
            start
            lane 1 step 8 done at 9:58
            lane 1 step 9 done at 10:00.001 [late]
            """);
        var lane = late.State.Lanes[0];
        Assert.False(lane.Finished);
        Assert.Equal((8, 10), (lane.DoneSteps, lane.Open));
        Assert.Equal(FactFlags.AfterCap, lane.FlagsOf(late["late"]));
    }

    [Fact]
    public void Counts_after_the_cap_do_not_count_but_reps_told_at_the_cap_do()
    {
        var told = """
            start
            lane 1 step 1 done at 9:50
            lane 1 count 3 of step 2 at 9:58
            lane 1 count 5 of step 2 at 10:02
            """;
        Assert.Equal((3, 13), (Lane1(told) is var lane ? lane.Count : 0, lane.Worth));
        Assert.Equal((4, 14), (Lane1(told + "\nlane 1 4 reps at cap in step 2 at 10:06") is var capped ? capped.Count : 0, capped.Worth));
    }

    [Fact]
    public void Reps_at_the_cap_count_in_a_heat_of_sets_too()
    {
        var lane = HeatScript.Play("""
            start
            lane 1 step 1 done at 9:50
            lane 1 4 reps at cap in step 2 at 10:06
            """, Some.Snapshot(workout: Some.Workout(counting: Workouts.Counting.Sets))).Lanes[0];

        Assert.Equal((4, 14), (lane.Count, lane.Worth));
    }

    [Fact]
    public void Reps_at_the_cap_of_another_step_than_the_open_one_do_not_count()
    {
        Assert.Equal(10, Lane1("""
            start
            lane 1 step 1 done at 9:50
            lane 1 4 reps at cap in step 4 at 10:06
            """).Worth);
    }

    [Fact]
    public void After_a_team_has_stopped_nothing_scores()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40
            lane 1 stopped medical at 0:50
            lane 1 step 2 done at 1:10 [after]
            """);
        var lane = heat.State.Lanes[0];

        Assert.Equal((StopReason.Medical, 1, 10), (lane.Stopped!.Value, lane.DoneSteps, lane.Worth));
        Assert.Equal(FactFlags.AfterStop, lane.FlagsOf(heat["after"]));
    }

    [Fact]
    public void Faster_than_anybody_can_be_is_flagged_and_counts()
    {
        // Ten wall balls take at least 5 s, twelve cal at least 12 s (the plan's earliest moments).
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:04.9 [quick]
            lane 1 step 2 done at 0:16.9 [fine]
            lane 2 step 1 done at 0:05.0 [just]
            """);

        Assert.Equal(FactFlags.Implausible, heat.State.Lanes[0].FlagsOf(heat["quick"]));
        Assert.Equal(FactFlags.None, heat.State.Lanes[0].FlagsOf(heat["fine"]));
        Assert.Equal(FactFlags.None, heat.State.Lanes[1].FlagsOf(heat["just"]));
        Assert.Equal(2, heat.State.Lanes[0].DoneSteps);
    }

    [Fact]
    public void The_judges_call_is_open_until_it_is_answered()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 calls at 0:30
            """);
        Assert.True(heat.State.Lanes[0].Calling);
        Assert.False(heat.Then("answer lane 1 at 0:50").State.Lanes[0].Calling);
        Assert.True(heat.Then("lane 1 calls at 1:30").State.Lanes[0].Calling);
    }

    [Fact]
    public void The_captains_last_answer_stands()
    {
        Assert.Equal(new ReadBack(true, "Ann"), Lane1("""
            start
            lane 1 step 9 done at 5:00
            lane 1 reads back disputed at 5:20
            lane 1 reads back agreed at 6:20
            """).ReadBack);
    }

    [Fact]
    public void Sent_back_opens_the_step_again_and_what_was_done_of_it_and_after_is_gone()
    {
        var back = """
            start
            lane 1 step 1 done at 0:40
            lane 1 step 2 done at 1:10
            lane 1 tag 3 at 1:12
            lane 1 count 3 of step 4 at 1:20
            lane 1 sent back to 2 at 1:25
            """;
        var lane = Lane1(back);
        Assert.Equal((2, 1, 10, 40_000L), (lane.Open, lane.DoneSteps, lane.Worth, lane.ReachedMs));
        Assert.Equal([40_000, null, null, null, null, null, null, null, null], Splits(lane));

        var again = Lane1(back + "\nlane 1 step 2 done at 1:55\nlane 1 tag 3 at 1:57");
        Assert.Equal([40_000, 115_000, 117_000, null, null, null, null, null, null], Splits(again));
        Assert.Equal(0, again.Count);
    }

    [Fact]
    public void A_tap_made_before_the_team_was_sent_back_does_not_undo_the_ruling_when_it_arrives_after()
    {
        Assert.Equal(2, Lane1("""
            start
            lane 1 step 1 done at 0:40
            lane 1 sent back to 2 at 1:25
            lane 1 step 2 done at 1:10
            lane 1 tag 3 at 1:12
            """).Open);
    }

    [Fact]
    public void Reps_owed_are_taken_off_until_the_set_open_then_is_done()
    {
        var owing = """
            start
            lane 1 step 1 done at 0:40
            lane 1 count 6 of step 2 at 0:50
            lane 1 owes 2 of step 1 at 0:55
            """;
        Assert.Equal((2, 14), (Lane1(owing) is var lane ? lane.Owed : 0, lane.Worth));
        Assert.Equal((0, 22), (Lane1(owing + "\nlane 1 step 2 done at 1:20") is var paid ? paid.Owed : -1, paid.Worth));
    }

    [Fact]
    public void Worth_never_falls_below_nothing() =>
        Assert.Equal(0, Lane1("""
            start
            lane 1 owes 5 of step 1 at 0:10
            """).Worth);

    [Fact]
    public void Counts_wait_for_their_step_to_open()
    {
        // The tap for step 1 was lost on the way; the count of step 2 already came.
        Assert.Equal((2, 5, 15), (Lane1("""
            start
            lane 1 count 5 of step 2 at 0:50
            lane 1 step 1 done at 0:40
            """) is var lane ? lane.Open : 0, lane.Count, lane.Worth));
    }
}
