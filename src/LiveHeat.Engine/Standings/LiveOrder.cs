using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Standings;

/// <summary>A lane's place among the lanes it may be compared with.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Group">The prescription they share.</param>
/// <param name="Place">From 1; lanes that tie share it (1, 2, 2, 4). Null for a team that did not start, is disqualified or has a void result, and for one that took a variant without a place in its division.</param>
/// <param name="Tied">Somebody shares the place.</param>
/// <param name="GapMs">Behind the leader at this lane's last confirmed point; null when unknown.</param>
/// <param name="AheadMs">Behind the lane one place ahead, likewise.</param>
/// <param name="GapWorth">Worth behind the leader, not negative.</param>
public sealed record Placing(LaneNumber Lane, string Group, int? Place, bool Tied, long? GapMs, long? AheadMs, int GapWorth);

/// <summary>
/// Running places: finished teams by official time, then others by worth done, then by the tiebreak where there is one, then by who got there first, unless the workout shares the place of such teams; teams that stopped for good come last.
/// Where the cap makes a time too, those who work stand where they would if their cap came now. Confirmed facts alone decide.
/// </summary>
public static class LiveOrder
{
    /// <summary>One placing a lane, in floor order.</summary>
    public static Items<Placing> Of(HeatState heat)
    {
        var placings = new Dictionary<LaneNumber, Placing>();
        foreach (var group in heat.Lanes.GroupBy(lane => lane.Plan.Group))
        {
            var (ranked, places) = FinishOrder.Of(heat, group.Where(lane => !lane.Unranked), (left, right) => Compare(heat, left, right));
            for (var i = 0; i < ranked.Count; i++)
            {
                var ahead = places[i] == 1 ? null : ranked[Enumerable.Range(0, i).Last(j => places[j] < places[i])];
                var own = !ranked[i].Apart;
                placings[ranked[i].Lane] = new Placing(
                    ranked[i].Lane, group.Key, own ? places[i] : null, own && places.Count(place => place == places[i]) > 1,
                    Gap.BehindMs(heat, ranked[i], ranked[0]), ahead is null ? null : Gap.BehindMs(heat, ranked[i], ahead),
                    // Who shares the lead is behind nobody: finished teams tie by time, whatever reps they still owe.
                    ahead is null ? 0 : Math.Max(0, Worth(ranked[0]) - Worth(ranked[i])));
            }

            foreach (var lane in group.Where(lane => lane.Unranked))
            {
                placings[lane.Lane] = new Placing(lane.Lane, group.Key, null, false, null, null, 0);
            }
        }

        return heat.Lanes.Select(lane => placings[lane.Lane]).ToItems();
    }

    /// <summary>The official time of a lane; null when it has none.</summary>
    public static long? OfficialMs(HeatState heat, LaneState lane) =>
        lane.MeasuredMs is { } ms && heat.Snapshot is { } snapshot ? Timing.RoundingRules.Official(snapshot.Rounding, ms) : null;

    /// <summary>The official tiebreak time of a lane; null when it has none.</summary>
    public static long? TiebreakMs(HeatState heat, LaneState lane) =>
        lane.Tiebreak is { } split && heat.Snapshot is { } snapshot ? Timing.RoundingRules.Official(snapshot.Rounding, split.LaneMs) : null;

    /// <summary>What is compared: worth done less the reps of penalties. What an appeal gives back never makes it more than there is to do.</summary>
    public static int Worth(LaneState lane) => lane.PenaltyWorth < 0 && lane.Plan.Timed
        ? Math.Max(lane.Worth, Math.Min(lane.Worth - lane.PenaltyWorth, lane.Plan.WorthThrough(lane.Plan.LastStep)))
        : Math.Max(0, lane.Worth - lane.PenaltyWorth);

    /// <summary>Negative when the left lane stands ahead; 0 for a tie.</summary>
    public static int Compare(HeatState heat, LaneState left, LaneState right)
    {
        if (left.RanksBelow != right.RanksBelow)
        {
            return left.RanksBelow ? 1 : -1;
        }

        if (CapPlus.Holds(left.Plan) && left is not { Finished: false, Stopped: not null } && right is not { Finished: false, Stopped: not null })
        {
            var byTime = CapPlus.ByTime(heat, left, right);
            return byTime != 0 || left.Finished ? byTime : ByWork(heat, left, right);
        }

        if (left.Finished != right.Finished)
        {
            return left.Finished ? -1 : 1;
        }

        if (left.Finished)
        {
            return (OfficialMs(heat, left) ?? long.MaxValue).CompareTo(OfficialMs(heat, right) ?? long.MaxValue);
        }

        if (left.GaveUp != right.GaveUp)
        {
            return left.GaveUp ? 1 : -1;
        }

        return ByWork(heat, left, right);
    }

    private static int ByWork(HeatState heat, LaneState left, LaneState right)
    {
        var byWorth = Worth(right).CompareTo(Worth(left));
        if (byWorth != 0)
        {
            return byWorth;
        }

        var byTiebreak = (TiebreakMs(heat, left) ?? long.MaxValue).CompareTo(TiebreakMs(heat, right) ?? long.MaxValue);
        if (byTiebreak != 0)
        {
            return byTiebreak;
        }

        if (left.Plan.NobodyFirst || (left.Plan.EqualWork == EqualWork.Shared && heat.IsOver))
        {
            return 0;
        }

        // A tag made or a line of steps without worth done is further along than the same score without it.
        var bySteps = right.DoneSteps.CompareTo(left.DoneSteps);
        return bySteps != 0 ? bySteps : left.ReachedMs.CompareTo(right.ReachedMs);
    }
}
