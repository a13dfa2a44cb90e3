using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>The end of a lane: the last step, the cap, a team that stops. Steps of the default plan: 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish.</summary>
public class LaneCapTests
{
    private static LaneState Lane1(string score) => HeatScript.Play(score).Lanes[0];

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
}
