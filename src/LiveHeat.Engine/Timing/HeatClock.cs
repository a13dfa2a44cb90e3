namespace LiveHeat.Engine.Timing;

/// <summary>One GO of a heat.</summary>
/// <param name="Id">A restart is a new start with an id of its own.</param>
/// <param name="GoAt">The instant of GO.</param>
/// <param name="UncertaintyMs">0 when we gave the GO ourselves; what the observer said when the horn went without us.</param>
/// <param name="Observed">True when the horn went without us.</param>
public sealed record Start(string Id, Instant GoAt, int UncertaintyMs, bool Observed);

/// <summary>A stretch in which the clock stood still.</summary>
/// <param name="From">When it stopped.</param>
/// <param name="Until">When it went on; null while it still stands.</param>
public readonly record struct Standstill(Instant From, Instant? Until);

/// <summary>Turns instants into heat time: an instant minus the start in force, less the time the heat was halted.</summary>
/// <remarks>
/// Heat time is never stored. A recalled start, or a start that a phone missed, changes every heat time that hangs on it and no fact.
/// </remarks>
public sealed record HeatClock(Start? Start, Items<Standstill> Halts)
{
    /// <summary>No start yet.</summary>
    public static readonly HeatClock Unset = new(null, []);

    /// <summary>Milliseconds since GO; negative before it; null when no start is in force.</summary>
    public long? HeatMs(Instant instant) => Start is null ? null : instant - Start.GoAt - StoodStillMs(Start.GoAt, instant);

    /// <summary>The instant at which the heat time is reached, as far as the halts known now tell.</summary>
    public Instant? InstantOf(long heatMs)
    {
        if (Start is null)
        {
            return null;
        }

        var instant = Start.GoAt + heatMs;
        foreach (var halt in Halts)
        {
            if (halt.From < instant && halt.Until is { } until)
            {
                instant += Math.Max(0, until - Later(halt.From, Start.GoAt));
            }
        }

        return instant;
    }

    /// <summary>How much of the halts lies between GO and the instant, in milliseconds: a start put right afterwards may lie within one.</summary>
    private long StoodStillMs(Instant goAt, Instant instant)
    {
        var stoodMs = 0L;
        foreach (var still in Halts)
        {
            var until = still.Until is { } end && end < instant ? end : instant;
            stoodMs += Math.Max(0, until - Later(still.From, goAt));
        }

        return stoodMs;
    }

    private static Instant Later(Instant one, Instant other) => one > other ? one : other;
}
