using LiveHeat.Engine.Timing;

namespace LiveHeat.Server.Time;

/// <summary>The server's timebase: UTC read once a process and carried by its monotonic clock, so that it never steps.</summary>
public sealed class Timebase
{
    private readonly TimeProvider time;
    private readonly double originMs;
    private readonly long originStamp;

    /// <param name="time">The machine's clocks, or a fast rehearsal's.</param>
    /// <param name="rate">Milliseconds of this timebase per real millisecond; 1 but in a fast rehearsal.</param>
    public Timebase(TimeProvider time, double rate = 1)
    {
        this.time = time;
        Rate = rate;
        originStamp = time.GetTimestamp();
        originMs = (time.GetUtcNow() - DateTimeOffset.UnixEpoch).TotalMilliseconds;
    }

    /// <summary>Names this timebase: another process has another.</summary>
    public string Process { get; } = Convert.ToHexStringLower(System.Security.Cryptography.RandomNumberGenerator.GetBytes(8));

    /// <summary>Milliseconds of this timebase per real millisecond.</summary>
    public double Rate { get; }

    /// <summary>Now, in milliseconds with fraction since 1970 UTC.</summary>
    public double NowMs => originMs + time.GetElapsedTime(originStamp).TotalMilliseconds;

    /// <summary>Now, to the millisecond.</summary>
    public Instant Now => new((long)NowMs);
}
