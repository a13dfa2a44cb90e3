using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Standings;

/// <summary>A time for teams that are not through at their cap: the cap and one second for each unit of worth that is missing.</summary>
/// <remarks>Cap 12:00, 7 missing: 12:07. A finish exactly at the cap ranks ahead. Common practice, no source.</remarks>
public static class CapPlus
{
    private const long MissingMs = 1000;

    /// <summary>Whether the lane's workout is scored so.</summary>
    public static bool Holds(RelayPlan plan) => plan.Scoring is ScoringRule.ForTime { Unfinished: Unfinished.CapPlusSeconds };

    /// <summary>Worth that is missing, the reps of penalties too.</summary>
    public static int Missing(LaneState lane) => lane.Plan.WorthThrough(lane.Plan.LastStep) - LiveOrder.Worth(lane);

    /// <summary>The official time of an unfinished lane if its cap came now; before the call there is none.</summary>
    public static long? OfficialMs(HeatState heat, LaneState lane) => heat.Snapshot is { } snapshot
        ? RoundingRules.Official(snapshot.Rounding, Math.Max(0, lane.AtCapMs + lane.PenaltyMs + (MissingMs * Missing(lane))))
        : null;

    /// <summary>What a finish of unknown time counts as until somebody says: where a team whom the cap stops has a time, no more than the cap; else the last.</summary>
    public static long LatestMs(LaneState lane) => Holds(lane.Plan) ? lane.AtCapMs + lane.PenaltyMs : long.MaxValue;

    /// <summary>Two lanes of such a workout, neither stopped for good, by time; who is through is ahead of who is not.</summary>
    internal static int ByTime(HeatState heat, LaneState left, LaneState right)
    {
        var byTime = Ms(heat, left).CompareTo(Ms(heat, right));
        return byTime != 0 || left.Finished == right.Finished ? byTime : left.Finished ? -1 : 1;
    }

    private static long Ms(HeatState heat, LaneState lane) =>
        (lane.Finished ? LiveOrder.OfficialMs(heat, lane) : OfficialMs(heat, lane)) ?? LatestMs(lane);
}
