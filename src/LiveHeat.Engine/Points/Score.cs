namespace LiveHeat.Engine.Points;

/// <summary>What one workout gave a team.</summary>
/// <param name="Workout">Its id.</param>
/// <param name="Place">From 1; null without one.</param>
/// <param name="Points">As the rule gives them.</param>
/// <param name="Taken">Why there is no place.</param>
/// <param name="Excluded">Left out of the total as one of the worst.</param>
/// <param name="Counts">Whether it counts yet: not while other teams have still to do the workout.</param>
/// <param name="Provisional">Not certified yet.</param>
public sealed record Score(string Workout, int? Place, decimal Points, Taken Taken, bool Excluded, bool Counts, bool Provisional);

/// <summary>Points of one workout.</summary>
internal static class Scores
{
    /// <summary>
    /// Points by team. Those who tie share the points of the places that they cover equally (A7); a team without a place has one point more than
    /// there are teams (A5.2), or none with a table.
    /// </summary>
    /// <param name="rule">The rule.</param>
    /// <param name="places">All teams' places.</param>
    /// <param name="entries">How many teams there are in the division.</param>
    public static IReadOnlyDictionary<string, decimal> Of(PointsRule rule, WorkoutPlaces places, int entries)
    {
        var placed = places.Places.Where(place => place.Taken == Taken.Placed).GroupBy(place => place.Place).ToDictionary(group => group.Key, group => group.Count());
        return places.Places.ToDictionary(place => place.Team, place => place.Taken == Taken.Placed
            ? Enumerable.Range(place.Place, placed[place.Place]).Sum(covered => OfPlace(rule, covered)) / placed[place.Place]
            : rule is PointsRule.Low ? entries + 1 : 0);
    }

    private static decimal OfPlace(PointsRule rule, int place) => rule switch
    {
        PointsRule.Low => place,
        PointsRule.High high => place <= high.Table.Count ? high.Table[place - 1] : 0,
        _ => throw new System.Diagnostics.UnreachableException($"{rule.GetType().Name} gives no points."),
    };
}
