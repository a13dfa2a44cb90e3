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
            yield return new("penalty.addMs", "A penalty is from 0 to 60 minutes.");
        }

        if (workout.Penalty is { Reps: < 0 or > MostReps })
        {
            yield return new("penalty.reps", "A penalty is from 0 to 10,000 reps.");
        }

        if (workout.Penalty is { AddMs: 0, Reps: 0 })
        {
            yield return new("penalty.addMs", "The penalty costs nothing. Give seconds or reps, or name no penalty.");
        }

        if (workout is { Penalty: null, Consequences.NeedsPenalty: true })
        {
            yield return new("consequences", "A consequence is the penalty, but the workout names none. Say how many seconds or reps an offence costs.");
        }
    }
}
