namespace LiveHeat.Engine.Workouts;

/// <summary>What becomes of teams of the same score that no time and no tiebreak set parts.</summary>
public enum EqualWork
{
    /// <summary>Who had done as much earlier stands ahead.</summary>
    EarlierAhead,

    /// <summary>They share the place once the heat is over; while it goes on, who got there first stands ahead.</summary>
    Shared,
}

/// <summary>Finds what cannot be in what is said of equal work.</summary>
internal static class EqualWorkCheck
{
    /// <summary>Loads, readings and rounds by the clock share the place: everybody had the same time for them (common practice, no source).</summary>
    public static IEnumerable<FieldError> Errors(Workout workout)
    {
        if (workout.EqualWork == EqualWork.EarlierAhead && AlwaysShared(workout))
        {
            yield return new("equalWork", WorkoutRefusals.EqualWorkIsShared);
        }
    }

    private static bool AlwaysShared(Workout workout) =>
        workout.Scoring is ScoringRule.HeaviestLoad or ScoringRule.MostReading || (workout.Prescriptions.Count > 0 && workout.Prescriptions.All(prescription => prescription.Clock is not null));
}
