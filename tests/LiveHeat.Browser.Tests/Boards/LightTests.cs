using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>The board in daylight, as its address asks for it or as the device is set.</summary>
public sealed class LightTests(Hall hall) : HallTest(hall)
{
    private const string Daylight = "rgb(236, 234, 228) rgb(27, 26, 24)", HallDark = "rgb(20, 21, 23) rgb(242, 239, 230)";

    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel") { Division = "masters" }];

    [Theory]
    [InlineData("", ColorScheme.Light, false)]
    [InlineData("?light=0", ColorScheme.Light, false)]
    [InlineData("?light=1", ColorScheme.Dark, true)]
    [InlineData("?light=auto", ColorScheme.Light, true)]
    [InlineData("?light=auto", ColorScheme.Dark, false)]
    public async Task Ground_and_letters_are_those_of_the_light_asked_for(string query, ColorScheme device, bool light)
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams[..1]);
        var page = await Page(1920, 1080);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = device });
        var board = new Pages.BigBoard(page, Hall.Site);
        await board.Open(heat.Id, query);
        await board.Shows("before");
        Assert.Equal(light ? Daylight : HallDark, await Colours(page));
    }

    /// <summary>The sun comes out: the strips, whose colours are painted in, follow too.</summary>
    [Fact]
    public async Task Auto_follows_the_device_while_the_board_stands()
    {
        var heat = await Hall.Call(QuickWork.Long(), Teams[..1]);
        await heat.RunsSince(60_000);
        await heat.Add(1, 3, 50_000);
        var page = await Page(1920, 1080);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = ColorScheme.Dark });
        var board = new Pages.BigBoard(page, Hall.Site);
        await board.Open(heat.Id, "?light=auto");
        await board.Shows("running");
        Assert.Equal(HallDark, await Colours(page));
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = ColorScheme.Light });
        await Expect(page.Locator("html")).ToHaveAttributeAsync("data-ground", "light");
        Assert.Equal(Daylight, await Colours(page));
    }

    /// <summary>7:1, as in the dark: WCAG 2.2, success criterion 1.4.6 (from memory).</summary>
    [Fact]
    public async Task In_daylight_all_text_stands_out_at_7_to_1_before_during_and_after_a_heat()
    {
        var heat = await Hall.Call(QuickWork.Long("open", "masters"), Teams);
        var board = new Pages.BigBoard(await Page(1920, 1080), Hall.Site);
        await board.Open(heat.Id, "?light=1");
        await board.Shows("before");
        var faults = new List<string>();
        faults.AddRange((await board.Page.Contrasts("#board", 7)).Select(fault => $"before: {fault}"));
        await heat.RunsSince(690_000);
        await heat.Add(1, 9, 300_000);
        await heat.Add(2, 6, 310_000);
        await board.HasPlace(1, 1);
        await Expect(board.Page.Locator(".heading[data-hurry]")).ToBeVisibleAsync();
        faults.AddRange((await board.Page.Contrasts("#board", 7)).Select(fault => $"running: {fault}"));
        await heat.Do("halt", new { reason = "somebody on the floor" });
        await Expect(board.Page.Locator(".notice-text")).ToBeVisibleAsync();
        faults.AddRange((await board.Page.Contrasts("#board", 7)).Select(fault => $"halted: {fault}"));
        await heat.Do("end");
        await board.Shows("result");
        faults.AddRange((await board.Page.Contrasts("#board", 7)).Select(fault => $"result: {fault}"));
        Assert.Empty(faults);
    }

    private static Task<string> Colours(IPage page) => page.EvaluateAsync<string>("() => `${getComputedStyle(document.body).backgroundColor} ${getComputedStyle(document.querySelector('.heat-title')).color}`");
}
