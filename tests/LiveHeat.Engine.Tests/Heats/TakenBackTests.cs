using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>Taps undone, facts voided, facts added.</summary>
public class TakenBackTests
{
    [Fact]
    public void An_undo_takes_back_one_fact_and_both_stay_on_the_ledger()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40
            lane 1 step 2 done at 0:41 [slip]
            lane 1 undo last at 0:44 [undo]
            """);

        Assert.Equal(2, heat.State.Lanes[0].Open);
        Assert.Empty(heat.State.Lanes[0].Flagged);
        Assert.NotNull(heat.State.Find(heat["slip"]));
        Assert.NotNull(heat.State.Find(heat["undo"]));
    }

    [Fact]
    public void Undoing_an_undo_has_no_effect_and_voiding_it_brings_the_tap_back()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40 [tap]
            lane 1 undo tap at 0:44 [undo]
            lane 1 undo undo at 0:46
            """);
        Assert.Equal(1, heat.State.Lanes[0].Open);
        Assert.Equal(2, heat.Then("void undo at 1:00").State.Lanes[0].Open);
    }

    [Fact]
    public void An_undo_that_arrives_before_its_target_takes_it_back_too()
    {
        var undo = new HeatFact.Undone { Id = Some.Id("s-1", 9), Instant = HeatScript.At("0:44"), Lane = Some.Lane(1), Seat = new SeatId("s-1"), Target = Some.Id("s-1", 1), Start = "start-1" };
        var heat = new HeatScript().Then("start");
        heat.Append(undo, "in-1");
        heat.Then("lane 1 step 1 done at 0:40");

        Assert.Equal(1, heat.State.Lanes[0].Open);
    }

    [Fact]
    public void A_held_undo_takes_nothing_back() => Assert.Equal(2, HeatScript.Play("""
        start
        lane 1 step 1 done at 0:40 [tap]
        lane 1 undo tap at 0:44 from seat s-9
        """).Lanes[0].Open);

    [Fact]
    public void Another_phone_that_took_over_can_take_back_what_the_one_before_tapped() => Assert.Equal(1, HeatScript.Play("""
        start
        lane 1 step 1 done at 0:40 [tap]
        lane 1 seat s-new taken as primary at 0:42
        lane 1 undo tap at 0:44 from seat s-new
        """).Lanes[0].Open);

    [Fact]
    public void A_voided_fact_does_not_count_and_a_void_of_the_void_brings_it_back()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40 [tap]
            void tap at 1:00 [void1]
            """);
        Assert.Equal(1, heat.State.Lanes[0].Open);
        Assert.Equal(2, heat.Then("void void1 at 1:10 [void2]").State.Lanes[0].Open);
        Assert.Equal(1, heat.Then("void void2 at 1:20").State.Lanes[0].Open);
    }

    [Fact]
    public void A_ruling_is_voided_like_a_tap()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 2 done at 1:10
            lane 1 sent back to 1 at 1:12 [back]
            penalise lane 1 by 30000 ms at 1:13 [penalty]
            warn lane 1 at 1:14 [warning]
            void back
            void penalty
            void warning
            """);
        var lane = heat.State.Lanes[0];

        Assert.Equal((3, 0, 0), (lane.Open, lane.PenaltyMs, lane.Warnings));
    }

    [Fact]
    public void An_added_fact_counts_like_the_primary_phones_and_is_voided_like_one()
    {
        var heat = new HeatScript().Then("""
            start
            add lane 1 step 1 done at 0:40 [added]
            """);
        Assert.Equal(40_000, heat.State.Lanes[0].Splits[0]!.Value.LaneMs);
        Assert.Equal(1, heat.Then("void added at 2:00").State.Lanes[0].Open);
    }

    [Fact]
    public void A_voided_added_fact_leaves_no_flag()
    {
        var heat = new HeatScript().Then("""
            start
            add lane 1 step 99 done at 0:40 [added]
            void added at 2:00
            """);

        Assert.Empty(heat.State.Lanes[0].Flagged);
    }
}
