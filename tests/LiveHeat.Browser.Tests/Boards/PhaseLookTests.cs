using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Boards;

/// <summary>Every phase of the board, at the sizes of halls' screens, with few and many lanes and with names that nobody planned for.</summary>
public sealed class PhaseLookTests(Hall hall) : HallTest(hall)
{
    private static readonly (int Width, int Height)[] Sizes = [(1280, 720), (1920, 1080), (3840, 2160)];

    [Theory]
    [InlineData(4)]
    [InlineData(10)]
    [InlineData(20)]
    public async Task Nothing_is_cut_covered_or_off_the_screen_in_any_phase(int lanes)
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, lanes, longNames: true);
        var faults = new List<string>();
        foreach (var (width, height) in Sizes)
        {
            await stage.Page.SetViewportSizeAsync(width, height);
            foreach (var scene in await stage.Scenes())
            {
                var shown = await stage.Show(scene);
                Assert.Equal(scene is "message" or "programme" or "standings" ? scene : "lanes", shown);
                await KeepPicture(stage.Page, $"{scene}-{lanes}", width);
                faults.AddRange((await stage.Page.Faults("#board")).Select(fault => $"{scene}, {width}x{height}: {fault}"));
            }
        }

        Assert.Empty(faults);
    }

    /// <summary>Work without an end, rounds by the clock, two divisions on one floor, and one half of a screen that shows two heats.</summary>
    [Theory]
    [InlineData("most", false, "", 1920)]
    [InlineData("clock", false, "", 1920)]
    [InlineData("time", true, "", 1920)]
    [InlineData("time", false, "side=left", 960)]
    public async Task Nothing_is_cut_whatever_the_work_and_beside_another_heat(string kind, bool mixed, string options, int width)
    {
        var stage = new BoardStage(await Page(width, 1080));
        await stage.Begin(Hall.Site, 10, longNames: true, mixed: mixed, options: options, kind: kind);
        var faults = new List<string>();
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            await KeepPicture(stage.Page, $"{scene}-{kind}{(mixed ? "-mixed" : "")}{options}", width);
            faults.AddRange((await stage.Page.Faults("#board")).Select(fault => $"{scene}: {fault}"));
        }

        Assert.Empty(faults);
    }

    /// <summary>Other languages have other lengths.</summary>
    [Theory]
    [InlineData("es", "")]
    [InlineData("fr", "")]
    [InlineData("de", "")]
    [InlineData("es", "side=right")]
    [InlineData("fr", "side=left")]
    [InlineData("de", "side=right")]
    public async Task Nothing_is_cut_in_any_language(string language, string options)
    {
        var stage = new BoardStage(await Page(options.Length > 0 ? 960 : 1280, options.Length > 0 ? 1080 : 720));
        await stage.Begin(Hall.Site, 10, longNames: true, language: language, options: options);
        var faults = new List<string>();
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            faults.AddRange((await stage.Page.Faults("#board")).Select(fault => $"{scene}: {fault}"));
        }

        Assert.Empty(faults);
    }

    /// <summary>Half a screen has room for "not yet" in one line only, or it stands on who comes in.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    public async Task Beside_another_heat_who_is_ready_is_told_in_one_line(string language)
    {
        var stage = new BoardStage(await Page(960, 1080));
        await stage.Begin(Hall.Site, 5, mixed: true, language: language, options: "side=left");
        await stage.Show("before");
        var high = await stage.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('.lane:not([hidden]) .lane-ready')].filter(one => one.offsetHeight > parseFloat(getComputedStyle(one).fontSize) * 1.6 || one.scrollWidth > one.clientWidth + 1).map(one => `${one.textContent}: ${one.scrollWidth} of ${one.clientWidth}, ${one.offsetHeight} high`)
            """);
        Assert.Empty(high);
        Assert.Equal(5, await stage.Page.Locator(".lane:not([hidden]) .lane-ready").CountAsync());
    }

    /// <summary>7:1 is the contrast of WCAG 2.2, success criterion 1.4.6 (from memory), there asked for all but large text.</summary>
    [Theory]
    [InlineData("dark")]
    [InlineData("light")]
    public async Task All_text_stands_out_at_7_to_1_from_what_is_behind_it(string ground)
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, 10, mixed: true);
        await stage.Page.EvaluateAsync("ground => { document.documentElement.dataset.ground = ground; }", ground);
        var faults = new List<string>();
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            faults.AddRange((await stage.Page.Contrasts("#board", 7)).Select(fault => $"{scene}: {fault}"));
        }

        Assert.Empty(faults);
    }

    /// <summary>For people to look at: under .artifacts/pictures; at other widths than 1920 only where LIVEHEAT_PICTURES is set, for they are many.</summary>
    private static async Task KeepPicture(IPage page, string name, int width)
    {
        if (width != 1920 && Environment.GetEnvironmentVariable("LIVEHEAT_PICTURES") is null)
        {
            return;
        }

        var artifacts = AppContext.BaseDirectory[..(AppContext.BaseDirectory.IndexOf(".artifacts", StringComparison.Ordinal) + ".artifacts".Length)];
        await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(artifacts, "pictures", $"{name}-{width}.png") });
    }

    /// <summary>The measure itself, by pairs from memory of what others publish: #767676 on white is 4.54, #595959 is 7.0047 (WCAG 2.2, relative luminance and contrast ratio).</summary>
    [Theory]
    [InlineData("#595959", 7.0, false)]
    [InlineData("#595959", 7.01, true)]
    [InlineData("#767676", 4.54, false)]
    [InlineData("#777777", 4.5, true)]
    public async Task Contrast_is_measured_as_published(string colour, double least, bool tooLow)
    {
        var page = await Page(400, 300);
        await page.SetContentAsync($"<main id=board class=page style='background:#ffffff'><p class=one style='color:{colour}'>text</p><p class=two style='color:#000000'>text</p></main>");
        Assert.Equal(tooLow, (await page.Contrasts("#board", least)).Count > 0);
    }
}
