using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>Walks a lane through its plan, tap by tap in the order they happened. One walk a fold; not kept.</summary>
internal sealed class LaneWalk(RelayPlan plan, LaneClock clock, Counting counting, TimekeeperRule timekeepers)
{
    private readonly Split?[] splits = new Split?[plan.LastStep];
    private readonly int[] noReps = new int[plan.LastStep];
    private readonly Dictionary<int, int> counts = [];
    private readonly List<(int Step, Split Seen)> witnessed = [];
    private readonly SortedDictionary<int, int> substitutes = [];
    private readonly SortedDictionary<int, decimal> values = [];
    private readonly SortedDictionary<string, Split> timed = new(StringComparer.Ordinal);
    private (int Step, Split FromCap)? nearCap;
    private readonly List<(int OpenThen, int Step, int Reps)> owed = [];
    private int highest;
    private int scored;
    private (int Step, int Count)? atCap;
    private long reachedMs;
    private int tagFaults;
    private StopReason? stopped;
    private ReadBack? readBack;

    /// <summary>When the judge last called the head judge.</summary>
    public Instant LastCall { get; private set; } = new(long.MinValue);

    /// <summary>Plays one tap that stands.</summary>
    public void Take(PlacedTap placed, TapStanding standing)
    {
        var duty = standing.DutyOf(placed);
        switch (placed.Tap)
        {
            case HeatFact.HeadJudgeCalled:
                LastCall = placed.At;
                break;
            case HeatFact.ScoreReadBack read:
                readBack = new ReadBack(read.Agreed, read.Name);
                break;
            case HeatFact.FinishTimed:
                TakeTime(placed);
                break;
            case HeatFact.Done done when duty == Duty.Witness:
                witnessed.AddRange(done.TimeKnown && SplitOf(placed) is { } seen ? [(done.Step, seen)] : []);
                break;
            case HeatFact.Undone:
                break;
            case var tap when duty == Duty.Primary:
                TakePrimary(placed, tap, standing);
                break;
        }
    }

    /// <summary>Plays a ruling that moves the lane.</summary>
    public void Rule(HeatFact ruling)
    {
        switch (ruling)
        {
            case HeatFact.SentBack back:
                SendBack(back.Step);
                break;
            case HeatFact.RepsOwed reps:
                owed.Add((scored + 1, reps.Step, reps.Reps));
                break;
        }
    }

    /// <summary>What the walk came to.</summary>
    public LaneState Result(LaneEntry entry, PlanVersion version, TapStanding standing)
    {
        Compare(standing);
        var open = plan.Find(scored + 1);
        var shown = atCap is { } cap && cap.Step == scored + 1 ? cap.Count : Counted();
        var owing = owed.Where(debt => debt.OpenThen == scored + 1).ToList();
        return new LaneState
        {
            Entry = entry,
            Plan = plan,
            PlanVersion = version.Version,
            Open = highest + 1,
            DoneSteps = scored,
            Count = open is null ? 0 : Math.Min(shown, open.Quantity),
            Splits = splits.ToItems(),
            ReachedMs = reachedMs,
            Worth = Math.Max(0, plan.WorthThrough(scored) + Partial(open, shown) - owing.Sum(debt => WorthOf(plan.Find(debt.Step), debt.Reps))),
            Finish = Finish(),
            NearCap = nearCap?.FromCap,
            Stopped = stopped,
            NoReps = noReps.ToItems(),
            TagFaults = tagFaults,
            Owed = owing.Sum(debt => debt.Reps),
            Substitutes = substitutes.Select(pair => (pair.Key, pair.Value)).ToItems(),
            Values = values.Select(pair => (pair.Key, pair.Value)).ToItems(),
            TimedFinishes = timed.Values.ToItems(),
            ReadBack = readBack,
            Flagged = standing.Flagged(),
        };
    }

    private void TakeTime(PlacedTap placed)
    {
        if (SplitOf(placed) is { } finish && (timed.Count < Timing.Timekeepers.Most || timed.ContainsKey(placed.Tap.Seat.Value)))
        {
            timed[placed.Tap.Seat.Value] = finish;
        }
    }

    /// <summary>The judge says that all is done; the timekeepers, where there are any, say when.</summary>
    private Split? Finish()
    {
        if (scored != plan.LastStep || scored == 0)
        {
            return null;
        }

        return Timing.Timekeepers.Combine(timekeepers, [.. timed.Values.Select(split => split.LaneMs)]) is { } combined
            ? new Split(combined, timed.Values.Max(split => split.UncertaintyMs), timed.Values.First().Fact)
            : splits[^1];
    }

    /// <summary>Remembers the scoring step nearest to the cap, on either side of it.</summary>
    private void LookAtCap(int step, PlacedTap placed)
    {
        if (clock.FromCapMs(placed.At) is { } fromCapMs && (nearCap is not { } near || Math.Abs(fromCapMs) < Math.Abs(near.FromCap.LaneMs)))
        {
            nearCap = (step, new Split(fromCapMs, placed.Tap.UncertaintyMs, placed.Tap.Id));
        }
    }

