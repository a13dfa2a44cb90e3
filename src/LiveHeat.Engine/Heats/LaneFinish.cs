using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>
/// A lane's last step: the judge says that all is done; the timekeepers, where there are any, say when, and so whether it was in time. One a walk.
/// </summary>
internal sealed class LaneFinish(LaneClock clock, TimekeeperRule rule)
{
    private readonly SortedDictionary<string, PlacedTap> timed = new(StringComparer.Ordinal);
    private (PlacedTap Tap, bool TimeKnown)? judged;

    /// <summary>The judge's tap on the last step, while the team worked; null before it.</summary>
    public PlacedTap? Judged => judged?.Tap;

    /// <summary>The judge saw when.</summary>
    public bool TimeKnown => judged is { TimeKnown: true };

    /// <summary>What timekeepers tapped: the last that stands of each.</summary>
    public Items<Split> Timed => timed.Values.Select(tap => new Split(clock.LaneMs(tap.At) ?? 0, tap.Tap.UncertaintyMs, tap.Tap.Id)).ToItems();

    /// <summary>The time that the timekeepers' taps make; null without any, or before the judge says that all is done.</summary>
    public Split? Official => judged is not null && Timed is { Count: > 0 } times
        ? new Split(Timekeepers.Combine(rule, [.. times.Select(split => split.LaneMs)])!.Value, times.Max(split => split.UncertaintyMs), times[0].Fact)
        : null;

    /// <summary>Whether the official time lies no later than the lane's cap; null when timekeepers do not say.</summary>
    public bool? InTime => Official is null ? null : FromCapMs() is not > 0;

    /// <summary>The judge says that all is done.</summary>
    public void Judge(PlacedTap tap, bool timeKnown) => judged = (tap, timeKnown);

    /// <summary>A timekeeper's tap at or after GO.</summary>
    public void Time(PlacedTap tap)
    {
        if (clock.LaneMs(tap.At) is >= 0 && (timed.Count < Timekeepers.Most || timed.ContainsKey(tap.Tap.Seat.Value)))
        {
            timed[tap.Tap.Seat.Value] = tap;
        }
    }

    /// <summary>The team was sent back: it is timed anew, and if the last step is open again, judged anew.</summary>
    public void SendBack(bool lastStepToo)
    {
        timed.Clear();
        judged = lastStepToo ? null : judged;
    }

    /// <summary>
    /// How far the finish lies from the lane's cap, negative before it; null when nobody knows. Where the judge and the timekeepers stand on different
    /// sides of the cap, it is uncertain by as much as either lies away from it: people decide.
    /// </summary>
    public Split? FromCap()
    {
        var judgedMs = judged is { TimeKnown: true, Tap: var tap } ? clock.FromCapMs(tap.At) : null;
        if (Official is not { } official)
        {
            return judgedMs is { } ms ? new Split(ms, Judged!.Tap.UncertaintyMs, Judged.Tap.Id) : null;
        }

        if (FromCapMs() is not { } officialMs)
        {
            return null;
        }

        var apart = judgedMs is { } mine && mine > 0 != officialMs > 0;
        return new Split(officialMs, apart ? (int)Math.Max(official.UncertaintyMs, Math.Max(Math.Abs(officialMs), Math.Abs(judgedMs!.Value))) : official.UncertaintyMs, official.Fact);
    }

    /// <summary>The official time against the cap. What the lane was held before the timekeepers' taps was held before the finish.</summary>
    private long? FromCapMs() =>
        Official is { } official && clock.CapHeatMs is { } capMs ? official.LaneMs + clock.HeldMs(timed.Values.First().At) - capMs : null;
}
