using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>Second pairs of eyes.</summary>
public class WitnessTests
{
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
    public void Every_witness_who_disagrees_beyond_the_uncertainty_of_both_clocks_and_both_hands_is_flagged()
    {
        var heat = new HeatScript().Then("""
            lane 1 seat w-1 taken as witness at -0:30
            lane 1 seat w-2 taken as witness at -0:30
            start
            lane 1 step 1 done at 0:40.000 within 60
            lane 1 step 1 done at 0:39.709 within 40 from seat w-1 [disagrees]   # 60 + 40 of the clocks, twice 95 of the hands
            lane 1 step 1 done at 0:40.290 within 40 from seat w-2 [agrees]
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
