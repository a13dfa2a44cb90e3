namespace LiveHeat.Screens.Announcer;

/// <summary>How likely a place is, as a team's card tells it.</summary>
/// <param name="Place">From 1; with <paramref name="OrLater"/> the first of those that are told together.</param>
/// <param name="OrLater">This place or any after it.</param>
/// <param name="Share">0 to 1, rounded to twentieths: a chance is no better known.</param>
public sealed record PlaceChance(int Place, bool OrLater, double Share)
{
    private const double Steps = 20;

    /// <summary>So many places have a line of their own.</summary>
    private const int Alone = 3;

    /// <summary>Those worth telling, the best place first: none where nothing is foretold, or where there is no doubt left.</summary>
    /// <param name="places">The chance of each place among lanes of the same prescription; null when too little is known.</param>
    public static IReadOnlyList<PlaceChance> Of(IReadOnlyList<double>? places)
    {
        if (places is not { Count: > 0 })
        {
            return [];
        }

        var later = new PlaceChance(Alone + 1, true, places.Count > Alone ? Rounded(1 - places.Take(Alone).Sum()) : 0);
        var told = places.Take(Alone).Select((share, i) => new PlaceChance(i + 1, false, Rounded(share))).Append(later).Where(chance => chance.Share > 0).ToList();
        return told.Count > 1 ? told : [];
    }

    private static double Rounded(double share) => Math.Round(Math.Clamp(share, 0, 1) * Steps) / Steps;
}
