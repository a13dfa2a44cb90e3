namespace LiveHeat.Engine.Timing;

/// <summary>How a measured time becomes an official one. The result names the rule.</summary>
/// <remarks>Athletics rounds hand times up to 0.1 s, road events up to 1 s, photo finishes up to 0.01 s; swimming drops the third decimal.</remarks>
public enum Rounding
{
    /// <summary>Up to the next 0.1 s unless exact: hand timing on the track.</summary>
    UpTenth,

    /// <summary>Up to the next whole second unless exact.</summary>
    UpSecond,

    /// <summary>Up to the next 0.01 s unless exact.</summary>
    UpHundredth,

    /// <summary>The third decimal is dropped.</summary>
    DownHundredth,
}

/// <summary>The arithmetic of <see cref="Rounding"/>.</summary>
public static class RoundingRules
{
    /// <summary>The official time in whole milliseconds of a measured one (not negative).</summary>
    public static long Official(this Rounding rule, long measuredMs) => rule switch
    {
        Rounding.UpTenth => Up(measuredMs, 100),
        Rounding.UpSecond => Up(measuredMs, 1000),
        Rounding.UpHundredth => Up(measuredMs, 10),
        Rounding.DownHundredth => measuredMs - (measuredMs % 10),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, null),
    };

    private static long Up(long ms, long gridMs) => (ms + gridMs - 1) / gridMs * gridMs;
}
