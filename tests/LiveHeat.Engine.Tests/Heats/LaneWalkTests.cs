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
}
