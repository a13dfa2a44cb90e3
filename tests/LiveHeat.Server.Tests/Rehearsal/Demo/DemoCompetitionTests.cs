using System.Text.Json;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Demo;

namespace LiveHeat.Server.Rehearsal.Demo;

public class DemoCompetitionTests
{
    private static readonly SetupAll Setup = DemoSheets.Setup;

    [Fact]
    public void Compiles_for_every_lane_of_every_heat()
    {
        foreach (var entry in Setup.Heats.SelectMany(heat => DemoSheets.Snapshot(heat).Lanes.Select(lane => (heat, lane))))
        {
            var compiled = PlanCompiler.Compile(DemoSheets.Snapshot(entry.heat).Workout, entry.lane.LineUp());
            Assert.True(compiled is Compiled.Plan, $"{entry.heat.Title}, {entry.lane.Name}: {compiled}");
        }
    }

    [Fact]
    public void Has_heats_of_8_and_10_lanes_in_turn_without_a_gap()
    {
        Assert.Equal([8, 10, 8, 10, 8, 10], Setup.Heats.Select(heat => heat.Lanes.Count));
        Assert.All(Setup.Heats, heat => Assert.Equal(Enumerable.Range(1, heat.Lanes.Count), heat.Lanes.Select(lane => lane.Lane.Value)));
        Assert.Equal(DemoCompetition.Lanes, Setup.Heats.Max(heat => heat.Lanes.Count));
        Assert.All(Setup.Heats, heat => Assert.Contains(DemoCompetition.FreeLane, heat.Lanes.Select(lane => lane.Lane)));
    }

    [Fact]
    public void Puts_two_divisions_in_the_first_heat()
    {
        var divisions = DemoSheets.Sheet(1).Lanes.Select(lane => lane.DivisionName).Distinct();
        Assert.Equal(["Open", "Mixed"], divisions);
    }

    [Fact]
    public void Every_team_does_every_workout_once() => Assert.Equal(
        Setup.Teams.SelectMany(team => Setup.Workouts.Select(workout => (team.Id, workout.Id))).Order(),
        Setup.Heats.SelectMany(heat => heat.Lanes.Select(lane => (lane.Team, heat.Workout))).Order());

    [Fact]
    public void Never_asks_a_team_into_the_heat_after_its_own()
    {
        foreach (var (heat, next) in Setup.Heats.Zip(Setup.Heats.Skip(1)))
        {
            Assert.Empty(heat.Lanes.Select(lane => lane.Team).Intersect(next.Lanes.Select(lane => lane.Team)));
        }
    }

    [Fact]
    public void Leaves_every_workout_between_70_and_90_percent_of_its_cap_to_an_expected_team()
    {
        foreach (var lane in Enumerable.Range(1, 3).SelectMany(number => DemoSheets.Sheet(number).Lanes))
        {
            Assert.InRange(lane.Steps.Sum(step => (double)step.ExpectedMs) / lane.CapMs, 0.70, 0.90);
        }
    }

    [Fact]
    public void Has_a_relay_in_turn_across_a_line_and_one_that_counts_reps()
    {
        var workouts = Setup.Heats.Select(heat => Setup.Workouts.Single(workout => workout.Id == heat.Workout)).ToList();
        Assert.Equal((new RelayOrder.InTurn(), Counting.Sets, FinishKind.Line), (workouts[0].Order, workouts[0].Counting, workouts[0].Finish));
        Assert.InRange(workouts[0].Prescriptions[0].CapMs, 9 * 60_000, 12 * 60_000);
        Assert.Equal((new RelayOrder.Blocks(2), Counting.Reps), (workouts[1].Order, workouts[1].Counting));
        Assert.IsType<RelayOrder.EachMovement>(workouts[2].Order);
    }

    [Fact]
    public void Names_every_team_and_every_athlete_once()
    {
        Assert.Distinct(Setup.Teams.Select(team => team.Id));
        Assert.Distinct(Setup.Teams.Select(team => team.Name));
        Assert.All(Setup.Teams, team => Assert.Equal(4, team.Athletes.Count));
    }

    [Fact]
    public void Gives_every_movement_a_standard_with_a_caution_and_two_faults()
    {
        foreach (var movement in Setup.Workouts.SelectMany(workout => workout.Movements))
        {
            Assert.NotNull(movement.FullStandard!.Caution);
            Assert.True(movement.Faults.Count >= 2, movement.Name);
        }
    }

    [Fact]
    public void Tells_every_movement_part_by_part_and_what_each_of_its_faults_means()
    {
        foreach (var movement in Setup.Workouts.SelectMany(workout => workout.Movements))
        {
            var full = Assert.IsType<Standard>(movement.FullStandard);
            Assert.All([full.Start, full.Finish, full.Caution!], part => Assert.EndsWith(".", part, StringComparison.Ordinal));
            Assert.Equal(full.InShort(), movement.Standard);
            Assert.NotEmpty(full.Between);
            Assert.NotEmpty(full.Allowed);
            Assert.Equal(movement.Faults, full.Faults.Select(fault => fault.Name).ToItems());
            Assert.All(full.Faults, fault => Assert.True(fault.How.Length > 15, fault.Name));
        }
    }

    [Fact]
    public void Survives_the_wire()
    {
        var json = JsonSerializer.Serialize(Setup, WireJson.Options);
        var read = JsonSerializer.Deserialize<SetupAll>(json, WireJson.Options)!;
        Assert.Equal(json, JsonSerializer.Serialize(read, WireJson.Options));
        Assert.Equal(Setup.Workouts.ToItems(), read.Workouts.ToItems());
    }
}
