using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>Points are set at the desk, and the standings go by them.</summary>
public sealed class PointsTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    [Fact]
    public async Task Points_set_at_the_desk_are_those_of_the_standings()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(40_000);
        await heat.Add(2, 3, 20_000);
        await heat.Add(1, 3, 28_000);
        var desk = new DeskScreen(await Page(1440, 900), Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        await desk.Press("go-setup");
        await desk.Shows("points-form");
        Assert.Empty(await desk.Page.Faults(".points-form", scrolls: true));
        await desk.Press("points-high");
        await Expect(desk.Act("table-even")).ToBeVisibleAsync();
        Assert.Empty(await desk.Page.Faults(".points-form", scrolls: true));
        await desk.Press("points-low");

        await desk.Act("exclusions").FillAsync("1");
        await desk.Press("save-points");
        await Expect(desk.View("points-form")).ToContainTextAsync("from 2 to");

        await desk.Press("points-high");
        await desk.Act("points-table").FillAsync("9 4.5");
        await desk.Press("save-points");
        await Expect(desk.Act("points-saved")).ToBeVisibleAsync();

        var standings = await desk.Page.RunAndWaitForPopupAsync(() => desk.Press("go-standings"));
        await Expect(standings.Locator("body")).ToContainTextAsync("from a table");
        await Expect(standings.Locator("tr[data-team]", new() { HasText = "Tin Whistle Four" })).ToContainTextAsync("9 p");
        await Expect(standings.Locator("tr[data-team]", new() { HasText = "Harbour Anvils" })).ToContainTextAsync("4.5 p");
    }
}
