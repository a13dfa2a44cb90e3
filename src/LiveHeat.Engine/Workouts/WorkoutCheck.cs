using System.Globalization;

namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in a workout, field by field.</summary>
public static class WorkoutCheck
{
    private const int LongestCapMs = 4 * 60 * 60 * 1000;
    private const int MostRounds = 500;
    private const int MostSteps = 2000;
    private const int LargestQuantity = 100_000;

    /// <summary>All that is wrong; empty when the workout can be.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout) =>
        Name(workout).Concat(Order(workout.Order)).Concat(Counted(workout)).Concat(End(workout)).Concat(Scored(workout)).Concat(EqualWorkCheck.Errors(workout)).Concat(ConsequenceCheck.Errors(workout)).Concat(Movements(workout.Movements))
            .Concat(workout.Prescriptions.Count == 0
                ? [new FieldError("prescriptions", WorkoutRefusals.NoPrescriptions)]
                : workout.Prescriptions.SelectMany((prescription, i) => Repeated(workout, i).Concat(TiebreakCheck.Errors(workout, prescription, Path("prescriptions", i))).Concat(PartsCheck.Errors(workout, prescription, Path("prescriptions", i))).Concat(Prescription(workout, prescription, Path("prescriptions", i)))));

    private static IEnumerable<FieldError> Name(Workout workout)
    {
        if (string.IsNullOrWhiteSpace(workout.Name))
        {
            yield return new("name", WorkoutRefusals.WorkoutWithoutName);
        }
    }

    private static IEnumerable<FieldError> Order(RelayOrder order)
    {
        if (order is RelayOrder.Blocks { Size: < 1 })
        {
            yield return new("order.size", WorkoutRefusals.EmptyBlock);
        }

        if (order is RelayOrder.Listed listed)
        {
            if (listed.Athletes.Count == 0)
            {
                yield return new("order.athletes", WorkoutRefusals.ListNamesNobody);
            }

            foreach (var (number, i) in listed.Athletes.Select((number, i) => (number, i)).Where(pair => pair.number < 1))
            {
                yield return new(Path("order.athletes", i), WorkoutRefusals.NobodysNumber(number));
            }
        }
    }

    private static IEnumerable<FieldError> Counted(Workout workout)
    {
        if (workout.Counting == Counting.Reps && workout.CheckpointEvery < 1)
        {
            yield return new("checkpointEvery", WorkoutRefusals.NoCheckpoint);
        }
    }

    private static IEnumerable<FieldError> End(Workout workout)
    {
        if (workout.Scoring is not (null or ScoringRule.ForTime) && workout.Finish != FinishKind.None)
        {
            yield return new("finish", workout.Scoring is ScoringRule.MostWork ? WorkoutRefusals.NobodyFinishesRounds : WorkoutRefusals.NobodyFinishesLoads);
        }
    }

    private static IEnumerable<FieldError> Scored(Workout workout) => workout.Scoring switch
    {
        ScoringRule.HeaviestLoad rule => Attempts.Errors(workout, rule),
        ScoringRule.MostReading => Readings.Errors(workout),
        _ => [],
    };

    private static IEnumerable<FieldError> Movements(Items<Movement> movements)
    {
        var seen = new HashSet<string>();
        foreach (var (movement, i) in movements.Select((movement, i) => (movement, i)))
        {
            var at = Path("movements", i);
            foreach (var error in MovementCheck.Errors(movement, $"{at}."))
            {
                yield return error;
            }

            if (!seen.Add(movement.Id))
            {
                yield return new($"{at}.id", WorkoutRefusals.TwoMovements(movement.Id));
            }
        }
    }

    private static IEnumerable<FieldError> Repeated(Workout workout, int index)
    {
        var prescription = workout.Prescriptions[index];
        if (workout.Prescriptions.Take(index).Any(before => before.Division == prescription.Division))
        {
            yield return new($"{Path("prescriptions", index)}.division", WorkoutRefusals.TwoPrescriptions(prescription.DivisionName));
        }
    }

