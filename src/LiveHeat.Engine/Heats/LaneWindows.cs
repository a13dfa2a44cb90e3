using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>How far a lane came in each round by the clock: what is not done when one is over stays undone. One a walk; does nothing where the work follows no clock.</summary>
internal sealed class LaneWindows(RelayPlan plan)
{
    private readonly int[] scored = plan.Windows.Select(window => window.First - 1).ToArray();

    /// <summary>The round that the step is in; null where the work follows no clock.</summary>
    public Window? Of(int step) => plan.Windows.FirstOrDefault(window => step <= window.Last);

    /// <summary>The round after that of the step; null where there is none.</summary>
    public Window? Next(int step) => plan.Windows.SkipWhile(window => step > window.Last).Skip(1).FirstOrDefault();

    /// <summary>The step is done, and with it all before it in its round.</summary>
    public void Score(int step)
    {
        if (Of(step) is { } window)
        {
            scored[plan.Windows.ToList().IndexOf(window)] = step;
        }
    }

    /// <summary>Nothing after that step is done.</summary>
    public void SendBack(int before)
    {
        for (var i = 0; i < scored.Length; i++)
        {
            scored[i] = Math.Min(scored[i], Math.Max(before, plan.Windows[i].First - 1));
        }
    }

    /// <summary>How far the lane came in each.</summary>
    public Items<RoundDone> All(LaneCounts counts) =>
        scored.Select((done, i) => new RoundDone(done, done < plan.Windows[i].Last ? counts.Shown(done + 1) : 0)).ToItems();

    /// <summary>What all rounds are worth, their open sets with what was counted of them.</summary>
    public int Worth(LaneCounts counts)
    {
        var worth = 0;
        for (var i = 0; i < scored.Length; i++)
        {
            var window = plan.Windows[i];
            worth += plan.WorthThrough(scored[i]) - plan.WorthThrough(window.First - 1) + (scored[i] < window.Last ? counts.Worth(scored[i] + 1) : 0);
        }

        return worth;
    }
}
