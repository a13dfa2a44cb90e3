using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Callouts from what is foretold: catches, tags, the cap, close races. Each id names a stage, so that the same is worth saying again only when it has come nearer.</summary>
internal static class FromForecast
{
    /// <summary>A tag is told of so long before it, milliseconds.</summary>
    private const long TagAhead = 10_000;

    /// <summary>An expected tag that did not come is told of no longer after so long, milliseconds.</summary>
    private const long TagLate = 3_000;

    /// <summary>Between these chances nobody can tell whether a team beats the cap.</summary>
    private const double Unlikely = 0.2, Likely = 0.8;

    /// <summary>Two teams race for a place when each has this chance of it, and both together that.</summary>
    private const double EachOfTwo = 0.3, BothOfTwo = 0.75;

    /// <summary>Races are told of in the second half of the work, for the first places only.</summary>
    private const double RaceFrom = 0.5;

    private const int RacePlaces = 3;

    public static IEnumerable<Callout> Of(CalloutFloor floor, HeatForecast forecast, Instant at) =>
        forecast.Catches.Select(to => Catch(floor, to, at)).Concat(forecast.Tags.Select(tag => Tag(floor, tag, at)))
            .Concat(forecast.Lanes.Select(lane => AtTheCap(floor, lane))).Concat(Races(floor, forecast)).OfType<Callout>();

    private static Callout? Catch(CalloutFloor floor, CatchToCome to, Instant at)
    {
        var due = at + to.InMs;
        if (floor.Find(to.Chaser) is not { } chaser || floor.Find(to.Chased) is not { } chased || floor.Doubts(to.Chaser, to.Chased) || due <= floor.Now
            || chaser.DoneSteps >= to.Step || chased.DoneSteps >= to.Step || floor.PlaceOf(to.Chaser) <= floor.PlaceOf(to.Chased))
        {
            return null;
        }

        return Make(floor, CalloutKind.CatchToCome, [chaser, chased], floor.PlaceOf(to.Chased), to.Chance, $"{chaser.Plan.Steps[to.Step - 1].Leg}") is { } told
            ? told with { Step = to.Step, Due = due, Chance = to.Chance }
            : null;
    }

    private static Callout? Tag(CalloutFloor floor, TagToCome tag, Instant at)
    {
        var due = at + tag.InMs;
        return due - floor.Now is < -TagLate or > TagAhead || floor.Find(tag.Lane) is not { HeldSince: null } lane || lane.DoneSteps >= tag.Step ? null
            : Make(floor, CalloutKind.TagToCome, [lane], floor.PlaceOf(tag.Lane), 1, $"{tag.Step}") is { } told ? told with { Step = tag.Step, Due = due } : null;
    }

    private static Callout? AtTheCap(CalloutFloor floor, LaneForecast forecast)
    {
        if (forecast.BeatsCap is < Unlikely or > Likely || floor.Find(forecast.Lane) is not { Finished: false, Stopped: null, HeldSince: null, CapHeatMs: { } cap } lane
            || cap - floor.Heat.Clock.HeatMs(floor.Now) is not ({ } left and > 0))
        {
            return null;
        }

        // The nearer the cap, the more it is about: half of it in the middle of the heat, all of it in the last minutes.
        var share = 0.5 + (0.5 * (1 - Math.Min(1, (double)left / cap)));
        var stage = left > 300_000 ? "far" : left > 120_000 ? "five" : left > 60_000 ? "two" : "one";
        return Make(floor, CalloutKind.CapInDoubt, [lane], floor.PlaceOf(lane.Lane), share, stage) is { } told
            ? told with { Chance = forecast.BeatsCap, Due = floor.Heat.Clock.InstantOf(cap) }
            : null;
    }

    private static IEnumerable<Callout?> Races(CalloutFloor floor, HeatForecast forecast)
    {
        var racing = new HashSet<LaneNumber>();
        foreach (var group in forecast.Lanes.Where(lane => floor.Find(lane.Lane) is { HeldSince: null }).GroupBy(lane => floor.Find(lane.Lane)!.Plan.Group))
        {
            for (var place = 1; place <= RacePlaces; place++)
            {
                var two = group.Where(lane => lane.Places.Count >= place && lane.Places[place - 1] >= EachOfTwo).OrderByDescending(lane => lane.Places[place - 1]).Take(2).ToList();
                if (two.Count == 2 && two.Sum(lane => lane.Places[place - 1]) >= BothOfTwo && !two.Any(lane => racing.Contains(lane.Lane)))
                {
                    racing.UnionWith(two.Select(lane => lane.Lane));
                    yield return Race(floor, [.. two.Select(lane => floor.Find(lane.Lane)!).OrderBy(lane => floor.PlaceOf(lane.Lane) ?? int.MaxValue).ThenBy(lane => lane.Lane)], place);
                }
            }
        }
    }

    private static Callout? Race(CalloutFloor floor, List<LaneState> two, int place)
    {
        var through = two.Min(lane => (double)lane.Plan.ExpectedMsThrough(lane.DoneSteps) / lane.Plan.ExpectedMs);
        return through < RaceFrom || floor.Doubts(two.Select(lane => lane.Lane)) ? null
            : Make(floor, CalloutKind.CloseRace, two, place, 0.5 + (0.5 * through), $"{place}.{(through < 0.75 ? "half" : "end")}") is { } told ? told with { Place = place } : null;
    }

    /// <summary>A callout about lanes at work: as old as the newest fact about any of them.</summary>
    private static Callout? Make(CalloutFloor floor, CalloutKind kind, List<LaneState> lanes, int? place, double share, string stage)
    {
        var at = lanes.Max(floor.LastAt);
        var numbers = lanes.Select(lane => lane.Lane).ToItems();
        // Two lanes in one race are the same race whichever leads.
        var named = kind == CalloutKind.CloseRace ? numbers.Order() : numbers.AsEnumerable();
        return floor.Weight(kind, place, at, share) is { } weight
            ? new Callout($"{kind}.{floor.Heat.Clock.Start!.Id}.{string.Join('.', named)}.{stage}".ToLowerInvariant(), kind, weight, at, CalloutGrounds.Pace, numbers)
            : null;
    }
}
