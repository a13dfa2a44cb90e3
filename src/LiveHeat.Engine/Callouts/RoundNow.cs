using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Callouts;

/// <summary>Where a lane at work is in its rounds by the clock.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Round">The round that began last, from 1.</param>
/// <param name="Window">That round.</param>
/// <param name="Next">The one after it; null after the last.</param>
/// <param name="EndMs">Heat time at which the round ends.</param>
/// <param name="NextMs">Heat time at which the next begins; null where there is none.</param>
internal sealed record RoundNow(LaneState Lane, int Round, Window Window, Window? Next, long EndMs, long? NextMs)
{
    /// <summary>Null where no clock divides the work, before GO, for whoever is not at work, and while the lane is held: when it goes on nobody knows.</summary>
    public static RoundNow? Of(LaneState lane, Instant now)
    {
        if (lane is not { Plan.Windows: { Count: > 0 } windows, Out: false, Stopped: null, HeldSince: null, Clock: { } clock } || clock.LaneMs(now) is not ({ } at and >= 0))
        {
            return null;
        }

        var round = windows.Count(window => window.FromMs <= at);
        var (window, next) = (windows[round - 1], round < windows.Count ? windows[round] : null);
        return new RoundNow(lane, round, window, next, clock.HeatMsOf(window.UntilMs), next is null ? null : clock.HeatMsOf(next.FromMs));
    }

    /// <summary>Something of the round is still to be done.</summary>
    public bool AtWork => Lane.Rounds[Round - 1].Done < Window.Last;
}
