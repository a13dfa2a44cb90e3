using System.Globalization;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pages;

/// <summary>The big screen.</summary>
internal sealed class BigBoard(IPage page, Uri site)
{
    public IPage Page => page;

    public ILocator Main => page.Locator("#board");

    public ILocator Lanes => page.Locator("#board li.lane");

    public ILocator Clock => page.Locator("#board .clock");

    public ILocator Lane(int lane) => page.Locator($"#board li.lane[data-lane='{lane}']");

    /// <summary>Opens the board of one heat, or the one that follows the floor from heat to heat.</summary>
    public Task Open(string? heat = null, string query = "") => page.GotoAsync($"{site}board{(heat is null ? "" : $"/{heat}")}{query}");

    /// <summary>Waits until the board shows this picture: idle, before, count-down, running or result.</summary>
    public Task Shows(string scene) => Expect(Main).ToHaveAttributeAsync("data-scene", scene);

    public Task IsIn(string phase) => Expect(Main).ToHaveAttributeAsync("data-phase", phase);

    public Task IsFresh() => Expect(Main).ToHaveAttributeAsync("data-freshness", "fresh");

    public Task HasPlace(int lane, int place) => Expect(Lane(lane)).ToHaveAttributeAsync("data-place", place.ToString(CultureInfo.InvariantCulture));

    public Task HasStatus(int lane, string status) => Expect(Lane(lane)).ToHaveAttributeAsync("data-status", status);

    /// <summary>Who works and at what, as told beside the strip.</summary>
    public Task Tells(int lane, string text) => Expect(Lane(lane)).ToContainTextAsync(text);

    /// <summary>The gap, the time or the score of a lane.</summary>
    public ILocator Beside(int lane) => Lane(lane).Locator(".beside");
}