    private static IEnumerable<FieldError> Prescription(Workout workout, Prescription prescription, string at)
    {
        var who = prescription.DivisionName;
        if (prescription.CapMs <= 0)
        {
            yield return new($"{at}.capMs", WorkoutRefusals.CapIsZero(who));
        }

        if (prescription.CapMs > LongestCapMs)
        {
            yield return new($"{at}.capMs", WorkoutRefusals.CapTooLong(who));
        }

        if (prescription.Clock is { } clock)
        {
            foreach (var error in Windows.Errors(workout, prescription, clock, at).Concat(AllSets(workout, prescription, at)))
            {
                yield return error;
            }

            yield break;
        }

        if (workout.Scoring is ScoringRule.MostWork or ScoringRule.HeaviestLoad)
        {
            var errors = workout.Scoring is ScoringRule.MostWork ? EndlessRounds.Errors(workout, prescription, at) : Attempts.Errors(workout, prescription, at);
            foreach (var error in errors.Concat(AllSets(workout, prescription, at)))
            {
                yield return error;
            }

            yield break;
        }

        if (prescription.Rounds is < 0 or > MostRounds)
        {
            yield return new($"{at}.rounds", WorkoutRefusals.RoundsCannotBe(who, prescription.Rounds, MostRounds));
        }

        if (prescription.Rounds > 0 && prescription.Round.Count == 0)
        {
            yield return new($"{at}.round", WorkoutRefusals.EmptyRounds(who));
        }

        var rounds = Math.Clamp(prescription.Rounds, 0, MostRounds);
        var sets = prescription.Before.Count + prescription.After.Count + (rounds * prescription.Round.Count);
        if (sets == 0 && prescription.Rounds == 0)
        {
            yield return new($"{at}.rounds", WorkoutRefusals.NothingToDo(who));
        }

        if (sets > MostSteps)
        {
            yield return new($"{at}.rounds", WorkoutRefusals.TooManySets(who, sets, MostSteps));
        }

        foreach (var error in AllSets(workout, prescription, at).Concat(workout.Scoring is ScoringRule.MostReading ? Readings.Errors(workout, prescription, at) : []))
        {
            yield return error;
        }
    }

    private static IEnumerable<FieldError> AllSets(Workout workout, Prescription prescription, string at) =>
        Sets(workout, prescription.Before, $"{at}.before", prescription.DivisionName)
            .Concat(Sets(workout, prescription.Round, $"{at}.round", prescription.DivisionName))
            .Concat(Sets(workout, prescription.After, $"{at}.after", prescription.DivisionName));

    private static IEnumerable<FieldError> Sets(Workout workout, Items<PrescribedSet> sets, string at, string who)
    {
        foreach (var (set, i) in sets.Select((set, i) => (set, i)))
        {
            var movement = workout.Movements.FirstOrDefault(movement => movement.Id == set.Movement);
            var name = movement?.Name ?? set.Movement;
            if (movement is null)
            {
                yield return new($"{Path(at, i)}.movement", WorkoutRefusals.NoSuchMovement(who, set.Movement));
            }

            if (set.Quantity is < 1 or > LargestQuantity)
            {
                yield return new($"{Path(at, i)}.quantity", WorkoutRefusals.QuantityCannotBe(who, set.Quantity, name));
            }

            if (set.InRound is { } round && workout.Prescriptions.All(prescription => prescription.Clock is null))
            {
                yield return new($"{Path(at, i)}.inRound", WorkoutRefusals.RoundWithoutClock(who, name, round));
            }

            if (set.Worth is { } worth and (< 0 or > LargestQuantity))
            {
                yield return new($"{Path(at, i)}.worth", WorkoutRefusals.WorthCannotBe(who, name, worth, LargestQuantity));
            }

            if (set.Increment < 1 || set.Increment > Math.Max(1, set.Quantity))
            {
                yield return new($"{Path(at, i)}.increment", WorkoutRefusals.IncrementCannotBe(who, name, set.Increment));
            }

            foreach (var error in SharedCheck.Errors(set, name, Path(at, i), who))
            {
                yield return error;
            }
        }
    }

    private static string Path(string field, int index) => string.Create(CultureInfo.InvariantCulture, $"{field}[{index}]");
}

/// <summary>Finds what cannot be in a line-up.</summary>
public static class LineUpCheck
{
    /// <summary>All that is wrong with the team, and with the team in this workout.</summary>
    public static IEnumerable<FieldError> Errors(LineUp lineUp, Workout workout)
    {
        if (lineUp.Athletes.Count is 0 or > LineUp.MostAthletes)
        {
            yield return new("athletes", lineUp.Athletes.Count == 0
                ? WorkoutRefusals.NoAthletes(lineUp.Name)
                : WorkoutRefusals.TooManyAthletes(lineUp.Name, lineUp.Athletes.Count, LineUp.MostAthletes));
        }

        foreach (var i in Enumerable.Range(0, lineUp.Athletes.Count).Where(i => string.IsNullOrWhiteSpace(lineUp.Athletes[i])))
        {
            yield return new($"athletes[{i}]", WorkoutRefusals.AthleteWithoutName(lineUp.Name, i + 1));
        }

        if (workout.Prescriptions.All(prescription => prescription.Division != lineUp.Division))
        {
            yield return new("division", WorkoutRefusals.NoPrescriptionFor(lineUp.Name, workout.Name, lineUp.Division));
        }

        if (workout.Order is RelayOrder.Listed listed && listed.Athletes.Any(number => number > lineUp.Athletes.Count))
        {
            yield return new("order.athletes", WorkoutRefusals.ListNamesTooMany(lineUp.Athletes.Count, lineUp.Name, listed.Athletes.Max()));
        }

        foreach (var error in workout.Prescriptions.Where(prescription => prescription.Division == lineUp.Division).SelectMany(prescription => SharedCheck.Errors(prescription, lineUp)))
        {
            yield return error;
        }
    }
}
