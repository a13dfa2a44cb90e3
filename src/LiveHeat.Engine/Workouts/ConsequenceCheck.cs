namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in a workout's penalty and consequences.</summary>
internal static class ConsequenceCheck
{
    /// <summary>An hour, in milliseconds: more is a slip of the finger.</summary>
    private const int MostMs = 3_600_000;

    private const int MostReps = 10_000;

    /// <summary>All that is wrong.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout)
    {
        if (workout.Penalty is { AddMs: < 0 or > MostMs })
        {
            yield return new("penalty.addMs", WorkoutRefusals.PenaltyMinutes);
        }

        if (workout.Penalty is { Reps: < 0 or > MostReps })
        {
            yield return new("penalty.reps", WorkoutRefusals.PenaltyReps(MostReps));
        }

        if (workout.Penalty is { AddMs: 0, Reps: 0 })
        {
            yield return new("penalty.addMs", WorkoutRefusals.PenaltyCostsNothing);
        }

        if (workout is { Penalty: null, Consequences.NeedsPenalty: true })
        {
            yield return new("consequences", WorkoutRefusals.PenaltyMissing);
        }
    }
}
