using LiveHeat.Engine.Standings;

namespace LiveHeat.Engine.Points;

/// <summary>A team's line of the overall standings.</summary>
/// <param name="Team">The team.</param>
/// <param name="Place">From 1; those who tie share one.</param>
/// <param name="Tied">Somebody shares the place.</param>
/// <param name="Total">Points that count.</param>
/// <param name="Scores">One a workout, in their order; null where it has none yet.</param>
/// <param name="CutAfter">The workout after which it did not go on; null while it is in.</param>
/// <param name="Ahead">Why it is ahead of the next with the same total, or beside it; null when totals differ.</param>
public sealed record OverallLine(string Team, int Place, bool Tied, decimal Total, Items<Score?> Scores, string? CutAfter, TieBreak? Ahead);

/// <summary>Overall standings of one division.</summary>
/// <param name="Lines">Best first.</param>
/// <param name="Open">Workouts that some team still has to do: shown, not counted yet, for else whoever has yet to go would gain by it.</param>
/// <param name="Provisional">Something that counts is not certified yet.</param>
public sealed record OverallTable(Items<OverallLine> Lines, Items<string> Open, bool Provisional);

/// <summary>Makes one order of several workouts.</summary>
public static class Overall
{
    /// <summary>The standings after all workouts so far.</summary>
    /// <param name="rule">How places become points.</param>
    /// <param name="workouts">In the order of the competition.</param>
    /// <param name="teams">All teams of the division, in the order in which they are shown when nothing parts them.</param>
    public static OverallTable Of(PointsRule rule, Items<WorkoutPlaces> workouts, Items<string> teams)
    {
        var inIt = teams.ToList();
        var cut = new List<OverallLine>();      // last to go first
        var scores = teams.ToDictionary(team => team, _ => new List<Score?>());
        var open = new List<string>();
        foreach (var workout in workouts)
        {
            var whole = inIt.All(team => workout.Of(team) is not null);
            if (!whole)
            {
                open.Add(workout.Workout);
            }

            var points = Scores.Of(rule, workout with { Places = workout.Places.Where(place => inIt.Contains(place.Team)).ToItems() }, inIt.Count);
            foreach (var team in teams)
            {
                scores[team].Add(inIt.Contains(team) && workout.Of(team) is { } place
                    ? new Score(workout.Workout, place.Taken == Taken.Placed ? place.Place : null, points[team], place.Taken, false, whole, place.Provisional)
                    : null);
            }

            if (whole && workout.GoOn is { } goOn && goOn < inIt.Count)
            {
                var order = Rank(rule, inIt, scores);
                var gone = order.Where(line => line.Place > goOn).Select(line => line with { CutAfter = workout.Workout }).ToList();
                cut.InsertRange(0, gone);
                inIt.RemoveAll(team => gone.Exists(line => line.Team == team));
            }
        }

        var lines = Rank(rule, inIt, scores);
        var all = lines.Concat(cut.Select(line => line with { Scores = scores[line.Team].Select((score, i) => i < line.Scores.Count ? line.Scores[i] : score).ToItems() })).ToItems();
        return new OverallTable(all, open.ToItems(), all.Any(line => line.Scores.Any(score => score is { Counts: true, Provisional: true })));
    }

    private static List<OverallLine> Rank(PointsRule rule, List<string> teams, Dictionary<string, List<Score?>> scores)
    {
        var tallies = teams.Select(team => new Tally(team, WithExclusions(rule, scores[team]))).ToList();
        int Compare(Tally left, Tally right)
        {
            var totals = rule.LowWins ? left.Total.CompareTo(right.Total) : right.Total.CompareTo(left.Total);
            return totals != 0 ? totals : TieBreaks.Compare(rule, left, right).Sign;
        }

        var ranked = tallies.OrderBy(tally => tally, Comparer<Tally>.Create(Compare)).ToList();      // stable: the order given where nothing parts them
        var places = Ranking.Places(ranked, (ahead, behind) => Compare(ahead, behind) == 0);
        return ranked.Select((tally, i) => new OverallLine(
            tally.Team, places[i], places.Count(place => place == places[i]) > 1, tally.Total, tally.Scores, null,
            i + 1 < ranked.Count && ranked[i + 1].Total == tally.Total ? Why(rule, tally, ranked[i + 1]) : null)).ToList();
    }

    private static TieBreak Why(PointsRule rule, Tally ahead, Tally behind) =>
        TieBreaks.Compare(rule, ahead, behind).Why ?? new TieBreak(TieRule.Shared, behind.Team, 0, null, ahead.Total, behind.Total);

    /// <summary>The worst scores are left out; of equal ones the earliest (A2.1).</summary>
    private static Items<Score?> WithExclusions(PointsRule rule, List<Score?> scores)
    {
        var counting = scores.Select((score, i) => (Score: score, At: i)).Where(one => one.Score is { Counts: true }).ToList();
        var worst = counting.OrderByDescending(one => one.Score!.Points).ThenBy(one => one.At).Take(Math.Min(rule.Exclusions(counting.Count), Math.Max(0, counting.Count - 1)))
            .Select(one => one.At).ToHashSet();
        return scores.Select((score, i) => worst.Contains(i) ? score! with { Excluded = true } : score).ToItems();
    }
}
