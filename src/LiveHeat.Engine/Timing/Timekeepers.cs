namespace LiveHeat.Engine.Timing;

/// <summary>How the times of up to three timekeepers become one. The result names the rule.</summary>
public enum TimekeeperRule
{
    /// <summary>Athletics: two that agree; else the middle of three; the longer of two. (World Athletics TR 19, formerly IAAF rule 165.)</summary>
    Athletics,

    /// <summary>Swimming: two that agree; else the middle of three; the average of two, its third decimal dropped. (World Aquatics SW 11.3.1 to 11.3.3.)</summary>
    Swimming,
}

/// <summary>The arithmetic of <see cref="TimekeeperRule"/>.</summary>
public static class Timekeepers
{
    /// <summary>The most timekeepers of a lane.</summary>
    public const int Most = 3;

    /// <summary>The combined time in whole milliseconds, before rounding; null without times.</summary>
    /// <param name="rule">The rule that the result names.</param>
    /// <param name="timesMs">One to three measured times, in any order; more than three is an error of the caller.</param>
    public static long? Combine(TimekeeperRule rule, IReadOnlyList<long> timesMs)
    {
        if (timesMs.Count > Most)
        {
            throw new ArgumentException($"A lane has at most {Most} timekeepers, not {timesMs.Count}.", nameof(timesMs));
        }

        var sorted = timesMs.Order().ToList();
        return sorted.Count switch
        {
            0 => null,
            1 => sorted[0],
            // Where two of three agree, the middle is one of them.
            3 => sorted[1],
            _ when rule == TimekeeperRule.Athletics => sorted[1],
            _ => (sorted[0] + sorted[1]) / 2 / 10 * 10,
        };
    }
}
