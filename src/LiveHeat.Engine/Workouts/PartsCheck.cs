namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in parts that are scored apart: each ends with a set, by the clock with a round, that comes after the end of the part before; the last goes to the end.</summary>
internal static class PartsCheck
{
    private const int MostParts = 9;

    /// <summary>All that is wrong.</summary>
    public static IEnumerable<FieldError> Errors(Workout workout, Prescription prescription, string at)
    {
        if (prescription.Parts is not { Count: > 0 } parts)
        {
            yield break;
        }

        var (who, before) = (prescription.DivisionName, (Group: -1, Round: 0, Set: 0));
        if (workout.Scoring is ScoringRule.HeaviestLoad)
        {
            yield return new($"{at}.parts", WorkoutRefusals.LoadHasNoParts(who));
            yield break;
        }

        if (parts.Count is 1 or > MostParts)
        {
            yield return new($"{at}.parts", WorkoutRefusals.PartsCount(parts.Count, who, MostParts));
        }

        if (workout.Prescriptions.Any(other => !Names(other).SequenceEqual(Names(prescription))))
        {
            yield return new($"{at}.parts", WorkoutRefusals.PartsDiffer(who));
        }

        for (var i = 0; i < parts.Count; i++)
        {
            var (part, field) = (parts[i], $"{at}.parts[{i}]");
            if (string.IsNullOrWhiteSpace(part.Name) || parts.Take(i).Any(other => other.Name == part.Name))
            {
                yield return new($"{field}.name", WorkoutRefusals.PartNeedsName(who, i + 1));
            }

            if ((part.Last is null) != (i == parts.Count - 1))
            {
                yield return new($"{field}.last", part.Last is null ? WorkoutRefusals.PartNeedsEnd(who, part.Name) : WorkoutRefusals.LastPartHasNoEnd(who, part.Name));
                continue;
            }

            if (part.Last is not { } last)
            {
                continue;
            }

            var sets = last.Round switch { 0 => prescription.Before, null => prescription.After, { } round => prescription.SetsIn(round) };
            var exists = last.Round is null or >= 0 && (workout.Scoring is ScoringRule.MostWork && prescription.Clock is null ? last.Round is 0 or 1 : last.Round is null || last.Round <= prescription.Rounds)
                && last.Set >= 1 && last.Set <= sets.Count && (prescription.Clock is null || last.Set == sets.Count);
            var place = (Group: last.Round switch { 0 => 0, null => 2, _ => 1 }, Round: last.Round ?? 0, last.Set);
            if (!exists)
            {
                yield return new($"{field}.last", last.Round switch
                {
                    0 => WorkoutRefusals.PartEndsBefore(who, part.Name, last.Set),
                    null => WorkoutRefusals.PartEndsAfter(who, part.Name, last.Set),
                    { } round when prescription.Clock is not null => WorkoutRefusals.PartEndsWithClockRound(who, part.Name, round, prescription.Rounds),
                    { } round => WorkoutRefusals.PartEndsInRound(who, part.Name, last.Set, round),
                });
            }
            else if (place.CompareTo(before) <= 0)
            {
                yield return new($"{field}.last", WorkoutRefusals.PartEndsTooEarly(who, part.Name));
            }

            before = place;
        }
    }

    private static IEnumerable<string> Names(Prescription prescription) => prescription.Parts?.Select(part => part.Name) ?? [];
}
