namespace LiveHeat.Engine.Workouts;

/// <summary>Machine readings that make the score: what cannot be.</summary>
internal static class Readings
{
    /// <summary>What cannot be in a workout: whatever its readings count is added up.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout)
    {
        if (workout.Prescriptions.SelectMany(prescription => Read(workout, prescription)).Select(movement => movement.Unit).Distinct().Count() > 1)
        {
            yield return new("movements", WorkoutRefusals.MoreThanOneUnit);
        }
    }

    /// <summary>What cannot be in a division's prescription.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout, Prescription prescription, string at)
    {
        if (!Sets(prescription).Any(set => set.Reading))
        {
            yield return new($"{at}.round", WorkoutRefusals.NoReading(prescription.DivisionName));
        }

        if (Read(workout, prescription).FirstOrDefault(movement => movement.Unit is Unit.Kg or Unit.Lb) is { } lift)
        {
            yield return new($"{at}.round", WorkoutRefusals.LoadIsNoReading(prescription.DivisionName, lift.Name));
        }
    }

    private static IEnumerable<PrescribedSet> Sets(Prescription prescription) => prescription.Before.Concat(prescription.Round).Concat(prescription.After);

    private static IEnumerable<Movement> Read(Workout workout, Prescription prescription) =>
        workout.Movements.Where(movement => Sets(prescription).Any(set => set.Reading && set.Movement == movement.Id));
}
