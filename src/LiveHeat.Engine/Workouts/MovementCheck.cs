namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in a movement, alone or in a workout.</summary>
public static class MovementCheck
{
    private const int LongestSeconds = 3600;

    /// <summary>All that is wrong.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="at">What its fields' paths begin with: empty, or such as <c>movements[0].</c> with the point.</param>
    public static IEnumerable<FieldError> Errors(Movement movement, string at = "")
    {
        if (string.IsNullOrWhiteSpace(movement.Name))
        {
            yield return new($"{at}name", WorkoutRefusals.MovementWithoutName);
        }

        if (!(movement.SecondsPerUnit is > 0 and < LongestSeconds))
        {
            yield return new($"{at}secondsPerUnit", WorkoutRefusals.ExpectedSeconds(movement.Name, LongestSeconds));
        }

        if (!(movement.FastestSecondsPerUnit >= 0 && movement.FastestSecondsPerUnit <= movement.SecondsPerUnit))
        {
            yield return new($"{at}fastestSecondsPerUnit", WorkoutRefusals.FastestSeconds(movement.Name));
        }
    }
}
