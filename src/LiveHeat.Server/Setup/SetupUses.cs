using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Registry;

namespace LiveHeat.Server.Setup;

/// <summary>Finds out who needs a document.</summary>
internal static class SetupUses
{
    private const int MostNamed = 3;

    /// <summary>Why it cannot be deleted; null when it can.</summary>
    public static Telling? Of(string kind, string id, SetupAll all, Func<HeatId, bool> isCalled) => kind switch
    {
        SetupKind.Division => Used(
            SetupRefusals.ThisDivision,
            all.Workouts.Where(workout => workout.Prescriptions.Any(prescription => prescription.Division == id)).Select(workout => workout.Name)
                .Concat(all.Teams.Where(team => team.Division == id).Select(team => team.Name))),
        SetupKind.Workout => Used(SetupRefusals.ThisWorkout, all.Heats.Where(heat => heat.Workout == id).Select(heat => heat.Title)),
        SetupKind.Team => Used(SetupRefusals.ThisTeam, all.Heats.Where(heat => heat.Lanes.Any(lane => lane.Team == id)).Select(heat => heat.Title)),
        SetupKind.Movement => null,   // a workout has its own copy, and the picture stays
        SetupKind.Heat => isCalled(new HeatId(id)) ? SetupRefusals.HeatWasCalled : null,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This kind of document is not deleted."),
    };

    private static Telling? Used(Telling what, IEnumerable<string> users)
    {
        var names = users.ToList();
        return names.Count switch
        {
            0 => null,
            <= MostNamed => SetupRefusals.Used(what, names.ToItems()),
            var all => SetupRefusals.UsedByMore(all - MostNamed, what, names.Take(MostNamed).ToItems()),
        };
    }
}
