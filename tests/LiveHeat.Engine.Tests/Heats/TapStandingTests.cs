using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class TapStandingTests
{
    private static void Held(HeatScript heat, string name, FactFlags why)
    {
        Assert.Equal(why | FactFlags.Quarantined, heat.State.Lanes[0].FlagsOf(heat[name]));
        Assert.Equal(1, heat.State.Lanes[0].Quarantined);
        Assert.Equal(1, heat.State.Lanes[0].Open);
        Assert.NotNull(heat.State.Find(heat[name]));
    }

    [Fact]
    public void A_tap_before_GO_is_held() => Held(new HeatScript().Then("""
        start
        lane 1 step 1 done at -0:00.001 [early]
        """), "early", FactFlags.Early);

    [Fact]
    public void A_tap_without_any_start_is_held() => Held(new HeatScript().Then("lane 1 step 1 done at 0:30 [early]"), "early", FactFlags.Early);

    [Fact]
    public void A_tap_at_GO_counts() => Assert.Equal(2, HeatScript.Play("""
        start
        lane 1 step 1 done at 0:00.000
        """).Lanes[0].Open);

    [Fact]
    public void A_tap_from_the_future_is_held()
    {
        Held(new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40 arriving 0:37.9 within 50 [ahead]
            """), "ahead", FactFlags.Future);
    }

    [Fact]
    public void Clocks_may_differ_by_two_seconds_and_the_taps_own_uncertainty() => Assert.Equal(2, HeatScript.Play("""
        start
        lane 1 step 1 done at 0:40 arriving 0:37.950 within 50
        """).Lanes[0].Open);

    [Theory]
    [InlineData("step 10 done")]
    [InlineData("step 0 done")]
    [InlineData("tag 1")]
    [InlineData("value 3 in step 1")]
    [InlineData("count 1 of step 3")]
    [InlineData("count 11 of step 1")]
    [InlineData("11 reps at cap in step 1")]
    [InlineData("no-rep step 99")]
    public void A_tap_that_fits_no_step_is_held_and_cannot_be_admitted(string tap)
    {
        var heat = new HeatScript().Then($"""
            start
            lane 1 {tap} at 0:40 [odd]
            """);
        Held(heat, "odd", FactFlags.NoSuchStep);
        Held(heat.Then("admit odd"), "odd", FactFlags.NoSuchStep);
    }

    [Fact]
    public void A_tap_from_a_seat_nobody_took_is_held_until_it_is_admitted()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40 from seat s-9 [stray]
            """);
        Held(heat, "stray", FactFlags.NoSeat);

        heat.Then("admit stray at 1:30 [admission]");
        Assert.Equal(2, heat.State.Lanes[0].Open);
        Assert.Equal(40_000, heat.State.Lanes[0].Splits[0]!.Value.LaneMs);
        Assert.Equal((FactFlags.NoSeat, 0), (heat.State.Lanes[0].FlagsOf(heat["stray"]), heat.State.Lanes[0].Quarantined));

        Held(heat.Then("void admission"), "stray", FactFlags.NoSeat);
    }

    [Fact]
    public void A_tap_under_somebody_elses_seat_is_held()
    {
        var heat = new HeatScript().Then("start");
        var tap = new HeatFact.StepDone { Id = Some.Id("x", 1), Instant = HeatScript.At("0:40"), Lane = Some.Lane(1), Step = 1, Seat = new SeatId("s-1"), Start = "start-1" };
        heat.Append(tap, sender: "in-2");

        Assert.Equal(FactFlags.NoSeat | FactFlags.Quarantined, heat.State.Lanes[0].FlagsOf(tap.Id));
    }

    [Fact]
    public void The_seat_held_at_the_taps_instant_decides_not_the_one_held_when_it_arrives()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 seat s-new taken as primary at 1:00
            lane 1 step 1 done at 0:40 arriving 5:00
            lane 1 step 2 done at 1:10 from seat s-new
            lane 1 tag 3 at 1:20 from seat s-1 [after]
            """);

        Assert.Equal(3, heat.State.Lanes[0].Open);
        Assert.Equal(FactFlags.NoSeat | FactFlags.Quarantined, heat.State.Lanes[0].FlagsOf(heat["after"]));
        Assert.Equal("Judge s-new", heat.State.Lanes[0].Seat!.Judge);
    }

    [Fact]
    public void A_seat_given_up_ends_with_its_instant()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 seat s-1 given up at 0:50
            lane 1 step 1 done at 0:50.012 within 12
            lane 1 step 2 done at 0:50.013 within 12 [after]
            """);

        Assert.Equal(2, heat.State.Lanes[0].Open);
        Assert.Null(heat.State.Lanes[0].Seat);
        Assert.True(heat.State.Lanes[0].FlagsOf(heat["after"]).HasFlag(FactFlags.NoSeat));
    }

    [Fact]
    public void Taps_on_a_recalled_start_are_held_and_count_when_admitted()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:10 [old]
            recall at 0:12
            """);
        Held(heat, "old", FactFlags.OldStart);
        heat.Then("start at 2:00");
        Held(heat, "old", FactFlags.OldStart);

        heat.Then("admit old at 2:30");
        var lane = heat.State.Lanes[0];
        Assert.Equal((2, 10), (lane.Open, lane.Worth));
        Assert.Null(lane.Splits[0]);    // it happened before the start in force: its time in that start is unknown, never negative
        Assert.Equal(0, lane.ReachedMs);
    }

    [Fact]
    public void A_tap_that_knew_only_the_recalled_start_but_was_made_after_the_new_one_has_its_time_when_admitted()
    {
        var heat = new HeatScript().Then("""
            start
            recall at 0:12
            start at 2:00
            lane 1 step 1 done at 2:40 on start start-1 [deaf]
            admit deaf
            """);

        Assert.Equal(40_000, heat.State.Lanes[0].Splits[0]!.Value.LaneMs);
    }

    [Fact]
    public void A_phone_that_missed_the_GO_counts_by_its_instants() => Assert.Equal(40_000, HeatScript.Play("""
        start
        lane 1 step 1 done at 0:40 on no start
        """).Lanes[0].Splits[0]!.Value.LaneMs);

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
    public void A_witness_takes_back_only_what_the_witness_tapped()
    {
        var heat = new HeatScript().Then("""
            lane 1 seat w-1 taken as witness at -0:30
            start
            lane 1 step 1 done at 0:40 [first]
            lane 1 step 1 done at 0:55 from seat w-1 [seen]
            lane 1 undo first at 0:44 from seat w-1
            lane 1 undo seen at 0:58 from seat w-1
            """);

        Assert.Equal(2, heat.State.Lanes[0].Open);
        Assert.Equal(FactFlags.None, heat.State.Lanes[0].FlagsOf(heat["seen"]));    // undone: its disagreement is gone with it
    }

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

    [Fact]
    public void A_tap_after_the_freeze_is_late_and_held_until_admitted_or_reopened()
    {
        var heat = new HeatScript().Then("""
            start
            end at 10:10
            freeze at 11:00
            lane 1 step 1 done at 0:40 arriving 12:00 [late]
            """);
        Held(heat, "late", FactFlags.Late);

        Assert.Equal(2, new HeatScript().Then("""
            start
            end at 10:10
            freeze at 11:00
            lane 1 step 1 done at 0:40 arriving 12:00 [late]
            admit late at 12:30
            """).State.Lanes[0].Open);
        Assert.Equal(2, heat.Then("reopen at 13:00").State.Lanes[0].Open);
    }

    [Fact]
    public void What_is_added_after_the_freeze_counts() => Assert.Equal(2, HeatScript.Play("""
        start
        end at 10:10
        freeze at 11:00
        add lane 1 step 1 done at 0:40
        """).Lanes[0].Open);

    [Fact]
    public void Witnesses_confirm_and_do_not_decide()
    {
        var heat = new HeatScript().Then("""
            lane 1 seat w-1 taken as witness at -0:30
            start
            lane 1 step 1 done at 0:40.100 within 60
            lane 1 step 1 done at 0:40.000 within 40 from seat w-1 [agrees]
            lane 1 step 2 done at 1:10 within 60 from seat w-1 [alone]
            """);

        Assert.Equal((2, 40_100L), (heat.State.Lanes[0].Open, heat.State.Lanes[0].Splits[0]!.Value.LaneMs));
        Assert.Empty(heat.State.Lanes[0].Flagged);
    }

    [Fact]
    public void Every_witness_who_disagrees_beyond_the_uncertainty_of_both_clocks_is_flagged()
    {
        var heat = new HeatScript().Then("""
            lane 1 seat w-1 taken as witness at -0:30
            lane 1 seat w-2 taken as witness at -0:30
            start
            lane 1 step 1 done at 0:40.000 within 60
            lane 1 step 1 done at 0:39.899 within 40 from seat w-1 [disagrees]
            lane 1 step 1 done at 0:40.100 within 40 from seat w-2 [agrees]
            """);

        Assert.Equal(FactFlags.Disagreement, heat.State.Lanes[0].FlagsOf(heat["disagrees"]));
        Assert.Equal(FactFlags.None, heat.State.Lanes[0].FlagsOf(heat["agrees"]));
    }

    [Fact]
    public void A_witness_who_does_not_know_the_time_disagrees_with_nobody() => Assert.Empty(HeatScript.Play("""
        lane 1 seat w-1 taken as witness at -0:30
        start
        lane 1 step 1 done at 0:40.000
        lane 1 step 1 done at 0:50.000 from seat w-1 time unknown
        """).Lanes[0].Flagged);
}
