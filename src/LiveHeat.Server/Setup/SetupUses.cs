using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Registry;

namespace LiveHeat.Server.Setup;

/// <summary>Finds out who needs a document.</summary>
internal static class SetupUses
{
    private const int MostNamed = 3;

    /// <summary>Why it cannot be deleted, in a sentence; null when it can.</summary>
    public static string? Of(string kind, string id, SetupAll all, Func<HeatId, bool> isCalled) => kind switch
    {
        SetupKind.Division => Used(
            "This division",
            all.Workouts.Where(workout => workout.Prescriptions.Any(prescription => prescription.Division == id)).Select(workout => workout.Name)
                .Concat(all.Teams.Where(team => team.Division == id).Select(team => team.Name))),
        SetupKind.Workout => Used("This workout", all.Heats.Where(heat => heat.Workout == id).Select(heat => heat.Title)),
        SetupKind.Team => Used("This team", all.Heats.Where(heat => heat.Lanes.Any(lane => lane.Team == id)).Select(heat => heat.Title)),
        SetupKind.Movement => null,   // a workout has its own copy, and the picture stays
        SetupKind.Heat => isCalled(new HeatId(id)) ? "This heat was called to the floor, so it stays on the record." : null,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind of document is not deleted."),
    };

    private static string? Used(string what, IEnumerable<string> users)
    {
        var names = users.ToList();
        var more = names.Count > MostNamed ? $" and {names.Count - MostNamed} more" : "";
        return names.Count == 0 ? null : $"{what} is used by {string.Join(", ", names.Take(MostNamed))}{more}. Take it out there first.";
    }
}
