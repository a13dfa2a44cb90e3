namespace LiveHeat.Engine.Workouts;

/// <summary>Finds what cannot be in sets that several athletes do: synchronised, or shared from a pool.</summary>
internal static class SharedCheck
{
    /// <summary>All that is wrong with one set.</summary>
    public static IEnumerable<FieldError> Errors(PrescribedSet set, string name, string at, string who)
    {
        if (set.Together is < 2 or > LineUp.MostAthletes)
        {
            yield return new($"{at}.together", $"{who}: {name} are done by {set.Together} at the same moment. Give 2 to {LineUp.MostAthletes}, or leave it empty for one alone.");
        }

        if (set.MinimumEach < 0 || set.MinimumEach > set.Quantity)
        {
            yield return new($"{at}.minimumEach", $"{who}: each athlete does at least {set.MinimumEach} of {set.Quantity} {name}. Give 0 to {set.Quantity}, or leave it empty where nothing is shared.");
        }

        if (set is { MinimumEach: not null, Together: not null })
        {
            yield return new($"{at}.minimumEach", $"{who}: {name} cannot be both shared from a pool and done at the same moment. Choose one.");
        }

        if (set is { MinimumEach: not null, Reading: true })
        {
            yield return new($"{at}.minimumEach", $"{who}: who did how much of a shared set is counted while it is done, so it is not completed by a reading. Choose one.");
        }
    }

    /// <summary>All that a team is too small or too large for.</summary>
    public static IEnumerable<FieldError> Errors(Prescription prescription, LineUp team)
    {
        var (sets, athletes) = (prescription.Before.Concat(prescription.Round).Concat(prescription.After).ToList(), team.Athletes.Count);
        if (sets.FirstOrDefault(set => set.Together > athletes) is { } synchronised)
        {
            yield return new("athletes", $"{team.Name} has {athletes} athletes; a set of this workout needs {synchronised.Together} at the same moment.");
        }

        if (sets.FirstOrDefault(set => set.MinimumEach is > 0 and var least && (long)least * athletes > set.Quantity) is { } pool)
        {
            yield return new("athletes", $"{team.Name} has {athletes} athletes; at least {pool.MinimumEach} each are more than the {pool.Quantity} of the shared set.");
        }
    }
}
