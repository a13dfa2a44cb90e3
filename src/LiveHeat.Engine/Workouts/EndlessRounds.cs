namespace LiveHeat.Engine.Workouts;

/// <summary>Rounds again and again until the time is over: how many of them are laid out for a lane, and what cannot be.</summary>
public static class EndlessRounds
{
    /// <summary>No lane has more steps than this, tags included.</summary>
    public const int MostSteps = 1000;

    /// <summary>As many rounds as the fastest possible team could begin before its cap; where nobody knows how fast that is, as many as a lane may have.</summary>
    public static int Of(RelayOrder order, Prescription prescription, IReadOnlyDictionary<string, Movement> movements) =>
        Math.Min(Begun(prescription, set => set.Quantity * movements[set.Movement].FastestSecondsPerUnit), Most(order, prescription));

    /// <summary>What cannot be in a prescription whose rounds have no end.</summary>
    internal static IEnumerable<FieldError> Errors(Workout workout, Prescription prescription, string at)
    {
        var who = prescription.DivisionName;
        if (prescription.Rounds != 0)
        {
            yield return new($"{at}.rounds", WorkoutRefusals.EndlessHasNoNumber(who));
        }

        if (prescription.After.Count > 0)
        {
            yield return new($"{at}.after", WorkoutRefusals.EndlessHasNoAfter(who));
        }

        if (prescription.Round.Count == 0)
        {
            yield return new($"{at}.round", WorkoutRefusals.EndlessRoundIsEmpty(who));
            yield break;
        }

        // Movements that do not exist or take no time have a sentence of their own.
        var begun = Begun(prescription, set => set.Quantity * (workout.Movements.FirstOrDefault(movement => movement.Id == set.Movement)?.SecondsPerUnit ?? double.MaxValue));
        if (prescription.CapMs > 0 && begun > Most(workout.Order, prescription))
        {
            yield return new($"{at}.round", WorkoutRefusals.EndlessTooMany(who, MostSteps));
        }
    }

    /// <summary>Rounds that are begun no later than the cap, at so many seconds a set; never below 1.</summary>
    private static int Begun(Prescription prescription, Func<PrescribedSet, double> seconds)
    {
        var leftSeconds = (prescription.CapMs / 1000.0) - prescription.Before.Sum(seconds);
        var rounds = Math.Floor(leftSeconds / prescription.Round.Sum(seconds)) + 1;
        return double.IsNaN(rounds) || rounds > MostSteps ? MostSteps + 1 : Math.Max(1, (int)rounds);
    }

    private static int Most(RelayOrder order, Prescription prescription)
    {
        var tags = order switch { RelayOrder.Together => 0, RelayOrder.EachMovement => prescription.Round.Count, _ => 1 };
        return (MostSteps - prescription.Before.Count) / (prescription.Round.Count + tags);
    }
}
