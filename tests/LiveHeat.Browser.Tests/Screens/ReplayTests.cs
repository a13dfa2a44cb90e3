using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Testing.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>
/// What an appeal looks at. The heat is judged on a server whose clock the test moves: lane 2 leads, lane 1 goes past it at 1:00 and is through at 4:32,
/// lane 2 at 4:40. What lane 2 did at 1:20 comes in at 4:20 only.
/// </summary>
public sealed partial class ReplayTests(Chromium chromium) : IClassFixture<Chromium>, IAsyncLifetime
{
    private readonly List<string> errors = [];
    private readonly List<IBrowserContext> contexts = [];
    private TestFloor floor = null!;
    private TestHeat heat = null!;
    private FactId finish;

    public async Task InitializeAsync()
    {
        Assertions.SetDefaultExpectTimeout(30_000);
        floor = await TestFloor.Open(onPort: true);
        heat = await floor.Run();
        await heat[2].Finish(1, 30);
        await heat[1].Finish(1, 5);
        await heat[1].Finish(2, 25);
        floor.Time.Advance(TimeSpan.FromSeconds(20));
        var late = heat[2].Done(2);
        await heat[1].Finish(8, 180);
        await heat[2].SendOne(late);
        floor.Time.Advance(TimeSpan.FromSeconds(12));
        var tap = heat[1].Done(9);
        await heat[1].SendOne(tap);
        finish = FactId.TryParse((string)tap["id"]!, out var id) ? id : throw new FormatException();
        await heat[2].Finish(8, 4);
        await heat[2].Finish(9, 4);
        await heat.EndAndFreeze();
    }

    public async Task DisposeAsync()
    {
        foreach (var context in contexts)
        {
            await context.DisposeAsync();
        }

        await floor.DisposeAsync();
        Assert.Empty(errors);
    }

    [Fact]
    public async Task At_4_32_of_a_frozen_heat_the_organiser_sees_who_tapped_what_voids_it_with_a_reason_and_the_result_changes()
    {
        Assert.Equal(272_000, (await Lane(1)).OfficialMs);
        var replay = await Replay(floor.Organiser, $"screens/heat/{heat.Id}", 1440, 900);
        await replay.Act("replay").ClickAsync();
        await replay.Shows("replay-controls");

        await replay.GoTo("4:32");
        await replay.HasStatus(1, "finished");
        await replay.HasStatus(2, "working");
        await Expect(replay.Fact(finish).Locator("[data-act='who']")).ToContainTextAsync("Judge 1, lane judge, phone ");
        await Expect(replay.Fact(finish)).ToContainTextAsync("4:32.0");
        await Expect(replay.Fact(finish)).ToContainTextAsync("±5 ms");
        Assert.Empty(await replay.Page.Faults("main", scrolls: true));

        await replay.Press("previous-fact");
        await replay.StandsAt("4:20.0");
        await replay.HasStatus(1, "working");
        await replay.Key("ArrowRight");
        await replay.StandsAt("4:32.0");
        await replay.Key("Shift+ArrowLeft");
        await replay.StandsAt("4:22.0");
        await replay.Key(" ");
        await Expect(replay.Act("play")).ToHaveTextAsync("Pause");
        await replay.Key(" ");
        await Expect(replay.Act("play")).ToHaveTextAsync("Play");

        await replay.GoTo("4:32");
        await replay.Fact(finish).Locator("[data-act='void']").ClickAsync();
        await replay.Act("void-reason").FillAsync("the last rep was no rep");
        await replay.Press("void-yes");
        await Expect(replay.Fact(finish)).ToContainTextAsync("voided by Ona, organiser (“the last rep was no rep”)");
        await replay.HasStatus(1, "finished");          // at 4:32 nobody had ruled yet
        await replay.Act("scrub").PressAsync("End");
        await replay.HasStatus(1, "capped");
        var lane = await Lane(1);
        Assert.Equal((Outcome.Capped, (int?)2), (lane.Outcome, lane.Place));
        await replay.Press("leave-replay");
        await Expect(replay.View("review-table").Locator("tr[data-lane='1'] .score")).ToContainTextAsync(" of ");
    }

    [Fact]
    public async Task As_it_was_known_a_tap_stands_when_it_came_in()
    {
        var replay = await Replay(floor.HeadJudge, $"screens/replay/{heat.Id}?at=100000&lane=2", 390, 844);
        await replay.StandsAt("1:40.0");
        await Expect(replay.Lane(2)).ToContainTextAsync("Bo");              // through with the row, tags Bo
        await replay.Press("by-known");
        await Expect(replay.Lane(2)).ToContainTextAsync("12 cal row");
        await replay.StandsAt("1:40.0");
        await replay.GoTo("4:20");
        await Expect(replay.View("near-facts")).ToContainTextAsync("came in 3 min later");
        Assert.Empty(await replay.Page.Faults("main", scrolls: true));
    }

