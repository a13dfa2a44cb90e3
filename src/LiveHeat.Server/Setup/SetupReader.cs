using System.Text.Json;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Ledger.Registry;

namespace LiveHeat.Server.Setup;

/// <summary>Whether a heat was called to the floor: from then on it is on the ledger for ever.</summary>
internal sealed record CalledHeats(Func<HeatId, bool> IsCalled);

/// <summary>Reads what was set up. Kept in memory between changes: only <see cref="SetupWriter"/> of this process writes the registry's setup.</summary>
internal sealed class SetupReader(HeatRegistry registry)
{
    private readonly Lock turn = new();
    private SetupAll? kept;
    private int version;

    /// <summary>Raised after a change is on disk.</summary>
    public event Action? Changed;

    /// <summary>Everything, as it was at one moment; heats by number.</summary>
    public async Task<SetupAll> All(CancellationToken cancellation)
    {
        int before;
        lock (turn)
        {
            if (kept is not null)
            {
                return kept;
            }

            before = version;
        }

        var all = Read(await registry.Setup.List(cancellation));
        lock (turn)
        {
            // What was read while somebody wrote may be old already.
            kept = before == version ? all : kept;
        }

        return all;
    }

    /// <summary>The heats by number.</summary>
    public async Task<IReadOnlyList<HeatSetup>> Heats(CancellationToken cancellation) => (await All(cancellation)).Heats;

    /// <summary>All there is to know to call a heat; null when there is no such heat.</summary>
    public async Task<HeatSnapshot?> Snapshot(HeatId id, CancellationToken cancellation)
    {
        var all = await All(cancellation);
        if (all.Heats.FirstOrDefault(heat => heat.Id == id.Value) is not { } heat)
        {
            return null;
        }

        var workout = all.Workouts.FirstOrDefault(workout => workout.Id == heat.Workout) ?? throw Broken(heat, $"workout {heat.Workout}");
        var lanes = heat.Lanes.OrderBy(lane => lane.Lane).Select(lane =>
        {
            var team = all.Teams.FirstOrDefault(team => team.Id == lane.Team) ?? throw Broken(heat, $"team {lane.Team}");
            return new LaneEntry(lane.Lane, team.Id, team.Name, team.Division, team.Athletes);
        });
        return new HeatSnapshot(
            all.Competition.Name, heat.Title, workout, lanes.ToItems(), all.Competition.Rounding, all.Competition.Timekeepers, all.Competition.HandTimingMs, heat.RerunOf)
        {
            AppealMinutes = all.Competition.AppealMinutes,
        };
    }

    /// <summary>What is kept is old. Called after the write.</summary>
    internal void Renew()
    {
        lock (turn)
        {
            version++;
            kept = null;
        }

        Changed?.Invoke();
    }

    private static SetupAll Read(IReadOnlyList<SetupDocument> documents)
    {
        var divisions = Of<DivisionSetup>(documents, SetupKind.Division);
        return new SetupAll(
            Of<CompetitionSetup>(documents, SetupKind.Competition).SingleOrDefault() ?? new CompetitionSetup(""),
            divisions,
            [.. Of<Workout>(documents, SetupKind.Workout).Select(workout => workout.Named(divisions))],
            Of<TeamSetup>(documents, SetupKind.Team),
            [.. Of<HeatSetup>(documents, SetupKind.Heat).OrderBy(heat => heat.Number).ThenBy(heat => heat.Id, StringComparer.Ordinal)])
        {
            Movements = Of<LibraryMovement>(documents, SetupKind.Movement),
            Points = Of<PointsSetup>(documents, SetupKind.Points).SingleOrDefault() ?? new PointsSetup(),
        };
    }

    private static IReadOnlyList<T> Of<T>(IReadOnlyList<SetupDocument> documents, string kind) =>
        [.. documents.Where(document => document.Kind == kind).Select(document => JsonSerializer.Deserialize<T>(document.Json, WireJson.Options)!)];

    private static InvalidOperationException Broken(HeatSetup heat, string what) => new($"The registry has the heat {heat.Id} but not its {what}.");
}

/// <summary>A prescription carries its division's name; the division's own document decides what that is.</summary>
internal static class DivisionNames
{
    public static Workout Named(this Workout workout, IReadOnlyList<DivisionSetup> divisions) => workout with
    {
        Prescriptions = workout.Prescriptions.Select(prescription =>
            divisions.FirstOrDefault(division => division.Id == prescription.Division) is { } division ? prescription with { DivisionName = division.Name } : prescription).ToItems(),
    };
}
