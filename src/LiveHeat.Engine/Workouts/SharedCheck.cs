namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in sets that several athletes do: synchronised, or shared from a pool.</summary>
internal static class SharedCheck
{
    /// <summary>All that is wrong with one set.</summary>
    public static IEnumerable<FieldError> Errors(PrescribedSet set, string name, string at, string who)
    {
        if (set.Together is { } together and (< 2 or > LineUp.MostAthletes))
        {
            yield return new($"{at}.together", WorkoutRefusals.TogetherHowMany(who, name, together, LineUp.MostAthletes));
        }

        if (set.MinimumEach is { } least && (least < 0 || least > set.Quantity))
        {
            yield return new($"{at}.minimumEach", WorkoutRefusals.MinimumEachHowMany(who, least, set.Quantity, name));
        }

        if (set is { MinimumEach: not null, Together: not null })
        {
            yield return new($"{at}.minimumEach", WorkoutRefusals.SharedOrTogether(who, name));
        }

        if (set is { MinimumEach: not null, Reading: true })
        {
            yield return new($"{at}.minimumEach", WorkoutRefusals.SharedIsCounted(who));
        }
    }

    /// <summary>All that a team is too small or too large for.</summary>
    public static IEnumerable<FieldError> Errors(Prescription prescription, LineUp team)
    {
        var (sets, athletes) = (prescription.Before.Concat(prescription.Round).Concat(prescription.After).ToList(), team.Athletes.Count);
        if (sets.FirstOrDefault(set => set.Together > athletes)?.Together is { } together)
        {
            yield return new("athletes", WorkoutRefusals.TooFewTogether(team.Name, athletes, together));
        }

        if (sets.FirstOrDefault(set => set.MinimumEach is > 0 and var least && (long)least * athletes > set.Quantity) is { MinimumEach: { } each } pool)
        {
            yield return new("athletes", WorkoutRefusals.TooManyForPool(team.Name, athletes, each, pool.Quantity));
        }
    }
}
