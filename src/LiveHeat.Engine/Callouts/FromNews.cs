using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;

namespace LiveHeat.Engine.Callouts;

/// <summary>Callouts from what happened. What is no longer true (a tap was taken back, another has passed since) is not said.</summary>
internal static class FromNews
{
    public static IEnumerable<Callout> Of(CalloutFloor floor, IEnumerable<NewsItem> news)
    {
        // Of two passes by one team, or two tags, the newer one is the news.
        var newest = news.GroupBy(item => (item.Lane, Moves: item.Kind is NewsKind.Lead or NewsKind.Overtake, item.Kind == NewsKind.Tag)).Select(group => group.Last());
        foreach (var item in newest.OrderBy(item => item.Sequence))
        {
            if (floor.Find(item.Lane) is { } lane && Told(floor, item, lane) is { } callout)
            {
                yield return callout;
            }
        }
    }

    private static Callout? Told(CalloutFloor floor, NewsItem item, LaneState lane) => item.Kind switch
    {
        NewsKind.Lead or NewsKind.Overtake => Passed(floor, item, lane),
        NewsKind.Tag when !lane.Finished && lane.DoneSteps >= item.Step => Make(floor, item, CalloutKind.Tag, floor.PlaceOf(lane.Lane), [item.Lane], null),
        NewsKind.Finish when lane.Finished => Finish(floor, item, lane),
        NewsKind.Stopped when lane.Stopped is not null => Make(floor, item, CalloutKind.Stopped, null, [item.Lane], null),
        _ => null,
    };

    private static Callout? Passed(CalloutFloor floor, NewsItem item, LaneState lane)
    {
        if (item.Other is not { } passed || lane.Finished || lane.DoneSteps < item.Step || floor.Doubts(item.Lane, passed)
            || floor.PlacingOf(item.Lane) is not { Place: { } place, Tied: false } || floor.PlaceOf(passed) <= place)
        {
            return null;
        }

        // Who was passed by others since no longer leads; who has gone on to the lead since is told of with that.
        return item.Kind == NewsKind.Lead && place > 1 ? null
            : Make(floor, item, item.Kind == NewsKind.Lead ? CalloutKind.Lead : CalloutKind.Overtake, place, [item.Lane, passed], place);
    }

    private static Callout? Finish(CalloutFloor floor, NewsItem item, LaneState lane)
    {
        var place = floor.PlacingOf(lane.Lane) is { Tied: false } placing ? placing.Place : null;
        return Make(floor, item, CalloutKind.Finish, place, [item.Lane], floor.PlaceIsSure(lane) ? place : null) is { } told
            ? told with { Ms = LiveOrder.OfficialMs(floor.Heat, lane) }
            : null;
    }

    private static Callout? Make(CalloutFloor floor, NewsItem item, CalloutKind kind, int? weighedAs, Items<LaneNumber> lanes, int? place) =>
        floor.Weight(kind, weighedAs, item.Instant) is { } weight
            ? new Callout($"{kind}.{string.Join('.', lanes)}.{item.Sequence}".ToLowerInvariant(), kind, weight, item.Instant, CalloutGrounds.Confirmed, lanes) { Step = item.Step, Place = place }
            : null;
}
