using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>The overall standings where people find them: at their own address, and on the board after a result.</summary>
public sealed class StandingsTests(PlayedHall hall) : HallTest<PlayedHall>(hall)
{
    [Fact]
    public async Task Their_page_tells_places_points_and_that_nothing_is_certified_yet()
    {
        var page = await Page(1280, 720);
        await page.GotoAsync($"{Hall.Site}standings");
        await Expect(page).ToHaveTitleAsync("Standings");
        await Expect(page.Locator(".competition")).ToHaveTextAsync("Breakwater Relays");
        await Expect(page.Locator(".division h2")).ToHaveTextAsync("Open");
        await Expect(page.Locator(".division .status")).ToHaveTextAsync("Provisional: not official");
        await Expect(page.Locator("tr[data-team] .team")).ToHaveTextAsync(["Tin Whistle Four", "Harbour Anvils"]);
        await Expect(page.Locator("tr[data-team] .place")).ToHaveTextAsync(["1", "2"]);
        Assert.Empty(await page.Faults("main", scrolls: true));
    }

    /// <summary>A table with more workouts than fit is pushed aside, by the keyboard too.</summary>
    [Fact]
    public async Task On_a_phone_the_table_is_pushed_aside_by_the_keyboard()
    {
        var page = await Page(320, 640, phone: true);
        await page.GotoAsync($"{Hall.Site}standings?lang=de");
        var table = page.GetByRole(AriaRole.Region, new() { Name = "Open" });
        Assert.True(await table.EvaluateAsync<bool>("table => table.scrollWidth > table.clientWidth"), "there is nothing to push aside");
        await page.Keyboard.PressAsync("Tab");
        await Expect(table).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await page.WaitForFunctionAsync("() => document.querySelector('.wide').scrollLeft > 0");
    }

    [Fact]
    public async Task The_board_has_them_from_the_server_after_a_result()
    {
        var page = await Page(1920, 1080);
        await page.Clock.InstallAsync();
        var board = new Pages.BigBoard(page, Hall.Site);
        var answered = page.WaitForResponseAsync(answer => answer.Url.EndsWith("/api/standings", StringComparison.Ordinal));
        await board.Open(Hall.Heat.Id);
        await board.Shows("result");
        await answered;
        for (var turn = 0; turn < 6 && await board.Main.GetAttributeAsync("data-shows") != "standings"; turn++)
        {
            await page.Clock.RunForAsync(8_000);
        }

        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "standings");
        await Expect(page.Locator(".standings-name")).ToHaveTextAsync(["Tin Whistle Four", "Harbour Anvils"]);
        await Expect(page.Locator(".standings-worth")).ToHaveTextAsync("provisional");
    }

    [Fact]
    public async Task A_board_that_was_told_so_never_shows_them()
    {
        var page = await Page(1920, 1080);
        await page.Clock.InstallAsync();
        var asked = false;
        page.Request += (_, request) => asked |= request.Url.EndsWith("/api/standings", StringComparison.Ordinal);
        var board = new Pages.BigBoard(page, Hall.Site);
        await board.Open(Hall.Heat.Id, "?standings=0");
        await board.Shows("result");
        for (var turn = 0; turn < 8; turn++)
        {
            await page.Clock.RunForAsync(8_000);
            Assert.NotEqual("standings", await board.Main.GetAttributeAsync("data-shows"));
        }

        Assert.False(asked);
    }
}

/// <summary>A hall with one heat that is over, as nobody has certified it: lane 2 is ahead.</summary>
public sealed class PlayedHall : Hall
{
    internal HallHeat Heat { get; private set; } = null!;

    private protected override async Task SetUp()
    {
        await base.SetUp();
        Heat = await Call(QuickWork.Sets(), new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel"));
        await Heat.RunsSince(60_000);
        await Heat.Add(1, 3, 20_000);
        await Heat.Add(2, 4, 30_000);
        await Heat.Do("end");
    }
}
