namespace LiveHeat.Engine.Points;

/// <summary>How places in several workouts become one order. A closed family.</summary>
public abstract record PointsRule
{
    private PointsRule()
    {
    }

    /// <summary>Whether fewer points are better.</summary>
    public bool LowWins => this is Low;

    /// <summary>How many worst scores are left out when so many workouts count.</summary>
    public int Exclusions(int workouts) => this is Low low ? low.ExclusionsFrom.Count(from => workouts >= from) : 0;

    /// <summary>A place is its number in points, and the fewest points win; the worst scores may be left out.</summary>
    /// <remarks>World Sailing, Racing Rules of Sailing, Appendix A: A2.1, A4, A7, A8.</remarks>
    /// <param name="ExclusionsFrom">One more worst score is left out once this many workouts count: 4, 8. Empty: all count.</param>
    public sealed record Low(Items<int> ExclusionsFrom) : PointsRule;

    /// <summary>Points from a table by place, none beyond its end, and the most points win. Ties go by count-back: most firsts, then most seconds.</summary>
    /// <remarks>Motor sport's published practice.</remarks>
    /// <param name="Table">Points of the first place, the second, and so on; never rising, none below 0.</param>
    public sealed record High(Items<decimal> Table) : PointsRule;
}
