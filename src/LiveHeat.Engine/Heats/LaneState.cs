using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>When a step was completed.</summary>
/// <param name="LaneMs">Lane time: heat time less what the lane was held, milliseconds.</param>
/// <param name="UncertaintyMs">Half-width of the phone's clock error.</param>
/// <param name="Fact">The tap that says so.</param>
public readonly record struct Split(long LaneMs, int UncertaintyMs, FactId Fact);

/// <summary>How far a lane came in one round by the clock.</summary>
/// <param name="Done">The last step done in it; the one before its first when nothing was.</param>
/// <param name="Count">Units of the step after that one; 0 when all of the round is done.</param>
public readonly record struct RoundDone(int Done, int Count)
{
    /// <summary>The judge said how many units of the open set were done when the round was over.</summary>
    public bool Told { get; init; }
}

/// <summary>What was done nearest to the end of a round by the clock, on either side of it.</summary>
/// <param name="Round">The round, from 1.</param>
/// <param name="FromEnd">Milliseconds from the round's end, negative before it.</param>
public readonly record struct NearRoundEnd(int Round, Split FromEnd);

/// <summary>A witness and the lane's judge have a step done at times further apart than both their clocks can be wrong. Flagged, never decided here.</summary>
/// <param name="Step">The step.</param>
/// <param name="Judged">What counts: the judge's time.</param>
/// <param name="Seen">The witness's time.</param>
public readonly record struct Disagreement(int Step, Split Judged, Split Seen);

/// <summary>A fact and how it is kept.</summary>
public readonly record struct FlaggedFact(FactId Fact, FactFlags Flags);

/// <summary>Seconds onto the result, or reps off it, that stand.</summary>
public sealed record Penalty(FactId Fact, int AddMs, int Reps, string Reason)
{
    /// <summary>See <see cref="Cost.Part"/>.</summary>
    public int? Part { get; init; }
}

/// <summary>What a ruling costs a team.</summary>
/// <param name="LaneMs">When it was made, lane time; null when no start was in force.</param>
/// <param name="AddMs">Onto the time, milliseconds; negative helps the team.</param>
/// <param name="Reps">Off the worth, in units of the score; negative helps the team.</param>
/// <param name="Part">
/// Of parts that are scored apart the one in which it counts, from 1; 0: in the whole workout and in none of them; null: in the one that the team was in
/// when it was made.
/// </param>
public readonly record struct Cost(long? LaneMs, int AddMs, int Reps, int? Part = null);

/// <summary>What the captain said to the score read back.</summary>
public sealed record ReadBack(bool Agreed, string Name);

/// <summary>A lane as the standing facts have it: one value of the fold, which only facts change.</summary>
public sealed record LaneState
{
    /// <summary>Who stands there.</summary>
    public required LaneEntry Entry { get; init; }

    /// <summary>The plan in force.</summary>
    public required RelayPlan Plan { get; init; }

    /// <summary>From 1; every line-up or variant ruling makes a new one.</summary>
    public required int PlanVersion { get; init; }

    /// <summary>All versions of the plan, for the next fold.</summary>
    internal LanePlans? Plans { get; init; }

    /// <summary>Its number on the floor.</summary>
    public LaneNumber Lane => Entry.Lane;

    /// <summary>The primary seat held now; null when nobody judges the lane.</summary>
    public Seat? Seat { get; init; }

    /// <summary>Judge, phone and team are ready, or were overridden.</summary>
    public bool Ready { get; init; }

    /// <summary>The team did not start.</summary>
    public bool Withdrawn { get; init; }

    /// <summary>The ruling that put the team out of the workout; null when none stands.</summary>
    public HeatFact.Disqualified? Disqualified { get; init; }

    /// <summary>The team takes no part: it did not start, or is disqualified.</summary>
    public bool Out => Withdrawn || Disqualified is not null;

    /// <summary>What the workout's consequences came to.</summary>
    public Items<Applied> Applied { get; init; }

    /// <summary>A consequence makes the result void.</summary>
    public bool ResultVoid => Applied.Any(applied => applied.Consequence == Consequence.Void);

    /// <summary>A consequence puts the team after all who did as prescribed.</summary>
    public bool RanksBelow => Applied.Any(applied => applied.Consequence == Consequence.RanksBelow);

    /// <summary>It is not ranked at all.</summary>
    public bool Unranked => Out || ResultVoid;

    /// <summary>It took a variant that has no place in the division: ranked only with those that took the same, and without a place.</summary>
    public bool Apart => Plan.VariantFrom is not null && Plan.Group != Plan.Division;

