using CsCheck;
using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats.Laws;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>The next thing worth saying comes first.</summary>
public class OrderTests
{
    [Fact]
    public void The_lead_comes_before_a_pass_further_back_and_that_before_a_tag() => Assert.Equal("Lead 2,1; Overtake 4,3; Tag 2", SaidAt.Told(SaidAt.Of("""
        start
        lane 1 step 2 done at 1:00
        lane 3 step 1 done at 0:59
        lane 4 step 1 done at 0:58
        lane 2 tag 3 at 1:01
        """, "1:02", heat: Some.Snapshot(4))));

    [Fact]
    public void What_has_just_happened_comes_before_what_may_come_and_what_is_nearly_stale_after_it()
    {
        var forecast = SaidAt.Foretold(catches: [new CatchToCome(Some.Lane(1), Some.Lane(2), 6, 20_000, 0.9)]);
        const string Score = "start\nlane 1 step 3 done at 1:00\nlane 2 step 4 done at 1:05";

        Assert.StartsWith("Lead 2,1; CatchToCome 1,2", SaidAt.Told(SaidAt.Of(Score, "1:06", forecast)), StringComparison.Ordinal);
        Assert.StartsWith("CatchToCome 1,2; Lead 2,1", SaidAt.Told(SaidAt.Of(Score, "1:26", forecast)), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_sheet_is_in_order_says_nothing_twice_and_weighs_within_bounds() =>
        Gen.Select(GeneratedHeat.InOrder, Gen.Int[0, 60_000]).Sample(
            (heat, later) =>
            {
                var state = GeneratedHeat.Fold(heat.Facts);
                var sheet = SaidAt.Of(state, heat.Facts[^1].ReceivedAt + later);
                Assert.Equal(sheet.Callouts.OrderByDescending(callout => callout.Weight).Select(callout => callout.Weight), sheet.Callouts.Select(callout => callout.Weight));
                Assert.Equal(sheet.Callouts.Count, sheet.Callouts.Select(callout => callout.Id).Distinct().Count());
                Assert.All(sheet.Callouts, callout => Assert.InRange(callout.Weight, 1, 100));
                Assert.Equal(sheet, SaidAt.Of(state, heat.Facts[^1].ReceivedAt + later));
            },
            iter: 200);
}
