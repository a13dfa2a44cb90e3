using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>Before anything is set up, every screen says so, and the desk says what to do first.</summary>
public sealed class EmptyTests(Hall hall) : HallTest(hall)
{
    [Fact]
    public async Task The_desk_says_what_to_do_first_and_leads_there()
    {
        var desk = new DeskScreen(await Page(1440, 900), Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        await Expect(desk.Act("empty")).ToBeVisibleAsync();
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));
        await desk.Press("begin-setup");
        await desk.Shows("setup");
    }

    [Fact]
    public async Task The_board_shows_the_competition_and_that_nothing_is_planned()
    {
        var board = await Board();
        await board.Shows("idle");
        await Expect(board.Main).ToContainTextAsync(Hall.Competition);
        await Expect(board.Main).ToContainTextAsync("No more heats on the programme");
        Assert.Empty(await board.Page.FaultsAt("idle", [(1280, 720), (1920, 1080)], "#board", Looks.LeastControl));
    }

    [Fact]
    public async Task Announcer_and_result_say_that_there_is_no_heat()
    {
        var announcer = new AnnouncerScreen(await Page(1280, 800), Hall.Site);
        await announcer.Open("screens/announcer", "announcer");
        await Expect(announcer.View("announcer")).ToContainTextAsync("No heat");
        var result = new ResultPage(await Page(1024, 1400), Hall.Site);
        await result.Open("h1");
        await Expect(result.Page.Locator("h1")).ToHaveTextAsync("No result yet");
    }
}
