using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>What is done of sets that are not done yet, and what is owed of earlier ones. One a walk.</summary>
internal sealed class LaneCounts(RelayPlan plan, Counting counting)
{
    private readonly Dictionary<int, int> counts = [];
    private readonly List<(int OpenThen, int Step, int Reps)> owed = [];
    private readonly Dictionary<int, int> atCap = [];

    /// <summary>So many units of a set are done. It says nothing of the steps before: it waits until its own step is the open one.</summary>
    public void Reach(int step, int count) => counts[step] = count;

    /// <summary>So many were done when the cap came, or when a round by the clock was over.</summary>
    public void AtCap(int step, int count) => atCap[step] = count;

    /// <summary>Somebody said how many were done when the time was over.</summary>
    public bool IsTold(int step) => atCap.ContainsKey(step);

    /// <summary>Reps of a set are due before the set open now may count.</summary>
    public void Owe(int openNow, int step, int reps) => owed.Add((openNow, step, reps));

    /// <summary>What was counted after that step is gone.</summary>
    public void SendBack(int before)
    {
        foreach (var undone in counts.Keys.Where(counted => counted > before).ToList())
        {
            counts.Remove(undone);
        }
    }

    /// <summary>What taps made of the open set; nothing in a heat that counts sets only.</summary>
    public int Counted(int open) => counting == Counting.Reps ? counts.GetValueOrDefault(open) : 0;

    /// <summary>Units of the open set, by what was told at the cap where something was; 0 when all is done.</summary>
    public int Shown(int open) => plan.Find(open) is { } step ? Math.Min(Told(open), step.Quantity) : 0;

    /// <summary>Reps that are due before the open set may count.</summary>
    public int Owed(int open) => owed.Where(debt => debt.OpenThen == open).Sum(debt => debt.Reps);

    /// <summary>The worth of what taps made of the open set.</summary>
    public int WorthCounted(int open) => Partial(plan.Find(open), Counted(open));

    /// <summary>The worth of the open set less what is owed; may be negative.</summary>
    public int Worth(int open) => Partial(plan.Find(open), Told(open)) - owed.Where(debt => debt.OpenThen == open).Sum(debt => WorthOf(plan.Find(debt.Step), debt.Reps));

    private int Told(int open) => atCap.TryGetValue(open, out var count) ? count : Counted(open);

    /// <summary>Only whole increments are worth anything before the set is done.</summary>
    private static int Partial(Step? open, int done) =>
        open is null ? 0 : WorthOf(open, Math.Min(done, open.Quantity) / open.Increment * open.Increment);

    private static int WorthOf(Step? step, int units) =>
        step is null || step.Quantity == 0 ? 0 : (int)((long)step.Worth * units / step.Quantity);
}
