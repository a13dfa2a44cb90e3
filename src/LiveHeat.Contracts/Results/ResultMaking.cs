using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Sheets;
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
    /// <summary>The result of a called heat in the language now; null before the call.</summary>
    public static ResultTable? Of(HeatState heat, string headHash, Instant now) => Of(heat, headHash, now, (plan, step) => StepWords.Label(heat.Snapshot!.Workout, plan, step));

    /// <summary>
    /// The result as it is signed: in English and with the workout's own names, whoever asks and whatever the library says today, so that everybody who makes it again
    /// makes the same bytes.
    /// </summary>
    public static ResultTable? Signed(HeatState heat, string headHash, Instant now) => Tongue.InEnglish(() => Of(heat, headHash, now, (_, step) => step.Label));

    private static ResultTable? Of(HeatState heat, string headHash, Instant now, Func<RelayPlan, Step, string> label) => heat.Snapshot is not { } snapshot ? null : new ResultTable(
        heat.Heat, snapshot.Competition, snapshot.Title, snapshot.Workout.Name,
        heat.Told switch { Phase.Certified => "certified", Phase.Frozen => "frozen", _ => "provisional" },
        heat.Revision, heat.SignedHead, headHash, snapshot.Rounding,
        heat.Signatures.Select(signature => new ResultSignature(signature.By.Name, signature.By.Role)).ToItems(),
        Lanes(heat, HeatResult.Of(heat, now), label),
        snapshot.Timekeepers, snapshot.HandTimingMs, snapshot.RerunOf)
    { Scoring = snapshot.Workout.Scoring ?? ScoringRule.Usual, EqualWork = snapshot.Workout.EqualWork };

    /// <summary>What was too close to measure on this lane, and what became of it; null when nothing was.</summary>
    private static string? NearTieOf(HeatState heat, LaneState lane)
    {
        if (lane.CapDecision is { } cap)
        {
            return LaneNotes.Of(cap);
        }

        var open = NearTies.Of(heat).Any(tie => !tie.Decided && tie.Lanes.Contains(lane.Lane));
        if (!open && lane.RoundDecisions.Count > 0)
        {
            return string.Join(", ", lane.RoundDecisions.Select(round => LaneNotes.OfRound(round.Round, round.InTime, round.By)));
        }

        var decided = heat.NearTieDecisions.LastOrDefault(decision => decision.Lanes.Contains(lane.Lane));
        if (decided is not null)
        {
            return LaneNotes.Of(decided);
        }

        return NearTies.Of(heat).Any(tie => tie.Lanes.Contains(lane.Lane)) ? LaneNotes.NearTie : null;
    }

    /// <summary>Why a lane has no place in its division; null when it has one, or did not start.</summary>
    private static string? NotRanked(HeatState heat, LaneState lane)
    {
        var plan = lane.Plan;
        if (!lane.Apart || lane.ResultVoid || plan.VariantFrom is not { } step)
        {
            return null;
        }

        var taken = heat.Snapshot!.Workout.Prescriptions.First(prescription => prescription.Division == plan.PrescribedBy);
        return LaneNotes.NotRanked(taken.Division == plan.Division ? null : taken.DivisionName, step, plan.DivisionName);
    }

    private static Items<ResultLane> Lanes(HeatState heat, Items<ResultLine> lines, Func<RelayPlan, Step, string> label)
    {
        var parts = lines.GroupBy(line => line.Lane.Entry.Division).SelectMany(division => PartsOf(heat, division.ToList())).ToLookup(part => part.Lane, part => part.Part);
        return lines.Select(line => Lane(heat, line, label) with { Parts = parts[line.Lane.Lane].ToItems() }).ToItems();
    }

    private static IEnumerable<(LaneNumber Lane, ResultPart Part)> PartsOf(HeatState heat, List<ResultLine> division)
    {
        var results = division.Select(line => new TeamResult(line.Lane.Entry.Team, heat.Heat, line, heat.Told == Phase.Certified)).ToList();
        var lanes = division.ToDictionary(line => line.Lane.Entry.Team, line => line.Lane);
        for (var part = 0; part < division.Max(line => line.Lane.Plan.Parts.Count); part++)
        {
            var placed = PartOrder.Of(results, part, heat.Snapshot!.Rounding);
            foreach (var (place, score) in placed)
            {
                var lane = lanes[place.Team];
                yield return (lane.Lane, new ResultPart(
                    lane.Plan.Parts[part].Name, place.Place == 0 ? null : place.Place, place.Place > 0 && placed.Count(other => other.Place.Place == place.Place) > 1, score.OfficialMs, score.Worth)
                { Score = ScoreWords.UnlessWork(lane.Plan) });
            }
        }
    }

    private static Items<ResultShare> SharesOf(LaneState lane, Func<RelayPlan, Step, string> label)
    {
        var missing = lane.Short().ToDictionary(share => (share.Step, share.Athlete), share => share.Units);
        return lane.Shares.Concat(missing.Keys.Where(key => lane.Shares.All(share => (share.Step, share.Athlete) != key)).Select(key => new Share(key.Step, key.Athlete, 0)))
            .OrderBy(share => share.Step).ThenBy(share => share.Athlete)
            .Select(share => new ResultShare(
                share.Step, label(lane.Plan, lane.Plan.Steps[share.Step - 1]), share.Athlete == 0 ? "" : lane.Plan.Athletes[share.Athlete - 1], share.Units,
                missing.GetValueOrDefault((share.Step, share.Athlete)))).ToItems();
    }

    private static ResultAppeal Appeal(Appeal appeal) => new(
        appeal.Filed.Id, appeal.Filed.Member, appeal.Filed.Grounds, appeal.Filed.Instant, appeal.Filed.Late ? appeal.Filed.Reason : null,
        appeal.Decided?.Outcome, appeal.Decided?.AddMs ?? 0, appeal.Decided?.Reps ?? 0, appeal.Decided?.InHeat, appeal.Decided?.Reason ?? "")
    { Part = appeal.Decided?.Part };

    private static ResultLane Lane(HeatState heat, ResultLine line, Func<RelayPlan, Step, string> label)
    {
        var (lane, plan, workout) = (line.Lane, line.Lane.Plan, heat.Snapshot!.Workout);
        var values = lane.Values.ToDictionary(value => value.Step, value => value.Value);
        return new ResultLane(
            lane.Lane, lane.Entry.Name, plan.Division, plan.DivisionName, plan.Athletes, line.Place, line.Tied, line.Outcome, line.OfficialMs,
            line.Worth, plan.WorthThrough(plan.LastStep),
            plan.Steps.Select((step, i) => new ResultSplit(
                step.Number, label(plan, step), string.Join(" + ", step.Workers().Select(number => plan.Athletes[number - 1])), step.Kind, step.Round, lane.Splits[i]?.LaneMs, lane.NoReps[i])
            {
                Value = values.TryGetValue(step.Number, out var value) ? value : null,
            }).ToItems(),
            lane.NoReps.Sum(), lane.TagFaults,
            lane.Penalties.Select(penalty => new ResultPenalty(penalty.AddMs, penalty.Reps, penalty.Reason) { Part = penalty.Part }).Concat(ConsequenceWords.Penalties(lane, workout)).ToItems(), lane.AdjustMs, lane.HeldMs, lane.ReadBack,
            lane.TimedFinishes.Select(split => split.LaneMs).ToItems(), NearTieOf(heat, lane), heat.Reruns.LastOrDefault(rerun => rerun.Lanes.Contains(lane.Lane))?.InHeat, lane.Out ? null : NotRanked(heat, lane))
        {
            RoundsAndReps = plan.Endless && plan.Windows.Count == 0 ? RoundsAndReps.Of(plan, lane.DoneSteps, line.Worth) : null,
            Score = ScoreWords.UnlessWork(plan),
            Attempts = plan.Scoring is ScoringRule.HeaviestLoad
                ? lane.Attempts.Select(attempt => new ResultAttempt(attempt.Step, attempt.Athlete == 0 ? "" : plan.Athletes[attempt.Athlete - 1], attempt.Load, attempt.Good, attempt.Fault)).ToItems()
                : null,
            Tiebreak = plan.TiebreakStep is { } number && plan.Find(number) is { } step ? LaneNotes.Tiebreak(label(plan, step), step.Round) : null,
            TiebreakMs = line.TiebreakMs,
            Shares = SharesOf(lane, label),
            Disqualified = lane.Disqualified?.Reason,
            Consequences = lane.Out ? [] : ConsequenceWords.Of(lane, workout),
            Appeals = lane.Appeals.Select(Appeal).ToItems(),
        };
    }
}