    private void TakePrimary(PlacedTap placed, HeatFact.Floor tap, TapStanding standing)
    {
        switch (tap)
        {
            case HeatFact.Done done:
                Reach(done, placed, standing);
                break;
            case HeatFact.CountReached reached when reached.Step > highest:
                CountTo(reached, placed, standing);
                break;
            case HeatFact.CountReached reached:
                standing.Flag(reached.Id, FactFlags.Repeat);
                break;
            case HeatFact.NoRep noRep:
                noReps[noRep.Step - 1]++;
                break;
            case HeatFact.TagFault:
                tagFaults++;
                break;
            case HeatFact.AthleteWorking working:
                substitutes[working.Step] = working.Athlete;
                break;
            case HeatFact.RepsAtCap cap:
                atCap = (cap.Step, cap.Count);
                break;
            case HeatFact.LaneStopped stop:
                stopped ??= stop.Reason;
                break;
        }
    }

    private void Reach(HeatFact.Done done, PlacedTap placed, TapStanding standing)
    {
        if (done.Step <= highest)
        {
            standing.Flag(done.Id, FactFlags.Repeat);
            return;
        }

        var split = done.TimeKnown ? SplitOf(placed) : null;
        if (split is { } known && known.LaneMs < EarliestMs(done.Step))
        {
            standing.Flag(done.Id, FactFlags.Implausible);
        }

        if (done.TimeKnown)
        {
            LookAtCap(done.Step, placed);
        }

        highest = done.Step;
        if (Closed(done.Id, placed, standing))
        {
            return;
        }

        scored = done.Step;
        splits[done.Step - 1] = split;
        reachedMs = Math.Max(0, LaneMs(placed));
        if (done is HeatFact.ValueEntered value)
        {
            values[done.Step] = value.Value;
        }
    }

    private void CountTo(HeatFact.CountReached reached, PlacedTap placed, TapStanding standing)
    {
        if (Closed(reached.Id, placed, standing))
        {
            return;
        }

        // A count says nothing of the steps before it: it waits until its own step is the open one. One that adds no worth makes nobody later.
        var worth = Partial(plan.Find(scored + 1), Counted());
        counts[reached.Step] = reached.Count;
        if (Partial(plan.Find(scored + 1), Counted()) != worth)
        {
            reachedMs = Math.Max(0, LaneMs(placed));
        }
    }

    /// <summary>What has been counted of the open set; nothing in a heat that counts sets only.</summary>
    private int Counted() => counting == Counting.Reps ? counts.GetValueOrDefault(scored + 1) : 0;

    /// <summary>After the cap or after the team stopped nothing scores any more.</summary>
    private bool Closed(FactId fact, PlacedTap placed, TapStanding standing)
    {
        var why = (clock.AfterCap(placed.At) ? FactFlags.AfterCap : FactFlags.None) | (stopped is null ? FactFlags.None : FactFlags.AfterStop);
        standing.Flag(fact, why);
        return why != FactFlags.None;
    }

    private void SendBack(int step)
    {
        var before = Math.Max(0, Math.Min(step, plan.LastStep + 1) - 1);
        highest = Math.Min(highest, before);
        timed.Clear();
        nearCap = nearCap is { } near && near.Step > before ? null : nearCap;
        foreach (var undone in counts.Keys.Where(counted => counted > before).ToList())
        {
            counts.Remove(undone);
        }

        if (scored <= before)
        {
            return;
        }

        scored = before;
        reachedMs = before == 0 ? 0 : splits[before - 1]?.LaneMs ?? reachedMs;
        Array.Clear(splits, before, splits.Length - before);
    }

    private long EarliestMs(int step)
    {
        var from = highest;
        while (from > 0 && splits[from - 1] is null)
        {
            from--;
        }

        var earliestMs = from == 0 ? 0 : splits[from - 1]!.Value.LaneMs;
        for (var next = from; next < step; next++)
        {
            earliestMs += plan.Steps[next].EarliestMs;
        }

        return earliestMs;
    }

    private void Compare(TapStanding standing)
    {
        foreach (var (step, seen) in witnessed)
        {
            if (splits[step - 1] is { } split && Math.Abs(split.LaneMs - seen.LaneMs) > split.UncertaintyMs + seen.UncertaintyMs)
            {
                standing.Flag(seen.Fact, FactFlags.Disagreement);
            }
        }
    }

    private static int Partial(Step? open, int done) =>
        open is null ? 0 : WorthOf(open, Math.Min(done, open.Quantity) / open.Increment * open.Increment);

    private static int WorthOf(Step? step, int units) =>
        step is null || step.Quantity == 0 ? 0 : (int)((long)step.Worth * units / step.Quantity);

    private long LaneMs(PlacedTap placed) => clock.LaneMs(placed.At) ?? 0;

    /// <summary>Null for what was admitted although it lies before GO: it happened, but when in this start nobody knows.</summary>
    private Split? SplitOf(PlacedTap placed) =>
        LaneMs(placed) is >= 0 and var laneMs ? new Split(laneMs, placed.Tap.UncertaintyMs, placed.Tap.Id) : null;
}
