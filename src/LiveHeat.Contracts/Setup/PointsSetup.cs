using LiveHeat.Engine;
using LiveHeat.Engine.Points;

namespace LiveHeat.Contracts.Setup;

/// <summary>How the places of several workouts become one order.</summary>
/// <param name="Rule">low: a place is its number in points and the fewest win; high: points from the table and the most win.</param>
public sealed record PointsSetup(PointsKind Rule = PointsKind.Low)
{
    /// <summary>With low: one more worst score is left out once this many workouts count, from 2, rising.</summary>
    public Items<int> ExclusionsFrom { get; init; }

    /// <summary>With high: points of the first place, the second, and so on; never rising.</summary>
    public Items<decimal> Table { get; init; }

    /// <summary>Workouts after which only some teams go on.</summary>
    public Items<CutSetup> Cuts { get; init; }

    /// <summary>The engine's rule.</summary>
    public PointsRule ToRule() => Rule == PointsKind.High ? new PointsRule.High(Table) : new PointsRule.Low(ExclusionsFrom);
}

/// <summary>Which points win.</summary>
public enum PointsKind
{
    /// <summary>The fewest.</summary>
    Low,

    /// <summary>The most.</summary>
    High,
}

/// <summary>How many teams of each division go on after a workout.</summary>
/// <param name="Workout">The workout's id.</param>
/// <param name="GoOn">From 1.</param>
public sealed record CutSetup(string Workout, int GoOn);
