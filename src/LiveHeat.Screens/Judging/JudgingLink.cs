using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Judging;

/// <summary>Where a heat's judging is shown.</summary>
public static class JudgingLink
{
    /// <summary>The address, below that of the screens.</summary>
    public static string To(HeatId heat) => $"judging/{Uri.EscapeDataString(heat.Value)}";
}
