namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in a tiebreak: it must be a set that every team comes to.</summary>
internal static class TiebreakCheck
{
    /// <summary>All that is wrong.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout, Prescription prescription, string at)
    {
        if (prescription.Tiebreak is not { } tiebreak)
        {
            yield break;
        }

        var who = prescription.DivisionName;
        if (workout.Scoring is ScoringRule.HeaviestLoad rule && prescription.Round.Count == 1)
        {
            // How many athletes a team has is not known here; where it has fewer, no tiebreak holds.
            prescription = Attempts.LaidOut(workout.Order, prescription, Math.Clamp(rule.Attempts, 1, Attempts.Most), LineUp.MostAthletes);
        }

        var sets = tiebreak.Round switch { 0 => prescription.Before, null => prescription.After, { } round => prescription.SetsIn(round) };
        var rounds = workout.Scoring is ScoringRule.MostWork && prescription.Clock is null ? LaidOut(workout, prescription) : prescription.Rounds;
        if (tiebreak.Round is { } number && (number < 0 || number > rounds))
        {
            yield return new($"{at}.tiebreak.round", WorkoutRefusals.TiebreakRound(who, number, rounds));
        }
        else if (tiebreak.Set < 1 || tiebreak.Set > sets.Count)
        {
            yield return new($"{at}.tiebreak.set", sets.Count == 0 ? WorkoutRefusals.TiebreakNowhere(who) : WorkoutRefusals.TiebreakSet(who, tiebreak.Set, sets.Count));
        }
    }

    /// <summary>Rounds of work without an end; where its movements cannot be, they have a sentence of their own.</summary>
    private static int LaidOut(Workout workout, Prescription prescription)
    {
        var movements = workout.Movements.DistinctBy(movement => movement.Id).ToDictionary(movement => movement.Id);
        return prescription.Round.Count > 0 && prescription.Before.Concat(prescription.Round).All(set => movements.ContainsKey(set.Movement))
            ? EndlessRounds.Of(workout.Order, prescription, movements)
            : EndlessRounds.MostSteps;
    }
}
