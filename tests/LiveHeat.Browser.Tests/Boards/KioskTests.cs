using LiveHeat.Browser.Halls;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>A screen that nobody sits at.</summary>
public sealed class KioskTests(Hall hall) : HallTest(hall)
{
    /// <summary>Browsers let a page fill the screen only when somebody touches it: the first key is enough.</summary>
    [Theory]
    [InlineData("?kiosk=1", 1)]
    [InlineData("", 0)]
    public async Task It_fills_the_screen_at_the_first_key_has_no_menu_and_no_pointer(string query, int asked)
    {
        var page = await Page(1920, 1080);
        await page.AddInitScriptAsync("window.asked = 0; Element.prototype.requestFullscreen = () => { window.asked++; return Promise.reject(new Error('not in a test')); };");
        var board = new Pages.BigBoard(page, Hall.Site);
        await board.Open(null, query);
        await Expect(board.Main).ToHaveAttributeAsync("data-freshness", "fresh");
        await page.Keyboard.PressAsync("a");
        Assert.Equal(asked, await page.EvaluateAsync<int>("asked"));
        Assert.Equal(asked == 1 ? "none" : "auto", await page.EvaluateAsync<string>("getComputedStyle(document.body).cursor"));
        Assert.Equal(asked == 1, await page.EvaluateAsync<bool>("!document.body.dispatchEvent(new MouseEvent('contextmenu', { bubbles: true, cancelable: true }))"));
    }

    /// <summary>The page around two boards fills the screen, or one heat would; and GO is heard once.</summary>
    [Fact]
    public async Task Two_heats_fill_the_screen_together_at_the_first_touch_and_only_one_is_heard()
    {
        var heats = new[] { await Hall.Call(QuickWork.Sets(), new Entrant(1, "Harbour Anvils", "Joss")), await Hall.Call(QuickWork.Sets(), new Entrant(1, "Quarry Lights", "Pip")) };
        var page = await Page(1920, 1080);
        await page.AddInitScriptAsync("window.asked = 0; Element.prototype.requestFullscreen = () => { window.asked++; return Promise.reject(new Error('not in a test')); };");
        await page.GotoAsync($"{Hall.Site}board/{heats[0].Id}+{heats[1].Id}?kiosk=1&sound=1");
        await Expect(page.Locator("html[data-kiosk]")).ToBeAttachedAsync();
        await Expect(page.FrameLocator("iframe:last-of-type").Locator("#board")).ToHaveAttributeAsync("data-scene", "before");
        await page.Mouse.ClickAsync(400, 500);
        var asked = await Task.WhenAll(page.Frames.Select(frame => frame.EvaluateAsync<int>("asked")));
        Assert.Equal((1, 0), (asked[0], asked[1..].Sum()));
        var options = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('iframe')].map(({ src }) => [...new URL(src).searchParams.keys()].sort().join(' '))");
        Assert.Equal("side sound, side", string.Join(", ", options));
    }
}
