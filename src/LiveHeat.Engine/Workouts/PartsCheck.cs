namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in parts that are scored apart: each ends with a set that comes after the end of the part before; the last goes to the end.</summary>
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
        if (workout.Scoring is ScoringRule.HeaviestLoad or ScoringRule.MostReading || prescription.Clock is not null)
        {
            yield return new($"{at}.parts", $"{who}: only work that goes on from set to set has parts that are scored apart. Make a workout of each, or take the parts out.");
            yield break;
        }

        if (parts.Count is 1 or > MostParts)
        {
            yield return new($"{at}.parts", $"{who}: {parts.Count} parts are scored apart. Give 2 to {MostParts}, or none.");
        }

        if (workout.Prescriptions.Any(other => !Names(other).SequenceEqual(Names(prescription))))
        {
            yield return new($"{at}.parts", $"{who}: the parts that are scored apart are not the same as in the other divisions. Give all divisions the same names in the same order.");
        }

        for (var i = 0; i < parts.Count; i++)
        {
            var (part, field) = (parts[i], $"{at}.parts[{i}]");
            if (string.IsNullOrWhiteSpace(part.Name) || parts.Take(i).Any(other => other.Name == part.Name))
            {
                yield return new($"{field}.name", $"{who}: part {i + 1} needs a name of its own, as it will be announced.");
            }

            if ((part.Last is null) != (i == parts.Count - 1))
            {
                yield return new($"{field}.last", part.Last is null
                    ? $"{who}: say with which set the part {part.Name} ends."
                    : $"{who}: the last part, {part.Name}, goes to the end of the work: it needs no last set.");
                continue;
            }

            if (part.Last is not { } last)
            {
                continue;
            }

            var sets = last.Round switch { 0 => prescription.Before, null => prescription.After, _ => prescription.Round };
            var exists = last.Round is null or >= 0 && (workout.Scoring is ScoringRule.MostWork && prescription.Clock is null ? last.Round is 0 or 1 : last.Round is null || last.Round <= prescription.Rounds)
                && last.Set >= 1 && last.Set <= sets.Count;
            var place = (Group: last.Round switch { 0 => 0, null => 2, _ => 1 }, Round: last.Round ?? 0, last.Set);
            if (!exists)
            {
                yield return new($"{field}.last", $"{who}: the part {part.Name} ends with set {last.Set} of {(last.Round switch { 0 => "the work before the rounds", null => "the work after the rounds", var round => $"round {round}" })}, which there is not. Choose a set that every team comes to.");
            }
            else if (place.CompareTo(before) <= 0)
            {
                yield return new($"{field}.last", $"{who}: the part {part.Name} ends before it begins. Put the parts in the order they are done.");
            }

            before = place;
        }
    }

    private static IEnumerable<string> Names(Prescription prescription) => prescription.Parts?.Select(part => part.Name) ?? [];
}
