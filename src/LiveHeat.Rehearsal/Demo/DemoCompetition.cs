using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Demo;

/// <summary>An invented competition to try everything on: six heats, eighteen teams, three workouts: every team does all three, so that there are standings over the whole competition.</summary>
public static class DemoCompetition
{
    public const string Name = "Copper Kettle Relays";

    /// <summary>The lane that a visitor may judge; both of the first heats have it.</summary>
    public static readonly LaneNumber FreeLane = new(5);

    /// <summary>The most lanes that any heat has, from lane 1 without a gap.</summary>
    public const int Lanes = 10;

    private const int BetweenHeatsMs = 15 * 60_000;

    /// <summary>Everything, with the first heat planned for the instant given.</summary>
    public static SetupAll Make(Instant firstHeat) => new(
        new CompetitionSetup(Name, Rounding.UpTenth),
        [new(DemoWorkouts.Open, "Open"), new(DemoWorkouts.Mixed, "Mixed")],
        DemoWorkouts.All,
        [.. DemoTeams.All],
        [
            Heat(1, DemoWorkouts.KettleRun, firstHeat, DemoTeams.First),
            Heat(2, DemoWorkouts.StoneSoup, firstHeat, DemoTeams.Second),
            Heat(3, DemoWorkouts.LastFerry, firstHeat, DemoTeams.First),
            Heat(4, DemoWorkouts.KettleRun, firstHeat, DemoTeams.Second),
            Heat(5, DemoWorkouts.StoneSoup, firstHeat, DemoTeams.First),
            Heat(6, DemoWorkouts.LastFerry, firstHeat, DemoTeams.Second),
        ]);

    private static HeatSetup Heat(int number, Workout workout, Instant first, IReadOnlyList<TeamSetup> teams) => new(
        $"h{number}", number, $"Heat {number}", workout.Id, first + ((number - 1) * BetweenHeatsMs),
        teams.Select((team, i) => new HeatSetupLane(new LaneNumber(i + 1), team.Id)).ToItems());
}
