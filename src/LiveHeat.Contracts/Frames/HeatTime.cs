using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Frames;

/// <summary>What only time changes, from the instants of a frame.</summary>
public static class HeatTime
{
    /// <summary>The phase at an instant: the count-down turns to running by itself.</summary>
    public static Phase PhaseAt(Frame frame, Instant now) =>
        frame is { Phase: Phase.CountingDown, Start: { } start } && now >= start.GoAt ? Phase.Running : frame.Phase;

    /// <summary>Frames come at least once a second in these.</summary>
    public static bool IsLive(Phase phase) => phase is Phase.CountingDown or Phase.Running or Phase.Halted;

    /// <summary>Milliseconds since GO less the halts; negative before it; null without a start.</summary>
    public static long? HeatMs(Frame frame, Instant now)
    {
        if (frame.Start is not { } start)
        {
            return null;
        }

        var until = Earliest(Earliest(now, frame.HaltedAt), frame.EndedAt);
        return until - start.GoAt - frame.HaltedMs;
    }

    /// <summary>Lane time: heat time less what the lane was held; it stands while the lane is held and at its finish.</summary>
    public static long? LaneMs(Frame frame, LaneFrame lane, Instant now) =>
        lane is { Status: LaneStatus.Finished, FinishMs: { } finish } ? finish : HeatMs(frame, Earliest(now, lane.HeldAt)) - lane.CreditMs;

    /// <summary>Milliseconds to the heat's cap; null without a start or cap; not below 0.</summary>
    public static long? LeftMs(Frame frame, Instant now) =>
        frame.CapMs > 0 && HeatMs(frame, now) is { } ms ? Math.Max(0, frame.CapMs - Math.Max(0, ms)) : null;

    private static Instant Earliest(Instant one, Instant? other) => other is { } second && second < one ? second : one;
}
