using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>Walks a lane through its plan, tap by tap in the order they happened. One walk a fold; not kept.</summary>
internal sealed class LaneWalk(RelayPlan plan, LaneClock clock, Counting counting, TimekeeperRule timekeepers, int handTimingMs, Items<HeatFact.CapDecided> decisions)
{
    private readonly Split?[] splits = new Split?[plan.LastStep];
    private readonly int[] noReps = new int[plan.LastStep];
    private readonly LaneScore score = new(plan, counting, decisions);
    private readonly SortedDictionary<int, int> substitutes = [];
    private readonly LaneWitnesses witnesses = new(handTimingMs);
    private readonly LaneFinish finish = new(clock, timekeepers);
    private (int Step, Split FromCap)? nearCap;
    private int highest;
    private int scored;
    private long reachedMs;
    private int tagFaults;
    private StopReason? stopped;
    private long? stoppedMs;
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
                finish.Time(placed);
                standing.Flag(placed.Tap.Id, clock.AfterCap(placed.At) ? FactFlags.AfterCap : FactFlags.None);
                break;
            case HeatFact.Done { TimeKnown: true } done when duty == Duty.Witness && SplitOf(placed) is { } seen:
                witnesses.Saw(done.Step, seen);
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
                score.Counts.Owe(scored + 1, reps.Step, reps.Reps);
                break;
        }
    }

    /// <summary>What the walk came to.</summary>
    public LaneState Result(LaneEntry entry, PlanVersion version, TapStanding standing)
    {
        Settle(standing);
        var disagreements = witnesses.Against(splits, standing);
        var attempts = score.Attempts(substitutes);
        return new LaneState
        {
            Entry = entry,
            Plan = plan,
            PlanVersion = version.Version,
            Open = highest + 1,
            DoneSteps = scored,
            Count = score.Counts.Shown(scored + 1),
            Splits = splits.ToItems(),
            ReachedMs = reachedMs,
            Worth = score.Worth(scored, attempts),
            Finish = scored > 0 && Ends(scored) ? finish.Official ?? splits[^1] : null,
            NearCap = nearCap?.FromCap,
            NearRoundEnds = score.Windows.Near(score.Counts),
            Stopped = stopped,
            StoppedMs = stoppedMs,
            NoReps = noReps.ToItems(),
            TagFaults = tagFaults,
            Owed = score.Counts.Owed(scored + 1),
            Substitutes = substitutes.Select(pair => (pair.Key, pair.Value)).ToItems(),
            Shares = score.Shares.All(),
            Values = score.Values,
            Rounds = score.Windows.All(score.Counts),
            RoundWorths = score.Windows.Worths(score.Counts),
            Clock = clock,
            Attempts = attempts,
            TimedFinishes = finish.Timed,
            ReadBack = readBack,
            Flagged = standing.Flagged(),
            Disagreements = disagreements,
        };
    }

    /// <summary>Whether the last step was in time is for the official time to say, which timekeepers may still have made after the judge's tap.</summary>
    private void Settle(TapStanding standing)
    {
        if (finish.FromCap() is { } fromCap)
        {
            LookAtCap(plan.LastStep, fromCap);
        }

        if (finish.Judged is not { } judged || finish.InTime is not { } inTime || inTime == (scored == plan.LastStep))
        {
            return;
        }

        standing.Flag(judged.Tap.Id, inTime ? FactFlags.None : FactFlags.AfterCap);
        scored = inTime ? plan.LastStep : plan.LastStep - 1;
        splits[^1] = inTime && finish.TimeKnown ? SplitOf(judged) : null;
        reachedMs = inTime ? finish.Official!.Value.LaneMs : scored == 0 ? 0 : splits[scored - 1]?.LaneMs ?? reachedMs;
    }

    /// <summary>The step is the last of work whose end is timed.</summary>
    private bool Ends(int step) => step == plan.LastStep && plan.Timed;

    /// <summary>Remembers the scoring step nearest to the cap, on either side of it.</summary>
    private void LookAtCap(int step, Split fromCap)
    {
        if (nearCap is not { } near || Math.Abs(fromCap.LaneMs) < Math.Abs(near.FromCap.LaneMs))
        {
            nearCap = (step, fromCap);
        }
    }

    private void TakePrimary(PlacedTap placed, HeatFact.Floor tap, TapStanding standing)
    {
        switch (tap)
        {
            case HeatFact.Done done:
                noReps[done.Step - 1] += done is HeatFact.AttemptJudged { Good: false } && done.Step > highest ? 1 : 0;
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
            case HeatFact.AthleteWorking working when score.Shares.Shares(working.Step):
                score.Shares.Work(working.Step, working.Athlete);
                break;
            case HeatFact.AthleteWorking working:
                substitutes[working.Step] = working.Athlete;
                break;
            case HeatFact.RepsAtCap cap:
                score.Counts.AtCap(cap.Step, cap.Count);
                score.Shares.Reach(cap.Step, cap.Count);
                break;
            case HeatFact.LaneStopped stop:
                stoppedMs ??= LaneMs(placed);
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

        if (Ends(done.Step) && stopped is null)
        {
            finish.Judge(placed, done.TimeKnown);
        }
        else if (done.TimeKnown && plan.Windows.Count == 0 && clock.FromCapMs(placed.At) is { } fromCapMs)
        {
            LookAtCap(done.Step, new Split(fromCapMs, placed.Tap.UncertaintyMs, placed.Tap.Id));
        }

        // Where readings make the score, a machine is read when its time is over: that is no question of time.
        if (split is { } at && stopped is null && !(done is HeatFact.ValueEntered && plan.Scoring is ScoringRule.MostReading))
        {
            score.Windows.LookAtEnd(done.Step, counted: false, at);
        }

        highest = done.Step;
        if (Closed(done, placed, standing))
        {
            return;
        }

        scored = done.Step;
        splits[done.Step - 1] = split;
        reachedMs = Math.Max(0, LaneMs(placed));
        score.Take(done);
    }

    private void CountTo(HeatFact.CountReached reached, PlacedTap placed, TapStanding standing)
    {
        if (counting == Counting.Reps && stopped is null && SplitOf(placed) is { } at)
        {
            score.Windows.LookAtEnd(reached.Step, counted: true, at);
        }

        if (Closed(reached, placed, standing))
        {
            return;
        }

        if (score.Windows.Of(reached.Step) is { } window && scored < window.First - 1)
        {
            // The clock went on to the next round, and the lane with it.
            scored = window.First - 1;
            highest = Math.Max(highest, scored);
        }

        // One that adds no worth makes nobody later.
        var worth = score.Counts.WorthCounted(scored + 1);
        score.Counts.Reach(reached.Step, reached.Count);
        score.Shares.Reach(reached.Step, reached.Count);
        if (score.Counts.WorthCounted(scored + 1) != worth)
        {
            reachedMs = Math.Max(0, LaneMs(placed));
        }
    }

    /// <summary>After the cap, after its round by the clock or after the team stopped nothing scores any more.</summary>
    private bool Closed(HeatFact.AtStep tap, PlacedTap placed, TapStanding standing)
    {
        var over = (clock.AfterCap(placed.At) || score.Windows.Of(tap.Step)?.UntilMs < LaneMs(placed)) && !score.ReadsOff(tap, LaneMs(placed));
        var why = (over ? FactFlags.AfterCap : FactFlags.None) | (stopped is null ? FactFlags.None : FactFlags.AfterStop);
        standing.Flag(tap.Id, why);
        return why != FactFlags.None;
    }

    private void SendBack(int step)
    {
        var before = Math.Max(0, Math.Min(step, plan.LastStep + 1) - 1);
        highest = Math.Min(highest, before);
        finish.SendBack(lastStepToo: before < plan.LastStep);
        nearCap = nearCap is { } near && near.Step > before ? null : nearCap;
        score.SendBack(before);
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
        var window = score.Windows.Of(step);
        var (from, begins) = (Math.Max(highest, (window?.First ?? 1) - 1), (window?.First ?? 1) - 1);
        while (from > begins && splits[from - 1] is null)
        {
            from--;
        }

        var earliestMs = from == begins ? window?.FromMs ?? 0 : splits[from - 1]!.Value.LaneMs;
        for (var next = from; next < step; next++)
        {
            earliestMs += plan.Steps[next].EarliestMs;
        }

        return earliestMs;
    }

    private long LaneMs(PlacedTap placed) => clock.LaneMs(placed.At) ?? 0;

    /// <summary>Null for what was admitted although it lies before GO: it happened, but when in this start nobody knows.</summary>
    private Split? SplitOf(PlacedTap placed) =>
        LaneMs(placed) is >= 0 and var laneMs ? new Split(laneMs, placed.Tap.UncertaintyMs, placed.Tap.Id) : null;
}
