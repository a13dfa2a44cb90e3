using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;

namespace LiveHeat.Contracts.Standings;

/// <summary>The standings over the whole competition as anybody may read them, from certified results and, marked so, from heats that run.</summary>
/// <param name="Competition">The competition's name.</param>
/// <param name="Points">How places become points.</param>
/// <param name="Divisions">In the order of the setup.</param>
public sealed record StandingsTable(string Competition, Setup.PointsSetup Points, Items<StandingsDivision> Divisions);

/// <summary>One division's standings.</summary>
/// <param name="Division">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Workouts">In the order of their first heats.</param>
/// <param name="Lines">Best first.</param>
/// <param name="Provisional">Something that counts is not certified yet.</param>
public sealed record StandingsDivision(string Division, string Name, Items<StandingsWorkout> Workouts, Items<StandingsLine> Lines, bool Provisional);

/// <summary>A workout of the standings.</summary>
/// <param name="Workout">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="GoOn">How many teams go on after it; null: all.</param>
/// <param name="Open">Some team has still to do it: it does not count yet.</param>
public sealed record StandingsWorkout(string Workout, string Name, int? GoOn, bool Open);

/// <summary>One team's standing.</summary>
/// <param name="Place">From 1; those who tie share one; null before anything counts.</param>
/// <param name="Tied">Somebody shares the place.</param>
/// <param name="Team">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Total">Points that count.</param>
/// <param name="Scores">One a workout; null where it has none yet.</param>
/// <param name="CutAfter">The workout after which it did not go on.</param>
/// <param name="Ahead">Why it is ahead of the next with the same total.</param>
/// <param name="AheadWords">The same in words: "ahead on best places".</param>
public sealed record StandingsLine(
    int? Place, bool Tied, string Team, string Name, decimal Total, Items<StandingsScore?> Scores, string? CutAfter, TieBreak? Ahead, string? AheadWords);

/// <summary>What a workout gave a team.</summary>
/// <param name="Heat">Where it did it.</param>
/// <param name="Place">In its division over all heats; null without one.</param>
/// <param name="Points">As the rule gives them.</param>
/// <param name="Taken">Why there is no place.</param>
/// <param name="Excluded">Left out of the total.</param>
/// <param name="Counts">Whether it counts yet.</param>
/// <param name="Provisional">Not certified yet.</param>
/// <param name="OfficialMs">Its time; null when it did not finish.</param>
/// <param name="Worth">Worth done.</param>
public sealed record StandingsScore(
    HeatId Heat, int? Place, decimal Points, Taken Taken, bool Excluded, bool Counts, bool Provisional, long? OfficialMs, int Worth)
{
    /// <summary>What the worth counts; null where it is work, in reps.</summary>
    public Engine.Workouts.ScoreUnit? Score { get; init; }

    /// <summary>The worth as rounds and reps; null where the work has an end.</summary>
    public Engine.Scoring.RoundsAndReps? RoundsAndReps { get; init; }
}
