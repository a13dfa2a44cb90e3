namespace LiveHeat.Engine.Heats;

/// <summary>What witnesses saw done, to be held against the judge's times. One a walk.</summary>
internal sealed class LaneWitnesses(int handTimingMs)
{
    private readonly List<(int Step, Split Seen)> witnessed = [];

    /// <summary>A witness has the step done then.</summary>
    public void Saw(int step, Split seen) => witnessed.Add((step, seen));

    /// <summary>Those that disagree with the judge, flagged, in the order of the witnesses' taps.</summary>
    /// <param name="splits">The judge's times by step; null where unknown.</param>
    /// <param name="standing">Where flags are put.</param>
    public Items<Disagreement> Against(IReadOnlyList<Split?> splits, TapStanding standing)
    {
        var found = new List<Disagreement>();
        foreach (var (step, seen) in witnessed)
        {
            // Two clocks and two hands: two thumbs that saw the same are never quite together.
            if (splits[step - 1] is { } split && Math.Abs(split.LaneMs - seen.LaneMs) > split.UncertaintyMs + seen.UncertaintyMs + (2 * handTimingMs))
            {
                standing.Flag(seen.Fact, FactFlags.Disagreement);
                found.Add(new Disagreement(step, split, seen));
            }
        }

        return found.ToItems();
    }
}
