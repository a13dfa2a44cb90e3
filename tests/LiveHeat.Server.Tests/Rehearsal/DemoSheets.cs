using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Rehearsal.Demo;

namespace LiveHeat.Server.Rehearsal;

/// <summary>The demo's heats as the server would hand them to a phone.</summary>
internal static class DemoSheets
{
    public static readonly SetupAll Setup = DemoCompetition.Make(new Instant(1_795_600_000_000));

    public static HeatSnapshot Snapshot(HeatSetup heat) => new(
        Setup.Competition.Name, heat.Title, Setup.Workouts.Single(workout => workout.Id == heat.Workout),
        heat.Lanes.Select(lane => (lane.Lane, Team: Setup.Teams.Single(team => team.Id == lane.Team)))
            .Select(pair => new LaneEntry(pair.Lane, pair.Team.Id, pair.Team.Name, pair.Team.Division, pair.Team.Athletes)).ToItems(),
        Setup.Competition.Rounding);

    /// <param name="number">Of the heat, from 1.</param>
    public static Sheet Sheet(int number)
    {
        var heat = Setup.Heats.Single(heat => heat.Number == number);
        var called = new HeatFact.HeatCalled
        {
            Id = new FactId("DDDDDDDDDDDDDDDDDDDDDD", 1),
            Instant = heat.PlannedAt!.Value,
            By = new By("s", "Organiser", Role.Organiser),
            Snapshot = Snapshot(heat),
        };
        return SheetMaking.Of(HeatState.Empty(new HeatId(heat.Id)).Apply(new Entry(1, called.Instant, "s", called)), "e")!;
    }
}
