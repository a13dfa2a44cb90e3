using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Boards;

/// <summary>What the hall hears, and when: on the server's clock, told to the sound card ahead of time.</summary>
[Collection(OneAtATime.Name)]
public sealed class SoundsTests(Hall hall) : ModuleTest(hall)
{
    [Theory]
    [InlineData("counting-down", false, 0, "beep@97000 beep@98000 beep@99000 go@100000 minute@640000 cap@700000")]
    [InlineData("running", true, 0, "minute@640000 cap@700000")]
    [InlineData("running", false, 20_000, "beep@97000 beep@98000 beep@99000 go@100000 minute@660000 cap@720000")]
    [InlineData("halted", false, 0, "")]
    [InlineData("ended", false, 0, "")]
    public async Task A_heat_has_three_beeps_GO_the_last_minute_and_the_cap(string phase, bool observed, int haltedMs, string moments) =>
        Assert.Equal(moments, await Run<string>(["/floor/sounds/moments.js"], """
            ([moments], { phase, observed, haltedMs }) => moments.momentsOf({ phase, capMs: 600_000, haltedMs, start: { id: 's', goAt: 100_000, observed } }).map(({ tone, at }) => `${tone}@${at}`).join(' ')
            """, new { phase, observed, haltedMs }));

    /// <summary>A made-up sound card notes what it is told. Each moment is told once, and begins within a millisecond of its instant.</summary>
    [Fact]
    public async Task Each_is_told_once_and_begins_when_the_clock_says()
    {
        var told = await Run<string[]>(["/floor/sounds/sounds.js"], """
            ([{ Sounds }]) => {
              let now = 95_000;
              const begun = [];
              const parameter = { setValueAtTime() {}, linearRampToValueAtTime() {} };
              const card = {
                state: 'running', get currentTime() { return now / 1000 + 7; },
                createGain: () => ({ gain: parameter, connect: () => {} }),
                createOscillator: () => ({ frequency: {}, connect: next => next, start: at => begun.push(Math.round((at - 7) * 1_000)), stop() {} }),
              };
              const sounds = new Sounds(() => now, () => card);
              const frame = { phase: 'counting-down', capMs: 600_000, haltedMs: 0, start: { id: 's', goAt: 100_000, observed: false } };
              for (; now < 101_000; now += 17) sounds.turn(frame);
              const heard = begun.join(' ');
              card.state = 'suspended';
              for (now = 639_000; now < 641_000; now += 17) sounds.turn({ ...frame, phase: 'running' });
              return [heard, `${begun.length - heard.split(' ').length} more while it may not sound`];
            }
            """);

        Assert.Equal(["97000 98000 99000 100000", "0 more while it may not sound"], told);
    }

    /// <summary>In a rehearsal that runs ten times as fast, three seconds of the heat are 300 ms of the hall.</summary>
    [Fact]
    public async Task A_fast_rehearsal_sounds_when_its_clock_says() => Assert.Equal(["beep 3 in 300 ms"], await Run<string[]>(["/floor/sounds/sounds.js"], """
        ([{ Sounds }]) => {
          const parameter = { setValueAtTime() {}, linearRampToValueAtTime() {} };
          const card = { state: 'running', currentTime: 7, createGain: () => ({ gain: parameter, connect() {} }), createOscillator: () => ({ frequency: {}, connect: next => next, start() {}, stop() {} }) };
          const sounds = new Sounds(() => 94_000, () => card, () => 10);
          sounds.turn({ phase: 'counting-down', capMs: 600_000, haltedMs: 0, start: { id: 's', goAt: 100_000, observed: false } });
          return sounds.told.slice(0, 1).map(({ key, inMs }) => `${key.slice(2)} in ${inMs} ms`);
        }
        """));

    /// <summary>Nothing sounds unless the address asks for it.</summary>
    [Theory]
    [InlineData("?sound=1", 1)]
    [InlineData("", 0)]
    public async Task The_board_sounds_when_its_address_says_so(string query, int cards)
    {
        var page = await Page(1920, 1080);
        await page.AddInitScriptAsync("window.cards = 0; window.AudioContext = class extends AudioContext { constructor() { super(); window.cards++; } };");
        var board = new Pages.BigBoard(page, Hall.Site);
        await board.Open(null, query);
        await Microsoft.Playwright.Assertions.Expect(board.Main).ToHaveAttributeAsync("data-freshness", "fresh");
        Assert.Equal(cards, await page.EvaluateAsync<int>("cards"));
    }
}
