using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Briefing;

/// <summary>The briefing on the big screen and on paper, with more and longer words than anybody wants to read.</summary>
public sealed class BriefingLookTests(Hall hall) : HallTest(hall)
{
    private const string LongSentence = "Beide Füße verlassen den Boden im selben Augenblick, und erst wenn die Hüfte ganz gestreckt und der Blick nach vorn gerichtet ist, zählt die Wiederholung";

    /// <summary>A4 without its margins, CSS pixels: 186 mm at 96 to the inch.</summary>
    private const int PaperWidth = 703;

    [Theory]
    [InlineData(1920, 1080)]
    [InlineData(1280, 720)]
    public async Task Every_slide_is_whole_and_can_be_read_from_the_stands_and_arrow_keys_turn_them(int width, int height)
    {
        var heat = await Long();
        var slides = new BriefingSlides(await Page(width, height), Hall.Site);
        await slides.Open(heat.Id, "&every=0");
        var count = await slides.Count();
        var (faults, words) = (new List<string>(), "");
        for (var slide = 1; slide <= count; slide++)
        {
            await slides.IsAt(slide, count);
            faults.AddRange((await slides.Page.Faults("#slides")).Select(fault => $"slide {slide}: {fault}"));
            faults.AddRange((await slides.TooSmall()).Select(small => $"slide {slide}, too small: {small}"));
            words += $" {await slides.Words()}";
            await slides.Page.Keyboard.PressAsync("ArrowRight");
        }

        Assert.Empty(faults);
        await slides.IsAt(1, count);                                        // after the last comes the first
        await slides.Page.Keyboard.PressAsync("ArrowLeft");
        await slides.IsAt(count, count);
        Assert.True(count > 13, $"{count} slides: what is too long for one was not split");

        // Every word of it is on some slide, each once, in order.
        words = string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(Everything(), words, StringComparison.Ordinal);
        Assert.All(Enumerable.Range(1, 20), rule => Assert.Contains($"Regel {rule}: {LongSentence}", words, StringComparison.Ordinal));
    }

    /// <summary>As on the board: capitals fill 20 minutes of arc at the farthest seat, h = 2 D tan(a/2) (ISO 9241-3); what does not fit then goes to further slides.</summary>
    [Theory]
    [InlineData(4, 25)]
    [InlineData(8, 30)]
    public async Task From_the_farthest_seat_every_slide_can_be_read_and_none_is_cut(double width, double seat)
    {
        var heat = await Long();
        var slides = new BriefingSlides(await Page(1920, 1080), Hall.Site);
        await slides.Open(heat.Id, FormattableString.Invariant($"&every=0&width={width}&seat={seat}"));
        var least = 2 * seat * Math.Tan(20 / 60.0 * Math.PI / 180 / 2) / width * 1920;
        var (faults, words) = (new List<string>(), "");
        for (var (slide, count) = (1, await slides.Count()); slide <= count; slide++)
        {
            faults.AddRange((await slides.Page.Faults("#slides")).Concat(await slides.Page.LowCapitals("#slides", least)).Select(fault => $"slide {slide}: {fault}"));
            words += $" {await slides.Words()}";
            await slides.Page.Keyboard.PressAsync("ArrowRight");
        }

        Assert.Empty(faults);
        Assert.Contains(Everything()[^60..], words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task They_turn_by_themselves_and_by_click()
    {
        var heat = await Long();
        var page = await Page(1920, 1080);
        await page.Clock.InstallAsync();
        var slides = new BriefingSlides(page, Hall.Site);
        await slides.Open(heat.Id, "&every=30");
        var count = await slides.Count();
        await slides.IsAt(1, count);
        await page.Clock.FastForwardAsync(30_000);
        await slides.IsAt(2, count);
        await page.Mouse.ClickAsync(1500, 500);
        await slides.IsAt(3, count);
        await page.Mouse.ClickAsync(200, 500);
        await slides.IsAt(2, count);
        await page.Clock.FastForwardAsync(30_000);
        await slides.IsAt(3, count);
    }

    [Fact]
    public async Task Nothing_moves_where_the_device_asks_for_less()
    {
        var heat = await Long();
        var page = await Page(1920, 1080, motion: ReducedMotion.Reduce);
        await new BriefingSlides(page, Hall.Site).Open(heat.Id, "");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => document.getAnimations().length"));

        var moving = await Page(1920, 1080);
        await new BriefingSlides(moving, Hall.Site).Open(heat.Id, "");
        Assert.Equal(1, await moving.EvaluateAsync<int>("() => document.getAnimations().length"));
    }

    [Fact]
    public async Task On_paper_nothing_is_wider_than_the_page_or_torn_between_two()
    {
        var heat = await Long();
        var page = await Page(PaperWidth, 1000);
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await page.GotoAsync($"{Hall.Site}briefing/{heat.Id}");
        await Expect(page.Locator("article.movement")).ToHaveCountAsync(5);
        Assert.Empty(await page.Faults("main", scrolls: true));
        var torn = await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('section, article, li, .lanes tr')].filter(one => getComputedStyle(one).breakInside !== 'avoid').map(one => one.outerHTML.slice(0, 60))
            """);
        Assert.Empty(torn);
        Assert.Equal("rgb(255, 255, 255)", await page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_picture_stands_beside_the_words_and_leaves_its_room_to_them_when_it_cannot_be_had(bool there)
    {
        var heat = await Long("/api/setup/movements/plank/picture?v=0123456789abcdef0123456789abcdef");
        var page = await Page(1920, 1080);
        if (there)
        {
            await page.RouteAsync("**/picture?v=*", route => route.FulfillAsync(new RouteFulfillOptions { ContentType = "image/svg+xml", Body = "<svg xmlns='http://www.w3.org/2000/svg' width='300' height='300'/>" }));
        }

        var slides = new BriefingSlides(page, Hall.Site);
        await slides.Open(heat.Id, "&every=0");
        var pictures = page.Locator("#slides .slide img");
        await (there ? Expect(pictures).Not.ToHaveCountAsync(0) : Expect(pictures).ToHaveCountAsync(0));
        var covered = await page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('#slides .slide')].filter(slide => slide.querySelector('img')).flatMap(slide => {
              const picture = slide.querySelector('img').getBoundingClientRect(), range = document.createRange();
              range.selectNodeContents(slide.querySelector('.lines'));
              return [...range.getClientRects()].filter(box => box.right > picture.left && box.bottom > picture.top && box.top < picture.bottom).map(box => `${box.right} > ${picture.left}`);
            })
            """);
        Assert.Empty(covered);
    }

