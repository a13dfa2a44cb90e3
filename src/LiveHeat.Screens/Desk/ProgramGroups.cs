using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Desk;

/// <summary>The heats by what they ask of the desk: on the floor, under review, to come, certified.</summary>
public static class ProgramGroups
{
    /// <summary>The groups that hold any heat, most urgent first; heats by number.</summary>
    public static IReadOnlyList<(string Title, IReadOnlyList<ProgramHeat> Heats)> Of(ProgramList list) =>
        [.. list.Heats.OrderBy(heat => heat.Number).GroupBy(heat => Rank(heat.Phase)).OrderBy(group => group.Key)
            .Select(group => (Title(group.Key), (IReadOnlyList<ProgramHeat>)[.. group]))];

    /// <summary>A heat is reviewed while the next could be called.</summary>
    public static bool ReviewWaits(ProgramList list) => list.Heats.Any(heat => Rank(heat.Phase) == 1) && list.Heats.All(heat => Rank(heat.Phase) != 0);

    /// <summary>The heat to be called now; null while another is on the floor.</summary>
    public static HeatId? Next(ProgramList list) => list.Heats.Any(heat => Rank(heat.Phase) == 0) ? null
        : list.Heats.Where(heat => heat.Phase == Phase.Planned).OrderBy(heat => heat.Number).FirstOrDefault()?.Heat;

    private static int Rank(Phase phase) => phase switch { Phase.Planned => 2, Phase.Certified => 3, Phase.Ended or Phase.Frozen => 1, _ => 0 };

    private static string Title(int rank) => rank switch { 0 => DeskWords.OnTheFloor, 1 => DeskWords.UnderReview, 2 => DeskWords.ToCome, _ => DeskWords.Certified };
}
