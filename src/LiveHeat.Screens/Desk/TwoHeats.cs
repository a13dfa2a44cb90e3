using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Desk;

/// <summary>Two heats that are on the floor at once, or on their way to it, on one screen side by side.</summary>
public static class TwoHeats
{
    /// <summary>Which two: those that are live before those that are called, then by their number; null where there are not two.</summary>
    public static (ProgramHeat Left, ProgramHeat Right)? Of(ProgramList? list) =>
        (list?.Heats ?? []).Where(heat => heat.Phase is Phase.Called or Phase.Armed || HeatTime.IsLive(heat.Phase)).OrderByDescending(heat => HeatTime.IsLive(heat.Phase)).ThenBy(heat => heat.Number)
            .Take(2).ToList() is [var left, var right] ? (left, right) : null;

    /// <summary>The board's address.</summary>
    public static string Board(ProgramHeat left, ProgramHeat right) => $"/board/{Uri.EscapeDataString(left.Heat.Value)}+{Uri.EscapeDataString(right.Heat.Value)}";
}
