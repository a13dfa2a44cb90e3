using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>Faults that axe-core (Deque, MPL 2.0) finds in what everybody may read: none that it calls serious or critical.</summary>
public sealed class AxeTests(Hall hall) : HallTest(hall)
{
    [Fact]
    public async Task Board_overlay_result_briefing_and_standings_have_no_serious_fault()
    {
        var heat = await Hall.Call(QuickWork.Sets(), new Entrant(1, "Harbour Anvils", "Joss", "Ilka"), new Entrant(2, "Tin Whistle Four", "Ravi", "Ansel"));
        var page = await Page(1920, 1080);
        var faults = new List<string>();
        await page.GotoAsync($"{Hall.Site}board/{heat.Id}");
        await Expect(page.Locator("#board[data-scene='before']")).ToBeVisibleAsync();
        faults.AddRange(await page.SeriousFaults("before"));
        await heat.RunsSince(30_000);
        await heat.Add(1, 3, 12_000);
        await Expect(page.Locator("#board[data-scene='running']")).ToBeVisibleAsync();
        faults.AddRange(await page.SeriousFaults("running"));
        await page.GotoAsync($"{Hall.Site}overlay/{heat.Id}");
        await Expect(page.Locator("#board[data-scene='running']")).ToBeVisibleAsync();
        faults.AddRange(await page.SeriousFaults("overlay"));
        await heat.Do("end");
        foreach (var address in new[] { $"board/{heat.Id}", $"result/{heat.Id}", "standings", $"briefing/{heat.Id}", $"briefing/{heat.Id}?slides" })
        {
            await page.GotoAsync($"{Hall.Site}{address}");
            await page.EvaluateAsync("document.fonts.ready");
            faults.AddRange(await page.SeriousFaults(address));
        }

        Assert.Empty(faults);
    }
}
