using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Paper;

/// <summary>Where a heat's paper cards are entered.</summary>
public static class PaperLink
{
    /// <summary>The address, below that of the screens.</summary>
    public static string To(HeatId heat, LaneNumber? lane = null) => $"paper/{Uri.EscapeDataString(heat.Value)}{(lane is { } number ? $"?lane={number}" : "")}";
}
