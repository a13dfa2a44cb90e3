using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>What one athlete did of a set that the team shares.</summary>
/// <param name="Step">The set.</param>
/// <param name="Athlete">A number in the plan's athletes, from 1; 0 where nobody had said who worked.</param>
/// <param name="Units">Units of the set, as counted at the changes.</param>
public readonly record struct Share(int Step, int Athlete, int Units);

/// <summary>Who did how much of shared sets: what is counted from one change to the next belongs to the athlete who worked. One a walk.</summary>
internal sealed class LaneShares(RelayPlan plan)
{
    private readonly Dictionary<int, Pool> pools = [];

    /// <summary>Whether the step is a set that the team shares.</summary>
    public bool Shares(int step) => plan.Find(step) is { MinimumEach: not null };

    /// <summary>Another athlete works from now on.</summary>
    public void Work(int step, int athlete) => Of(step).Athlete = athlete;

    /// <summary>So many units of the set are done, counted from its beginning.</summary>
    public void Reach(int step, int count)
    {
        if (Shares(step))
        {
            var pool = Of(step);
            var units = Math.Clamp(count, 0, plan.Find(step)!.Quantity);
            pool.Units[pool.Athlete] = pool.Units.GetValueOrDefault(pool.Athlete) + units - pool.Counted;
            pool.Counted = units;
        }
    }

    /// <summary>The set is done: the rest is of the athlete who worked last.</summary>
    public void Done(int step) => Reach(step, int.MaxValue);

    /// <summary>What was shared after that step is gone.</summary>
    public void SendBack(int before)
    {
        foreach (var undone in pools.Keys.Where(step => step > before).ToList())
        {
            pools.Remove(undone);
        }
    }

    /// <summary>All shares, by set and athlete.</summary>
    public Items<Share> All() => pools.OrderBy(pair => pair.Key)
        .SelectMany(pair => pair.Value.Units.Where(share => share.Value != 0).OrderBy(share => share.Key).Select(share => new Share(pair.Key, share.Key, share.Value))).ToItems();

    private Pool Of(int step) => pools.TryGetValue(step, out var pool) ? pool : pools[step] = new Pool();

    private sealed class Pool
    {
        public int Athlete { get; set; }

        public int Counted { get; set; }

        public Dictionary<int, int> Units { get; } = [];
    }
}
