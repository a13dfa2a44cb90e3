using System.Globalization;

namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in a workout, field by field, in words an organiser understands.</summary>
public static class WorkoutCheck
{
    private const int LongestCapMs = 4 * 60 * 60 * 1000;
    private const int MostRounds = 500;
    private const int MostSteps = 2000;
    private const int LargestQuantity = 100_000;

    /// <summary>All that is wrong; empty when the workout can be.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout) =>
        Name(workout).Concat(Order(workout.Order)).Concat(Counted(workout)).Concat(End(workout)).Concat(Scored(workout)).Concat(ConsequenceCheck.Errors(workout)).Concat(Movements(workout.Movements))
            .Concat(workout.Prescriptions.Count == 0
                ? [new FieldError("prescriptions", "The workout has no prescription. Add one for each division that does it.")]
                : workout.Prescriptions.SelectMany((prescription, i) => Repeated(workout, i).Concat(TiebreakCheck.Errors(workout, prescription, Path("prescriptions", i))).Concat(PartsCheck.Errors(workout, prescription, Path("prescriptions", i))).Concat(Prescription(workout, prescription, Path("prescriptions", i)))));

    private static IEnumerable<FieldError> Name(Workout workout)
    {
        if (string.IsNullOrWhiteSpace(workout.Name))
        {
            yield return new("name", "The workout has no name. Give it the one that will be announced.");
        }
    }

    private static IEnumerable<FieldError> Order(RelayOrder order)
    {
        if (order is RelayOrder.Blocks { Size: < 1 })
        {
            yield return new("order.size", "A block has no rounds. Give at least 1.");
        }

        if (order is RelayOrder.Listed listed)
        {
            if (listed.Athletes.Count == 0)
            {
                yield return new("order.athletes", "The list of who does each round names nobody. Write at least one athlete's number.");
            }

            foreach (var (number, i) in listed.Athletes.Select((number, i) => (number, i)).Where(pair => pair.number < 1))
            {
                yield return new(Path("order.athletes", i), $"{number} is nobody's number. Athletes are numbered from 1.");
            }
        }
    }

    private static IEnumerable<FieldError> Counted(Workout workout)
    {
        if (workout.Counting == Counting.Reps && workout.CheckpointEvery < 1)
        {
            yield return new("checkpointEvery", "Reps are counted, but with no checkpoint. Give the number of reps between two reports, from 1.");
        }
    }

    private static IEnumerable<FieldError> End(Workout workout)
    {
        if (workout.Scoring is not (null or ScoringRule.ForTime) && workout.Finish != FinishKind.None)
        {
            yield return new("finish", workout.Scoring is ScoringRule.MostWork
                ? "It is as many rounds as possible, so nobody comes to a finish. Choose no line and no mat."
                : "What is lifted or read is the score, so nobody comes to a finish. Choose no line and no mat.");
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
                yield return new($"{at}.id", $"Two movements have the id {movement.Id}.");
            }
        }
    }

    private static IEnumerable<FieldError> Repeated(Workout workout, int index)
    {
        var prescription = workout.Prescriptions[index];
        if (workout.Prescriptions.Take(index).Any(before => before.Division == prescription.Division))
        {
            yield return new($"{Path("prescriptions", index)}.division", $"{prescription.DivisionName} has two prescriptions. Keep the one that counts.");
        }
    }

    private static IEnumerable<FieldError> Prescription(Workout workout, Prescription prescription, string at)
    {
        var who = prescription.DivisionName;
        if (prescription.CapMs <= 0)
        {
            yield return new($"{at}.capMs", $"{who}: the time cap is zero. Give minutes and seconds above 0:00.");
        }

        if (prescription.CapMs > LongestCapMs)
        {
            yield return new($"{at}.capMs", $"{who}: the time cap is above four hours. Is it in minutes and seconds?");
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
            yield return new($"{at}.rounds", $"{who}: {prescription.Rounds} rounds cannot be. Give 0 to {MostRounds}.");
        }

        if (prescription.Rounds > 0 && prescription.Round.Count == 0)
        {
            yield return new($"{at}.round", $"{who}: there are rounds but no movement in them. Add one, or set the rounds to 0.");
        }

        var rounds = Math.Clamp(prescription.Rounds, 0, MostRounds);
        var sets = prescription.Before.Count + prescription.After.Count + (rounds * prescription.Round.Count);
        if (sets == 0 && prescription.Rounds == 0)
        {
            yield return new($"{at}.rounds", $"{who}: there is nothing to do. Add rounds, or work before or after them.");
        }

        if (sets > MostSteps)
        {
            yield return new($"{at}.rounds", $"{who}: {sets} sets are more than a lane can be judged on ({MostSteps}).");
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
                yield return new($"{Path(at, i)}.movement", $"{who}: the workout has no movement called {set.Movement}. Choose one of its movements.");
            }

            if (set.Quantity is < 1 or > LargestQuantity)
            {
                yield return new($"{Path(at, i)}.quantity", $"{who}: {set.Quantity} {name} cannot be. Give at least 1.");
            }

            if (set.Worth is < 0 or > LargestQuantity)
            {
                yield return new($"{Path(at, i)}.worth", $"{who}: {name} cannot be worth {set.Worth}. Give 0 to {LargestQuantity}.");
            }

            if (set.Increment < 1 || set.Increment > Math.Max(1, set.Quantity))
            {
                yield return new($"{Path(at, i)}.increment", $"{who}: {name} count in steps of {set.Increment}. Give 1 up to the quantity.");
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
                ? $"{lineUp.Name} has no athletes. Write at least one name."
                : $"{lineUp.Name} has {lineUp.Athletes.Count} athletes. A team has at most {LineUp.MostAthletes}.");
        }

        foreach (var i in Enumerable.Range(0, lineUp.Athletes.Count).Where(i => string.IsNullOrWhiteSpace(lineUp.Athletes[i])))
        {
            yield return new($"athletes[{i}]", $"{lineUp.Name}: athlete {i + 1} has no name.");
        }

        if (workout.Prescriptions.All(prescription => prescription.Division != lineUp.Division))
        {
            yield return new("division", $"{lineUp.Name}: {workout.Name} has no prescription for its division ({lineUp.Division}).");
        }

        if (workout.Order is RelayOrder.Listed listed && listed.Athletes.Any(number => number > lineUp.Athletes.Count))
        {
            yield return new("order.athletes", $"{lineUp.Name} has {lineUp.Athletes.Count} athletes; the list names athlete {listed.Athletes.Max()}.");
        }

        foreach (var error in workout.Prescriptions.Where(prescription => prescription.Division == lineUp.Division).SelectMany(prescription => SharedCheck.Errors(prescription, lineUp)))
        {
            yield return error;
        }
    }
}
