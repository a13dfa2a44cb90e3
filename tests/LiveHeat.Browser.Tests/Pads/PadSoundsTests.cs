using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;

namespace LiveHeat.Browser.Pads;

/// <summary>What a judge hears: the count-down and GO, the last minute and the cap of the own lane, each once.</summary>
[Collection(OneAtATime.Name)]
public sealed class PadSoundsTests(Hall hall) : ModuleTest(hall)
{
    private const string Told = "async () => (await import('/pad/pad.js')).pad.sounds?.told.map(({ key }) => key.replace(/^\\S+ /, '')) ?? []";

    /// <summary>The heat's longest cap is 15 minutes, the lane's own 10; GO is at 100 s.</summary>
    [Theory]
    [InlineData("working", "beep@97000 beep@98000 beep@99000 go@100000 minute@640000 cap@700000")]
    [InlineData("through", "beep@97000 beep@98000 beep@99000 go@100000")]
    [InlineData("stopped", "beep@97000 beep@98000 beep@99000 go@100000")]
    [InlineData("no heat", "")]
    public async Task A_lane_hears_its_own_cap_and_none_when_it_is_through(string lane, string moments) =>
        Assert.Equal(moments, await Run<string>(["/pad/lane.js", "/floor/sounds/moments.js"], """
            ([{ heardFrame }, { momentsOf }], lane) => {
              const frame = lane === 'no heat' ? null : { phase: 'running', capMs: 900_000, haltedMs: 0, start: { id: 's', goAt: 100_000, observed: false } };
              const model = { step: lane === 'through' ? null : {}, stopped: lane === 'stopped' ? 'withdrew' : null, told: { capMs: 600_000 }, line: { capMs: 1 } };
              return momentsOf(heardFrame(model, frame)).map(({ tone, at }) => `${tone}@${at}`).join(' ');
            }
            """, lane));

    [Fact]
    public async Task The_count_down_is_heard_once_and_not_again_after_a_reload()
    {
        const int Lane = 41;
        var heat = await Hall.Call(QuickWork.Sets(), new Entrant(Lane, "Harbour Anvils", "Joss", "Ilka"));
        var phone = await ReadyPhone(Lane);
        await heat.Ready();
        await heat.Do("schedule-start", new { inMs = 6_000 });
        await phone.IsAt("heat");
        Assert.Equal(["beep 3", "beep 2", "beep 1", "go"], await phone.Page.EvaluateAsync<string[]>(Told));

        await phone.Page.ReloadAsync();
        await phone.IsAt("heat");
        await phone.Record("step-done", 1);
        Assert.True(await phone.Becomes("import('/pad/pad.js').then(({ pad }) => pad.sounds?.ready && pad.clock.now() !== null && pad.frame)"));
        Assert.Empty(await phone.Page.EvaluateAsync<string[]>($"async () => {{ (await import('/pad/pad.js')).pad.beat(); return ({Told})(); }}"));
    }

    [Theory]
    [InlineData(42, 121_000, 57_000, "minute")]
    [InlineData(43, 5_000, 1_000, "cap")]
    public async Task The_last_minute_and_the_cap_are_heard(int lane, int capMs, int sinceMs, string sound)
    {
        var heat = await Hall.Call(QuickWork.Sets(capMs), new Entrant(lane, "Harbour Anvils", "Joss", "Ilka"));
        var phone = await ReadyPhone(lane);
        await heat.RunsSince(sinceMs);
        await phone.IsAt("heat");
        Assert.True(await phone.Becomes($"({Told})().then(told => told.length)"));
        Assert.Equal([sound], await phone.Page.EvaluateAsync<string[]>(Told));
    }
}
