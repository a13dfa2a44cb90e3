namespace LiveHeat.Engine.Workouts;

/// <summary>A team as it stands on its lane.</summary>
/// <param name="Team">The team's id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Division">Its division's id.</param>
/// <param name="Athletes">Names in relay order, 1 to 12.</param>
public sealed record LineUp(string Team, string Name, string Division, Items<string> Athletes)
{
    /// <summary>The largest team.</summary>
    public const int MostAthletes = 12;
}
