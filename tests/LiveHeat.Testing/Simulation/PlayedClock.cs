using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing.Simulation;

/// <summary>What a phone keeps of its clock for its next page: the server's time at a reading of the wall clock.</summary>
internal readonly record struct Bridge(double ServerMs, double WallMs, double UncertaintyMs);

/// <summary>A phone's reckoning of the server's time, as the pad's: least delay of eight, 100 ppm, and the wall clock over a sleep.</summary>
/// <param name="mono">performance.now().</param>
/// <param name="wall">Date.now().</param>
/// <param name="kept">What an earlier page kept; null for none.</param>
internal sealed class PlayedClock(Func<double> mono, Func<double> wall, Bridge? kept)
{
    /// <summary>What bridging by the wall clock adds.</summary>
    private const double BridgeMs = 100;

    /// <summary>More than the readings of two clocks one after the other differ by: the phone slept.</summary>
    private const double JitterMs = 50;

    private ClockFilter filter = new();
    private Bridge? bridge = kept;
    private string? process;
    private double since = double.MinValue;
    private (double Mono, double Wall) last = (mono(), wall());

    /// <summary>What the next page would need.</summary>
    public Bridge? Kept { get; private set; } = kept;

    /// <summary>Takes an exchange; one that was asked before a sleep tells nothing.</summary>
    public void Add(double sentMs, double receivedMs, double answeredMs, string timebase)
    {
        WakeUp();
        if (process is not null && process != timebase)
        {
            (filter, bridge) = (new ClockFilter(), null);
        }

        process = timebase;
        if (sentMs < since)
        {
            return;
        }

        filter.Add(new ClockExchange(sentMs, receivedMs, answeredMs, mono()));
        Kept = Now();
    }

    /// <summary>The server's time now and its error bound; null: never heard the server.</summary>
    public Bridge? Now()
    {
        WakeUp();
        var (monoMs, wallMs) = (mono(), wall());
        return filter.Best is { } best
            ? new Bridge(monoMs + best.OffsetMs, wallMs, filter.UncertaintyMs(monoMs))
            : bridge is { } from
                ? new Bridge(from.ServerMs + wallMs - from.WallMs, wallMs, from.UncertaintyMs + BridgeMs + (Math.Abs(wallMs - from.WallMs) * ClockFilter.UnknownRate))
                : null;
    }

    private void WakeUp()
    {
        var (before, here) = (last, (Mono: mono(), Wall: wall()));
        last = here;
        if (here.Wall - before.Wall - (here.Mono - before.Mono) <= JitterMs)
        {
            return;
        }

        if (filter.Best is { } best)
        {
            bridge = new Bridge(before.Mono + best.OffsetMs, before.Wall, filter.UncertaintyMs(before.Mono));
        }

        (filter, since) = (new ClockFilter(), here.Mono);
    }
}
