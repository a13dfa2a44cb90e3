using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Results;

/// <summary>Makes result tables from states.</summary>
public static class ResultMaking
{
    /// <summary>The result of a called heat; null before the call.</summary>
    public static ResultTable? Of(HeatState heat, string headHash, Instant now) => heat.Snapshot is not { } snapshot ? null : new ResultTable(
        heat.Heat, snapshot.Competition, snapshot.Title, snapshot.Workout.Name,
        heat.Told switch { Phase.Certified => "certified", Phase.Frozen => "frozen", _ => "provisional" },
        heat.Revision, heat.SignedHead, headHash, snapshot.Rounding,
        heat.Signatures.Select(signature => new ResultSignature(signature.By.Name, signature.By.Role)).ToItems(),
        HeatResult.Of(heat, now).Select(line => Lane(heat, line)).ToItems(),
        snapshot.Timekeepers, snapshot.HandTimingMs, snapshot.RerunOf) { Scoring = snapshot.Workout.Scoring ?? ScoringRule.Usual };

    /// <summary>What was too close to measure on this lane, and what became of it; null when nothing was.</summary>
    private static string? NearTieOf(HeatState heat, LaneState lane)
    {
        if (lane.CapDecision is { } cap)
        {
            return $"{(cap.InTime ? "in time" : "after the cap")}, decided by {cap.By.Name}";
        }

        var decided = heat.NearTieDecisions.LastOrDefault(decision => decision.Lanes.Contains(lane.Lane));
        if (decided is not null)
        {
            return $"{(decided.Tie ? "tie" : "order")} decided by {decided.By.Name}";
        }

        return NearTies.Of(heat).Any(tie => tie.Lanes.Contains(lane.Lane)) ? "near tie, to be decided" : null;
    }

    /// <summary>Why a lane has no place in its division; null when it has one, or did not start.</summary>
    private static string? NotRanked(HeatState heat, RelayPlan plan)
    {
        if (plan.VariantFrom is not { } step)
        {
            return null;
        }

        var taken = heat.Snapshot!.Workout.Prescriptions.First(prescription => prescription.Division == plan.PrescribedBy);
        var work = taken.Division == plan.Division ? "other work" : $"the work of {taken.DivisionName}";
        return $"did {work} from step {step} on: not ranked with {plan.DivisionName}";
    }

    private static ResultLane Lane(HeatState heat, ResultLine line)
    {
        var (lane, plan) = (line.Lane, line.Lane.Plan);
        return new ResultLane(
            lane.Lane, lane.Entry.Name, plan.Division, plan.DivisionName, plan.Athletes, line.Place, line.Tied, line.Outcome, line.OfficialMs,
            line.Worth, plan.WorthThrough(plan.LastStep),
            plan.Steps.Select((step, i) => new ResultSplit(
                step.Number, step.Label, step.Athlete == 0 ? "" : plan.Athletes[step.Athlete - 1], step.Kind, step.Round, lane.Splits[i]?.LaneMs, lane.NoReps[i])).ToItems(),
            lane.NoReps.Sum(), lane.TagFaults,
            lane.Penalties.Select(penalty => new ResultPenalty(penalty.AddMs, penalty.Reps, penalty.Reason)).ToItems(), lane.AdjustMs, lane.HeldMs, lane.ReadBack,
            lane.TimedFinishes.Select(split => split.LaneMs).ToItems(), NearTieOf(heat, lane), heat.Reruns.LastOrDefault(rerun => rerun.Lanes.Contains(lane.Lane))?.InHeat, lane.Withdrawn ? null : NotRanked(heat, plan))
        {
            RoundsAndReps = plan.Endless ? RoundsAndReps.Of(plan, lane.DoneSteps, line.Worth) : null,
            Tiebreak = plan.TiebreakStep is { } number && plan.Find(number) is { } step ? step.Round > 0 ? $"{step.Label} (round {step.Round})" : step.Label : null,
            TiebreakMs = line.TiebreakMs,
        };
    }
}
