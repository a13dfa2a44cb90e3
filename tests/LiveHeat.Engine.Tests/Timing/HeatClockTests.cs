using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Timing;

public class HeatClockTests
{
    private static HeatClock Clock(params Standstill[] halts) => new(new Start("s", Some.Go, 0, Observed: false), halts.ToItems());

    private static Standstill Halt(string from, string? until) => new(HeatScript.At(from), until is null ? null : HeatScript.At(until));

    [Fact]
    public void Heat_time_is_the_instant_less_the_start()
    {
        Assert.Equal(61_500, Clock().HeatMs(HeatScript.At("1:01.5")));
        Assert.Equal(-500, Clock().HeatMs(HeatScript.At("-0:00.5")));
        Assert.Null(HeatClock.Unset.HeatMs(Some.Go));
        Assert.Null(HeatClock.Unset.InstantOf(0));
    }

    [Fact]
    public void The_clock_stands_still_while_the_heat_is_halted()
    {
        var clock = Clock(Halt("1:00", "3:00"), Halt("4:00", null));

        Assert.Equal([59_999, 60_000, 60_000, 60_000, 60_001, 120_000, 120_000],
            new[] { "0:59.999", "1:00", "2:00", "3:00", "3:00.001", "4:00", "9:00" }.Select(at => clock.HeatMs(HeatScript.At(at))));
    }

    [Theory]
    [InlineData(59_000, "0:59")]
    [InlineData(60_000, "1:00")]
    [InlineData(60_001, "3:00.001")]
    [InlineData(119_000, "3:59")]
    public void An_instant_is_found_again_from_its_heat_time(int heatMs, string at) =>
        Assert.Equal(HeatScript.At(at), Clock(Halt("1:00", "3:00")).InstantOf(heatMs));

    [Fact]
    public void A_start_put_right_into_a_halt_counts_only_what_stood_still_after_it()
    {
        var clock = Clock(Halt("-0:10", "0:05"));

        Assert.Equal(0, clock.HeatMs(HeatScript.At("0:05")));
        Assert.Equal(10_000, clock.HeatMs(HeatScript.At("0:15")));
        Assert.Equal(HeatScript.At("0:15"), clock.InstantOf(10_000));
    }

    [Fact]
    public void A_corrected_start_moves_every_time_and_no_fact()
    {
        var heat = new HeatScript().Then("""
            observe start give or take 500 at 0:00
            lane 1 step 1 done at 0:40
            """);
        var before = heat.Entries;
        Assert.Equal(40_000, heat.State.Lanes[0].Splits[0]!.Value.LaneMs);

        heat.Then("correct start start-1 at 0:01.5");
        Assert.Equal(38_500, heat.State.Lanes[0].Splits[0]!.Value.LaneMs);
        Assert.Equal(before, heat.Entries.Take(before.Count));
        Assert.Equal(new Start("start-1", HeatScript.At("0:01.5"), 0, Observed: true), heat.State.Clock.Start);
    }

    [Fact]
    public void A_halted_heat_gives_the_time_back_to_every_lane()
    {
        var lane = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:40
            halt at 1:00
            resume at 6:00
            lane 1 step 2 done at 6:10
            lane 1 step 9 done at 15:00
            """).Lanes[0];

        Assert.Equal(70_000, lane.Splits[1]!.Value.LaneMs);
        Assert.True(lane.Finished);    // heat time 10:00 exactly
        Assert.Equal(600_000, lane.Finish!.Value.LaneMs);
    }
}
