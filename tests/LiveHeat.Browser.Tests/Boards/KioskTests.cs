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
}
