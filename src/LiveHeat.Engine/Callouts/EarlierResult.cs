using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Callouts;

/// <summary>The best of a division, in an earlier heat or in the workout since that heat's result came in.</summary>
/// <param name="Heat">The heat whose result came in.</param>
/// <param name="Title">Its title.</param>
/// <param name="Division">The division's name; null where the heat had only one.</param>
/// <param name="Teams">Their names; several share the place.</param>
/// <param name="Official">Signed, and nothing pending in it: else it may still change, and must not be said as final.</param>
/// <param name="Ms">Their official time; null where they have none.</param>
/// <param name="Worth">What they did, in the score of the workout.</param>
public sealed record EarlierResult(HeatId Heat, string Title, string? Division, Items<string> Teams, bool Official, long? Ms, int Worth)
{
    /// <summary>What the worth counts; null where it is work, in reps.</summary>
    public ScoreUnit? Score { get; init; }

    /// <summary>The worth as rounds and reps; null where the work has an end.</summary>
    public RoundsAndReps? RoundsAndReps { get; init; }

    /// <summary>Who came next; null where nobody did, or by how much says nothing.</summary>
    public string? Second { get; init; }

    /// <summary>How much earlier than the second, milliseconds; null where it is no time.</summary>
    public long? AheadMs { get; init; }

    /// <summary>How much more than the second; null where it is a time.</summary>
    public int? AheadWorth { get; init; }

    /// <summary>They led before that heat too.</summary>
    public bool Kept { get; init; }
}
