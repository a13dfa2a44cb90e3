using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pages;

/// <summary>The briefing on the big screen.</summary>
internal sealed class BriefingSlides(IPage page, Uri site)
{
    public IPage Page => page;

    public ILocator Shown => page.Locator("#slides .slide[data-shown]");

    public ILocator Here => page.Locator("#slides .foot .here");

    public async Task Open(string heat, string query)
    {
        await page.GotoAsync($"{site}briefing/{heat}?slides{query}");
        await Expect(Shown).ToHaveCountAsync(1);
        await page.EvaluateAsync("() => document.fonts.ready.then(() => new Promise(drawn => requestAnimationFrame(drawn)))");
    }

    /// <summary>How many slides there are on this screen.</summary>
    public Task<int> Count() => page.Locator("#slides .slide").CountAsync();

    public Task IsAt(int slide, int of) => Expect(Here).ToHaveTextAsync($"{slide} of {of}");

    /// <summary>The words of the slide on the screen.</summary>
    public async Task<string> Words() => await Shown.Locator(".lines").InnerTextAsync();

    /// <summary>What is written smaller on it than can be read from the stands: capitals of 2.6 % of the screen's height, 0.7 of the letters' size.</summary>
    public Task<string[]> TooSmall() => page.EvaluateAsync<string[]>("""
        () => [...document.querySelectorAll('#slides *')]
          .filter(one => [...one.childNodes].some(node => node.nodeType === 3 && node.textContent.trim()) && one.checkVisibility({ visibilityProperty: true }))
          .filter(one => parseFloat(getComputedStyle(one).fontSize) * 0.7 < innerHeight * 0.026)
          .map(one => `${one.className} ${one.textContent}`)
        """);
}
