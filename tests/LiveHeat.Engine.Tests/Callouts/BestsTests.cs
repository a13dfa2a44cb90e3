using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>The fastest set and leg, of the heat and of the day. Two hands may be wrong by 95 ms each at either end of a set.</summary>
public class BestsTests
{
    private static readonly HeatSnapshot Six = Some.Snapshot(6);

    private static string Sets(string last) => $"start\n{string.Join('\n', Enumerable.Range(1, 5).Select(lane => $"lane {lane} step 1 done at 0:2{lane}"))}\nlane 6 step 1 done at {last}";

    [Theory]
    [InlineData("0:20.8", true)]
    [InlineData("0:20.9", false)]
    public void The_fastest_set_of_the_heat_is_told_of_when_hands_cannot_have_made_it(string last, bool told) =>
        Assert.Equal(told, SaidAt.Of(Sets(last), "0:27", heat: Six).Callouts.Any(callout => callout.Kind == CalloutKind.FastestSet && callout.Lanes[0] == Some.Lane(6)));

    [Fact]
    public void Among_few_nobody_is_fastest() =>
        Assert.DoesNotContain(SaidAt.Of("start\nlane 1 step 1 done at 0:20\nlane 2 step 1 done at 0:25\nlane 3 step 1 done at 0:26", "0:27").Callouts, callout => callout.Kind == CalloutKind.FastestSet);

    [Fact]
    public void Against_earlier_heats_the_first_to_do_it_may_be_the_fastest_of_the_day()
    {
        var earlier = Bests.Of(HeatScript.Play("start\nlane 1 step 1 done at 0:21\nlane 1 step 2 done at 1:00\nlane 1 tag 3 at 1:02"));

        var best = SaidAt.One(SaidAt.Of("start\nlane 1 step 1 done at 0:20", "0:21", earlier: earlier), CalloutKind.FastestSet);
        Assert.Equal((true, 20_000L, 1), (best.OfDay, best.Ms, best.Step));
        Assert.Empty(SaidAt.Of("start\nlane 1 step 1 done at 0:20.9", "0:21", earlier: earlier).Callouts);
        var leg = SaidAt.One(SaidAt.Of("start\nlane 2 step 1 done at 0:25\nlane 2 step 2 done at 0:59\nlane 2 tag 3 at 1:01", "1:02", earlier: earlier), CalloutKind.FastestLeg);
        Assert.Equal((61_000L, 3), (leg.Ms, leg.Step));
    }

    [Fact]
    public void The_fastest_of_several_heats_is_the_fastest_of_all_of_them()
    {
        var (slow, fast) = (Bests.Of(HeatScript.Play("start\nlane 1 step 1 done at 0:25")), Bests.Of(HeatScript.Play("start\nlane 2 step 1 done at 0:22")));

        Assert.Equal(fast.Ms, Bests.Of([slow, fast]).Ms);
        Assert.Equal([22_000], fast.Ms.Values);
    }

    [Fact]
    public void A_set_whose_beginning_nobody_knows_is_never_the_fastest() =>
        Assert.Empty(Bests.Of(HeatScript.Play("start\nlane 1 step 1 done at 0:25 time unknown\nlane 1 step 2 done at 0:26")).Ms);
}
