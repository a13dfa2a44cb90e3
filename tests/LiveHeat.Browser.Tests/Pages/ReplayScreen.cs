using LiveHeat.Engine.Heats;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pages;

/// <summary>A heat played again, at the desk or on the head judge's phone.</summary>
internal sealed class ReplayScreen(IPage page, Uri site) : BlazorScreen(page, site)
{
    /// <summary>A fact in the list around the moment.</summary>
    public ILocator Fact(FactId fact) => Page.Locator($"[data-view='near-facts'] [data-fact='{fact}']");

    /// <summary>A lane of the picture.</summary>
    public ILocator Lane(int lane) => View("lanes").Locator($"[data-lane='{lane}']");

    /// <summary>Writes a heat time and goes there.</summary>
    public async Task GoTo(string time)
    {
        await Act("time").FillAsync(time);
        await Act("time").PressAsync("Enter");
        await StandsAt($"{time}.0");
    }

    public Task StandsAt(string moment) => Expect(Act("replay-clock")).ToHaveTextAsync(moment);

    public Task HasStatus(int lane, string status) => Expect(Lane(lane)).ToHaveAttributeAsync("data-status", status);

    /// <summary>Presses a key where nobody writes.</summary>
    public async Task Key(string key)
    {
        await Page.Locator("h1").First.ClickAsync();
        await Page.Keyboard.PressAsync(key);
    }
}
