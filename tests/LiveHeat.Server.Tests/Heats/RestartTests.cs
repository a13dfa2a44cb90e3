using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

/// <summary>The server stops in mid-heat and another starts on the same folder.</summary>
public sealed class RestartTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("restart-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public async Task The_heat_goes_on_with_its_clock_its_judges_and_every_tap()
    {
        var before = await TestFloor.Open(folder.FullName);
        var old = await before.Run(lanes: 2);
        await old[1].Finish(1);
        var offline = old[2].Done(1);
        var frame = await old.Frame();
        var facts = (await before.Organiser.Get($"{old.Path}/facts")).Text;

        await using var after = await before.Restart();
        var heat = old.On(after);

        Assert.Equal(facts, (await after.Organiser.Get($"{heat.Path}/facts")).Text);
        Assert.Equal(frame, await heat.Frame());
        Assert.Equal(("judge", "organiser", "head-judge"), (await Role(heat[1].Phone), await Role(after.Organiser), await Role(after.HeadJudge)));
        Assert.Equal(heat.Id, (await after.Visitor().Get("/api/program")).Json.GetProperty("current").GetString());

        // What a phone did not hear the answer of, it sends again.
        Assert.Equal(TapOutcome.Accepted, (await heat[2].SendOne(offline)).Outcome);
        Assert.Equal(TapOutcome.Known, (await heat[2].SendOne(offline)).Outcome);
        Assert.Equal(FactFlags.None, (await heat[1].Finish(2)).Flags);
        Assert.Equal((40_000, 20_000), ((await heat.Frame()).Lanes[0].SplitMs, (await heat.Frame()).Lanes[1].SplitMs));
        Assert.Equal(frame.Start, (await heat.Frame()).Start);
        await heat.EndAndFreeze();
        await heat.Certify();
        Assert.Equal(Phase.Certified, (await heat.Frame()).Phase);
    }

    [Fact]
    public async Task A_count_down_that_ends_while_no_server_runs_is_a_start_all_the_same()
    {
        var before = await TestFloor.Open(folder.FullName);
        var old = await before.Call(lanes: 1);
        await old.Seat(1, ready: true);
        await old.Do(before.Organiser, "schedule-start", new { inMs = 10_000 });
        old.Start = (await old.Frame()).Start!.Id;
        var goAt = (await old.Frame()).Start!.GoAt;

        before.Time.Advance(TimeSpan.FromSeconds(4));
        await using var after = await before.Restart();
        var heat = old.On(after);
        Assert.Equal((Phase.CountingDown, goAt), ((await heat.Frame()).Phase, (await heat.Frame()).Start!.GoAt));
        after.Time.Advance(TimeSpan.FromSeconds(6));

        Assert.Equal(Phase.Running, (await heat.Frame()).Phase);
        Assert.Equal(FactFlags.None, (await heat[1].Finish(1)).Flags);
    }

    [Fact]
    public async Task A_screen_that_connects_after_the_restart_is_pushed_what_follows()
    {
        var before = await TestFloor.Open(folder.FullName);
        var first = await before.Run(lanes: 1);
        await before.Call(lanes: 1);

        await using var after = await before.Restart();
        await using var board = await HubViewer.Connect(after.Visitor());

        Assert.Equal(first.Id, (await board.Watch("current"))!.Heat.Value);   // the one that runs, though another is called
        var receipt = await first.On(after)[1].Finish(1);
        Assert.Equal(2, (await board.Frame(receipt.Sequence!.Value)).Lanes[0].Open);
    }

    private static async Task<string?> Role(Visitor visitor) => (await visitor.Get("/api/me")).Json.GetProperty("role").GetString();
}
