using CsCheck;
using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Heats.Laws;
using LiveHeat.Engine.Standings;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>What must not be said yet, and that it is not said.</summary>
public class NotYetTests
{
    private static string Open(string score, string at) => string.Join("; ", SaidAt.Of(score, at).NotYet.Select(one => $"{one.Why} {string.Join(',', one.Lanes)}"));

    [Theory]
    [InlineData("lane 1 step 9 done at 5:00\nlane 2 step 9 done at 5:00.1", "NearTie 1,2")]
    [InlineData("lane 1 step 9 done at 5:00\nlane 2 step 9 done at 5:00.3", "")]
    [InlineData("lane 1 step 9 done at 9:59.95", "NearCap 1", "9:59.99")]
    [InlineData("hold lane 3 at 2:00", "Held 3")]
    [InlineData("hold lane 3 at 2:00\nresume lane 3 at 2:10", "")]
    [InlineData("lane 1 step 9 done at 5:00\nlane 1 reads back disputed at 5:05", "Disputed 1")]
    [InlineData("lane 1 step 9 done at 5:00\nlane 1 reads back agreed at 5:05", "")]
    [InlineData("lane 2 step 1 done at 1:00 from seat s-9", "TapsWait 2")]
    public void Each_open_question_is_told_with_its_lanes(string score, string open, string at = "5:10") =>
        Assert.Equal(open, Open($"start\n{score}", at).Split("; MayBeBeaten")[0]);

    [Fact]
    public void A_near_tie_that_was_decided_is_open_no_more_and_the_winner_is_named()
    {
        const string Tie = "start\nlane 1 step 9 done at 5:00\nlane 2 step 9 done at 5:00.1";
        Assert.Null(SaidAt.One(SaidAt.Of(Tie, "5:01"), CalloutKind.Finish, Some.Lane(1)).Place);

        var decided = SaidAt.Of($"{Tie}\ndecide lanes 2,1 at 5:05", "5:06");

        Assert.Empty(decided.NotYet);
        Assert.Equal(1, SaidAt.One(decided, CalloutKind.Finish, Some.Lane(2)).Place);
    }

    [Theory]
    [InlineData("hold lane 3 at 4:00")]
    [InlineData("lane 3 step 1 done at 1:00 from seat s-9")]
    [InlineData("lane 3 step 9 done at 4:50\nlane 3 reads back disputed at 4:55")]
    public void While_a_ruling_on_one_lane_is_open_no_finish_in_its_group_has_a_place(string open)
    {
        var sheet = SaidAt.Of($"start\n{open}\nlane 1 step 9 done at 5:00", "5:01");

        Assert.All(sheet.Callouts.Where(callout => callout.Kind == CalloutKind.Finish), callout => Assert.Null(callout.Place));
        Assert.Contains(sheet.Callouts, callout => callout.Kind == CalloutKind.Finish && callout.Lanes[0] == Some.Lane(1));
    }

    [Fact]
    public void First_through_with_a_penalty_may_still_be_beaten_until_time_has_passed()
    {
        const string Through = "start\nlane 1 step 9 done at 5:00\npenalise lane 1 by 10000 ms at 5:01";

        Assert.Equal("MayBeBeaten 1,2,3", Open(Through, "5:05"));
        Assert.Null(SaidAt.One(SaidAt.Of(Through, "5:05"), CalloutKind.Finish).Place);
        Assert.Equal("", Open(Through, "5:10.5"));
        Assert.Equal(1, SaidAt.One(SaidAt.Of(Through, "5:10.5"), CalloutKind.Finish).Place);
    }

    [Fact]
    public void A_lead_is_not_said_of_a_lane_that_is_held_nor_of_one_that_was_passed_while_held()
    {
        Assert.DoesNotContain(SaidAt.Of("start\nlane 1 step 1 done at 0:40\nhold lane 1 at 0:50\nlane 2 step 2 done at 1:05", "1:06").Callouts, callout => callout.Kind == CalloutKind.Lead);
        Assert.DoesNotContain(SaidAt.Of("start\nlane 1 step 1 done at 0:40\nlane 2 step 2 done at 1:05\nhold lane 2 at 1:06", "1:07").Callouts, callout => callout.Kind == CalloutKind.Lead);
    }

    /// <summary>With the first two closer than can be measured, nobody is said to have won or to lead, whatever else goes on and whenever it is asked.</summary>
    [Fact]
    public void In_an_open_near_tie_of_the_first_two_no_callout_names_a_winner() =>
        Gen.Select(Gen.Int[0, 214], Gen.Int[0, 40_000], Gen.Int[215, 20_000], Gen.Int[0, 1], Gen.Bool).Sample(
            (apartMs, laterMs, thirdMs, first, thirdIsThrough) =>
            {
                var (winner, second) = (first + 1, 2 - first);
                string Ms(int ms) => $"5:{ms / 1000:00}.{ms % 1000:000}";
                var heat = HeatScript.Play($"""
                    start
                    lane 1 step 8 done at 4:50
                    lane 2 step 7 done at 4:40
                    lane {winner} step 9 done at {Ms(0)}
                    lane {second} step 9 done at {Ms(apartMs)}
                    {(thirdIsThrough ? $"lane 3 step 9 done at {Ms(apartMs + thirdMs)}" : $"lane 3 step 7 done at {Ms(apartMs + thirdMs)}")}
                    """);
                var forecast = SaidAt.Foretold(lanes: [SaidAt.Lane(1, 1, 0.5, 0.5, 0), SaidAt.Lane(2, 1, 0.5, 0.5, 0)]);
                var sheet = SaidAt.Of(heat, Some.Go + 300_000 + apartMs + laterMs, forecast);

                Assert.Contains(sheet.NotYet, one => one.Why == NotYetWhy.NearTie && one.Lanes.Contains(Some.Lane(1)) && one.Lanes.Contains(Some.Lane(2)));
                Assert.DoesNotContain(sheet.Callouts, callout => callout.Place == 1 || callout.Kind == CalloutKind.Lead);
                Assert.All(sheet.Callouts.Where(callout => callout.Lanes.Contains(Some.Lane(1)) || callout.Lanes.Contains(Some.Lane(2))), callout => Assert.Null(callout.Place));
            },
            iter: 500);

    [Fact]
    public void Whatever_happens_no_place_is_named_of_a_lane_that_is_open() =>
        Gen.Select(GeneratedHeat.InOrder, Gen.Int[0, 30_000]).Sample(
            (generated, laterMs) =>
            {
                var heat = GeneratedHeat.Fold(generated.Facts);
                var sheet = SaidAt.Of(heat, generated.Facts[^1].ReceivedAt + laterMs);
                var tied = NearTies.Of(heat).Where(tie => !tie.Decided).SelectMany(tie => tie.Lanes).ToHashSet();
                Assert.All(sheet.Callouts.Where(callout => callout.Place is not null).SelectMany(callout => callout.Lanes), number =>
                {
                    var lane = heat.Find(number)!;
                    Assert.False(tied.Contains(number) || lane.HeldSince is not null || lane.ReadBack is { Agreed: false } || lane.Quarantined > 0, $"lane {number}");
                });
            },
            iter: 400);
}
