using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Standings;

/// <summary>How far behind, in time: at a trailing team's last confirmed point, how long ago did the other pass it.</summary>
public static class Gap
{
    /// <summary>Milliseconds behind, not negative; 0 for the leader itself; null when either split is unknown, and where no time makes the score.</summary>
    public static long? BehindMs(HeatState heat, LaneState trailing, LaneState other)
    {
        if (trailing.Plan.Measured)
        {
            return null;
        }

        if (trailing.Lane == other.Lane)
        {
            return 0;
        }

        if (trailing.Finished && other.Finished)
        {
            // Not below nothing: people may have put the later of two close times first.
            return LiveOrder.OfficialMs(heat, trailing) - LiveOrder.OfficialMs(heat, other) is { } apartMs ? Math.Max(0, apartMs) : null;
        }

        for (var step = trailing.DoneSteps; step >= 1; step--)
        {
            if (trailing.Splits[step - 1] is not { } mine)
            {
                continue;
            }

            return other.Splits.Count >= step && other.Splits[step - 1] is { } theirs ? Math.Max(0, mine.LaneMs - theirs.LaneMs) : null;
        }

        return null;
    }
}
