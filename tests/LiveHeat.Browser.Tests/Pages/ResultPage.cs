using Microsoft.Playwright;

namespace LiveHeat.Browser.Pages;

/// <summary>The result of one heat, as anybody may open and print it.</summary>
internal sealed class ResultPage(IPage page, Uri site)
{
    public IPage Page => page;

    public ILocator Status => page.Locator(".status");

    public ILocator Signatures => page.Locator(".signatures");

    public Task Open(string heat) => page.GotoAsync(new Uri(site, $"result/{heat}").ToString());

    /// <summary>A lane's strip on the screen, and the one that is printed.</summary>
    public ILocator Strip(int lane, bool onPaper = false) => page.Locator($".how-far{(onPaper ? ".on-paper" : ":not(.on-paper)")} [data-strip='{lane}']");

    /// <summary>A cell of a lane's row: place, score, number (no-reps).</summary>
    public ILocator Cell(int lane, string column) => page.Locator($"tr[data-lane='{lane}'] .{column}");
}
