namespace LiveHeat.Screens.Heats;

/// <summary>How far what a screen shows is to be believed.</summary>
public enum Freshness
{
    /// <summary>As good as now.</summary>
    Fresh,

    /// <summary>Over 3 s old: marked.</summary>
    Old,

    /// <summary>Over 10 s old: not live.</summary>
    NotLive,
}

/// <summary>Where the lines are.</summary>
public static class FreshnessRules
{
    private static readonly TimeSpan Marked = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan Dead = TimeSpan.FromSeconds(10);

    /// <summary>What an age amounts to.</summary>
    public static Freshness Of(TimeSpan age) => age > Dead ? Freshness.NotLive : age > Marked ? Freshness.Old : Freshness.Fresh;
}