    /// <summary>Appeals that stand, in the order filed.</summary>
    public Items<Appeal> Appeals { get; init; }

    /// <summary>An appeal is open: its result is not settled.</summary>
    public bool Pending => Appeals.Any(appeal => appeal.Open);

    /// <summary>The lane's clock stands still since then.</summary>
    public Instant? HeldSince { get; init; }

    /// <summary>Lane time stood still so long, closed holds only, milliseconds.</summary>
    public long HeldMs { get; init; }

    /// <summary>Added to the team's time by rulings; negative helps it.</summary>
    public int AdjustMs { get; init; }

    /// <summary>The lane's cap in heat time; null while it moves with an open hold.</summary>
    public long? CapHeatMs { get; init; }

    /// <summary>What the team has on its clock if the cap stops it: the cap as prescribed, and the adjustments that did not move it, milliseconds.</summary>
    public long AtCapMs { get; init; }

    /// <summary>The pad's open step: after the highest standing done-fact, counted before or after the cap.</summary>
    public required int Open { get; init; }

    /// <summary>Steps that count: done no later than the cap.</summary>
    public int DoneSteps { get; init; }

    /// <summary>Confirmed units of the first step that is not done; 0 when nothing says more.</summary>
    public int Count { get; init; }

    /// <summary>Splits by step; null where unknown.</summary>
    public Items<Split?> Splits { get; init; }

    /// <summary>Lane time by which the present worth was certainly reached; 0 when none is.</summary>
    public long ReachedMs { get; init; }

    /// <summary>Confirmed score in the plan's <see cref="RelayPlan.Score"/>: sets done and whole increments of the open one, less reps owed; or what was lifted or read.</summary>
    public int Worth { get; init; }

    /// <summary>Lane time of the last step; null when not finished or not known.</summary>
    public Split? Finish { get; init; }

    /// <summary>The step nearest to the lane's cap that may have been the last in time or the first too late: milliseconds from the cap; null when there is none.</summary>
    public Split? NearCap { get; init; }

    /// <summary>What was decided of a step too close to the cap; null when nothing was.</summary>
    public HeatFact.CapDecided? CapDecision { get; init; }

    /// <summary>What may have been done in time or too late in each round by the clock; rounds without are left out.</summary>
    public Items<NearRoundEnd> NearRoundEnds { get; init; }

    /// <summary>What was decided of steps too close to the end of their rounds.</summary>
    public Items<HeatFact.CapDecided> RoundDecisions { get; init; }

    /// <summary>All steps are done in time, and that time is the result; never where something else is.</summary>
    public bool Finished => Plan.Timed && AllDone;

    /// <summary>All steps are done in time, and what was lifted or read is the result.</summary>
    public bool Through => Plan.Measured && AllDone;

    /// <summary>Stopped for good before all was done.</summary>
    public bool GaveUp => Stopped is not null && !Finished && !Through;

    private bool AllDone => Plan.LastStep > 0 && DoneSteps == Plan.LastStep;

    /// <summary>Why the team stopped for good; null when it did not.</summary>
    public StopReason? Stopped { get; init; }

    /// <summary>When it did, lane time; null when it did not.</summary>
    public long? StoppedMs { get; init; }

    /// <summary>No-reps by step.</summary>
    public Items<int> NoReps { get; init; }

    /// <summary>Tags missed or left too early.</summary>
    public int TagFaults { get; init; }

    /// <summary>Reps still owed before the open set may count.</summary>
    public int Owed { get; init; }

    /// <summary>Who works, if not the one the plan names: step and athlete.</summary>
    public Items<(int Step, int Athlete)> Substitutes { get; init; }

    /// <summary>Who did how much of sets that the team shares, as far as it was told.</summary>
    public Items<Share> Shares { get; init; }

    /// <summary>Athletes with less than their share of a set that is done: set, athlete, and what is missing. A set of which nobody said who worked tells nothing.</summary>
    public IEnumerable<Share> Short() => Plan.Steps.Take(DoneSteps).Where(step => step.MinimumEach is not null && Shares.Any(share => share.Step == step.Number && share.Athlete > 0))
        .SelectMany(step => Enumerable.Range(1, Plan.Athletes.Count).Where(number => Plan.TeamOrder.Contains(Plan.Athletes[number - 1]))
            .Select(number => new Share(step.Number, number, step.MinimumEach!.Value - Shares.FirstOrDefault(share => share.Step == step.Number && share.Athlete == number).Units)))
        .Where(missing => missing.Units > 0);

