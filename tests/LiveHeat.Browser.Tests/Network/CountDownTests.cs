using LiveHeat.Browser.Crash;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Testing.Hosting.Faults;

namespace LiveHeat.Browser.Network;

/// <summary>The server goes in the middle of a count-down and comes back: everybody starts at the instant that was said.</summary>
[Collection(OneAtATime.Name)]
public sealed class CountDownTests
{
    private const int InMs = 12_000;

    /// <summary>A phone looks at its clock ten times a second, on a machine that has other things to do.</summary>
    private const int LateMs = 3_000;

    private const string NoteTheStart = """
        selector => {
          const root = document.querySelector(selector);
          new MutationObserver(() => {
            if (!window.began && (root.dataset.view === 'heat' || root.dataset.scene === 'running')) window.began = Date.now();
          }).observe(root, { attributes: true });
        }
        """;

    [Fact]
    public async Task The_heat_starts_at_the_same_instant_on_the_pad_and_the_board()
    {
        await using var hall = await ProcessHall.Open(lanes: 2);
        var (desk, link) = (hall.Desk, hall.Floor.Link());
        var phone = await hall.Floor.Phone(2, link);
        await phone.Ready(CancellationToken.None);
        var pad = await hall.Pad(1, link);
        var board = await hall.Board(link);
        await FaultFloor.Until(async () => (await desk.Frame()).Lanes.All(lane => lane.Ready), "both lanes are ready");

        await desk.Do(new HeatCommand.ScheduleStart { Id = desk.NewId(), InMs = InMs });
        var start = (await desk.Frame()).Start!;
        await pad.IsAt("countdown");
        await board.Shows("count-down");
        await pad.Page.EvaluateAsync(NoteTheStart, "#pad");
        await board.Page.EvaluateAsync(NoteTheStart, "#board");
        await hall.Floor.Hub.Kill();
        await hall.Floor.Hub.Start();
        Assert.Equal((start.Id, start.GoAt), ((await desk.Frame()).Start!.Id, (await desk.Frame()).Start!.GoAt));

        await pad.IsAt("heat");
        await board.Shows("running");
        foreach (var page in new[] { pad.Page, board.Page })
        {
            var began = await page.EvaluateAsync<long>("began");
            Assert.InRange(began - start.GoAt.UnixMs, -100, LateMs);
        }

        await pad.Record("step-done", 1);
        phone.StepDone(1);
        await pad.IsAllSafe();
        await hall.Floor.AllSafe();
        Assert.Empty(await hall.Broken());
        Assert.All((await desk.Facts()).Select(line => line.Fact).OfType<HeatFact.Floor>(), tap => Assert.Equal(start.Id, tap.Start));
        Assert.All((await desk.Frame()).Lanes, lane => Assert.InRange(lane.SplitMs ?? -1, 0, 60_000));
    }
}
