using LiveHeat.Testing;

namespace LiveHeat.Engine.Standings;

public class GapTests
{
    private static Items<Placing> Order(string score) => LiveOrder.Of(HeatScript.Play(score));

    [Fact]
    public void A_gap_is_how_long_ago_the_other_passed_the_trailing_teams_last_point()
    {
        var order = Order("""
            start
            lane 1 step 1 done at 0:40.0
            lane 2 step 1 done at 0:43.5
            lane 3 step 1 done at 0:48.0
            lane 1 step 2 done at 1:10.0
            """);

        Assert.Equal([0, 3_500, 8_000], order.Select(placing => placing.GapMs));
        Assert.Equal([null, 3_500, 4_500], order.Select(placing => placing.AheadMs));
        Assert.Equal([0, 12, 12], order.Select(placing => placing.GapWorth));
    }

    [Fact]
    public void What_is_not_known_is_not_told()
    {
        // Lane 1 is further, but when it passed step 1 nobody knows; lane 3 has no point yet.
        var order = Order("""
            start
            lane 1 step 2 done at 1:10
            lane 2 step 1 done at 0:43
            """);

        Assert.Equal([0, null, null], order.Select(placing => placing.GapMs));
    }

    [Fact]
    public void At_the_finish_the_gap_is_the_difference_of_the_official_times()
    {
        var order = Order("""
            start
            lane 1 step 9 done at 5:00.01
            lane 2 step 9 done at 5:02.35
            penalise lane 2 by 5000 ms
            """);

        Assert.Equal(7_300, order[1].GapMs);
    }

    [Fact]
    public void A_team_at_work_is_behind_a_finished_one_by_its_last_point()
    {
        var order = Order("""
            start
            lane 1 step 8 done at 4:55
            lane 1 step 9 done at 5:00
            lane 2 step 8 done at 5:20
            """);

        Assert.Equal(25_000, order[1].GapMs);
    }

    [Fact]
    public void Time_a_lane_was_held_is_not_behind()
    {
        var order = Order("""
            start
            lane 1 step 1 done at 0:40
            hold lane 2 at 0:20
            resume lane 2 at 0:30
            lane 2 step 1 done at 0:55
            """);

        Assert.Equal(5_000, order[1].GapMs);
    }
}
