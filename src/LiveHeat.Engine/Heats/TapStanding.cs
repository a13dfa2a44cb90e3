using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>Which taps of a lane count, which are held for the head judge, and why.</summary>
public sealed class TapStanding
{
    /// <summary>A tap may seem to arrive this much before it was made: clocks that are allowed to differ.</summary>
    public const int FutureToleranceMs = 2000;

    private readonly LaneContext context;
    private readonly LanePlans plans;
    private readonly HashSet<FactId> undone;
    private readonly Dictionary<FactId, FactFlags> flags = [];

    internal TapStanding(LaneContext context, LanePlans plans, List<PlacedTap> taps)
    {
        this.context = context;
        this.plans = plans;
        foreach (var tap in taps)
        {
            Flag(tap.Tap.Id, Hold(tap));
        }

        var undos = taps.Where(tap => tap.Tap is HeatFact.Undone && Counts(tap.Tap.Id)).ToLookup(tap => ((HeatFact.Undone)tap.Tap).Target);
        undone = undos.Count == 0 ? [] : [.. taps.Where(tap => tap.Tap is not HeatFact.Undone && undos[tap.Tap.Id].Any(undo => MayUndo(undo, tap))).Select(tap => tap.Tap.Id)];
    }

    /// <summary>The tap says it was made after it arrived, by more than clocks may differ.</summary>
    internal static bool InFuture(HeatFact.Floor tap, Entry entry) => tap.Instant > entry.ReceivedAt + FutureToleranceMs + tap.UncertaintyMs;

    /// <summary>Facts with flags, in a stable order.</summary>
    public Items<FlaggedFact> Flagged() =>
        flags.Where(pair => !undone.Contains(pair.Key))
            .OrderBy(pair => pair.Key).Select(pair => new FlaggedFact(pair.Key, pair.Value)).ToItems();

    /// <summary>Whether the tap plays a part: not undone, not held.</summary>
    internal bool Stands(PlacedTap tap) => Counts(tap.Tap.Id) && !undone.Contains(tap.Tap.Id);

    /// <summary>What the lane's seat makes of the tap.</summary>
    internal Duty DutyOf(PlacedTap tap) =>
        tap.Entry.Fact is HeatFact.FactAdded || context.Admitted.Contains(tap.Tap.Id) ? Duty.Primary : SeatOf(tap)?.Duty ?? Duty.Primary;

    internal void Flag(FactId fact, FactFlags flag)
    {
        if (flag != FactFlags.None)
        {
            flags[fact] = flags.GetValueOrDefault(fact) | flag;
        }
    }

    /// <summary>The lane's judge takes back any tap of the lane, also one of the phone before; a witness or timekeeper only their own.</summary>
    private bool MayUndo(PlacedTap undo, PlacedTap target) => DutyOf(undo) == Duty.Primary || undo.Entry.Sender == target.Entry.Sender;

    private bool Counts(FactId fact) => !flags.GetValueOrDefault(fact).HasFlag(FactFlags.Quarantined);

    private Seat? SeatOf(PlacedTap tap)
    {
        foreach (var seat in context.Seats.Span)
        {
            if (seat.Id == tap.Tap.Seat && seat.SignIn == tap.Entry.Sender && seat.Covers(tap.At, tap.Tap.UncertaintyMs))
            {
                return seat;
            }
        }

        return null;
    }

    private FactFlags Hold(PlacedTap tap)
    {
        var found = FactFlags.None;
        var added = tap.Entry.Fact is HeatFact.FactAdded;
        if (!added && SeatOf(tap) is null)
        {
            found |= FactFlags.NoSeat;
        }

        if (tap.Tap is HeatFact.Undone or HeatFact.HeadJudgeCalled or HeatFact.ScoreReadBack)
        {
            return Held(tap, found | Late(tap));
        }

        var clock = context.Clock;
        if (tap.Tap.Start is { } known && known != clock.Start?.Id)
        {
            found |= FactFlags.OldStart;
        }
        else if (clock.Start is not { } start || tap.At < start.GoAt)
        {
            found |= FactFlags.Early;
        }

        if (InFuture(tap.Tap, tap.Entry))
        {
            found |= FactFlags.Future;
        }

        return Held(tap, found | Late(tap) | StepFlags(tap));
    }

    private FactFlags Late(PlacedTap tap) =>
        context.FrozenHead is { } head && tap.Entry.Arrived > head && tap.Entry.Fact is HeatFact.Floor ? FactFlags.Late : FactFlags.None;

    private FactFlags StepFlags(PlacedTap tap)
    {
        if (tap.Tap is not HeatFact.AtStep at)
        {
            return FactFlags.None;
        }

        var step = plans.Newest.Plan.Find(at.Step);
        if (step is null || !Fits(at, step))
        {
            return FactFlags.NoSuchStep;
        }

        if (at.Plan == plans.Newest.Version || plans.InForce(at.Plan, tap.At))
        {
            return FactFlags.None;
        }

        return plans.StillMeans(at.Plan, at.Step, tap.At) ? FactFlags.OldPlan : FactFlags.OldPlan | FactFlags.Quarantined;
    }

    private bool Fits(HeatFact.AtStep tap, Workouts.Step step) => tap switch
    {
        HeatFact.TagMade or HeatFact.TagFault => step.Kind == Workouts.StepKind.Tag,
        HeatFact.ValueEntered => step.Kind == Workouts.StepKind.Value,
        HeatFact.AttemptJudged judged => step.Kind == Workouts.StepKind.Attempt && Workouts.Attempts.CanBe(judged.Load),
        HeatFact.CountReached count => step.Kind == Workouts.StepKind.Set && count.Count >= 0 && count.Count <= step.Quantity,
        HeatFact.RepsAtCap count => count.Count >= 0 && count.Count <= step.Quantity,
        HeatFact.AthleteWorking working => working.Athlete >= 1 && working.Athlete <= plans.Newest.Plan.Athletes.Count,
        _ => true,
    };

    private FactFlags Held(PlacedTap tap, FactFlags found)
    {
        const FactFlags Holding = FactFlags.NoSeat | FactFlags.OldStart | FactFlags.Early | FactFlags.Future | FactFlags.Late;
        if (found.HasFlag(FactFlags.NoSuchStep))
        {
            return found | FactFlags.Quarantined;
        }

        var held = (found & (Holding | FactFlags.Quarantined)) != FactFlags.None;
        return !held ? found : context.Admitted.Contains(tap.Tap.Id) ? found & ~FactFlags.Quarantined : found | FactFlags.Quarantined;
    }
}
