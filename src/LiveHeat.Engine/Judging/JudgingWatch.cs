using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Judging;

/// <summary>How a lane's no-reps compare with the floor's.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Reps">Reps that counted.</param>
/// <param name="NoReps">No-reps given.</param>
/// <param name="Expected">No-reps that the floor's rate for these movements makes of these reps.</param>
/// <param name="Share">No-reps of all tries, with its 95 % interval.</param>
/// <param name="Low">Fewer than this stands out.</param>
/// <param name="High">More than this stands out.</param>
/// <param name="StandsOut">A question for the head judge, never a verdict: the athletes may differ, not the judge.</param>
/// <param name="SinceMs">Lane time at which it first stood out; null when it does not.</param>
public sealed record LaneWatch(LaneNumber Lane, int Reps, int NoReps, double Expected, Interval Share, int Low, int High, bool StandsOut, long? SinceMs)
{
    /// <summary>No-reps of all tries, 0 to 1; 0 with none.</summary>
    public double Rate => Reps + NoReps == 0 ? 0 : (double)NoReps / (Reps + NoReps);
}

/// <summary>
/// Watches for a lane that is judged otherwise than the floor: its no-reps are compared with those of the other lanes in the same movements. A lane is looked at
/// each time it has done twice as many reps as at the look before, and when it is through, and a look asks so rarely that all looks at all lanes of a heat raise
/// a question in at most one heat of twenty where all are judged alike.
/// </summary>
public static class JudgingWatch
{
    /// <summary>At most this share of heats raises a question when all lanes are judged alike.</summary>
    public const double FalseAlarms = 0.05;

    /// <summary>Reps of a lane at the first look; fewer say nothing.</summary>
    public const int FirstLook = 20;

    /// <summary>Every lane that has done something, in lane order.</summary>
    /// <param name="sets">All sets done so far; a lane's own in its order.</param>
    /// <param name="planned">Reps that the longest plan asks of a lane: how many looks there will be.</param>
    public static Items<LaneWatch> Of(IReadOnlyList<JudgedSet> sets, int planned)
    {
        var lanes = sets.GroupBy(set => set.Lane).OrderBy(group => group.Key).ToList();
        var looks = Looks(planned).ToList();
        return lanes.Select(own => Watch(own.ToList(), sets, looks, FalseAlarms / lanes.Count / looks.Count / 2)).ToItems();     // either way
    }

    /// <summary>The reps after which a lane is looked at: twice as many each time, and all of them.</summary>
    private static IEnumerable<int> Looks(int planned)
    {
        for (var reps = FirstLook; reps < planned; reps *= 2)
        {
            yield return reps;
        }

        yield return planned;
    }

    private static LaneWatch Watch(List<JudgedSet> own, IReadOnlyList<JudgedSet> all, List<int> looks, double allowed)
    {
        long? since = null;
        var (reps, look) = (0, 0);
        for (var done = 1; done <= own.Count && since is null; done++)
        {
            reps += own[done - 1].Reps;
            var due = looks.Count(at => at <= reps);
            if (due == look)
            {
                continue;
            }

            look = due;
            var at = own[done - 1].DoneMs;
            var floor = all.Where(set => set.DoneMs <= at || set.Lane == own[0].Lane).ToList();
            if (Tails(own.Take(done).ToList(), floor, allowed) is { } tails && (tails.NoReps < tails.Low || tails.NoReps > tails.High))
            {
                since = at;
            }
        }

        var noReps = own.Sum(set => set.NoReps);
        reps = own.Sum(set => set.Reps);
        var now = Tails(own, all, allowed);
        return new LaneWatch(own[0].Lane, reps, noReps, now?.Expected ?? noReps, Interval.Wilson(noReps, reps + noReps), now?.Low ?? 0, now?.High ?? int.MaxValue, since is not null, since);
    }

    /// <summary>The lane's number and the limits within which all but a share of <paramref name="allowed"/> on either side lie; null when nobody else did these movements.</summary>
    private static (int NoReps, double Expected, int Low, int High)? Tails(List<JudgedSet> own, IReadOnlyList<JudgedSet> floor, double allowed)
    {
        double[] chances = [1];
        var (noReps, compared) = (0, false);
        foreach (var movement in own.GroupBy(set => set.Movement))
        {
            var others = floor.Where(set => set.Movement == movement.Key && set.Lane != own[0].Lane).ToList();
            if (others.Count == 0)
            {
                continue;
            }

            compared = true;
            var mine = movement.Sum(set => set.NoReps);
            noReps += mine;
            chances = NoRepLaw.Sum(chances, NoRepLaw.Chances(movement.Sum(set => set.Reps), others.Sum(set => set.Reps), mine + others.Sum(set => set.NoReps)));
        }

        if (!compared)
        {
            return null;
        }

        var (low, below) = (0, 0.0);
        while (low < chances.Length && below + chances[low] <= allowed)
        {
            below += chances[low++];
        }

        var (high, above) = (chances.Length - 1, 0.0);
        while (high >= 0 && above + chances[high] <= allowed)
        {
            above += chances[high--];
        }

        return (noReps, chances.Select((chance, k) => chance * k).Sum(), low, high);
    }
}
