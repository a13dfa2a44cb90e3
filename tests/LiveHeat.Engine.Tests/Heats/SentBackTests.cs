using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>Teams that are sent back or owe reps. Steps of the default plan: 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish.</summary>
public class SentBackTests
{
    private static LaneState Lane1(string score) => HeatScript.Play(score).Lanes[0];

    private static long?[] Splits(LaneState lane) => [.. lane.Splits.Select(split => split?.LaneMs)];

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
}
