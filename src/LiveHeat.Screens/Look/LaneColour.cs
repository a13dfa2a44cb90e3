using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Look;

/// <summary>A lane's tape, as a colour of floor.css.</summary>
public static class LaneColour
{
    private const int Count = 6;

    /// <summary>By number: the same on every screen.</summary>
    public static string Of(LaneNumber lane) => Of((lane.Value - 1) % Count);

    /// <summary>By the sheet's colour, 0 to 5.</summary>
    public static string Of(int colour) => $"var(--tape-{colour})";
}
