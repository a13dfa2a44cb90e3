using LiveHeat.Contracts.Programme;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Server.Board;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Heats;

/// <summary>The list of heats: as called where they were called, as set up where not.</summary>
internal sealed class ProgramReader(HeatSessions sessions, SetupReader setup, BoardMessages messages, Timebase time)
{
    public async Task<ProgramList> Read(CancellationToken cancellation)
    {
        var called = (await sessions.Called()).ToDictionary(session => session.Heat.Value);
        var all = await setup.All(cancellation);
        var teams = all.Teams.ToDictionary(team => team.Id);
        var workouts = all.Workouts.ToDictionary(workout => workout.Id);
        var heats = all.Heats.OrderBy(heat => heat.Number).Select(heat => called.Remove(heat.Id, out var session)
            ? Called(session.State, heat.Number, heat.PlannedAt)
            : new ProgramHeat(
                new HeatId(heat.Id), heat.Number, heat.Title, workouts.GetValueOrDefault(heat.Workout)?.Name ?? "", heat.PlannedAt, Phase.Planned,
                heat.Lanes.OrderBy(lane => lane.Lane).Select(lane => new ProgramLane(
                    lane.Lane, teams.GetValueOrDefault(lane.Team)?.Name ?? "", teams.GetValueOrDefault(lane.Team)?.Division ?? "")).ToItems())).ToList();

        // A heat that was called is on the ledger for ever, even if the setup has forgotten it.
        heats.AddRange(called.Values.OrderBy(session => session.State.CalledAt).Select((session, i) => Called(session.State, heats.Count + i + 1, null)));
        return new ProgramList(all.Competition.Name, sessions.Epoch, sessions.Current()?.Heat, time.Now, heats.ToItems())
        {
            Message = await messages.Read(cancellation),
            Screen = all.Competition.Screen,
        };
    }

    private ProgramHeat Called(HeatState heat, int number, Instant? plannedAt) => new(
        heat.Heat, number, heat.Snapshot!.Title, heat.Snapshot.Workout.Name, plannedAt, heat.PhaseAt(time.Now),
        heat.Lanes.Select(lane => new ProgramLane(lane.Lane, lane.Entry.Name, lane.Plan.DivisionName)).ToItems());
}
