using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in a workout, by itself and for the teams that stand in its heats.</summary>
internal static class WorkoutSetupCheck
{
    /// <param name="workout">Tidy.</param>
    /// <param name="all">All else; without the heats that a change no longer touches.</param>
    public static IEnumerable<FieldError> Errors(Workout workout, SetupAll all)
    {
        // The engine's check needs every field to be there.
        var text = Text(workout).ToList();
        if (text.Count > 0)
        {
            return text;
        }

        var alone = Divisions(workout, all).Concat(WorkoutCheck.Errors(workout)).ToList();
        return alone.Count > 0 ? alone : InHeats(workout, all);
    }

    private static IEnumerable<FieldError> Text(Workout workout)
    {
        var errors = SetupText.Name("name", SetupRefusals.WorkoutName, workout.Name);
        if (workout.Order is null)
        {
            errors = errors.Append(new("order", SetupRefusals.WhoDoesWhat));
        }

        foreach (var (movement, i) in workout.Movements.Select((movement, i) => (movement, i)))
        {
            var at = $"movements[{i}]";
            errors = errors.Concat(SetupText.Id($"{at}.id", movement.Id))
                .Concat(SetupText.Name($"{at}.name", SetupRefusals.MovementName, movement.Name))
                .Concat(SetupText.Text($"{at}.standard", SetupRefusals.StandardOf(movement.Name), movement.Standard))
                .Concat(movement.Faults.SelectMany((fault, n) => SetupText.Name($"{at}.faults[{n}]", SetupRefusals.Fault, fault)))
                .Concat(movement.FullStandard is { } full ? StandardCheck.Errors(full, $"{at}.fullStandard.") : []);
        }

        return errors.Concat(Sets(workout).SelectMany(one =>
            (one.Set.Movement is null ? [new FieldError($"{one.At}.movement", SetupRefusals.WhichMovement)] : Enumerable.Empty<FieldError>())
                .Concat(one.Set.Load is null ? [] : SetupText.Name($"{one.At}.load", SetupRefusals.Load, one.Set.Load))));
    }

    private static IEnumerable<FieldError> Divisions(Workout workout, SetupAll all)
    {
        foreach (var (prescription, i) in workout.Prescriptions.Select((prescription, i) => (prescription, i)))
        {
            if (all.Divisions.All(division => division.Id != prescription.Division))
            {
                yield return new($"prescriptions[{i}].division", SetupRefusals.NoSuchDivision(prescription.Division));
            }
        }
    }

    private static IEnumerable<FieldError> InHeats(Workout workout, SetupAll all) =>
        from heat in all.Heats
        where heat.Workout == workout.Id
        from lane in heat.Lanes
        from team in all.Teams.Where(team => team.Id == lane.Team)
        from error in LineUpCheck.Errors(team.LineUp(), workout)
        select new FieldError(error.Field == "division" ? "prescriptions" : error.Field, SetupRefusals.InHeat(heat.Title, lane.Lane, error.Why));

    private static IEnumerable<(PrescribedSet Set, string At)> Sets(Workout workout) =>
        workout.Prescriptions.SelectMany((prescription, i) =>
            At(prescription.Before, $"prescriptions[{i}].before").Concat(At(prescription.Round, $"prescriptions[{i}].round")).Concat(At(prescription.After, $"prescriptions[{i}].after")));

    private static IEnumerable<(PrescribedSet Set, string At)> At(Items<PrescribedSet> sets, string list) => sets.Select((set, i) => (set, $"{list}[{i}]"));
}
