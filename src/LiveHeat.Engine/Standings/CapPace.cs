using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Standings;

/// <summary>Where a team must be now to finish at the cap: the expected durations, stretched or squeezed to fill it.</summary>
public static class CapPace
{
    /// <summary>Part of the relay that must be behind a team before its pace says anything.</summary>
    private const double Enough = 0.08;

    /// <summary>Lane time by which a step must be done, milliseconds.</summary>
    /// <param name="plan">The lane's plan.</param>
    /// <param name="step">The step.</param>
    /// <param name="capMs">The lane's cap in lane time.</param>
    public static long DueMs(Workouts.RelayPlan plan, int step, long capMs) =>
        plan.ExpectedMs == 0 ? 0 : (long)((double)plan.ExpectedMsThrough(step) * capMs / plan.ExpectedMs);

    /// <summary>Ahead (+) of or behind (-) cap pace at the last confirmed point, milliseconds; null until there is enough to know, and where no time is the result.</summary>
    public static long? AheadMs(LaneState lane)
    {
        if (lane.Finished || !lane.Plan.Timed || lane.LastSplit() is not var (step, split) || lane.Plan.ExpectedMsThrough(step) < lane.Plan.ExpectedMs * Enough)
        {
            return null;
        }

        // A hold that left the cap where it was took lane time away; one that moves it gives as much back. While one is open nobody knows.
        var capMs = lane.CapHeatMs is { } cap ? cap - lane.HeldMs : lane.Plan.CapMs;
        return DueMs(lane.Plan, step, capMs) - split.LaneMs;
    }
}
