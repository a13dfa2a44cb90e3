using System.Globalization;
using LiveHeat.Browser.Boards;
using LiveHeat.Browser.Halls;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Look;

/// <summary>The signed result on paper: what it is worth stands on the sheet with the places.</summary>
public sealed class PrintedResultTests(Hall hall) : HallTest(hall)
{
    /// <summary>A4 within the page's margins, 12 mm at the sides, 14 above and 16 below, CSS pixels at 96 to the inch.</summary>
    private const int Width = 703, Height = 1009;

    /// <summary>9 pt.</summary>
    private const int LeastLetter = 12;

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public async Task Ten_lanes_in_two_divisions_and_their_signatures_are_one_sheet(string language)
    {
        Entrant[] teams = [.. Enumerable.Range(1, 10).Select(lane => new Entrant(
            lane, BoardStage.LongNames[lane % BoardStage.LongNames.Length], [.. BoardStage.LongAthletes[..4]]) { Division = lane > 6 ? "masters" : "open" })];
        var heat = await Hall.Call(QuickWork.Long("open", "masters"), teams);
        await heat.RunsSince(700_000);
        foreach (var lane in Enumerable.Range(1, 10))
        {
            await heat.Add(lane, lane % 3 == 0 ? 24 : 9 + lane, 500_000 + (lane * 9_000));
        }

        await heat.Do("end");
        await heat.Do("freeze", new { head = (await heat.Frame()).Sequence });
        var head = (await heat.Frame()).SignedHead;
        await heat.Do("certify", new { head });
        await heat.Do(Hall.HeadJudge, "certify", new { head });

        var page = await Page(Width, Height);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await page.GotoAsync($"{Hall.Site}result/{heat.Id}?lang={language}");
        await Expect(page.Locator("body")).ToHaveAttributeAsync("data-status", "certified");
        await Expect(page.Locator(".places tbody tr")).ToHaveCountAsync(10);
        await Expect(page.Locator(".signatures bdi")).ToHaveTextAsync(["Ona", "Hedda"]);
        await page.EvaluateAsync("document.fonts.ready");
        var bottom = await page.Locator(".signatures").EvaluateAsync<double>("one => one.getBoundingClientRect().bottom + scrollY");
        Assert.True(bottom <= Height, string.Create(CultureInfo.InvariantCulture, $"the signatures end at {bottom} of {Height} CSS pixels"));
        var small = await page.EvaluateAsync<string[]>($$"""
            () => [...document.querySelectorAll('main *')]
              .filter(one => [...one.childNodes].some(node => node.nodeType === 3 && node.textContent.trim()) && one.checkVisibility({ visibilityProperty: true }) && !one.matches('script'))
              .filter(one => parseFloat(getComputedStyle(one).fontSize) < {{LeastLetter}} - 0.01)
              .map(one => `${one.className || one.tagName} ${getComputedStyle(one).fontSize}: ${one.textContent.trim().slice(0, 30)}`)
            """);
        Assert.Empty(small);
        Assert.Empty(await page.Faults("main", scrolls: true));
    }
}
