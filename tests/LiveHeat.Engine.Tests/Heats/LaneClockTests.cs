using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class LaneClockTests
{
    private static LaneState Lane1(string score) => HeatScript.Play(score).Lanes[0];

    [Fact]
    public void A_held_lanes_time_stands_still_and_its_cap_moves_by_as_much()
    {
        var lane = Lane1("""
            start
            lane 1 step 1 done at 0:40
            hold lane 1 at 1:00
            resume lane 1 at 1:30
            lane 1 step 2 done at 1:50
            lane 1 step 9 done at 10:30.000
            """);

        Assert.Equal(80_000, lane.Splits[1]!.Value.LaneMs);
        Assert.Equal((630_000L, 30_000L), (lane.CapHeatMs!.Value, lane.HeldMs));
        Assert.Equal(600_000, lane.Finish!.Value.LaneMs);
        Assert.False(Lane1("""
            start
            hold lane 1 at 1:00
            resume lane 1 at 1:30
            lane 1 step 9 done at 10:30.001
            """).Finished);
    }

    [Fact]
    public void A_hold_may_leave_the_cap_where_it_is()
    {
        var lane = Lane1("""
            start
            hold lane 1 cap stays at 1:00
            resume lane 1 at 1:30
            lane 1 step 8 done at 10:00
            lane 1 step 9 done at 10:00.001
            """);

        Assert.Equal((600_000L, 8), (lane.CapHeatMs!.Value, lane.DoneSteps));
        Assert.Equal(570_000, lane.Splits[7]!.Value.LaneMs);
    }

    [Fact]
    public void While_a_lane_is_held_its_cap_is_open()
    {
        var lane = Lane1("""
            start
            hold lane 1 at 1:00
            """);

        Assert.Equal((null, HeatScript.At("1:00")), (lane.CapHeatMs, lane.HeldSince!.Value));
        Assert.Equal(600_000, Lane1("""
            start
            hold lane 1 cap stays at 1:00
            """).CapHeatMs);
    }

    [Fact]
    public void A_hold_after_the_cap_gives_nobody_more_time()
    {
        var score = """
            start
            lane 1 step 9 done at 10:05
            hold lane 1 at 10:10
            """;
        Assert.Equal((600_000L, false), (Lane1(score).CapHeatMs!.Value, Lane1(score).Finished));

        var resumed = Lane1(score + "\nresume lane 1 at 11:00");
        Assert.Equal((600_000L, false), (resumed.CapHeatMs!.Value, resumed.Finished));
    }

    [Fact]
    public void Two_holds_add_up_and_a_voided_one_never_was()
    {
        var holds = """
            start
            hold lane 1 at 1:00
            resume lane 1 at 1:30
            hold lane 1 at 2:00 [second]
            resume lane 1 at 2:10
            lane 1 step 1 done at 3:00
            """;
        Assert.Equal((140_000L, 640_000L), (Lane1(holds).Splits[0]!.Value.LaneMs, Lane1(holds).CapHeatMs!.Value));
        Assert.Equal((150_000L, 630_000L), Lane1(holds + "\nvoid second") is var lane ? (lane.Splits[0]!.Value.LaneMs, lane.CapHeatMs!.Value) : default);
    }

    [Fact]
    public void A_halt_of_the_whole_heat_within_a_hold_is_given_back_once()
    {
        var lane = Lane1("""
            start
            hold lane 1 at 1:00
            halt at 1:10
            resume at 3:10
            resume lane 1 at 3:30
            lane 1 step 1 done at 4:00
            """);

        // 240 s since GO, less 120 s halted, less 30 s held outside the halt.
        Assert.Equal((90_000L, 30_000L, 630_000L), (lane.Splits[0]!.Value.LaneMs, lane.HeldMs, lane.CapHeatMs!.Value));
    }

    [Fact]
    public void A_hold_before_GO_takes_nothing() => Assert.Equal((40_000L, 600_000L), Lane1("""
        hold lane 1 at -0:30
        start
        resume lane 1 at -0:05
        lane 1 step 1 done at 0:40
        """) is var lane ? (lane.Splits[0]!.Value.LaneMs, lane.CapHeatMs!.Value) : default);

    [Fact]
    public void Time_given_moves_the_result_and_the_cap_only_when_it_says_so()
    {
        var moved = Lane1("""
            start
            adjust lane 1 by -10000 ms moving the cap
            lane 1 step 9 done at 10:10.000
            """);
        Assert.Equal((610_000L, 600_000L, true), (moved.CapHeatMs!.Value, moved.MeasuredMs!.Value, moved.Finished));

        var stays = Lane1("""
            start
            adjust lane 1 by -10000 ms
            lane 1 step 9 done at 9:55
            """);
        Assert.Equal((600_000L, 585_000L), (stays.CapHeatMs!.Value, stays.MeasuredMs!.Value));
    }

    [Fact]
    public void Nobody_finishes_before_GO_whatever_is_given() => Assert.Equal(0, Lane1("""
        start
        adjust lane 1 by -600000 ms
        lane 1 step 9 done at 5:00
        """).MeasuredMs);

    [Fact]
    public void A_recalled_start_takes_its_holds_its_way_back_and_its_debts_with_it()
    {
        var lane = Lane1("""
            start
            lane 1 step 2 done at 0:50
            hold lane 1 at 1:00
            lane 1 owes 3 of step 1 at 1:05
            lane 1 sent back to 1 at 1:06
            penalise lane 1 by 5000 ms at 1:07
            recall at 1:20
            start at 3:00
            lane 1 step 1 done at 3:40
            """);

        Assert.Equal((null, 0L, 600_000L, 0), (lane.HeldSince, lane.HeldMs, lane.CapHeatMs!.Value, lane.Owed));
        Assert.Equal((40_000L, 10), (lane.Splits[0]!.Value.LaneMs, lane.Worth));
        Assert.Equal(5_000, lane.PenaltyMs);    // a penalty is the team's and stays until it is voided
    }
}
