using System.Text.Json;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Wire;

public class ForecastFrameTests
{
    private static readonly HeatState Heat = HeatScript.Play("start\nlane 1 step 4 done at 2:00\nlane 2 step 9 done at 2:01");

    private static ForecastFrame Frame(HeatForecast? forecast = null, CalloutSheet? told = null) =>
        ForecastMaking.Of(Heat, "e1", forecast ?? HeatForecast.Nothing, Some.Go + 120_000, told ?? CalloutSheet.Empty, Some.Go + 121_000);

    [Fact]
    public void A_lane_of_which_too_little_is_known_is_there_with_nothing_known() =>
        Assert.Equal(Enumerable.Range(1, 3).Select(lane => new LaneOutlook(Some.Lane(lane), null, null, null, null, null)), Frame().Lanes);

    [Fact]
    public void A_finish_is_told_with_its_interval_and_the_chance_of_each_place_to_two_digits()
    {
        var lane = Frame(new HeatForecast([new LaneForecast(Some.Lane(1), 500, 400, 600, 0.123456, [0.501, 0.3, 0.1, 0.079, 0.02])], [], [])).Lanes[0];

        Assert.Equal(new LaneOutlook(Some.Lane(1), 500, 400, 600, 0.12, [0.5, 0.3, 0.1, 0.08, 0.02]), lane);
    }

    [Fact]
    public void Who_is_through_is_no_longer_foretold_and_a_tag_made_since_is_not_to_come()
    {
        var frame = Frame(new HeatForecast([new LaneForecast(Some.Lane(2), 500, 400, 600, 1, [1, 0, 0])], [], [new TagToCome(Some.Lane(1), 3, 100), new TagToCome(Some.Lane(1), 6, 5_000)]));

        Assert.Null(frame.Lanes[1].FinishMs);
        Assert.Equal([new TagOutlook(Some.Lane(1), 6, Some.Go + 125_000)], frame.Tags);
    }

    [Fact]
    public void It_crosses_the_wire_to_the_letter_and_back()
    {
        var told = new CalloutSheet(
            [new Callout("catchtocome.1.2.2", CalloutKind.CatchToCome, 71, Some.Go + 120_000, CalloutGrounds.Pace, [Some.Lane(1), Some.Lane(2)]) { Step = 6, Due = Some.Go + 150_000, Chance = 0.66 }],
            [new NotYet(NotYetWhy.MayBeBeaten, [Some.Lane(2), Some.Lane(1)])]);
        var frame = Frame(new HeatForecast([], [new CatchToCome(Some.Lane(1), Some.Lane(2), 6, 30_000, 0.663)], []), told);

        var json = JsonSerializer.Serialize(frame, WireJson.Options);

        Assert.Contains("""{"chaser":1,"chased":2,"step":6,"at":1795600570000,"chance":0.66}""", json, StringComparison.Ordinal);
        Assert.Contains("""{"id":"catchtocome.1.2.2","kind":"catch-to-come","weight":71,"at":1795600540000,"grounds":"pace","lanes":[1,2],"step":6,"place":null,"ms":null,"due":1795600570000,"chance":0.66,"ofDay":false}""", json, StringComparison.Ordinal);
        Assert.Contains("""[{"why":"may-be-beaten","lanes":[2,1]}]""", json, StringComparison.Ordinal);
        Assert.Equal(frame, JsonSerializer.Deserialize<ForecastFrame>(json, WireJson.Options));
    }

    [Fact]
    public void An_earlier_result_crosses_the_wire_to_the_letter_and_back()
    {
        var told = new CalloutSheet(
            [new Callout("heatresult.h0.1.certified.", CalloutKind.HeatResult, 72, Some.Go, CalloutGrounds.Confirmed, []) { Earlier = new EarlierResult(new HeatId("h0"), "Heat 0", null, ["Team 1"], true, 300_000, 66) { Second = "Team 2", AheadMs = 4_200 } }],
            []);

        var json = JsonSerializer.Serialize(Frame(told: told), WireJson.Options);

        Assert.Contains("""
            "kind":"heat-result","weight":72,"at":1795600420000,"grounds":"confirmed","lanes":[],"step":null,"place":null,"ms":null,"due":null,"chance":null,"earlier":{"heat":"h0","title":"Heat 0","division":null,"teams":["Team 1"],"official":true,"ms":300000,"worth":66,"score":null,"roundsAndReps":null,"second":"Team 2","aheadMs":4200,"aheadWorth":null,"kept":false},"ofDay":false}
            """.Trim(), json, StringComparison.Ordinal);
        Assert.Equal(told.Callouts, JsonSerializer.Deserialize<ForecastFrame>(json, WireJson.Options)!.Callouts);
    }

    [Fact]
    public void A_lead_over_the_whole_competition_crosses_the_wire_to_the_letter_and_back()
    {
        var told = new CalloutSheet(
            [new Callout("overall-lead.h0.1.frozen.open", CalloutKind.OverallLead, 68, Some.Go, CalloutGrounds.Confirmed, []) { Overall = new OverallLead(new HeatId("h0"), "Open", 2, ["Team 1"], false, 7.5m) { Second = "Team 2", Ahead = 2, Kept = true } }],
            []);

        var json = JsonSerializer.Serialize(Frame(told: told), WireJson.Options);

        Assert.Contains("""
            "kind":"overall-lead","weight":68,"at":1795600420000,"grounds":"confirmed","lanes":[],"step":null,"place":null,"ms":null,"due":null,"chance":null,"overall":{"heat":"h0","division":"Open","workouts":2,"teams":["Team 1"],"official":false,"points":7.5,"second":"Team 2","ahead":2,"kept":true},"ofDay":false}
            """.Trim(), json, StringComparison.Ordinal);
        Assert.Equal(told.Callouts, JsonSerializer.Deserialize<ForecastFrame>(json, WireJson.Options)!.Callouts);
    }

    [Fact]
    public void What_only_rounds_by_the_clock_have_stands_where_they_are_and_nowhere_else()
    {
        var told = new CalloutSheet(
            [new Callout("roundlead.s.2.1", CalloutKind.RoundLead, 88, Some.Go, CalloutGrounds.Confirmed, [Some.Lane(1), Some.Lane(2)]) { Round = 2, Worth = 44, Ahead = 7 }],
            [new NotYet(NotYetWhy.NearRoundEnd, [Some.Lane(2)]) { Round = 1 }]);
        var frame = Frame(told: told);

        var json = JsonSerializer.Serialize(frame, WireJson.Options);

        Assert.Contains("""{"id":"roundlead.s.2.1","kind":"round-lead","weight":88,"at":1795600420000,"grounds":"confirmed","lanes":[1,2],"step":null,"place":null,"ms":null,"due":null,"chance":null,"round":2,"worth":44,"ahead":7,"ofDay":false}""", json, StringComparison.Ordinal);
        Assert.Contains("""[{"why":"near-round-end","lanes":[2],"round":1}]""", json, StringComparison.Ordinal);
        Assert.Equal(frame, JsonSerializer.Deserialize<ForecastFrame>(json, WireJson.Options));
    }

    [Fact]
    public void Several_servers_draw_the_same_from_the_same_facts_and_other_facts_draw_otherwise()
    {
        Assert.Equal(ForecastMaking.Seed(new HeatId("h1"), 41), ForecastMaking.Seed(new HeatId("h1"), 41));
        Assert.Equal(4, new[] { ("h1", 41), ("h1", 42), ("h2", 41), ("h14", 1) }.Select(one => ForecastMaking.Seed(new HeatId(one.Item1), one.Item2)).Distinct().Count());
    }
}
