using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>An attempt that counts: who tried, at what load, and whether it was a good lift.</summary>
/// <param name="Step">The step, from 1.</param>
/// <param name="Athlete">Who tried: a number in the plan's athletes; 0 when the team lifts as one.</param>
/// <param name="Load">In the step's unit.</param>
/// <param name="Good">A good lift.</param>
/// <param name="Fault">Why it was none; null when nobody said.</param>
public readonly record struct JudgedAttempt(int Step, int Athlete, decimal Load, bool Good, string? Fault);

/// <summary>What a lane's confirmed work is worth by its workout's rule, and what was read and lifted on the way. One a walk.</summary>
internal sealed class LaneScore(RelayPlan plan, Counting counting, IEnumerable<HeatFact.CapDecided> decisions)
{
    private readonly SortedDictionary<int, decimal> values = [];
    private readonly SortedDictionary<int, HeatFact.AttemptJudged> attempts = [];
    private readonly HashSet<int> readOff = [];

    /// <summary>Sets that are not done yet, and what is owed.</summary>
    public LaneCounts Counts { get; } = new(plan, counting);

    /// <summary>Who did how much of what the team shares.</summary>
    public LaneShares Shares { get; } = new(plan);

    /// <summary>Rounds by the clock.</summary>
    public LaneWindows Windows { get; } = new(plan, decisions);

    /// <summary>Readings entered, by step.</summary>
    public Items<(int Step, decimal Value)> Values => values.Select(pair => (pair.Key, pair.Value)).ToItems();

    /// <summary>A step that counts is complete: what it says of a value or a load.</summary>
    public void Take(HeatFact.Done done)
    {
        Windows.Score(done.Step);
        Shares.Done(done.Step);
        switch (done)
        {
            case HeatFact.ValueEntered value:
                values[value.Step] = value.Value;
                break;
            case HeatFact.AttemptJudged attempt:
                attempts[attempt.Step] = attempt;
                break;
        }
    }

    /// <summary>
    /// Where readings make the score, a machine is read when its time is over: one value that comes then counts, within rounds by the clock until the next begins.
    /// </summary>
    /// <param name="tap">A tap after the cap or after its round.</param>
    /// <param name="laneMs">When.</param>
    public bool ReadsOff(HeatFact.AtStep tap, long laneMs) =>
        tap is HeatFact.ValueEntered && plan.Scoring is ScoringRule.MostReading && !(Windows.Next(tap.Step)?.FromMs <= laneMs) && readOff.Add(Windows.Of(tap.Step)?.First ?? 0);

    /// <summary>What was counted, read and lifted after that step is gone.</summary>
    public void SendBack(int before)
    {
        Counts.SendBack(before);
        Windows.SendBack(before);
        readOff.Clear();
        Shares.SendBack(before);
        Forget(values, before);
        Forget(attempts, before);
    }

    /// <summary>The attempts so far, in the order of their steps.</summary>
    /// <param name="substitutes">Who worked where the plan names another: step and athlete.</param>
    public Items<JudgedAttempt> Attempts(IReadOnlyDictionary<int, int> substitutes) => attempts.Values.Select(attempt => new JudgedAttempt(
        attempt.Step, substitutes.TryGetValue(attempt.Step, out var athlete) ? athlete : plan.Steps[attempt.Step - 1].Athlete, attempt.Load, attempt.Good, attempt.Fault)).ToItems();

    /// <summary>The worth of all that is done, not negative.</summary>
    /// <param name="scored">The last step that counts; 0 for none.</param>
    /// <param name="tried">The attempts.</param>
    public int Worth(int scored, Items<JudgedAttempt> tried) => plan.Scoring switch
    {
        ScoringRule.HeaviestLoad rule => Loads(rule, tried),
        ScoringRule.MostReading => Work(scored) + values.Values.Sum(plan.Score.WorthOf),
        _ => Work(scored),
    };

    private static void Forget<T>(SortedDictionary<int, T> told, int before)
    {
        foreach (var step in told.Keys.Where(step => step > before).ToList())
        {
            told.Remove(step);
        }
    }

    private int Loads(ScoringRule.HeaviestLoad rule, Items<JudgedAttempt> tried)
    {
        var best = tried.Where(attempt => attempt.Good).GroupBy(attempt => attempt.Athlete).Select(athlete => plan.Score.WorthOf(athlete.Max(attempt => attempt.Load)));
        // Whoever came in for another does not make the team larger.
        return rule.LoadSum == LoadSum.SumOfBest ? best.OrderDescending().Take(plan.TeamOrder.Count).Sum() : best.DefaultIfEmpty(0).Max();
    }

    /// <summary>Sets done, and whole increments of the open one less what is owed.</summary>
    private int Work(int scored) => Math.Max(0, plan.Windows.Count > 0 ? Windows.Worths(Counts).Sum() : plan.WorthThrough(scored) + Counts.Worth(scored + 1));
}
