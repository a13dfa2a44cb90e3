using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Rehearsal.Demo;

/// <summary>An invented competition to try everything on: three heats, eighteen teams, three workouts.</summary>
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
            Heat(1, "Heat 1", DemoWorkouts.KettleRun.Id, firstHeat, DemoTeams.First),
            Heat(2, "Heat 2", DemoWorkouts.StoneSoup.Id, firstHeat + BetweenHeatsMs, DemoTeams.Second),
            Heat(3, "Heat 3", DemoWorkouts.LastFerry.Id, firstHeat + (2 * BetweenHeatsMs), DemoTeams.First),
        ]);

    private static HeatSetup Heat(int number, string title, string workout, Instant plannedAt, IReadOnlyList<TeamSetup> teams) => new(
        $"h{number}", number, title, workout, plannedAt,
        teams.Select((team, i) => new HeatSetupLane(new LaneNumber(i + 1), team.Id)).ToItems());
}
