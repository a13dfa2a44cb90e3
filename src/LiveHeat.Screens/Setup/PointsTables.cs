namespace LiveHeat.Screens.Setup;

/// <summary>A few tables of our own to start from; each is to be changed as wanted.</summary>
public static class PointsTables
{
    private const int MostNear = 8;

    /// <summary>One point a place: as many for the first as there are teams, one for the last.</summary>
    /// <param name="teams">In the largest division.</param>
    public static IReadOnlyList<decimal> Even(int teams) => [.. Enumerable.Range(0, Math.Max(teams, 1)).Select(place => (decimal)(Math.Max(teams, 1) - place))];

    /// <summary>Steps that shrink by one to the last: places in front are further apart than those behind.</summary>
    /// <param name="teams">In the largest division.</param>
    public static IReadOnlyList<decimal> Front(int teams) =>
        [.. Enumerable.Range(0, Math.Max(teams, 1)).Select(place => (decimal)((Math.Max(teams, 1) - place) * (Math.Max(teams, 1) - place + 1) / 2))];

    /// <summary>Only the first places give any: each gives twice the next.</summary>
    /// <param name="teams">In the largest division.</param>
    public static IReadOnlyList<decimal> Few(int teams) => [.. Enumerable.Range(0, Math.Clamp(teams / 2, 1, MostNear)).Select(place => (decimal)(1 << (Math.Clamp(teams / 2, 1, MostNear) - place - 1)))];
}
