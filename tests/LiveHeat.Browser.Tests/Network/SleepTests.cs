using LiveHeat.Browser.Crash;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting.Faults;

namespace LiveHeat.Browser.Network;

/// <summary>A phone that falls asleep in the middle of a heat: its page stands still, and so does the clock it goes by.</summary>
[Collection(OneAtATime.Name)]
public sealed class SleepTests
{
    private const int SleepMs = 5_000;

    /// <summary>From the listener that notes the touch to the pad's own: a busy machine.</summary>
    private const int TouchMs = 60;

    /// <summary>The page's monotonic clock without the time it slept, as on iPhones, Android, macOS and Linux; on the test's machine it would go on.</summary>
    private const string ClockThatStops = """
        (() => {
          const now = performance.now.bind(performance), stamp = Object.getOwnPropertyDescriptor(Event.prototype, 'timeStamp').get;
          let asleep = 0;
          performance.now = () => now() - asleep;
          Object.defineProperty(Event.prototype, 'timeStamp', { get() { return stamp.call(this) - asleep; } });
          window.slept = ms => { asleep += ms; };
          addEventListener('pointerdown', () => { window.touchedAt = Date.now(); }, true);
        })();
        """;

    [Fact]
    public async Task What_it_records_right_after_waking_has_its_true_time_within_the_stated_uncertainty()
    {
        await using var hall = await ProcessHall.Open(lanes: 2);
        var link = hall.Floor.Link();
        var other = await hall.Floor.Phone(2, link);
        var pad = await hall.Pad(1, link, ClockThatStops);
        await hall.Desk.Go();
        await pad.IsAt("heat");
        await pad.Record("step-done", 1);
        await pad.IsAllSafe();
        await pad.Carries("step-done", 2);
        await JudgePhone.IsSettled(pad.Target);

        var screen = await pad.Browser.NewCDPSessionAsync(pad.Page);
        await screen.SendAsync("Page.setWebLifecycleState", new Dictionary<string, object> { ["state"] = "frozen" });
        other.StepDone(1);
        await hall.Floor.AllSafe();
        await Task.Delay(SleepMs);
        await pad.Page.EvaluateAsync("ms => window.slept(ms)", SleepMs);
        await screen.SendAsync("Page.setWebLifecycleState", new Dictionary<string, object> { ["state"] = "active" });

        await pad.Record("step-done", 2);
        var touchedAt = await pad.Page.EvaluateAsync<long>("touchedAt");
        await pad.IsAllSafe();
        await pad.Carries("step-done", 3);
        Assert.Empty(await hall.Broken());
        var tap = (await hall.Desk.Facts()).Select(line => line.Fact).OfType<HeatFact.StepDone>().Single(done => done.Lane.Value == 1 && done.Step == 2);
        Assert.InRange(Math.Abs(tap.Instant.UnixMs - touchedAt), 0, tap.UncertaintyMs + TouchMs);
        Assert.InRange(tap.UncertaintyMs, 1, 1_000);
    }
}