    /// <summary>Readings entered, by step.</summary>
    public Items<(int Step, decimal Value)> Values { get; init; }

    /// <summary>Each round by the clock, in order; empty where the work follows no clock.</summary>
    public Items<RoundDone> Rounds { get; init; }

    /// <summary>What the work done in each round by the clock is worth; readings are not in it.</summary>
    public Items<int> RoundWorths { get; init; }

    /// <summary>Turns the floor's clock into the lane's; null where nothing was folded.</summary>
    internal LaneClock? Clock { get; init; }

    /// <summary>Attempts at a load that count, by step.</summary>
    public Items<JudgedAttempt> Attempts { get; init; }

    /// <summary>What timekeepers tapped, lane time: the last that stands of each. Where there are any, they make the finish time.</summary>
    public Items<Split> TimedFinishes { get; init; }

    /// <summary>Penalties that stand.</summary>
    public Items<Penalty> Penalties { get; init; }

    /// <summary>What rulings that stand cost the team, and when they were made; consequences are in <see cref="Applied"/>.</summary>
    public Items<Cost> Costs { get; init; }

    /// <summary>Warnings that stand.</summary>
    public int Warnings { get; init; }

    /// <summary>The captain's answer; null before it.</summary>
    public ReadBack? ReadBack { get; init; }

    /// <summary>The judge called the head judge, who has not answered.</summary>
    public bool Calling { get; init; }

    /// <summary>Facts that are not plain sailing.</summary>
    public Items<FlaggedFact> Flagged { get; init; }

    /// <summary>Steps that a witness saw done at another time than the judge, in the order of the witnesses' taps.</summary>
    public Items<Disagreement> Disagreements { get; init; }

    /// <summary>Taps that wait for the head judge.</summary>
    public int Quarantined => Flagged.Count(flagged => flagged.Flags.HasFlag(FactFlags.Quarantined));

    /// <summary>What penalties and decided appeals add to the time, milliseconds; negative helps the team.</summary>
    public int PenaltyMs => Penalties.Sum(penalty => penalty.AddMs) + Applied.Sum(applied => applied.AddMs) + Appeals.Sum(appeal => appeal.Decided?.AddMs ?? 0);

    /// <summary>Reps that penalties and decided appeals take off, where the score counts something else so many of its units; negative helps the team.</summary>
    public int PenaltyReps => Penalties.Sum(penalty => penalty.Reps) + Applied.Sum(applied => applied.Reps) + Appeals.Sum(appeal => appeal.Decided?.Reps ?? 0);

    /// <summary>The same as worth.</summary>
    public int PenaltyWorth => PenaltyReps * Plan.Score.Scale;

    /// <summary>The last step with a known split that counts, and it; null before the first.</summary>
    public (int Step, Split Split)? LastSplit()
    {
        for (var step = DoneSteps; step >= 1; step--)
        {
            if (Splits[step - 1] is { } split)
            {
                return (step, split);
            }
        }

        return null;
    }

    /// <summary>When the set was done that decides between teams of the same worth; null when it is not done, its time is unknown, or there is none.</summary>
    public Split? Tiebreak => Plan.TiebreakStep is { } step && step <= DoneSteps ? Splits[step - 1] : null;

    /// <summary>Its tiebreak set is done and nobody knows when, and it may count: the team is not through.</summary>
    public bool TiebreakMissing => !Finished && !Unranked && Plan.TiebreakStep <= DoneSteps && Tiebreak is null;

    /// <summary>The step is done, or one that implies it; of rounds by the clock each on its own.</summary>
    public bool HasDone(int step) => Plan.Windows.Select((window, i) => (window, i)).FirstOrDefault(pair => step <= pair.window.Last) is { window: not null, i: var round } ? Rounds[round].Done >= step : step <= DoneSteps;

    /// <summary>The step that is to be done next for the score; null when finished.</summary>
    public Step? OpenStep() => Plan.Find(DoneSteps + 1);

    /// <summary>The measured result time with rulings and penalties, before rounding; null when not finished or not known.</summary>
    public long? MeasuredMs => Finish is { } finish ? Math.Max(0, finish.LaneMs + AdjustMs + PenaltyMs) : null;

    /// <summary>How one fact of the lane is kept.</summary>
    public FactFlags FlagsOf(FactId fact) => Flagged.FirstOrDefault(flagged => flagged.Fact == fact).Flags;
}
