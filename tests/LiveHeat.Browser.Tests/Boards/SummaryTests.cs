using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using LiveHeat.Contracts.Programme;
using LiveHeat.Testing.Hosting.Faults;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>What a screen reader is told of the board: the same as is to be seen, and nothing as true that no longer need be.</summary>
public sealed class SummaryTests(Hall hall) : ModuleTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    [Theory]
    [InlineData("idle", "No heat on the floor")]
    [InlineData("before", "Heat 12: 2 lanes on the floor.")]
    [InlineData("count-down", "Starts in 12 seconds.")]
    [InlineData("running", "Anvils leads. Whistle is 8 s behind. 6 minutes left.")]
    [InlineData("most work", "Anvils leads. Whistle is 3 reps behind. 6 minutes left.")]
    [InlineData("level", "Anvils and Whistle share the lead. 6 minutes left.")]
    [InlineData("first step", "6 minutes left.")]
    [InlineData("last minute", "Anvils leads. Whistle is 8 s behind. Less than a minute left.")]
    [InlineData("halted", "Heat halted. The clock stands.")]
    [InlineData("result", "Result, unofficial. First: Anvils, 10:42.3.")]
    [InlineData("certified", "Result, certified. First: Anvils, 10:42.3.")]
    [InlineData("recalled", "Start recalled. A new start will come.")]
    [InlineData("not live", "Not live. Last news 42 s ago.")]
    [InlineData("message", "Lunch until one. · Heat 12: 2 lanes on the floor.")]
    public async Task It_says_what_is_to_be_seen(string what, string told) => Assert.Equal(told, await Run<string>(["/floor/board/summary.js"], $"([summary], what) => ({Scenes})(summary.summaryOf, what).text", what));

    /// <summary>A new key is told at once, or a recall would be told when the next sentence is due.</summary>
    [Fact]
    public async Task Whatever_must_not_be_missed_is_told_at_once() => Assert.Equal(
        "7 of 7",
        await Run<string>(["/floor/board/summary.js"], $$"""
            ([summary]) => {
              const keys = ['before', 'running', 'halted', 'recalled', 'not live', 'result', 'message'].map(what => ({{Scenes}})(summary.summaryOf, what).key);
              return `${new Set(keys).size} of ${keys.length}`;
            }
            """));

    /// <summary>The same again only after twenty seconds: a voice that never stops is switched off.</summary>
    [Fact]
    public async Task The_same_picture_is_told_again_only_now_and_then() => Assert.Equal(
        "a, a, b, c, c, d",
        await Run<string>(["/floor/board/summary.js"], """
            ([{ Summary }]) => {
              const summary = new Summary();
              return [['one', 'a', 0], ['one', 'x', 19_900], ['one', 'b', 20_000], ['two', 'c', 20_100], ['two', 'y', 40_000], ['two', 'd', 40_200]].map(([key, text, at]) => { summary.tell({ key, text }, at); return summary.element.textContent; }).join(', ');
            }
            """));

    [Fact]
    public async Task A_screen_reader_hears_of_a_halt_and_of_a_false_start()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(2_000);
        var summary = (await Board(heat)).Page.Locator("#board .summary[role='status']");
        await heat.Do("halt", new { reason = "somebody on the floor" });
        await Expect(summary).ToContainTextAsync("Heat halted");
        await heat.Do("resume", new { reason = "all clear" });
        await Expect(summary).ToContainTextAsync("minutes left");
        await heat.Do("recall-start", new { reason = "a lane moved early" });
        await Expect(summary).ToHaveTextAsync("Start recalled. A new start will come.");
    }

    [Fact]
    public async Task A_screen_reader_hears_that_the_board_is_not_live_and_that_it_is_again()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(40_000);
        await heat.Add(1, 2, 30_000);
        var board = new Pages.BigBoard(await Page(1920, 1080), link.Address);
        await board.Open(heat.Id);
        var summary = board.Page.Locator("#board .summary[role='status']");
        await Expect(summary).ToContainTextAsync("Harbour Anvils leads.");
        link.Be(Fault.Refuse);
        await Expect(summary).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^Not live. Last news 1\\d s ago.$"));
        link.Be(Fault.None);
        await Expect(summary).ToContainTextAsync("Harbour Anvils leads.");
    }

    [Fact]
    public async Task A_screen_reader_hears_the_organiser_s_message()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var board = await Board(heat);
        (await Hall.Organiser.Put("/api/board/message", new BoardMessage("Lunch until half past one"))).Fine();
        await Expect(board.Page.Locator("#board .summary[role='status']")).ToHaveTextAsync($"Lunch until half past one · {heat.Title}: 2 lanes on the floor.");
        (await Hall.Organiser.Put("/api/board/message", new BoardMessage(""))).Fine();
        await Expect(board.Page.Locator("#board .summary[role='status']")).ToHaveTextAsync($"{heat.Title}: 2 lanes on the floor.");
    }

    /// <summary>Two teams in each scene: <c>(summaryOf, what) => told</c>.</summary>
    private const string Scenes = """
        (summaryOf, what) => {
          const sheet = { title: 'Heat 12', lanes: [{ lane: 1, name: 'Anvils', group: 'open' }, { lane: 2, name: 'Whistle', group: 'open' }] };
          const lanes = (first = {}, second = {}) => [{ lane: 1, place: 1, worth: 9, open: 3, gapMs: null, status: 'working', ...first }, { lane: 2, place: 2, worth: 7, open: 2, gapMs: 8_100, gapWorth: 3, status: 'working', ...second }];
          const frame = (phase, ...of) => ({ phase, revision: 1, capMs: 720_000, lanes: lanes(...of) });
          const finished = { status: 'finished', officialMs: 642_300 }, rounds = { roundsAndReps: { rounds: 1, reps: 2 } };
          const [given, scene, ms, signs] = {
            idle: [null, 'idle', null],
            before: [frame('called'), 'before', null],
            'count-down': [frame('counting-down'), 'count-down', -11_200],
            running: [frame('running'), 'running', 330_000],
            'most work': [frame('running', rounds, rounds), 'running', 330_000],
            level: [frame('running', {}, { place: 1, gapMs: null }), 'running', 330_000],
            'first step': [frame('running', { worth: 0, open: 1 }, { place: 1, worth: 0, open: 1 }), 'running', 330_000],
            'last minute': [frame('running'), 'running', 680_000],
            halted: [frame('halted'), 'running', 330_000],
            result: [frame('ended', finished), 'result', 720_000],
            certified: [frame('certified', finished), 'result', 720_000],
            recalled: [frame('armed'), 'before', null, { recalled: true }],
            'not live': [frame('running'), 'running', 330_000, { notLive: 'Not live. Last news 42 s ago.', recalled: true, message: 'Lunch until one.' }],
            message: [frame('called'), 'before', null, { message: 'Lunch until one.' }],
          }[what];
          return summaryOf(sheet, given, scene, ms, signs);
        }
        """;
}