    [Fact]
    public async Task A_fact_is_added_from_there_at_the_moment_looked_at()
    {
        await heat.Do(floor.HeadJudge, "void", new { target = finish.ToString(), reason = "tapped by a sleeve" });
        var replay = await Replay(floor.HeadJudge, $"screens/replay/{heat.Id}?at=273000&lane=1", 390, 844);
        await replay.Press("add-fact");
        await Expect(replay.Act("add-time")).ToHaveValueAsync("4:33.0");
        await replay.Act("add-step").SelectOptionAsync("9");
        await replay.Act("add-fact-reason").FillAsync("seen on the recording");
        await replay.Press("add-fact-yes");
        await Expect(replay.View("near-facts")).ToContainTextAsync("added from paper");
        Assert.Equal(273_000, (await Lane(1)).OfficialMs);
    }

    [Fact]
    public async Task Of_a_certified_result_it_says_why_nothing_is_ruled_on_and_leads_to_where_it_is_reopened()
    {
        await heat.Certify();
        var replay = await Replay(floor.Organiser, $"screens/replay/{heat.Id}?at=272000", 1440, 900);
        await Expect(replay.Fact(finish)).ToBeVisibleAsync();
        await Expect(replay.Act("why-not")).ToContainTextAsync("certified");
        await Expect(replay.Act("void")).ToHaveCountAsync(0);
        await replay.Press("go-reopen");
        await Expect(replay.Act("reopen")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_announcer_plays_a_certified_heat_twenty_times_as_fast_and_comes_back_to_live()
    {
        await heat.Certify();
        var screen = new AnnouncerScreen(await Page(await floor.Join(Role.Announcer, null, "Ari"), 820, 1180), floor.App.ClientOptions.BaseAddress);
        await screen.Open("screens/announcer", "announcer");
        await screen.IsIn("certified");
        await screen.Press("pick-replay");
        await screen.Page.Locator($"[data-view='replay-picker'] [data-heat='{heat.Id}'] [data-act='play-happened']").ClickAsync();
        await screen.Press("speed-20");
        await Expect(screen.View("replay-bar")).ToContainTextAsync("REPLAY");
        await Expect(screen.View("replay-bar")).ToContainTextAsync("not live");
        await screen.IsIn("running");
        await Expect(screen.Act("official")).ToHaveTextAsync("not official yet");
        await Expect(screen.Sayings).ToContainTextAsync("Team 1");          // goes past Team 2 at 1:00
        await screen.OrderIs("Team 1", "Team 2");
        Assert.Empty(await screen.Page.Faults("main", Looks.LeastControl));
        await Expect(screen.Lane(1)).ToHaveAttributeAsync("data-status", "finished");

        await screen.Press("go-live");
        await Expect(screen.View("replay-bar")).ToHaveCountAsync(0);
        await screen.IsIn("certified");
        await Expect(screen.Act("official")).ToHaveTextAsync("official");
    }

    /// <summary>48 pixels whatever the typeface: a phone may set its own, and smaller.</summary>
    [Fact]
    public async Task Small_controls_stay_large_enough_to_hit_in_another_typeface()
    {
        const float Least = 48;
        var judge = new HeadJudgeScreen(await Page(floor.HeadJudge, 390, 844), floor.App.ClientOptions.BaseAddress);
        await judge.Open("screens/head-judge", "lanes");
        await judge.InLane(1, "open-lane").ClickAsync();
        var announcer = new AnnouncerScreen(await Page(await floor.Join(Role.Announcer, null, "Ari"), 820, 1180), floor.App.ClientOptions.BaseAddress);
        await announcer.Open("screens/announcer", "announcer");
        foreach (var control in new[] { judge.Act("close-lane"), judge.Act("replay-lane"), announcer.Act("ground"), announcer.Act("pick-replay") })
        {
            await control.Page.AddStyleTagAsync(new PageAddStyleTagOptions { Content = "html { font-size: 11px } * { font-family: monospace !important; line-height: 1 !important }" });
            var box = (await control.BoundingBoxAsync())!;
            Assert.True(box.Width >= Least && box.Height >= Least, $"{await control.TextContentAsync()}: {box.Width} x {box.Height}");
        }
    }

    private async Task<ResultLane> Lane(int lane) => (await floor.Organiser.Get($"{heat.Path}/result")).Read<ResultTable>().Lanes.Single(one => one.Lane.Value == lane);

    private async Task<ReplayScreen> Replay(Visitor who, string address, int width, int height)
    {
        var screen = new ReplayScreen(await Page(who, width, height), floor.App.ClientOptions.BaseAddress);
        await screen.Open(address, address.Contains("/replay/", StringComparison.Ordinal) ? "replay-controls" : "heat-desk");
        return screen;
    }

    /// <summary>A page of somebody who has signed in.</summary>
    private async Task<IPage> Page(Visitor who, int width, int height)
    {
        var context = await chromium.NewContext(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            Locale = "en-GB",
            TimezoneId = "UTC",
        });
        contexts.Add(context);
        context.SetDefaultTimeout(30_000);
        await context.AddCookiesAsync(who.Cookies.GetAllCookies().Select(cookie => new Cookie
        {
            Name = cookie.Name,
            Value = cookie.Value,
            Url = floor.App.ClientOptions.BaseAddress.ToString(),
        }));
        var page = await context.NewPageAsync();
        page.PageError += (_, error) => errors.Add($"{page.Url}: {error}");
        return page;
    }
}
