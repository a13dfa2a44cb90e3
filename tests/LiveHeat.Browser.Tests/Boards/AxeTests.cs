using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using Microsoft.Playwright;
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

    /// <summary>Every scene of the board and of what a video mix lays over its picture. The ground's picture is left out, since axe-core judges no colour above one.</summary>
    [Theory]
    [InlineData("dark", 20, false, "", null)]
    [InlineData("light", 10, true, "", null)]
    [InlineData("dark", 10, false, "side=left", null)]
    [InlineData("dark", 4, false, "", "third")]
    [InlineData("dark", 4, false, "", "full")]
    public async Task No_scene_has_a_serious_fault(string ground, int lanes, bool mixed, string options, string? overlay)
    {
        var stage = new BoardStage(await Page(options.StartsWith("side", StringComparison.Ordinal) ? 960 : 1920, 1080));
        await stage.Begin(Hall.Site, lanes, mixed: mixed, options: options, overlay: overlay);
        await stage.Page.EvaluateAsync("ground => { document.documentElement.dataset.ground = ground; }", ground);
        await stage.Page.AddStyleTagAsync(new PageAddStyleTagOptions { Content = "#board, .between > * { background-image: none !important }" });
        var faults = new List<string>();
        foreach (var scene in (await stage.Scenes()).Except(overlay is null ? [] : ["idle", "message", "programme", "standings"]))
        {
            await stage.Show(scene);
            faults.AddRange(await stage.Page.SeriousFaults(scene, "#board"));
        }

        Assert.Empty(faults);
    }

    [Fact]
    public async Task On_a_phone_no_scene_has_a_serious_fault()
    {
        var stage = new BoardStage(await Page(390, 844, phone: true));
        await stage.Begin(Hall.Site, 10, mixed: true);
        var faults = new List<string>();
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            faults.AddRange(await stage.Page.SeriousFaults(scene, "#board"));
        }

        Assert.Empty(faults);
    }

    /// <summary>By their real addresses, with the title and the language of each page; two heats with what is in their frames.</summary>
    [Fact]
    public async Task Two_heats_daylight_standings_and_scorecards_have_no_serious_fault()
    {
        Entrant[] teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel") { Division = "masters" }];
        var first = await Hall.Call(QuickWork.Long("open", "masters"), teams);
        await first.RunsSince(30_000);
        await first.Add(1, 3, 12_000);
        await first.Do("end");
        var second = await Hall.Call(QuickWork.Sets(), new Entrant(1, "Quarry Lights", "Pip", "Lars"));
        var page = await Page(1920, 1080);
        var faults = new List<string>();
        await page.GotoAsync($"{Hall.Site}board/{first.Id}+{second.Id}?light=1");
        await Expect(page.FrameLocator("iframe:first-of-type").Locator("#board[data-scene='result']")).ToBeVisibleAsync();
        await Expect(page.FrameLocator("iframe:last-of-type").Locator("#board[data-scene='before']")).ToBeVisibleAsync();
        faults.AddRange(await page.SeriousFaults("two heats"));
        foreach (var (address, sign) in new[]
        {
            ($"board/{first.Id}?light=1", "#board[data-scene='result']"), ("standings", "td.workout"), ("standings?lang=es", "html[lang='es'] td.workout"), ($"cards/{first.Id}", ".sheet >> nth=1"), ($"result/{first.Id}", ".how-far.drawn >> nth=0"),
        })
        {
            await page.GotoAsync($"{Hall.Site}{address}");
            await Expect(page.Locator(sign).First).ToBeVisibleAsync();
            await page.EvaluateAsync("document.fonts.ready");
            faults.AddRange(await page.SeriousFaults(address));
        }

        await page.SetViewportSizeAsync(390, 844);
        foreach (var address in new[] { "standings", $"result/{first.Id}", $"briefing/{second.Id}" })
        {
            await page.GotoAsync($"{Hall.Site}{address}");
            await page.EvaluateAsync("document.fonts.ready");
            faults.AddRange(await page.SeriousFaults($"{address} on a phone"));
        }

        Assert.Empty(faults);
    }
}
