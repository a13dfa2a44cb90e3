namespace LiveHeat.Engine.Timing;

/// <summary>A point on the server's timebase: whole milliseconds since 1970-01-01 UTC.</summary>
/// <remarks>Its uncertainty stands beside it wherever a clock other than the server's made it.</remarks>
public readonly record struct Instant(long UnixMs) : IComparable<Instant>
{
    /// <summary>Milliseconds from <paramref name="earlier"/> to <paramref name="later"/>; negative when they stand the other way round.</summary>
    public static long operator -(Instant later, Instant earlier) => later.UnixMs - earlier.UnixMs;

    /// <summary>The instant <paramref name="ms"/> milliseconds later.</summary>
    public static Instant operator +(Instant instant, long ms) => new(instant.UnixMs + ms);

    /// <summary>Strictly earlier.</summary>
    public static bool operator <(Instant left, Instant right) => left.UnixMs < right.UnixMs;

    /// <summary>Strictly later.</summary>
    public static bool operator >(Instant left, Instant right) => left.UnixMs > right.UnixMs;

    /// <summary>Not later.</summary>
    public static bool operator <=(Instant left, Instant right) => left.UnixMs <= right.UnixMs;

    /// <summary>Not earlier.</summary>
    public static bool operator >=(Instant left, Instant right) => left.UnixMs >= right.UnixMs;

    /// <inheritdoc/>
    public int CompareTo(Instant other) => UnixMs.CompareTo(other.UnixMs);
}
