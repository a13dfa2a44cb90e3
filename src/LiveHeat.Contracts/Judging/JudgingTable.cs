using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Judging;

namespace LiveHeat.Contracts.Judging;

/// <summary>How a heat is judged: for the head judge, as questions, never verdicts. Athletes differ too.</summary>
/// <param name="Heat">The heat.</param>
/// <param name="Title">Its title.</param>
/// <param name="Lanes">Every lane that has done something, in floor order.</param>
/// <param name="FalseAlarms">At most this share of heats asks a question when all lanes are judged alike.</param>
public sealed record JudgingTable(HeatId Heat, string Title, Items<JudgingLane> Lanes, double FalseAlarms);

/// <summary>One lane's no-reps against the other lanes' in the same movements.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Team">The team on it.</param>
/// <param name="Judge">Who judges it now; empty when nobody does.</param>
/// <param name="Reps">Reps of sets that are done.</param>
/// <param name="NoReps">No-reps in them.</param>
/// <param name="Expected">What the floor's rate makes of these reps.</param>
/// <param name="Low">Fewer than this stands out.</param>
/// <param name="High">More than this stands out.</param>
/// <param name="StandsOut">A question for the head judge.</param>
/// <param name="SinceMs">Lane time at which it first stood out.</param>
/// <param name="Rate">No-reps of all tries, 0 to 1, with its 95 % interval.</param>
/// <param name="Movements">The same by movement.</param>
public sealed record JudgingLane(
    LaneNumber Lane, string Team, string Judge, int Reps, int NoReps, double Expected, int Low, int High, bool StandsOut, long? SinceMs, JudgingRate Rate,
    Items<JudgingMovement> Movements);

/// <summary>A share with Wilson's 95 % interval.</summary>
public sealed record JudgingRate(double Rate, double From, double To)
{
    /// <summary>No-reps of all tries.</summary>
    public static JudgingRate Of(int noReps, int reps)
    {
        var interval = Interval.Wilson(noReps, noReps + reps);
        return new JudgingRate(noReps + reps == 0 ? 0 : (double)noReps / (noReps + reps), interval.From, interval.To);
    }
}

/// <summary>A movement on a lane or by a judge, and on the floor.</summary>
/// <param name="Movement">Its name.</param>
/// <param name="Reps">Reps.</param>
/// <param name="NoReps">No-reps.</param>
/// <param name="Rate">Their share.</param>
/// <param name="FloorReps">Reps of everybody else in this movement.</param>
/// <param name="FloorNoReps">Their no-reps.</param>
/// <param name="Floor">Their share.</param>
public sealed record JudgingMovement(string Movement, int Reps, int NoReps, JudgingRate Rate, int FloorReps, int FloorNoReps, JudgingRate Floor);

/// <summary>What one judge gave over the whole competition, beside what all others gave: for training, not for blame.</summary>
/// <param name="Judge">The name given when joining.</param>
/// <param name="Heats">In how many heats.</param>
/// <param name="Movements">By movement.</param>
public sealed record JudgePage(string Judge, int Heats, Items<JudgingMovement> Movements);
