using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Scoring;

/// <summary>How a team ended.</summary>
public enum Outcome
{
    /// <summary>Still at work.</summary>
    Working,

    /// <summary>All done in time.</summary>
    Finished,

    /// <summary>All done in time, but when is unknown: somebody has to say.</summary>
    FinishedTimeUnknown,

    /// <summary>The cap came first.</summary>
    Capped,

    /// <summary>Gave up or was stopped for health.</summary>
    Stopped,

    /// <summary>Did not start.</summary>
    DidNotStart,

    /// <summary>All done in time, and what was lifted or read is the result.</summary>
    Through,

    /// <summary>Put out of the workout.</summary>
    Disqualified,
}

/// <summary>One team's line of a result.</summary>
/// <param name="Lane">The lane with all its facts.</param>
/// <param name="Outcome">How it ended.</param>
/// <param name="Place">
/// Within its division, from 1; null for a team that did not start, is disqualified or has a void result, and for one that took a variant, unless the workout
/// ranks it: it did other work than the division. Stopped teams rank after all others, and after them those whom a consequence ranks below.
/// </param>
/// <param name="Tied">Somebody shares the place.</param>
/// <param name="OfficialMs">Rounded time with rulings and penalties; null when not finished, unless the cap makes a time too.</param>
/// <param name="Worth">Worth done, less reps of penalties, in the plan's <see cref="Workouts.RelayPlan.Score"/>.</param>
public sealed record ResultLine(LaneState Lane, Outcome Outcome, int? Place, bool Tied, long? OfficialMs, int Worth)
{
    /// <summary>Rounded time at the end of the tiebreak set; null without one.</summary>
    public long? TiebreakMs { get; init; }
}

/// <summary>A heat's result: finishers by official time, then the others by worth done, then by who got there first unless the workout shares the place.</summary>
/// <remarks>
/// Finishers above all others, the rest by reps: common practice, no source. A workout may say otherwise (<see cref="Workouts.ScoringRule"/>). Only lanes of one prescription are compared: a lane that took a variant
/// stands below its division, in the order of those that took the same.
/// </remarks>
public static class HeatResult
{
    /// <summary>Lines by division in the order of the workout's prescriptions, then by place, then by lane.</summary>
    public static Items<ResultLine> Of(HeatState heat, Instant now)
    {
        if (heat.Snapshot is not { } snapshot)
        {
            return [];
        }

        var divisions = snapshot.Workout.Prescriptions.Select(prescription => prescription.Division).ToList();
        return heat.Lanes.GroupBy(lane => lane.Entry.Division).OrderBy(group => divisions.IndexOf(group.Key))
            .SelectMany(division => division.GroupBy(lane => lane.Plan.Group).OrderBy(group => group.First().Apart).ThenBy(group => group.Key, StringComparer.Ordinal))
            .SelectMany(group => Rank(heat, group.ToList(), now)).ToItems();
    }

    /// <summary>How a lane ended, as far as can be told at the instant.</summary>
    public static Outcome OutcomeOf(HeatState heat, LaneState lane, Instant now)
    {
        if (lane.Out)
        {
            return lane.Disqualified is null ? Outcome.DidNotStart : Outcome.Disqualified;
        }

        if (lane.Finished)
        {
            return lane.Finish is null ? Outcome.FinishedTimeUnknown : Outcome.Finished;
        }

        if (lane.Through)
        {
            return Outcome.Through;
        }

        if (lane.Stopped is not null)
        {
            return Outcome.Stopped;
        }

        return heat.IsOver || (lane.CapHeatMs is { } cap && heat.Clock.HeatMs(now) > cap) ? Outcome.Capped : Outcome.Working;
    }

    private static IEnumerable<ResultLine> Rank(HeatState heat, List<LaneState> lanes, Instant now)
    {
        var outcomes = lanes.ToDictionary(lane => lane.Lane, lane => OutcomeOf(heat, lane, now));
        int Compare(LaneState left, LaneState right) => LiveOrder.Compare(heat, left, right);
        var (ranked, places) = FinishOrder.Of(heat, lanes.Where(lane => !lane.Unranked), Compare);
        return ranked.Select((lane, i) => new ResultLine(
                lane, outcomes[lane.Lane], lane.Apart ? null : places[i], !lane.Apart && places.Count(place => place == places[i]) > 1,
                OfficialMs(heat, lane, outcomes[lane.Lane]), LiveOrder.Worth(lane))
        { TiebreakMs = LiveOrder.TiebreakMs(heat, lane) })
            .Concat(lanes.Where(lane => lane.Unranked).OrderBy(lane => lane.Disqualified is not null).ThenBy(lane => lane.Withdrawn).ThenBy(lane => lane.Lane)
                .Select(lane => lane.Out
                    ? new ResultLine(lane, outcomes[lane.Lane], null, false, null, 0)
                    : new ResultLine(lane, outcomes[lane.Lane], null, false, OfficialMs(heat, lane, outcomes[lane.Lane]), LiveOrder.Worth(lane))));
    }

    private static long? OfficialMs(HeatState heat, LaneState lane, Outcome outcome) =>
        outcome == Outcome.Capped && CapPlus.Holds(lane.Plan) ? CapPlus.OfficialMs(heat, lane) : LiveOrder.OfficialMs(heat, lane);
}
