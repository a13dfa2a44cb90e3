namespace LiveHeat.Engine.Callouts;

/// <summary>How much a callout is worth saying, and for how long. The table with its reasons is in docs/callouts.md; all figures are common practice, no source.</summary>
internal static class CalloutWeight
{
    /// <summary>What is nearly stale is worth half of what it was worth fresh.</summary>
    private const double StaleShare = 0.5;

    /// <summary>Fresh, about the leaders: 0 to 100; and its life in milliseconds after the fact behind it.</summary>
    public static (int Fresh, long LifeMs) Of(CalloutKind kind) => kind switch
    {
        CalloutKind.Finish => (100, 40_000),
        CalloutKind.Lead => (92, 25_000),
        CalloutKind.RoundLead => (90, 40_000),
        CalloutKind.Stopped => (84, 40_000),
        CalloutKind.LastMinute => (80, 20_000),
        CalloutKind.RoundEnds => (78, 30_000),
        CalloutKind.CatchToCome => (76, 60_000),
        CalloutKind.HeatResult => (72, 180_000),
        CalloutKind.CloseRace => (70, 120_000),
        CalloutKind.OverallLead => (68, 180_000),
        CalloutKind.CapInDoubt => (66, 120_000),
        CalloutKind.RoundBegins => (64, 10_000),
        CalloutKind.WorkoutLead => (63, 180_000),
        CalloutKind.Overtake => (62, 20_000),
        CalloutKind.BestRound => (58, 30_000),
        CalloutKind.FastestLeg => (56, 25_000),
        CalloutKind.RestBegins => (50, 12_000),
        CalloutKind.FastestSet => (48, 20_000),
        CalloutKind.GoesIn => (42, 60_000),
        CalloutKind.TagToCome => (40, 60_000),
        _ => (34, 12_000),
    };

    /// <summary>More about the first than about the seventh: the whole, then seven eighths, then three quarters.</summary>
    public static double OfPlace(int? place) => place switch
    {
        1 => 1,
        2 or 3 => 0.875,
        _ => 0.75,
    };

    /// <summary>The weight now; null when it is stale, or not to be said at all.</summary>
    /// <param name="kind">What about.</param>
    /// <param name="place">The best place it concerns; null when nobody can tell.</param>
    /// <param name="ageMs">Milliseconds since the fact behind it; less than 0 counts as 0.</param>
    /// <param name="share">Anything else that makes it worth less, 0 to 1.</param>
    public static int? Now(CalloutKind kind, int? place, long ageMs, double share = 1)
    {
        var (fresh, lifeMs) = Of(kind);
        return ageMs > lifeMs ? null : (int)Math.Round(fresh * OfPlace(place) * share * (1 - (StaleShare * Math.Max(0, ageMs) / lifeMs)));
    }
}
