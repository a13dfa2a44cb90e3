using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>What is counted within a set. Steps of the default plan: 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish.</summary>
public class LaneCountTests
{
    private static LaneState Lane1(string score) => HeatScript.Play(score).Lanes[0];

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