    private static string Everything() => string.Join(' ', Enumerable.Range(1, 220).Select(number => $"Unterarmstützüberwachung{number}"))[..1900];

    /// <summary>Four movements: one with the longest lists, one in a single endless paragraph, one in words without a space, one with nothing written.</summary>
    private Task<HallHeat> Long(string? picture = null)
    {
        var rules = Enumerable.Range(1, 20).Select(rule => $"Regel {rule}: {LongSentence}").ToItems();
        var names = Enumerable.Range(1, 8).Select(fault => new NamedFault($"Hüfte nicht gestreckt ({fault})", LongSentence)).ToItems();
        var faults = names.Select(fault => fault.Name).ToItems();
        var workout = new Workout(
            "", "Die Unermüdlichen von der Hafenstraße siebenundzwanzig", new RelayOrder.Listed([1, 2, 1, 2, 2, 1]), Counting.Sets, 1, FinishKind.Mat,
            [
                new("box", "Zweihändige Kastensprünge mit folgender Landung rückwärts", Unit.Reps, 2, 0.5, "", faults) { FullStandard = new Standard(LongSentence, LongSentence, rules, [], names, LongSentence) },
                new("plank", "Unterarmstütz", Unit.Reps, 2, 0.5, Everything(), faults) { FullStandard = picture is null ? null : new Standard(Everything()[..480], Everything()[481..960], [Everything()[961..1440]], [], [], null, picture) },
                new("word", new string('W', 60), Unit.M, 2, 0.5, new string('M', 300), [new string('Q', 28)]),
                new("bare", "row", Unit.Cal, 2, 0.5, "", []),
            ],
            [
                Division("open", "Open"), Division("masters", "Masters 45+"),
            ]);
        return Hall.Plan(workout, new Entrant(1, "Die Unermüdlichen von der Hafenstraße 27", "Maximiliane-Sophie", "עבד אל־רחמן"), new Entrant(2, "WWWWW MMMMM WWWWW MMMMM WWWWW MMMMM", "Þorgerður", "Guðbjörg") { Division = "masters" });
    }

    private static Prescription Division(string id, string name) => new(
        id, name, 720_000, 6, [], [new("box", 20, Load: "60 und 75 cm, mit Weste von neun Kilogramm"), new("plank", 10), new("word", 400, Worth: 4, Increment: 10), new("bare", 12)], []);
}
