namespace LiveHeat.Engine.Standings;

/// <summary>Places with ties: those who tie share a place and the places they cover are not given again (1, 2, 2, 4).</summary>
public static class Ranking
{
    /// <summary>The place of each, in the order given.</summary>
    /// <param name="ranked">Best first.</param>
    /// <param name="tie">Whether two neighbours tie.</param>
    public static int[] Places<T>(IReadOnlyList<T> ranked, Func<T, T, bool> tie)
    {
        var places = new int[ranked.Count];
        for (var i = 0; i < ranked.Count; i++)
        {
            places[i] = i > 0 && tie(ranked[i - 1], ranked[i]) ? places[i - 1] : i + 1;
        }

        return places;
    }
}
