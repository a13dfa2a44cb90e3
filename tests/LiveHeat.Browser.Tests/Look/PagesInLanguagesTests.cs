using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Look;

/// <summary>Result, briefing, slides and scorecard in the languages whose words are longest, on screens and on paper: nothing is cut or covered.</summary>
public sealed class PagesInLanguagesTests(Hall hall) : HallTest(hall)
{
    /// <summary>A4 without its margins, CSS pixels: 186 by 275 mm at 96 to the inch.</summary>
    private const int PaperWidth = 703, PaperHeight = 1039, LandscapeWidth = 1031;

    private static readonly string[] Athletes = ["Maximiliane-Sophie", "Þorgerður", "Guðbjörg", "Xe"];

    [Theory]
    [InlineData("de")]
    [InlineData("fr")]
    public async Task Nothing_is_cut_in_long_languages(string language)
    {
        var heat = await Hall.Call(Work(), new Entrant(1, "Die Unermüdlichen von der Hafenstraße 27", Athletes), new Entrant(2, "Les Increvables du Quai Saint-Nicolas", Athletes));
        await heat.RunsSince(60_000);
        await heat.Add(1, 1, 30_000);
        var page = await Page(1280, 720);
        var faults = new List<string>();
        foreach (var (width, height, media) in new[] { (1280, 720, Media.Screen), (390, 844, Media.Screen), (PaperWidth, PaperHeight, Media.Print) })
        {
            await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = media });
            foreach (var address in new[] { $"result/{heat.Id}", "standings", $"briefing/{heat.Id}", $"cards/{heat.Id}" }.Where(address => width >= PaperWidth || !address.StartsWith("cards", StringComparison.Ordinal)))
            {
                // The standings are printed across.
                await page.SetViewportSizeAsync(media == Media.Print && address == "standings" ? LandscapeWidth : width, height);
                await page.GotoAsync($"{Hall.Site}{address}?lang={language}");
                await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", language);
                // The standings have a column a workout: their table may be pushed aside, the page may not.
                faults.AddRange(address == "standings"
                    ? await page.EvaluateAsync<string[]>("() => document.documentElement.scrollWidth > innerWidth ? [`standings: ${document.documentElement.scrollWidth} > ${innerWidth}`] : []")
                    : (await page.Faults("main", scrolls: true)).Select(fault => $"{address}, {width}, {media}: {fault}"));
                await Expect(page.Locator(".languages")).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Visible = media == Media.Screen && !address.Contains("briefing", StringComparison.Ordinal) && !address.Contains("cards", StringComparison.Ordinal) });
            }
        }

        var high = await page.EvaluateAsync<string[]>($"() => [...document.querySelectorAll('.sheet')].filter(one => one.offsetHeight > {PaperHeight}).map(one => `${{one.dataset.lane}}: ${{one.offsetHeight}}`)");
        Assert.Equal("", string.Join('\n', faults.Concat(high)));
    }

    [Theory]
    [InlineData("de", "1 von")]
    [InlineData("fr", "1 sur")]
    public async Task Slides_are_whole_and_can_be_read_from_the_stands(string language, string first)
    {
        var heat = await Hall.Plan(Work(), new Entrant(1, "Die Unermüdlichen von der Hafenstraße 27", Athletes));
        var slides = new BriefingSlides(await Page(1280, 720), Hall.Site);
        await slides.Open(heat.Id, $"&every=0&lang={language}");
        await Expect(slides.Here).ToContainTextAsync(first);
        var faults = new List<string>();
        for (var slide = await slides.Count(); slide > 0; slide--)
        {
            faults.AddRange(await slides.Page.Faults("#slides"));
            faults.AddRange(await slides.TooSmall());
            await slides.Page.Keyboard.PressAsync("ArrowRight");
        }

        Assert.Empty(faults);
    }

    private static Workout Work() => new(
        "", "Die Unermüdlichen von der Hafenstraße", new RelayOrder.Blocks(2), Counting.Sets, 1, FinishKind.Mat,
        [new("box", "Zweihändige Kastensprünge", Unit.Reps, 2, 0.5, "", []), new("carry", "sled carry", Unit.M, 1, 0.2, "", []), new("lift", "one lift", Unit.Kg, 20, 1, "", [])],
        [new("open", "Masters 45+", 720_000, 8, [new("box", 30)], [new("box", 12, Load: "60 und 75 cm"), new("carry", 40, Worth: 4, Increment: 10)], [new("lift", 1, Reading: true)])]);
}
