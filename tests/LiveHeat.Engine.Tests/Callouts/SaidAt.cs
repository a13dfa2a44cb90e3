using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>What is worth saying of a heat told as a score sheet, with its news gathered fact by fact as a server does.</summary>
internal static class SaidAt
{
    public static CalloutSheet Of(HeatState heat, Instant now, HeatForecast? forecast = null, Bests? earlier = null)
    {
        var (before, placings, news) = (HeatState.Empty(heat.Heat), LiveOrder.Of(HeatState.Empty(heat.Heat)), new List<NewsItem>());
        foreach (var entry in heat.Entries)
        {
            var after = before.Apply(entry);
            var placed = LiveOrder.Of(after);
            news.AddRange(News.Between(before, placings, after, placed, entry.Fact));
            (before, placings) = (after, placed);
        }

        return HeatCallouts.Of(heat, LiveOrder.Of(heat), news, (forecast ?? HeatForecast.Nothing, now), earlier ?? Bests.None, now);
    }

    public static CalloutSheet Of(string score, string at, HeatForecast? forecast = null, Bests? earlier = null, HeatSnapshot? heat = null) =>
        Of(HeatScript.Play(score, heat), HeatScript.At(at), forecast, earlier);

    /// <summary>"Lead 2,1" and so on, the next thing worth saying first.</summary>
    public static string Told(CalloutSheet sheet) => string.Join("; ", sheet.Callouts.Select(callout => $"{callout.Kind} {string.Join(',', callout.Lanes)}"));

    public static Callout One(CalloutSheet sheet, CalloutKind kind) => Assert.Single(sheet.Callouts, callout => callout.Kind == kind);

    public static Callout One(CalloutSheet sheet, CalloutKind kind, LaneNumber lane) => Assert.Single(sheet.Callouts, callout => callout.Kind == kind && callout.Lanes[0] == lane);

    /// <summary>A forecast that says nothing of finishes but this.</summary>
    public static HeatForecast Foretold(Items<CatchToCome> catches = default, Items<TagToCome> tags = default, params LaneForecast[] lanes) => new(lanes.ToItems(), catches, tags);

    public static LaneForecast Lane(int lane, double beatsCap = 1, params double[] places) => new(Some.Lane(lane), 500_000, 490_000, 510_000, beatsCap, places.ToItems());
}
