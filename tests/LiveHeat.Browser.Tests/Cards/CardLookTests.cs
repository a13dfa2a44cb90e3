using System.Text;
using System.Text.RegularExpressions;
using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Cards;

/// <summary>The paper scorecards as a printer gets them.</summary>
public sealed partial class CardLookTests(Hall hall) : HallTest(hall)
{
    /// <summary>A4 without its margins, CSS pixels: 186 mm at 96 to the inch.</summary>
    private const int PaperWidth = 703;

    /// <summary>A4 without its margins: 275 mm.</summary>
    private const int PaperHeight = 1039;

    private static readonly string[] Names = ["Maximiliane-Sophie", "עבד אל־רחמן", "Þorgerður", "Guðbjörg"];

    [Fact]
    public async Task An_ordinary_heat_is_a_sheet_a_lane_with_a_box_for_every_rep()
    {
        var heat = await Hall.Plan(Work(6, [new("box", 12, Load: "60 und 75 cm"), new("run", 400), new("carry", 40, Worth: 4, Increment: 10), new("lift", 1, Reading: true)]), Teams());
        var page = await Printed(heat);

        await Expect(page.Locator(".sheet")).ToHaveCountAsync(2);
        Assert.Equal(2, await Sheets(page));
        Assert.Empty(await page.Faults("main", scrolls: true));
        Assert.Empty(await TooHigh(page));
        var lane = page.Locator(".sheet[data-lane='1']");
        await Expect(lane.Locator("[data-step='1'] .boxes .box")).ToHaveCountAsync(12);
        await Expect(lane.Locator("[data-step='2'] .boxes .box")).ToHaveCountAsync(1);
        await Expect(lane.Locator("[data-step='2'] .boxes .field")).ToHaveTextAsync("m");
        await Expect(lane.Locator("[data-step='3'] .boxes .box")).ToHaveCountAsync(4);
        await Expect(lane.Locator("[data-step='4'] .boxes .box")).ToHaveCountAsync(0);
        await Expect(lane.Locator("[data-step='4'] .boxes .field")).ToHaveTextAsync("kg");
        await Expect(lane.Locator("[data-step='5'] .what .box")).ToHaveCountAsync(1);        // the tag
        await Expect(lane.Locator(".no-rep")).ToHaveCountAsync(6 * 4);
        await Expect(lane.Locator("article.set .boxes .box")).ToHaveCountAsync(6 * (12 + 1 + 4));
        await Expect(lane).ToContainTextAsync("Local rules and licensed practice come first");
        await Expect(lane.Locator("footer")).ToContainTextAsync("disputed");
    }

    [Theory]
    [InlineData(9)]
    [InlineData(16)]
    [InlineData(24)]
    public async Task Long_work_takes_more_sheets_and_no_set_is_torn(int rounds)
    {
        var heat = await Hall.Plan(Work(rounds, [new("box", 30, Load: "60 und 75 cm, mit Weste von neun Kilogramm"), new("box", 21), new("carry", 50, Increment: 5)]), Teams());
        var page = await Printed(heat);

        Assert.Equal(await page.Locator(".sheet").CountAsync(), await Sheets(page));
        Assert.True(await page.Locator(".sheet[data-lane='1']").CountAsync() > 1, "it was to be too long for one");
        Assert.Empty(await page.Faults("main", scrolls: true));
        Assert.Empty(await TooHigh(page));
        Assert.Empty(await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.work article, .sheet footer')].filter(one => getComputedStyle(one).breakInside !== 'avoid').map(one => one.outerHTML)"));
        var steps = await page.EvaluateAsync<int[]>("() => [...document.querySelectorAll('.sheet[data-lane=\"1\"] [data-step]')].map(one => +one.dataset.step)");
        Assert.Equal(Enumerable.Range(1, rounds * 4), steps);
        await Expect(page.Locator(".sheet[data-lane='1'] footer")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Rounds_without_an_end_leave_lines_for_more()
    {
        var workout = Work(0, [new("box", 12), new("carry", 40, Increment: 10)]) with { Scoring = new ScoringRule.MostWork(), Finish = FinishKind.None };
        var page = await Printed(await Hall.Plan(workout, Teams()));

        await Expect(page.Locator(".sheet[data-lane='1'] .more .blank")).ToHaveCountAsync(6);
        Assert.Equal(await page.Locator(".sheet").CountAsync(), await Sheets(page));
        Assert.Empty(await TooHigh(page));
        Assert.Empty(await page.Faults("main", scrolls: true));
    }

    [Fact]
    public async Task It_prints_without_colour()
    {
        var page = await Printed(await Hall.Plan(QuickWork.Sets(), Teams()));

        var colours = await page.EvaluateAsync<string[]>("""
            () => [...new Set([...document.querySelectorAll('body, body *')].flatMap(one => { const { color, backgroundColor, borderTopColor } = getComputedStyle(one); return [color, backgroundColor, borderTopColor]; }))]
            """);
        Assert.All(colours, colour => Assert.Contains(colour, new[] { "rgb(0, 0, 0)", "rgb(255, 255, 255)", "rgba(0, 0, 0, 0)" }));
    }

    private static Entrant[] Teams() => [new(1, "Die Unermüdlichen von der Hafenstraße 27", Names), new(2, "WWWWW MMMMM WWWWW MMMMM WWWWW MMMMM", Names)];

    private static Workout Work(int rounds, Items<PrescribedSet> round) => new(
        "", "Die Unermüdlichen von der Hafenstraße", new RelayOrder.InTurn(), Counting.Sets, 1, FinishKind.Line,
        [
            new("box", "Zweihändige Kastensprünge", Unit.Reps, 2, 0.5, "", []), new("run", "run", Unit.M, 0.3, 0.1, "", []),
            new("carry", "sled carry", Unit.M, 1, 0.2, "", []), new("lift", "one lift", Unit.Kg, 20, 1, "", []),
        ],
        [new("open", "Masters 45+", 720_000, rounds, [], round, [])]);

    private async Task<IPage> Printed(HallHeat heat)
    {
        var page = await Page(PaperWidth, PaperHeight);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await page.GotoAsync($"{Hall.Site}cards/{heat.Id}");
        await Expect(page.Locator(".sheet").First).ToBeVisibleAsync();
        await page.EvaluateAsync("() => document.fonts.ready");
        return page;
    }

    /// <summary>How many sheets of paper the browser makes of it, as its PDF says.</summary>
    private static async Task<int> Sheets(IPage page) =>
        PdfPage().Count(Encoding.Latin1.GetString(await page.PdfAsync(new PagePdfOptions { PreferCSSPageSize = true })));

    /// <summary>Sheets that are higher than the paper.</summary>
    private static Task<string[]> TooHigh(IPage page) => page.EvaluateAsync<string[]>(
        $"() => [...document.querySelectorAll('.sheet')].filter(one => one.offsetHeight > {PaperHeight}).map(one => `${{one.dataset.lane}}.${{one.dataset.sheet}}: ${{one.offsetHeight}}`)");

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PdfPage();
}
