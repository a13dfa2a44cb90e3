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
}
