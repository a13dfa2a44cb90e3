using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>How far a lane came in each round by the clock: what is not done when one is over stays undone. One a walk; does nothing where the work follows no clock.</summary>
/// <param name="plan">The lane's plan.</param>
/// <param name="decisions">What people decided of steps too close to the end of a round: it moves that end.</param>
internal sealed class LaneWindows(RelayPlan plan, IEnumerable<HeatFact.CapDecided> decisions)
{
    private readonly IReadOnlyList<Window> windows = plan.Windows.Count == 0 ? [] :
        [.. plan.Windows.Select((window, i) => window with { UntilMs = window.UntilMs + decisions.Where(decided => decided.Round == i + 1).Sum(LaneClock.MovedMs) })];
    private readonly SortedDictionary<int, (int Step, bool Counted, Split FromEnd)> near = [];
    private readonly int[] scored = plan.Windows.Select(window => window.First - 1).ToArray();

    /// <summary>The round that the step is in; null where the work follows no clock.</summary>
    public Window? Of(int step) => windows.FirstOrDefault(window => step <= window.Last);

    /// <summary>The round after that of the step; null where there is none.</summary>
    public Window? Next(int step) => windows.SkipWhile(window => step > window.Last).Skip(1).FirstOrDefault();

    /// <summary>Remembers what was done nearest to the end of its round, on either side of it.</summary>
    /// <param name="step">The step.</param>
    /// <param name="counted">Only some of it was counted.</param>
    /// <param name="at">When: lane time.</param>
    public void LookAtEnd(int step, bool counted, Split at)
    {
        var round = RoundOf(step);
        if (round == 0)
        {
            return;
        }

        var fromEnd = at with { LaneMs = at.LaneMs - plan.Windows[round - 1].UntilMs };
        if (!near.TryGetValue(round, out var nearest) || Math.Abs(fromEnd.LaneMs) < Math.Abs(nearest.FromEnd.LaneMs))
        {
            near[round] = (step, counted, fromEnd);
        }
    }

    /// <summary>What was nearest in each round. Where the judge said afterwards how much of the set was done, its counts are not in question.</summary>
    public Items<NearRoundEnd> Near(LaneCounts counts) =>
        near.Where(pair => !(pair.Value.Counted && counts.IsTold(pair.Value.Step))).Select(pair => new NearRoundEnd(pair.Key, pair.Value.FromEnd)).ToItems();

    /// <summary>The step is done, and with it all before it in its round.</summary>
    public void Score(int step)
    {
        if (Of(step) is { } window)
        {
            scored[RoundOf(window.First) - 1] = step;
        }
    }

    /// <summary>Nothing after that step is done.</summary>
    public void SendBack(int before)
    {
        foreach (var (round, _) in near.Where(pair => pair.Value.Step > before).ToList())
        {
            near.Remove(round);
        }

        for (var i = 0; i < scored.Length; i++)
        {
            scored[i] = Math.Min(scored[i], Math.Max(before, plan.Windows[i].First - 1));
        }
    }

    /// <summary>How far the lane came in each.</summary>
    public Items<RoundDone> All(LaneCounts counts) =>
        scored.Select((done, i) => done < plan.Windows[i].Last ? new RoundDone(done, counts.Shown(done + 1)) { Told = counts.IsTold(done + 1) } : new RoundDone(done, 0)).ToItems();

    /// <summary>What each round is worth, its open set with what was counted of it less what is owed; may be negative.</summary>
    public Items<int> Worths(LaneCounts counts) => scored.Select((done, i) => plan.WorthThrough(done) - plan.WorthThrough(plan.Windows[i].First - 1)
        + (done < plan.Windows[i].Last ? counts.Worth(done + 1) : 0)).ToItems();

    /// <summary>From 1; 0 where the work follows no clock.</summary>
    private int RoundOf(int step)
    {
        for (var i = 0; i < plan.Windows.Count; i++)
        {
            if (step <= plan.Windows[i].Last)
            {
                return i + 1;
            }
        }

        return 0;
    }
}
