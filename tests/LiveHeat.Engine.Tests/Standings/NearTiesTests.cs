using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Standings;

/// <summary>
/// Every tap of a score sheet is uncertain by 12 ms, every hand by 95 ms: half of the 0.19 s by which the timers of one run differed
/// (J Strength Cond Res 29(6):1509, 2015). Two finishes are in question within 214 ms, one at the cap within 107 ms.
/// </summary>
public class NearTiesTests
{
    private static string Near(HeatState heat) =>
        string.Join(' ', NearTies.Of(heat).Select(tie => $"{string.Join('~', tie.Lanes)}:{tie.ApartMs}/{tie.WithinMs}{(tie.Decided ? "!" : "")}"));

    private static string Near(string score) => Near(HeatScript.Play(score));

    [Theory]
    [InlineData("5:00.214", "1~2:214/214")]
    [InlineData("5:00.215", "")]
    public void Two_finishes_closer_than_both_clocks_and_both_hands_are_in_question(string second, string near) => Assert.Equal(near, Near($"""
        start
        lane 1 step 9 done at 5:00
        lane 2 step 9 done at {second}
        """));

    [Fact]
    public void Every_pair_is_looked_at_not_only_neighbours() => Assert.Equal("1~2:100/214 1~3:200/214 2~3:100/214", Near("""
        start
        lane 1 step 9 done at 5:00
        lane 2 step 9 done at 5:00.1
        lane 3 step 9 done at 5:00.2
        """));

    [Fact]
    public void A_bad_clock_two_places_away_is_in_question_too() => Assert.Equal("1~3:400/802 2~3:100/802", Near("""
        start
        lane 1 step 9 done at 5:00
        lane 2 step 9 done at 5:00.3
        lane 3 step 9 done at 5:00.4 within 600
        """));

    [Fact]
    public void A_clock_that_claims_to_know_nothing_puts_everything_in_question_and_breaks_nothing() => Assert.Equal("1~2:1000/172800190", Near("""
        start
        lane 1 step 9 done at 5:00 within 2147483647
        lane 2 step 9 done at 5:01 within 2147483647
        """).Split(' ')[0]);

    [Fact]
    public void Teams_that_are_not_compared_are_never_too_close() => Assert.Equal("", Near(HeatScript.Play("""
        start
        lane 1 step 9 done at 5:00
        lane 2 step 9 done at 5:00
        """, Some.Snapshot(2, divisions: ["open", "scaled"]))));

    [Fact]
    public void People_decide_the_order_and_it_stands_live_and_in_the_result()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 9 done at 5:00.0
            lane 2 step 9 done at 5:00.2
            """);
        Assert.Equal("1 2 3", HeatScript.Board(heat.State));

        heat.Then("decide lanes 2,1 [decision]");
        Assert.Equal("2 1 3", HeatScript.Board(heat.State));
        Assert.Equal("1~2:200/214!", Near(heat.State));
        Assert.Equal([0, 0, null], LiveOrder.Of(heat.State).Select(placing => placing.GapMs));    // the earlier time is behind by nothing, not by less
        Assert.Equal([2, 1, 3], Scoring.HeatResult.Of(heat.State, HeatScript.At("6:00")).Select(line => line.Lane.Lane.Value));

        Assert.Equal("1=2 3", HeatScript.Board(heat.Then("decide lanes 1,2 tie").State));
    }

    [Fact]
    public void A_decision_voided_is_open_again_and_a_void_of_the_void_decides_again()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 9 done at 5:00.0
            lane 2 step 9 done at 5:00.2
            decide lanes 2,1 [decision]
            void decision [void1]
            """);
        Assert.Equal(("1 2 3", "1~2:200/214"), (HeatScript.Board(heat.State), Near(heat.State)));
        Assert.Equal("2 1 3", HeatScript.Board(heat.Then("void void1").State));
    }

    [Fact]
    public void A_decision_says_nothing_any_more_when_the_times_have_come_apart()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 9 done at 5:00.0
            lane 2 step 9 done at 5:00.2
            decide lanes 2,1
            penalise lane 2 by 30000 ms
            """);

        Assert.Equal(("1 2 3", ""), (HeatScript.Board(heat), Near(heat)));
    }

    [Fact]
    public void Three_teams_are_put_in_the_order_decided_pair_by_pair()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 9 done at 5:00
            lane 2 step 9 done at 5:00.1
            lane 3 step 9 done at 5:00.2
            decide lanes 3,2
            decide lanes 3,1
            decide lanes 2,1
            """);

        Assert.Equal("3 2 1", HeatScript.Board(heat));
        Assert.All(NearTies.Of(heat), tie => Assert.True(tie.Decided));
    }

    [Theory]
    [InlineData("9:59.893", "1:-107/107")]
    [InlineData("9:59.892", "")]
    [InlineData("10:00.107", "1:107/107")]
    [InlineData("10:00.108", "")]
    public void A_step_closer_to_the_cap_than_clock_and_hand_is_in_question(string done, string near) => Assert.Equal(near, Near($"""
        start
        lane 1 step 9 done at {done}
        """));

    [Fact]
    public void People_decide_whether_it_was_in_time()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 9 done at 10:00.050
            lane 2 step 9 done at 9:59.950
            decide lane 1 in time by 107 ms [yes]
            decide lane 2 too late by 107 ms
            """);

        Assert.Equal((true, false), (heat.State.Lanes[0].Finished, heat.State.Lanes[1].Finished));
        Assert.Equal(600_050, heat.State.Lanes[0].Finish!.Value.LaneMs);
        Assert.All(NearTies.Of(heat.State), tie => Assert.True(tie.Decided && tie.AtCap));
        Assert.False(heat.Then("void yes").State.Lanes[0].Finished);
    }

    [Theory]
    [InlineData("10:00.107", "in time", true)]
    [InlineData("9:59.893", "too late", false)]
    public void A_decision_holds_for_a_step_at_the_very_edge_of_the_question(string done, string decided, bool finished) => Assert.Equal(finished, HeatScript.Play($"""
        start
        lane 1 step 9 done at {done}
        decide lane 1 {decided} by 107 ms
        """).Lanes[0].Finished);

    [Fact]
    public void What_was_decided_on_a_start_that_counts_no_more_goes_with_it() => Assert.Equal(600_000, HeatScript.Play("""
        start
        lane 1 step 9 done at 10:00.050
        decide lane 1 in time by 107 ms
        recall
        start at 20:00
        """).Lanes[0].CapHeatMs);

    [Fact]
    public void A_step_that_was_taken_back_is_not_in_question() => Assert.Equal("", Near("""
        start
        lane 1 step 9 done at 9:59.950
        lane 1 sent back to 9 at 10:00.010
        """));
}
