using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;

namespace LiveHeat.Browser.Boards;

/// <summary>
/// What the board shows can be read from the farthest seat: capitals fill 20 minutes of arc there, h = 2 D tan(a/2) (ISO 9241-3, carried into ISO 9241-303, where
/// 20 to 22 are preferred and 16 is the least).
/// </summary>
public sealed class LegibilityTests(Hall hall) : ModuleTest(hall)
{
    private const int Width = 1920;

    /// <summary>Computed here from the formula; the same figures to two decimals stand in ISO 9241-3's tables (from memory).</summary>
    [Theory]
    [InlineData(10, 20, 58.18)]
    [InlineData(20, 20, 116.36)]
    [InlineData(25, 20, 145.44)]
    [InlineData(40, 20, 232.71)]
    [InlineData(25, 16, 116.36)]
    public async Task Capitals_are_as_high_as_the_formula_says(double metres, double minutes, double mm)
    {
        Assert.Equal(mm, Math.Round(Mm(metres, minutes), 2));
        Assert.Equal(mm, await Run<double>(["/floor/board/sight.js"], "([sight], [metres, minutes]) => Math.round(sight.capitalMm(metres, minutes) * 100) / 100", new[] { metres, minutes }));
    }

    [Theory]
    [InlineData("width=4&seat=25", "4 25")]
    [InlineData("width=3,5&seat=20", "3.5 20")]
    [InlineData("seat=25", "none")]
    [InlineData("width=0&seat=25", "none")]
    [InlineData("width=4&seat=far", "none")]
    [InlineData("width=4&seat=-3", "none")]
    public async Task What_was_measured_is_read_from_the_address_and_nonsense_is_not(string options, string read) =>
        Assert.Equal(read, await Run<string>(
            ["/floor/board/sight.js"], "([sight], options) => { const seat = sight.seatOf(new URLSearchParams(options)); return seat ? `${seat.width} ${seat.seat}` : 'none'; }", options));

    [Theory]
    [InlineData("", "6 30")]
    [InlineData("width=4&seat=25", "4 25")]
    [InlineData("width=4", "none")]
    public async Task What_is_set_up_holds_unless_the_address_says_otherwise(string options, string read) =>
        Assert.Equal(read, await Run<string>(
            ["/floor/board/sight.js"],
            "([sight], options) => { const seat = sight.seatOf(new URLSearchParams(options), { widthM: 6, seatM: 30 }); return seat ? `${seat.width} ${seat.seat}` : 'none'; }", options));

    [Theory]
    [InlineData(4, 4.0, 25)]
    [InlineData(10, 4.0, 25)]
    [InlineData(20, 4.0, 25)]
    [InlineData(4, 8.0, 30)]
    [InlineData(10, 8.0, 30)]
    [InlineData(20, 8.0, 30)]
    [InlineData(20, 6.0, 12)]
    public async Task No_text_on_the_board_is_smaller_than_can_be_read_from_the_farthest_seat(int lanes, double width, double seat)
    {
        var stage = new BoardStage(await Page(Width, 1080));
        await stage.Begin(Hall.Site, lanes, options: FormattableString.Invariant($"width={width}&seat={seat}"));
        var least = Mm(seat, 20) / 1000 / width * Width;
        var faults = new List<string>();
        foreach (var scene in await stage.Scenes())
        {
            await stage.Show(scene);
            faults.AddRange((await stage.Page.LowCapitals("#board", least)).Concat(await stage.Page.Faults("#board")).Select(fault => $"{scene}: {fault}"));
        }

        Assert.Empty(faults);
    }

    /// <summary>Names that do not fit are told by their beginning; they do not get small.</summary>
    [Fact]
    public async Task Long_names_and_two_divisions_do_not_make_it_smaller()
    {
        var stage = new BoardStage(await Page(Width, 1080));
        await stage.Begin(Hall.Site, 20, longNames: true, mixed: true, options: "width=4&seat=25");
        var faults = new List<string>();
        foreach (var scene in new[] { "before", "running", "result" })
        {
            await stage.Show(scene);
            faults.AddRange(await stage.Page.LowCapitals("#board", Mm(25, 20) / 1000 / 4 * Width));
        }

        Assert.Empty(faults);
        await Microsoft.Playwright.Assertions.Expect(stage.Page.Locator(".lane-name").First).ToContainTextAsync("…");
    }

    [Fact]
    public async Task The_farther_the_seat_the_fewer_lanes_on_a_page()
    {
        var stage = new BoardStage(await Page(Width, 1080));
        var fitting = new List<int>();
        foreach (var seat in new[] { 6, 12, 25 })
        {
            await stage.Begin(Hall.Site, 20, options: $"width=4&seat={seat}");
            await stage.Show("running");
            fitting.Add(await stage.Page.EvaluateAsync<int>("stage.plan.fitting"));
        }

        Assert.True(fitting[0] > fitting[1] && fitting[1] > fitting[2], string.Join(", ", fitting));
        Assert.True(await stage.Page.EvaluateAsync<bool>("stage.plan.pages * stage.plan.perPage >= 20 && stage.plan.perPage <= stage.plan.fitting"));
    }

    /// <summary>From 25 m and a picture 4 m wide: the leader in the head, the gaps in the rows, and whose turn comes in the place of the team's name every other moment.</summary>
    [Fact]
    public async Task From_the_last_row_one_sees_who_leads_by_how_much_and_who_is_about_to_tag()
    {
        var stage = new BoardStage(await Page(Width, 1080));
        await stage.Begin(Hall.Site, 10, options: "width=4&seat=25");
        await stage.Show("running");
        var page = stage.Page;
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".heat-workout")).ToHaveTextAsync("1st Tin Whistle Four");
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".lane[data-lane='2'] .beside")).ToHaveTextAsync("31 s");
        var tagging = page.Locator(".lane[data-lane='1'] .lane-name");
        await Microsoft.Playwright.Assertions.Expect(tagging).ToHaveTextAsync("Ilka");
        Assert.Empty(await page.LowCapitals("#board", Mm(25, 20) / 1000 / 4 * Width));
        await Microsoft.Playwright.Assertions.Expect(tagging).ToHaveTextAsync("Harbour Anvils");
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".lane[data-lane='2']")).Not.ToHaveAttributeAsync("data-tag", "now");
    }

    /// <summary>For whoever sets the screen up.</summary>
    [Fact]
    public async Task Key_F_tells_how_many_lanes_fit_and_how_large_the_letters_are()
    {
        var heat = await Hall.Call(QuickWork.Sets(), new Entrant(1, "Harbour Anvils", "Joss", "Ilka"));
        var page = await Page(Width, 1080);
        await page.GotoAsync($"{Hall.Site}board/{heat.Id}?width=4&seat=25");
        await Microsoft.Playwright.Assertions.Expect(page.Locator("#board[data-scene='before']")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("f");
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".fit-hint")).ToContainTextAsync("145 mm, 70 pixels");
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".fit-hint b")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^[3-6] lanes fit on one picture$"));
        await page.Keyboard.PressAsync("f");
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".fit-hint")).ToHaveCountAsync(0);
    }

    private static double Mm(double metres, double minutes) => 2 * metres * 1000 * Math.Tan(minutes / 60 * Math.PI / 180 / 2);
}
