namespace LiveHeat.Engine.Points;

/// <summary>Which rule put one of two teams with equal totals ahead.</summary>
public enum TieRule
{
    /// <summary>Counted scores, best to worst: the first that differs decides (A8.1).</summary>
    BestScores,

    /// <summary>The last workout, else the one before it, and so on; scores left out take part (A8.2).</summary>
    LatestWorkout,

    /// <summary>More of the best places: firsts, then seconds, and so on (count-back).</summary>
    CountBack,

    /// <summary>No rule parts them: they share the place.</summary>
    Shared,
}

/// <summary>Why a team is ahead of the next one although their totals are equal.</summary>
/// <param name="Rule">The rule that decided.</param>
/// <param name="Over">The team behind, or beside.</param>
/// <param name="Rank">With best scores: which of them differs, from 1. With count-back: the place that was counted.</param>
/// <param name="Workout">With the latest workout: which.</param>
/// <param name="Own">What the team has there: points, or how often it has the place.</param>
/// <param name="Other">What the other has.</param>
public sealed record TieBreak(TieRule Rule, string Over, int Rank, string? Workout, decimal Own, decimal Other);

/// <summary>Orders teams whose totals are equal.</summary>
internal static class TieBreaks
{
    /// <summary>Negative when <paramref name="left"/> is ahead; 0 when nothing parts them.</summary>
    public static (int Sign, TieBreak? Why) Compare(PointsRule rule, Tally left, Tally right) => rule is PointsRule.Low ? Low(left, right) : High(left, right);

    private static (int Sign, TieBreak? Why) Low(Tally left, Tally right)
    {
        var (own, other) = (left.Counted.Order().ToList(), right.Counted.Order().ToList());
        for (var i = 0; i < Math.Min(own.Count, other.Count); i++)
        {
            if (own[i] != other[i])
            {
                return (own[i].CompareTo(other[i]), new TieBreak(TieRule.BestScores, right.Team, i + 1, null, own[i], other[i]));
            }
        }

        for (var i = left.Scores.Count - 1; i >= 0; i--)
        {
            var (mine, theirs) = (left.Scores[i], right.Scores[i]);
            if (mine is { Counts: true } && theirs is { Counts: true } && mine.Points != theirs.Points)
            {
                return (mine.Points.CompareTo(theirs.Points), new TieBreak(TieRule.LatestWorkout, right.Team, 0, mine.Workout, mine.Points, theirs.Points));
            }
        }

        return (0, null);
    }

    private static (int Sign, TieBreak? Why) High(Tally left, Tally right)
    {
        var last = left.Places.Concat(right.Places).DefaultIfEmpty().Max();
        for (var place = 1; place <= last; place++)
        {
            var (own, other) = (left.Places.Count(one => one == place), right.Places.Count(one => one == place));
            if (own != other)
            {
                return (other.CompareTo(own), new TieBreak(TieRule.CountBack, right.Team, place, null, own, other));
            }
        }

        return (0, null);
    }
}

/// <summary>A team's scores while the order is made.</summary>
/// <param name="Team">The team.</param>
/// <param name="Scores">One a workout, in their order; null where it has none.</param>
internal sealed record Tally(string Team, Items<Score?> Scores)
{
    /// <summary>Points that make up the total.</summary>
    public IEnumerable<decimal> Counted => Scores.Where(score => score is { Counts: true, Excluded: false }).Select(score => score!.Points);

    /// <summary>Places in workouts that count.</summary>
    public IEnumerable<int> Places => Scores.Where(score => score is { Counts: true, Place: not null }).Select(score => score!.Place!.Value);

    /// <summary>The sum of what counts.</summary>
    public decimal Total => Counted.Sum();
}
