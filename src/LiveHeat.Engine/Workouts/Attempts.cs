namespace LiveHeat.Engine.Workouts;

/// <summary>Attempts at a load: how they are laid out as rounds, and what cannot be.</summary>
public static class Attempts
{
    /// <summary>The most that one athlete has.</summary>
    public const int Most = 10;

    /// <summary>The heaviest load that can be told, in its unit.</summary>
    public const decimal HeaviestLoad = 1000;

    /// <summary>Above nothing, no heavier than can be, and no finer than a hundredth.</summary>
    public static bool CanBe(decimal load) => load is > 0 and <= HeaviestLoad && load * 100 == decimal.Truncate(load * 100);

    /// <summary>In turn, an athlete's attempts are a round; with a tag after every one, the first attempt of all is a round, and so on.</summary>
    internal static Prescription LaidOut(RelayOrder order, Prescription prescription, int attempts, int athletes)
    {
        var (rounds, each) = order switch { RelayOrder.EachMovement => (attempts, athletes), RelayOrder.Together => (1, attempts), _ => (athletes, attempts) };
        return prescription with { Rounds = rounds, Round = Enumerable.Repeat(prescription.Round[0], each).ToItems() };
    }

    /// <summary>What cannot be in a workout for the heaviest load.</summary>
    internal static IEnumerable<FieldError> Errors(Workout workout, ScoringRule.HeaviestLoad rule)
    {
        if (rule.Attempts is < 1 or > Most)
        {
            yield return new("scoring.attempts", WorkoutRefusals.AttemptsCannotBe(rule.Attempts, Most));
        }

        if (workout.Order is RelayOrder.Blocks or RelayOrder.Listed)
        {
            yield return new("order", WorkoutRefusals.AttemptsInTurn);
        }

        var units = workout.Prescriptions.Select(prescription => Lift(workout, prescription)?.Unit).Where(unit => unit is Unit.Kg or Unit.Lb).Distinct().Count();
        if (units > 1)
        {
            yield return new("movements", WorkoutRefusals.KilogramsAndPounds);
        }
    }

    /// <summary>What cannot be in a division's prescription.</summary>
    internal static IEnumerable<FieldError> Errors(Workout workout, Prescription prescription, string at)
    {
        var who = prescription.DivisionName;
        if (prescription.Rounds != 0)
        {
            yield return new($"{at}.rounds", WorkoutRefusals.AttemptsNotRounds(who));
        }

        foreach (var (part, sets) in new[] { ("before", prescription.Before), ("after", prescription.After) })
        {
            if (sets.Count > 0)
            {
                yield return new($"{at}.{part}", WorkoutRefusals.LoadHasNoOtherWork(who));
            }
        }

        if (prescription.Round.Count != 1)
        {
            yield return new($"{at}.round", WorkoutRefusals.OneLift(who));
        }
        else if (Lift(workout, prescription) is { Unit: not (Unit.Kg or Unit.Lb) } lift)
        {
            yield return new($"{at}.round", WorkoutRefusals.LiftUnit(who, lift.Name));
        }
    }

    /// <summary>The only movement; null where there is none that the workout has.</summary>
    private static Movement? Lift(Workout workout, Prescription prescription) =>
        prescription.Round.Count == 1 ? workout.Movements.FirstOrDefault(movement => movement.Id == prescription.Round[0].Movement) : null;
}
