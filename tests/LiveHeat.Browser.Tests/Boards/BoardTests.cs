using LiveHeat.Browser.Halls;
using LiveHeat.Testing.Hosting.Faults;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>The big screen as it follows the floor: by itself, from heat to heat, and never blank.</summary>
[Collection(OneAtATime.Name)]
public sealed class BoardTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel"), new(3, "Quarry Lights", "Pip", "Lars")];

    [Fact]
    public async Task It_follows_from_heat_to_heat_and_turns_from_count_down_to_heat_by_itself()
    {
        var board = await Board();
        var first = await Hall.Call(QuickWork.Sets(), Teams);
        await board.Shows("before");
        await Expect(board.Lanes).ToHaveCountAsync(3);
        await Expect(board.Main).ToContainTextAsync("Harbour Anvils");
        await first.Ready();
        await first.Do("schedule-start", new { inMs = 5_000 });
        await board.Shows("count-down");
        await Expect(board.Page.Locator(".count-number")).ToHaveTextAsync("3");
        await Expect(board.Page.Locator(".count-number")).ToHaveTextAsync("GO");
        await board.Shows("running");

        var second = await Hall.Call(QuickWork.Sets(), Teams[..2]);
        await first.Add(1, 2, 2_000);
        await board.HasPlace(1, 1);
        await Expect(board.Main).ToHaveAttributeAsync("data-heat", first.Id);      // a warm-up call takes no screen away from those who work
        await first.Do("end");
        await board.Shows("result");
        await Expect(board.Main).ToHaveAttributeAsync("data-heat", first.Id);      // the next one waits until the hall has seen the result
        await second.Ready();
        await second.Do("schedule-start", new { inMs = 8_000 });
        await Expect(board.Main).ToHaveAttributeAsync("data-heat", second.Id);
        await Expect(board.Lanes).ToHaveCountAsync(2);
        await board.Shows("count-down");
    }

    [Fact]
    public async Task It_shows_who_leads_by_how_much_and_what_a_result_is_worth()
    {
        var heat = await Hall.Call(QuickWork.Sets(60_000), Teams);
        await heat.RunsSince(40_000);
        await heat.Add(1, 3, 21_000);
        await heat.Add(2, 3, 30_000);
        var board = await Board(heat);
        await board.HasPlace(1, 1);
        await board.HasPlace(2, 2);
        await Expect(board.Beside(1)).ToHaveTextAsync("leads");
        await Expect(board.Beside(2)).ToHaveTextAsync("9 s");
        await board.Tells(2, "Ansel");

        await heat.Add(2, 6, 36_000);
        await board.HasStatus(2, "finished");
        await board.HasPlace(2, 1);
        await heat.Do("hold-lane", new { lane = 3, movesCap = true, reason = "the rower stopped" });
        await board.HasStatus(3, "held");
        await heat.Do("end");
        await board.Shows("result");
        await Expect(board.Clock).ToHaveTextAsync("unofficial");
        await Expect(board.Beside(2)).ToHaveTextAsync("0:36.0");
        await Expect(board.Beside(1)).ToHaveTextAsync("18 reps");
        await Expect(board.Lanes.First).ToHaveAttributeAsync("data-lane", "2");

        await heat.Do("freeze", new { head = (await heat.Frame()).Sequence });
        await Expect(board.Clock).ToHaveTextAsync("under review");
    }

    [Fact]
    public async Task A_halt_and_a_recall_are_told_where_nobody_misses_them()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(2_000);
        var board = await Board(heat);
        var notice = board.Page.Locator(".notice-text");
        await heat.Do("halt", new { reason = "somebody on the floor" });
        await Expect(notice).ToContainTextAsync("halted");
        await heat.Do("resume", new { reason = "all clear" });
        await Expect(notice).ToBeEmptyAsync();
        await heat.Do("recall-start", new { reason = "a lane moved early" });
        await Expect(notice).ToContainTextAsync("recalled");
        await board.Shows("before");
    }

    [Fact]
    public async Task Without_network_it_tells_the_age_of_what_it_shows_and_catches_up_when_it_is_back()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(5_000);
        var board = new Pages.BigBoard(await Page(1920, 1080), link.Address);
        await board.Open(heat.Id);
        await board.Shows("running");
        await board.IsFresh();

        link.Be(Fault.Refuse);
        await Expect(board.Main).ToHaveAttributeAsync("data-freshness", "old");
        await Expect(board.Main).ToHaveAttributeAsync("data-freshness", "not-live");
        await Expect(board.Page.Locator(".notice-text")).ToContainTextAsync("Not live");
        await Expect(board.Lanes).ToHaveCountAsync(3);               // the last good state stays
        await board.Shows("running");
        await heat.Add(3, 2, 3_000);

        link.Be(Fault.None);
        await board.IsFresh();
        await board.HasPlace(3, 1);
        await Expect(board.Page.Locator(".notice-text")).ToBeEmptyAsync();
    }

    [Fact]
    public async Task It_says_who_stands_where_before_any_script_has_run()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var context = await Hall.Chromium.NewContext(new BrowserNewContextOptions { JavaScriptEnabled = false });
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(Hall.Site, $"board/{heat.Id}").ToString());
        await Expect(page.Locator("table.plain")).ToContainTextAsync("Tin Whistle Four");
        await Expect(page.Locator("table.plain")).ToContainTextAsync("Pip");
        await context.DisposeAsync();
    }
}
