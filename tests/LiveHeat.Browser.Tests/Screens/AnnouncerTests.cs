using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Heats;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>What the announcer says next, and what not yet, from real facts over a real hub.</summary>
public sealed class AnnouncerTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    /// <summary>A fact to the first line in at most so long, milliseconds.</summary>
    private const double Second = 1_000;

    [Fact]
    public async Task A_lead_taken_is_the_first_line_within_a_second_and_what_was_said_does_not_come_back()
    {
        var heat = await Hall.Call(QuickWork.Long(), Teams);
        await heat.RunsSince(240_000);
        await heat.Add(1, 1, 20_000);
        var screen = await Announcer(820, 1180);
        await screen.OrderIs("Harbour Anvils", "Tin Whistle Four");

        // Five times the other team goes past. The usual turn keeps to it; of a busy machine one or two may be late.
        var took = new List<double>();
        for (var turn = 0; turn < 5; turn++)
        {
            var (lane, team) = turn % 2 == 0 ? (2, "Tin Whistle Four") : (1, "Harbour Anvils");
            await Watch(screen.Page, $"{team} take the lead");
            await heat.Add(lane, turn + 2, 40_000 + (turn * 10_000));
            took.Add(await SinceAnswered(screen.Page));
        }

        Assert.True(took.Order().ElementAt(took.Count / 2) <= Second, $"Milliseconds to the first line: {string.Join(", ", took)}");
        var first = screen.Act("callout-first");
        await Expect(first).ToHaveAttributeAsync("data-kind", "lead");
        await Expect(first.Locator("[data-act='reason']")).ToContainTextAsync("confirmed");
        await Expect(first.Locator("[data-act='callout-age']")).ToContainTextAsync("ago");
        var id = await first.GetAttributeAsync("data-callout");

        await first.Locator("[data-act='said']").ClickAsync();
        await Expect(screen.Page.Locator($"[data-callout='{id}']")).ToHaveCountAsync(0);
        await heat.Add(1, 7, 100_000);
        await Expect(first.Locator("[data-act='sentence']")).ToContainTextAsync("Harbour Anvils take the lead");
        await Expect(screen.Page.Locator($"[data-callout='{id}']")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_page_that_is_loaded_anew_says_nothing_that_was_said()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(120_000);
        var screen = await Announcer(820, 1180);
        await heat.Add(1, 6, 110_000);
        var finish = screen.Page.Locator("[data-kind='finish'] [data-act='sentence']");
        await Expect(finish).ToContainTextAsync("Harbour Anvils");
        await screen.Page.Locator("[data-kind='finish'] [data-act='said']").ClickAsync();
        await Expect(finish).ToHaveCountAsync(0);

        await screen.Page.ReloadAsync();
        await screen.IsIn("running");
        await heat.Add(2, 6, 118_000);
        await Expect(finish).ToContainTextAsync("Tin Whistle Four");      // all there is to say is here
        await Expect(finish).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task It_stays_with_the_heat_that_runs_and_the_one_that_is_called_is_a_tap_away_and_back()
    {
        var running = await Hall.Call(QuickWork.Sets(), Teams);
        await running.RunsSince(5_000);
        var screen = await Announcer(390, 844);
        var title = screen.Page.Locator(".announcer-top h1");
        await Expect(title).ToHaveTextAsync(running.Title);

        var called = await Hall.Call(QuickWork.Sets(), Teams);
        await Expect(screen.Act($"turn-{called.Id}")).ToContainTextAsync("called");
        await Expect(title).ToHaveTextAsync(running.Title);
        await screen.Press($"turn-{called.Id}");
        await Expect(title).ToHaveTextAsync(called.Title);
        await Expect(screen.Act("stays")).ToBeVisibleAsync();
        Assert.Empty(await screen.Page.Faults("body", scrolls: true));
        await screen.Press("follow-floor");
        await Expect(title).ToHaveTextAsync(running.Title);

        await running.Do("end");
        await Expect(screen.Act($"turn-{running.Id}")).ToContainTextAsync("ended");
        await Expect(title).ToHaveTextAsync(running.Title);
        await called.RunsSince(1_000);
        await Expect(title).ToHaveTextAsync(called.Title);
        await screen.Press($"turn-{running.Id}");
        await Expect(title).ToHaveTextAsync(running.Title);
        await Expect(screen.Act($"turn-{called.Id}")).ToContainTextAsync("running");
        await Expect(screen.Act("stays")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task In_a_near_tie_it_says_what_not_to_say_and_names_no_winner_until_somebody_has_decided()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(120_000);
        var screen = await Announcer(390, 844);
        await heat.Add(1, 6, 100_000);
        await Expect(screen.Act("callout-first").Locator("[data-act='sentence']")).ToContainTextAsync("Harbour Anvils are through in place 1: 1:40.0");

        await heat.Add(2, 6, 100_100);
        await Expect(screen.View("not-yet")).ToContainTextAsync("Harbour Anvils and Tin Whistle Four: too close to measure");
        await Expect(screen.View("callouts")).ToContainTextAsync("The place is still open");
        await Expect(screen.View("callouts")).Not.ToContainTextAsync("in place");
        Assert.Empty(await screen.Page.Faults("body", scrolls: true));

        await heat.Do("decide-near-tie", new { lanes = new[] { 2, 1 }, tie = false, reason = "seen by both" });
        await Expect(screen.View("not-yet")).ToHaveCountAsync(0);
        await Expect(screen.View("callouts")).ToContainTextAsync("Tin Whistle Four are through in place 1");
    }

    [Fact]
    public async Task The_order_has_a_strip_a_team_and_a_team_that_is_tapped_opens_its_card_with_how_to_say_the_names()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var team = (await heat.Sheet()).Lanes[0].Team;
        (await Hall.Organiser.Put($"/api/setup/teams/{team}", new TeamSetup(team, "Harbour Anvils", "open", ["Joss", "Ilka"]) { AthletesSay = ["yoss", ""], Home = "Quarry Road", Facts = ["All bakers."] })).Fine();
        await heat.RunsSince(200_000);
        await heat.Add(2, 6, 100_000);
        await heat.Add(1, 1, 40_000);
        var screen = await Announcer(390, 844);
        await screen.Strip(1).TapeIs(0.23);        // 10 wall balls of 2 s each, before 8 calories of 3 s, twice
        await screen.Strip(2).TapeIs(1);

        await screen.Strip(1).ClickAsync(new LocatorClickOptions { Force = true });       // the whole row is the button, the strip too
        await Expect(screen.View("team-card")).ToContainTextAsync("yoss");
        await Expect(screen.View("team-card")).ToContainTextAsync("From Quarry Road");
        await Expect(screen.Act("card-fact")).ToHaveTextAsync("All bakers.");
        await Expect(screen.Act("card-athlete").First).ToContainTextAsync("works now");
        await screen.Press("close-card");
        await Expect(screen.View("team-card")).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData(820, 1180)]
    [InlineData(390, 844)]
    public async Task With_ten_lanes_nothing_is_cut_off(int width, int height)
    {
        var heat = await Hall.Call(QuickWork.Long(), [.. Enumerable.Range(1, 10).Select(lane => new Entrant(lane, $"The Long Named Team of Lane {lane}", "Joss", "Ilka"))]);
        await heat.RunsSince(200_000);
        for (var lane = 1; lane <= 10; lane++)
        {
            await heat.Add(lane, 3, 90_000 + (lane * 1_000));
        }

        var screen = await Announcer(width, height);
        await Expect(screen.Act("callout-first")).ToBeVisibleAsync();
        await Expect(screen.View("sayings").Locator("[data-act='saying']").Nth(9)).ToBeVisibleAsync();

        Assert.Empty(await screen.Page.Faults("body", scrolls: true));
        // No list is cut by a box of its own: the page scrolls.
        Assert.Empty(await screen.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.announcer .sayings, .announcer .order')].filter(box => box.scrollHeight > box.clientHeight + 1).map(box => box.className)"));
    }

    private async Task<AnnouncerScreen> Announcer(int width, int height)
    {
        var screen = new AnnouncerScreen(await Page(width, height), Hall.Site);
        await screen.Join($"join#{await Hall.Code(Role.Announcer)}", "Ari", "announcer");
        await screen.IsIn("running");
        return screen;
    }

    /// <summary>From now on the page notes when its first line begins with these words.</summary>
    private static Task Watch(IPage page, string words) => page.EvaluateAsync(
        """
        words => {
          const look = () => document.querySelector("[data-act='callout-first'] [data-act='sentence']")?.textContent.startsWith(words);
          window.shownAt = new Promise(shown => {
            const eyes = new MutationObserver(() => { if (look()) { eyes.disconnect(); shown(Date.now()); } });
            eyes.observe(document.body, { subtree: true, childList: true, characterData: true });
          });
        }
        """, words);

    /// <summary>Milliseconds from the server's answer to the fact until the line was there; below 0 when it was there first. The clock is one machine's.</summary>
    private static async Task<double> SinceAnswered(IPage page)
    {
        var answered = TimeProvider.System.GetUtcNow().ToUnixTimeMilliseconds();
        return await page.EvaluateAsync<double>("() => window.shownAt") - answered;
    }
}
