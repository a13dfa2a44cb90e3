using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using LiveHeat.Contracts.Programme;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Boards;

/// <summary>What takes turns with the lanes: message, briefing, standings.</summary>
[Collection(OneAtATime.Name)]
public sealed class BetweenTests(Hall hall) : ModuleTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    /// <summary>Seconds since the scene began, and what is shown then: slides stay 9 s, pages of standings 12 s, lanes 20 s and more where they have many pages.</summary>
    [Theory]
    [InlineData("before", false, 3, 0, 1, "0 lanes 0, 19 lanes 0, 20 briefing 0, 30 briefing 1, 46 briefing 2, 47 lanes 0")]
    [InlineData("before", false, 0, 5, 1, "0 lanes 0, 21 lanes 0, 60 lanes 0")]
    [InlineData("result", false, 3, 2, 1, "0 lanes 0, 20 standings 0, 33 standings 1, 45 lanes 0")]
    [InlineData("result", false, 0, 1, 4, "0 lanes 0, 39 lanes 0, 40 standings 0, 53 lanes 0")]
    [InlineData("idle", false, 0, 1, 1, "0 lanes 0, 25 standings 0")]
    [InlineData("idle", true, 0, 1, 1, "0 message 0, 25 message 0")]
    [InlineData("running", true, 3, 2, 1, "0 lanes 0, 25 lanes 0")]
    [InlineData("count-down", true, 3, 2, 1, "0 lanes 0, 25 lanes 0")]
    public async Task Lanes_take_turns_with_what_the_phase_has_to_tell_and_nothing_covers_a_heat(string scene, bool message, int slides, int pages, int lanePages, string told) =>
        Assert.Equal(told, await Run<string>(["/floor/board/between.js"], """
            ([between], { seconds, ...signs }) => seconds.map(second => { const { what, nth } = between.turnOf({ ...signs, sinceMs: second * 1_000 }); return `${second} ${what} ${nth}`; }).join(', ')
            """, new { seconds = told.Split(", ").Select(one => int.Parse(one.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)), scene, message, slides, pages, lanePages }));

    /// <summary>The next heat stands between a result and the standings, and only there: before a heat and while one runs it is not what people look for.</summary>
    [Theory]
    [InlineData("result", 1, 1, "0 lanes 0, 20 programme 0, 30 programme 1, 40 standings 0, 52 lanes 0")]
    [InlineData("result", 0, 4, "39 lanes 0, 41 programme 0, 61 lanes 0")]
    [InlineData("before", 0, 1, "21 lanes 0, 35 lanes 0")]
    [InlineData("running", 1, 1, "21 lanes 0, 45 lanes 0")]
    public async Task After_a_result_it_tells_what_comes_next(string scene, int pages, int lanePages, string told) =>
        Assert.Equal(told, await Run<string>(["/floor/board/between.js"], """
            ([between], { seconds, ...signs }) => seconds.map(second => { const { what, nth } = between.turnOf({ ...signs, slides: 0, message: false, next: true, sinceMs: second * 1_000 }); return `${second} ${what} ${nth}`; }).join(', ')
            """, new { seconds = told.Split(", ").Select(one => int.Parse(one.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)), scene, pages, lanePages }));

    /// <summary>Who is in the next heat, on which lane, and when; before its own start a heat says when it is planned too, and the competition's name.</summary>
    [Fact]
    public async Task The_next_heat_is_told_with_its_lanes_and_its_time()
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, 4);
        Assert.Equal("programme", await stage.Show("programme"));
        var told = stage.Page.Locator(".to-come");
        await Expect(told.Locator(".next-lane")).ToHaveTextAsync(["1Harbour Anvils", "2Tin Whistle Four", "3Quarry Lights", "4Moss & Iron"]);
        await Expect(told.Locator(".next-heat")).ToHaveTextAsync("Heat 1314:12 · in 12 minutes");
        await Expect(told.Locator(".competition")).ToHaveTextAsync("Breakwater Relays");
        await Expect(told.Locator(".next-name").First).ToBeVisibleAsync();
        await Expect(stage.Page.Locator(".heading")).ToBeHiddenAsync();

        Assert.Equal("lanes", await stage.Show("before"));
        await Expect(stage.Page.Locator(".clock-label")).ToHaveTextAsync("up next · 14:05");
        await Expect(stage.Page.Locator(".time-left")).ToHaveTextAsync("Breakwater Relays");
    }

    [Fact]
    public async Task The_briefing_is_shown_while_there_is_time_or_when_somebody_asked_for_it() =>
        Assert.Equal("true false false false true false", await Run<string>(["/floor/board/between.js"], """
            ([{ wantsBriefing }]) => [wantsBriefing(null, 600_000, 479_999), wantsBriefing(null, 600_000, 480_000), wantsBriefing(null, null, 1), wantsBriefing(null, 600_000, null), wantsBriefing(true, null, 1), wantsBriefing(false, 600_000, 1)].join(' ')
            """));

    [Fact]
    public async Task Standings_are_cut_into_even_pages_of_one_division_each() =>
        Assert.Equal(["Open 1/2: 1 2", "Open 2/2: 3 4", "Masters 1/1: 1"], await Run<string[]>(["/floor/board/standings-view.js"], """
            ([standings]) => {
              const lines = places => places.map(place => ({ place, name: `team ${place}` }));
              const table = { divisions: [{ name: 'Open', lines: lines([1, 2, 3, 4]) }, { name: 'Scaled', lines: lines([null, null]) }, { name: 'Masters', lines: lines([1, null]) }] };
              return standings.standingsPages(table, 3).map(page => `${page.division} ${page.page}/${page.of}: ${page.lines.map(line => line.place).join(' ')}`);
            }
            """));

    [Fact]
    public async Task The_organiser_s_message_stands_on_the_board_until_it_is_taken_away_and_never_over_a_heat()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var board = await Board(heat);
        await board.Shows("before");
        (await Hall.Organiser.Put("/api/board/message", new BoardMessage("Lunch until half past one"))).Fine();
        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "message");
        await Expect(board.Page.Locator(".message-text")).ToHaveTextAsync("Lunch until half past one");
        await Expect(board.Page.Locator(".message-text")).ToBeVisibleAsync();

        await heat.RunsSince(2_000);
        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "lanes");
        await Expect(board.Page.Locator(".notice-text")).ToHaveTextAsync("Lunch until half past one");

        (await Hall.Organiser.Put("/api/board/message", new BoardMessage(""))).Fine();
        await Expect(board.Page.Locator(".notice-text")).ToBeEmptyAsync();
        await heat.Do("end");
        await board.Shows("result");
        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "lanes");
    }

    [Fact]
    public async Task The_briefing_takes_turns_with_who_stands_where_and_goes_when_the_heat_starts()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var page = await Page(1920, 1080);
        await page.Clock.InstallAsync();
        var board = new Pages.BigBoard(page, Hall.Site);
        await board.Open(heat.Id, "?briefing=1&lang=de&light=1&width=4&seat=25");
        await board.Shows("before");
        var slides = page.FrameLocator(".briefing");
        await Expect(slides.Locator("#slides[data-ready]")).ToBeAttachedAsync();

        // They look as their board does, in its language, for its farthest seat.
        await Expect(slides.Locator("html")).ToHaveAttributeAsync("lang", "de");
        await Expect(slides.Locator("html")).ToHaveAttributeAsync("data-ground", "light");
        Assert.Equal(
            await board.Main.EvaluateAsync<string>("board => board.style.getPropertyValue('--text')"),
            await slides.Locator("#slides").EvaluateAsync<string>("slides => slides.style.getPropertyValue('--least')"));
        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "lanes");
        await page.Clock.FastForwardAsync(21_000);
        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "briefing");
        await Expect(slides.Locator(".slide[data-shown] h1")).ToContainTextAsync("Low Tide");
        await Expect(slides.Locator(".slide[data-shown] h1")).ToBeVisibleAsync();
        await page.Clock.FastForwardAsync(9_000);
        await Expect(slides.Locator(".slide[data-shown]")).ToHaveAttributeAsync("data-slide", "relay");

        await heat.RunsSince(1_000);
        await board.Shows("running");
        await Expect(board.Main).ToHaveAttributeAsync("data-shows", "lanes");
    }

    [Fact]
    public async Task Two_heats_stand_side_by_side_each_with_its_own_lanes()
    {
        var first = await Hall.Call(QuickWork.Sets(), Teams);
        await first.RunsSince(20_000);
        await first.Add(1, 3, 12_000);
        var second = await Hall.Call(QuickWork.Sets(), Teams);
        var page = await Page(1920, 1080);
        await page.GotoAsync($"{Hall.Site}board/{first.Id}+{second.Id}");
        var (left, right) = (page.FrameLocator("iframe:first-of-type"), page.FrameLocator("iframe:last-of-type"));
        await Expect(left.Locator("#board")).ToHaveAttributeAsync("data-scene", "running");
        await Expect(right.Locator("#board")).ToHaveAttributeAsync("data-scene", "before");
        await Expect(left.Locator("#board")).ToHaveAttributeAsync("data-heat", first.Id);
        await Expect(left.Locator("#board")).ToHaveAttributeAsync("data-layout", "board");
        var team = (await left.Locator(".lane-team").First.BoundingBoxAsync())!;
        var strip = (await left.Locator(".lane-strip").First.BoundingBoxAsync())!;
        Assert.True(strip.Y >= team.Y + team.Height - 2 && strip.Width > 500, $"the strip is beside the team, or short: {strip.Width} wide");
    }

    /// <summary>A video mix lays it over its picture.</summary>
    [Theory]
    [InlineData("", 0.5)]
    [InlineData("?full=1", 0.1)]
    public async Task The_overlay_has_no_ground_and_is_a_lower_third_unless_asked_to_fill_the_picture(string query, double from)
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(20_000);
        var page = await Page(1920, 1080);
        await page.GotoAsync($"{Hall.Site}overlay/{heat.Id}{query}");
        await Expect(page.Locator("#board")).ToHaveAttributeAsync("data-scene", "running");
        await Expect(page.Locator("li.lane")).ToHaveCountAsync(2);
        foreach (var ground in new[] { "html", "body", "#board" })
        {
            Assert.Equal("rgba(0, 0, 0, 0) none", await page.EvalOnSelectorAsync<string>(ground, "one => { const { backgroundColor, backgroundImage } = getComputedStyle(one); return `${backgroundColor} ${backgroundImage}`; }"));
        }

        var top = (await page.Locator(".heading").BoundingBoxAsync())!.Y / 1080;
        Assert.True(query.Length == 0 ? top > from : top < from, $"it begins at {top:P0} of the picture");
        Assert.Equal(0, await page.Locator("dialog, [role=dialog], button, a[href], .between").CountAsync());
    }
}
