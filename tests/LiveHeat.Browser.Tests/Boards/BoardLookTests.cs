using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Workouts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>The board at the sizes of halls' screens, with few and many lanes and with names that nobody planned for: nothing is cut or covered.</summary>
public sealed class BoardLookTests(Hall hall) : HallTest(hall)
{
    /// <summary>Long, accented, from right to left, and as wide as letters get.</summary>
    private static readonly string[] LongNames =
    [
        "Die Unermüdlichen von der Hafenstraße 27", "Les Équipières de la Côte d’Émeraude", "אגרופי הנמל הצפוני", "فريق ميناء الشمال الأزرق",
        "Żółte Łódki znad Wielkiej Rzeki Północnej", "WWWWW MMMMM WWWWW MMMMM WWWWW MMMMM", "Þórðarbúð Æskulýðsfélag Norðurlands", "Ærlige Måger fra Sønderøen og omegn",
    ];

    private static readonly string[] ShortNames = ["Harbour Anvils", "Tin Whistle Four", "Quarry Lights", "Moss & Iron", "The Late Ferries", "Copper Kettles", "Kiln Street"];
    private static readonly string[] LongAthletes = ["Maximiliane-Sophie", "עבד אל־רחמן", "Þorgerður", "عبد الرحمن", "Guðbjörg", "François-Xavier"];
    private static readonly string[] ShortAthletes = ["Joss", "Ilka", "Bram", "Edda"];
    private static readonly (int Width, int Height)[] Sizes = [(1280, 720), (3840, 2160), (1920, 1080)];

    [Theory]
    [InlineData(4, false)]
    [InlineData(10, false)]
    [InlineData(20, false)]
    [InlineData(4, true)]
    [InlineData(10, true)]
    [InlineData(20, true)]
    public async Task Before_during_and_after_a_heat_nothing_is_cut(int lanes, bool longNames)
    {
        var heat = await Hall.Call(QuickWork.Long(), Teams(lanes, longNames));
        var board = await Board(heat);
        await board.Shows("before");
        var faults = new List<string>();
        faults.AddRange(await Look(board, "before"));

        await heat.RunsSince(400_000);
        for (var lane = 2; lane <= lanes; lane++)
        {
            await heat.Add(lane, 3 * (1 + (lane % 5)), 120_000 + (lane * 9_000));       // lane 1 is still at its first step
        }

        await heat.Do("hold-lane", new { lane = 2, movesCap = true, reason = "the rower stopped" });
        await board.HasStatus(2, "held");
        await board.HasPlace(lanes, (await heat.Lane(lanes)).Place!.Value);
        faults.AddRange(await Look(board, "running"));

        await heat.Add(lanes, 24, 395_000);                                             // across the line
        await heat.Do("end");
        await board.Shows("result");
        faults.AddRange(await Look(board, "result"));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Two_divisions_on_one_floor_have_their_own_caps_and_places()
    {
        var entrants = Teams(8, longNames: true).Select((entrant, i) => entrant with { Division = i < 4 ? "open" : "masters" }).ToArray();
        var heat = await Hall.Call(QuickWork.Long("open", "masters"), entrants);
        await heat.RunsSince(400_000);
        for (var lane = 1; lane <= 8; lane++)
        {
            await heat.Add(lane, 9, 250_000 + (lane * 11_000));
        }

        var board = await Board(heat);
        await board.HasPlace(1, 1);
        await board.HasPlace(5, 1);
        await Expect(board.Page.Locator(".pace-label").First).ToBeVisibleAsync();
        Assert.Empty(await Look(board, "two divisions"));
    }

    [Fact]
    public async Task On_a_phone_it_is_a_list_to_scroll()
    {
        var heat = await Hall.Call(QuickWork.Long(), Teams(10, longNames: true));
        await heat.RunsSince(100_000);
        var page = await Page(390, 844, phone: true);
        var board = new BigBoard(page, Hall.Site);
        await board.Open(heat.Id);
        await board.Shows("running");
        await Expect(board.Main).ToHaveAttributeAsync("data-layout", "list");
        Assert.Empty(await page.Faults("#board", scrolls: true));
    }

    /// <summary>A comma reaches further below the line than figures do, and would be half covered by what is told there.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(10)]
    public async Task Where_seconds_have_a_comma_it_stays_within_the_head(int lanes)
    {
        var heat = await Hall.Call(QuickWork.Long(), Teams(lanes, longNames: false));
        await heat.RunsSince(100_000);
        await heat.Do("halt", new { reason = "somebody on the floor" });
        var board = new BigBoard(await Page(1920, 1080), Hall.Site);
        await board.Open(heat.Id, "?lang=es");
        await Expect(board.Page.Locator(".notice-text")).ToBeVisibleAsync();
        await Expect(board.Clock).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^1:4\\d,\\d$"));
        var below = await board.Clock.EvaluateAsync<double>("""
            clock => {
              const text = document.createRange(), ink = document.createElement('canvas').getContext('2d'), { fontWeight, fontSize, fontFamily, scale } = getComputedStyle(clock);
              text.selectNodeContents(clock);
              ink.font = `${fontWeight} ${fontSize} ${fontFamily}`;
              const { fontBoundingBoxDescent, actualBoundingBoxDescent } = ink.measureText(clock.textContent);
              const end = text.getBoundingClientRect().bottom - (fontBoundingBoxDescent - actualBoundingBoxDescent) * (scale === 'none' ? 1 : Number(scale));
              return end - document.querySelector('.heading').getBoundingClientRect().bottom;
            }
            """);
        Assert.InRange(below, -60, 0);
    }

    /// <summary>Most of all, text stays large enough to be read from the stands: its capitals 2.6 % of the screen's height.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public async Task No_text_that_must_be_read_is_smaller_than_can_be_read_from_the_stands(int lanes)
    {
        var heat = await Hall.Call(QuickWork.Long(), Teams(lanes, longNames: false));
        await heat.RunsSince(60_000);
        var board = await Board(heat);
        await board.Shows("running");
        var small = await board.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll('#board .stage *, #board .heading *')]
              .filter(one => [...one.childNodes].some(node => node.nodeType === 3 && node.textContent.trim()) && one.checkVisibility() && !one.closest('small, [hidden], .summary'))
              .filter(one => parseFloat(getComputedStyle(one).fontSize) < innerHeight * 0.0371)
              .map(one => `${one.className} ${one.textContent}`)
            """);
        Assert.Empty(small);
    }

    private static Entrant[] Teams(int lanes, bool longNames)
    {
        var (names, athletes) = longNames ? (LongNames, LongAthletes) : (ShortNames, ShortAthletes);
        return [.. Enumerable.Range(1, lanes).Select(lane => new Entrant(
            lane, names[(lane - 1) % names.Length] + (lane > names.Length && !longNames ? $" {lane}" : ""), [.. Enumerable.Range(lane, 4).Select(nth => athletes[nth % athletes.Length])]))];
    }

    private static Task<IEnumerable<string>> Look(BigBoard board, string what) => board.Page.FaultsAt(what, Sizes, "#board", Looks.LeastControl);
}
