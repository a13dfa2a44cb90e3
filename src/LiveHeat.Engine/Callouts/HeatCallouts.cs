using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Callouts;

/// <summary>What there is to be said of a heat at an instant: the next thing worth saying first; nothing twice, nothing stale, and no place that is still open.</summary>
public static class HeatCallouts
{
    /// <summary>All callouts and what must not be said yet.</summary>
    /// <param name="heat">The folded facts.</param>
    /// <param name="placings">The live order of the same state.</param>
    /// <param name="news">What happened in the heat lately, oldest first.</param>
    /// <param name="forecast">What is foretold, and when that was.</param>
    /// <param name="earlier">The fastest of earlier heats.</param>
    /// <param name="now">The instant.</param>
    /// <param name="before">Heats of the same workout that are over: their results may come in while this one is on.</param>
    /// <param name="overall">Who leads over the whole competition, since when.</param>
    public static CalloutSheet Of(
        HeatState heat, Items<Placing> placings, IEnumerable<NewsItem> news, (HeatForecast Forecast, Instant At) forecast, Bests earlier, Instant now, IReadOnlyList<HeatState>? before = null, IReadOnlyList<OverallNews>? overall = null)
    {
        var phase = heat.PhaseAt(now);
        var results = phase is Phase.Called or Phase.Armed or Phase.Running or Phase.Halted or Phase.Ended ? FromResults.Of(before ?? [], now) : [];
        if (phase is not (Phase.Planned or Phase.CountingDown))
        {
            results = results.Concat((overall ?? []).Select(news => news.Callout(now)).OfType<Callout>());
        }

        if (phase is not (Phase.Running or Phase.Halted or Phase.Ended or Phase.Frozen))
        {
            return new CalloutSheet(InOrder(results), []);
        }

        var floor = new CalloutFloor(heat, placings, OpenQuestions.Of(heat, now), now);
        var scores = FromRoundScores.Of(floor).ToList();
        var found = FromNews.Of(floor, news).Where(callout => !scores.Exists(score => Says(score, callout))).Concat(FromBests.Of(floor, earlier)).Concat(scores).Concat(results);
        if (phase == Phase.Running)
        {
            found = found.Concat(FromForecast.Of(floor, forecast.Forecast, forecast.At)).Concat(FromClock.Of(floor)).Concat(FromRounds.Of(floor));
        }

        return new CalloutSheet(InOrder(found), floor.Open);
    }

    private static Items<Callout> InOrder(IEnumerable<Callout> found) =>
        found.OrderByDescending(callout => callout.Weight).ThenByDescending(callout => callout.At).ThenBy(callout => callout.Lanes.Count > 0 ? callout.Lanes[0] : default).ThenBy(callout => callout.Id, StringComparer.Ordinal)
            .DistinctBy(callout => callout.Id).ToItems();

    /// <summary>Who leads after a round took the lead before its end.</summary>
    private static bool Says(Callout score, Callout news) =>
        score.Kind == CalloutKind.RoundLead && news.Kind == CalloutKind.Lead && news.Lanes[0] == score.Lanes[0] && !(news.At > score.At);
}

/// <summary>A heat as those who look for something to say need it.</summary>
internal sealed class CalloutFloor(HeatState heat, Items<Placing> placings, Items<NotYet> open, Instant now)
{
    private readonly HashSet<LaneNumber> doubted = [.. open.Where(one => one.Why != NotYetWhy.MayBeBeaten).SelectMany(one => one.Lanes)];

    public HeatState Heat => heat;

    public Items<NotYet> Open => open;

    public Instant Now => now;

    /// <summary>Lanes that can be told about: where loads make the result nobody is ahead before the last attempt.</summary>
    public IEnumerable<LaneState> Lanes => heat.Lanes.Where(lane => !lane.Withdrawn && lane.Plan.Scoring is ScoringRule.ForTime or ScoringRule.MostWork);

    public LaneState? Find(LaneNumber lane) => Lanes.FirstOrDefault(state => state.Lane == lane);

    public Placing PlacingOf(LaneNumber lane) => placings.First(placing => placing.Lane == lane);

    public int? PlaceOf(LaneNumber lane) => PlacingOf(lane).Place;

    /// <summary>Where one of these stands is open: nothing is said of their places.</summary>
    public bool Doubts(params IEnumerable<LaneNumber> lanes) => lanes.Any(doubted.Contains);

    /// <summary>A finisher's place may be named: nothing about this lane is open, nobody can still come in before it, and no ruling in its group can move it.</summary>
    public bool PlaceIsSure(LaneState lane) => !Doubts(lane.Lane)
        && !open.Any(one => one.Why switch
        {
            NotYetWhy.MayBeBeaten => one.Lanes[0] == lane.Lane,
            // Two that are too close change places with each other alone, and a time at the cap with those behind it.
            NotYetWhy.NearTie or NotYetWhy.NearCap or NotYetWhy.NearRoundEnd => false,
            _ => Find(one.Lanes[0])?.Plan.Group == lane.Plan.Group,
        });

    /// <summary>A ruling on a lane of that prescription is still to come, and may change what any lane's score means.</summary>
    public bool RulingIsOpen(string group) =>
        open.Any(one => one.Why is NotYetWhy.Held or NotYetWhy.Disputed or NotYetWhy.TapsWait && one.Lanes.Any(lane => heat.Find(lane)?.Plan.Group == group));

    /// <summary>When the newest fact about where a lane is happened; GO before the first.</summary>
    public Instant LastAt(LaneState lane) => lane.LastSplit() is var (_, split) ? At(split) : heat.Clock.Start!.GoAt;

    /// <summary>When a split's fact happened.</summary>
    public Instant At(Split split) => heat.Find(split.Fact)?.Fact.Instant ?? heat.Clock.InstantOf(split.LaneMs) ?? now;

    public int? Weight(CalloutKind kind, int? place, Instant at, double share = 1) => CalloutWeight.Now(kind, place, now - at, share);
}
