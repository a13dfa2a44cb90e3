using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Server.Access;
using Microsoft.Extensions.DependencyInjection;

namespace LiveHeat.Server.Setup;

public sealed class SetupReaderTests
{
    [Fact]
    public async Task A_snapshot_has_all_that_a_called_heat_needs()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        await desk.Put("/api/setup/heats/h1", SetupSome.Heat("h1", 1, (2, "t-anvils"), (1, "t-gulls")));
        await desk.Put("/api/setup/competition", new { name = "Breakwater Relays", rounding = "up-second", appealMinutes = 20 });

        var snapshot = await Reader(host).Snapshot(new HeatId("h1"), CancellationToken.None);

        Assert.NotNull(snapshot);
        Assert.Equal(("Breakwater Relays", "Heat 1", "Low Tide", Rounding.UpSecond, 20), (snapshot.Competition, snapshot.Title, snapshot.Workout.Name, snapshot.Rounding, snapshot.AppealMinutes));
        Assert.Equal(
            [new LaneEntry(new(1), "t-gulls", "Gull Street", "open", ["Joss", "Ilka"]), new LaneEntry(new(2), "t-anvils", "Harbour Anvils", "open", ["Joss", "Ilka"])],
            snapshot.Lanes);
        Assert.All(snapshot.Lanes, lane => Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(snapshot.Workout, lane.LineUp())));
    }

    [Fact]
    public async Task An_unknown_heat_has_no_snapshot()
    {
        await using var host = await SmallHost.Start();
        await host.SetUp();

        Assert.Null(await Reader(host).Snapshot(new HeatId("h9"), CancellationToken.None));
    }

    [Fact]
    public async Task A_new_name_of_a_division_reaches_the_workouts()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();

        await desk.Put("/api/setup/divisions/open", new { id = "open", name = "Open relay" });

        var snapshot = await Reader(host).Snapshot(new HeatId("h1"), CancellationToken.None);
        Assert.Equal("Open relay", snapshot!.Workout.Prescriptions[0].DivisionName);
    }

    [Fact]
    public async Task Heats_come_by_number()
    {
        await using var host = await SmallHost.Start();
        var desk = await host.SetUp();
        await desk.Put("/api/setup/heats/a", SetupSome.Heat("a", 10));
        await desk.Put("/api/setup/heats/b", SetupSome.Heat("b", 2));

        Assert.Equal(["h1", "b", "a"], (await Reader(host).Heats(CancellationToken.None)).Select(heat => heat.Id));
    }

    [Fact]
    public async Task Nothing_set_up_is_an_empty_competition()
    {
        await using var host = await SmallHost.Start();

        var all = await Reader(host).All(CancellationToken.None);

        Assert.Equal("", all.Competition.Name);
        Assert.Empty(all.Heats);
    }

    private static SetupReader Reader(SmallHost host) => host.Services.GetRequiredService<SetupReader>();
}
