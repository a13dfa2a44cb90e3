using LiveHeat.Contracts;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Clock;

namespace LiveHeat.Screens.Connection;

/// <summary>How well this screen knows the server's time.</summary>
public enum ClockQuality
{
    /// <summary>It never heard the server.</summary>
    None,

    /// <summary>After a reload or sleep, or by a slow link.</summary>
    Poor,

    /// <summary>Within 150 ms.</summary>
    Fair,

    /// <summary>Within 50 ms: better than a hand on a watch.</summary>
    Good,
}

/// <summary>The server's timebase on this device: offset by the four-timestamp exchange, the same filter as the engine's.</summary>
/// <remarks>
/// A fast rehearsal runs several server milliseconds a real one (<see cref="ClockAnswer.Rate"/>), so everything local is scaled by it first.
/// A device that slept has a monotonic clock that stood still: until the next exchange its wall clock bridges the gap.
/// </remarks>
public sealed class ServerClock(TimeProvider time) : ISceneClock
{
    private const double SleptMs = 1000;
    private const double GoodMs = 50;
    private const double FairMs = 150;

    private readonly long origin = time.GetTimestamp();
    private ClockFilter filter = new();
    private string? process;
    private double rate = 1;
    private (double Local, double Wall)? last;
    private (double Server, double Wall)? bridge;

    /// <summary>This page's own monotonic clock in milliseconds, what an exchange is stamped with.</summary>
    public double LocalMs => time.GetElapsedTime(origin).TotalMilliseconds;

    /// <summary>Server milliseconds a real one.</summary>
    public double Rate => rate;

    /// <summary>The server's instant now; this device's wall clock as long as the server was never heard.</summary>
    public Instant Now => new((long)NowMs());

    /// <inheritdoc/>
    public int Turn => 0;

    /// <inheritdoc/>
    public TimeSpan Since(Instant at) => TimeSpan.FromMilliseconds((Now - at) / rate);

    /// <summary>How far <see cref="Now"/> is to be trusted.</summary>
    public ClockQuality Quality
    {
        get
        {
            NoticeSleep();
            var bound = UncertaintyMs;
            return filter.Best is null ? bridge is null ? ClockQuality.None : ClockQuality.Poor
                : bound <= GoodMs ? ClockQuality.Good : bound <= FairMs ? ClockQuality.Fair : ClockQuality.Poor;
        }
    }

    /// <summary>Half-width of the interval that holds the true server time, milliseconds; infinite as long as it is unknown.</summary>
    public double UncertaintyMs => filter.UncertaintyMs(LocalMs * rate);

    /// <summary>Takes one exchange.</summary>
    /// <param name="sentMs">T1: <see cref="LocalMs"/> when the question left.</param>
    /// <param name="answer">T2 and T3.</param>
    /// <param name="backMs">T4: <see cref="LocalMs"/> when the answer came.</param>
    public void Take(double sentMs, ClockAnswer answer, double backMs)
    {
        NoticeSleep();
        if (answer.Process != process || answer.Rate != rate)
        {
            filter = new ClockFilter();
        }

        (process, rate) = (answer.Process, answer.Rate);
        filter.Add(new ClockExchange(sentMs * rate, answer.Received, answer.Sent, backMs * rate));
    }

    private double WallMs => time.GetUtcNow().ToUnixTimeMilliseconds();

    private double NowMs()
    {
        NoticeSleep();
        return filter.Best is { } best ? best.OffsetMs + (LocalMs * rate)
            : bridge is { } kept ? kept.Server + ((WallMs - kept.Wall) * rate)
            : WallMs;
    }

    private void NoticeSleep()
    {
        var here = (Local: LocalMs, Wall: WallMs);
        if (last is { } before && here.Wall - before.Wall - (here.Local - before.Local) > SleptMs && filter.Best is { } best)
        {
            bridge = (best.OffsetMs + (before.Local * rate), before.Wall);
            filter = new ClockFilter();
        }

        last = here;
    }
}
