using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Floor;

/// <summary>Where things are along a strip: computed from expected times, which is all the strip's scale is.</summary>
public sealed class StripTests(Hall hall) : ModuleTest(hall)
{
    private static readonly string[] Strip = ["/floor/strip.js"];

    /// <summary>A set of 10 for 60 ms, a tag, a set of 4 for 40 ms.</summary>
    private const string Steps = """
        const steps = [{ step: 1, kind: 'set', expectedMs: 60, quantity: 10 }, { step: 2, kind: 'tag', expectedMs: 0 }, { step: 3, kind: 'set', expectedMs: 40, quantity: 4 }];
        const layout = strip.layoutOf(steps);
        const at = (open, sinceMs, count = null, status = 'working') => ({ status, open, count, sinceMs });
        """;

    [Fact]
    public async Task Each_set_is_as_wide_as_its_expected_time_and_tags_are_the_joints()
    {
        await Are("[...layout.edges, ...layout.joints]", 0, 0.6, 0.6, 1, 0.6);
    }

    [Fact]
    public async Task Steps_that_nobody_has_a_time_for_are_as_wide_as_each_other()
    {
        await Are("strip.layoutOf([{ step: 1, kind: 'set', expectedMs: 0 }, { step: 2, kind: 'set', expectedMs: 0 }]).edges", 0, 0.5, 1);
    }

    [Fact]
    public async Task Tape_lies_as_far_as_is_confirmed()
    {
        await Are("[at(1, 0), at(1, 0, 5), at(2, 60), at(3, 60, 2), at(4, 100)].map(lane => strip.confirmedAt(layout, steps, lane))", 0, 0.3, 0.6, 0.8, 1);
    }

    [Fact]
    public async Task The_dash_goes_on_at_the_expected_pace_but_never_past_the_next_boundary_nor_behind_the_tape()
    {
        await Are("[strip.estimatedAt(layout, steps, at(1, null), 30), strip.estimatedAt(layout, steps, at(1, 0), 3000), strip.estimatedAt(layout, steps, at(1, 0, 9), 3), strip.estimatedAt(layout, steps, at(3, 60), 80)]", 0.3, 0.6, 0.54, 0.8);
    }

    [Fact]
    public async Task There_is_no_dash_where_there_is_nothing_to_guess_from()
    {
        Assert.True(await Run<bool>(Strip, Function(
            "[strip.estimatedAt(layout, steps, at(3, null), 3), strip.estimatedAt(layout, steps, at(1, 0, null, 'held'), 3), strip.estimatedAt(layout, steps, at(4, 100), 120), strip.estimatedAt(layout, steps, at(1, 0), null)].every(one => one === null)")));
    }

    [Fact]
    public async Task Cap_pace_is_the_same_part_of_the_strip_as_of_the_cap()
    {
        await Are("[strip.capPaceAt(0, 720), strip.capPaceAt(360, 720), strip.capPaceAt(900, 720)]", 0, 0.5, 1);
        Assert.True(await Run<bool>(Strip, Function("strip.capPaceAt(-1, 720) === null && strip.capPaceAt(10, null) === null")));
    }

    [Fact]
    public async Task Heat_time_leaves_out_the_halts_and_lane_time_what_the_lane_was_held()
    {
        var times = await Run<int[]>(Strip, """
            ([strip]) => {
              const frame = { start: { goAt: 1_000 }, haltedMs: 50, haltedAt: null, endedAt: null };
              return [
                strip.heatMs(frame, 2_000), strip.heatMs({ ...frame, haltedAt: 1_500 }, 2_000),
                strip.laneMs(frame, { creditMs: 100, heldAt: null, status: 'working' }, 2_000),
                strip.laneMs(frame, { creditMs: 100, heldAt: 1_600, status: 'held' }, 2_000),
                strip.laneMs(frame, { creditMs: 0, finishMs: 777, status: 'finished' }, 2_000),
              ];
            }
            """);

        Assert.Equal([950, 450, 850, 450, 777], times);
    }

    /// <summary>Strips on a page that is not the board: drawn again when the page draws its rows anew, gone when they are let go.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_page_that_mounts_strips_can_redraw_its_rows_and_let_go(bool lessMotion)
    {
        var page = await Page(900, 500, motion: lessMotion ? ReducedMotion.Reduce : ReducedMotion.NoPreference);
        await page.GotoAsync(new Uri(Hall.Site, "health").ToString());
        await page.SetContentAsync("<link rel=stylesheet href=/floor/floor.css><main><div data-strip=1 style='height:40px;width:800px'></div></main>");
        await page.EvaluateAsync("""
            async () => {
              const strip = await import('/floor/strip.js');
              const sheet = { lanes: [{ lane: 1, colour: 0, capMs: 720_000, group: 'a', steps: [1, 2, 3, 4].map(step => ({ step, kind: 'set', expectedMs: 60_000, quantity: 10, label: '10 burpees' })) }] };
              const frame = (sequence, open, sinceMs) => ({ heat: 'h', sequence, phase: 'running', start: { goAt: 0 }, haltedMs: 0, haltedAt: null, endedAt: null,
                lanes: [{ lane: 1, status: 'working', open, count: null, sinceMs, creditMs: 0, finishMs: null, paceMs: null, heldAt: null }] });
              Object.assign(window, { frame, mounted: strip.mountStrips(document.querySelector('main'), sheet, frame(1, 1, 0), { serverNow: 1_000 }) });
            }
            """);
        var strip = page.Locator("[data-strip='1']");
        await Expect(strip.Locator(".strip-tape")).ToHaveCountAsync(1);
        await Expect(strip).ToHaveAttributeAsync("aria-label", "Lane 1, step 1 of 4: 10 burpees");

        await Expect(strip.Locator("img.strip-floor")).ToHaveCountAsync(1);
        var dark = await strip.Locator("img.strip-floor").GetAttributeAsync("src");
        await page.EvaluateAsync("document.documentElement.dataset.ground = 'light'");
        await Expect(strip.Locator($"img.strip-floor:not([src='{dark}'])")).ToHaveCountAsync(1);      // painted anew on the other ground

        await page.EvaluateAsync("mounted.update(frame(2, 3, 120_000))");
        await page.WaitForFunctionAsync("() => { const { transform } = document.querySelector('.strip-end').style; return parseFloat(transform.slice('translateX('.length)) > 300; }");
        await page.EvaluateAsync("() => { const host = document.querySelector('[data-strip]'); host.replaceWith(host.cloneNode(false)); mounted.update(frame(3, 3, 120_000)); }");
        await Expect(strip.Locator(".strip-tape")).ToHaveCountAsync(1);

        await page.EvaluateAsync("mounted.dispose()");
        await Expect(page.Locator(".strip-tape")).ToHaveCountAsync(0);
    }

    /// <summary>Two rounds of 10 wall balls and 8 row: lane 1 is through, lane 2 came to its first tag, lane 3 nowhere.</summary>
    [Fact]
    public async Task The_result_shows_how_far_every_team_got_on_the_screen_and_on_paper()
    {
        var heat = await Hall.Call(QuickWork.Sets(), new Entrant(1, "Harbour Anvils", "Joss", "Ilka"), new Entrant(2, "Tin Whistle Four", "Ravi", "Ansel"), new Entrant(3, "Low Bells", "Ona", "Pim"));
        await heat.RunsSince(300_000);
        await heat.Add(1, 6, 200_000);
        await heat.Add(2, 2, 90_000);
        await heat.Do("end");
        var result = new ResultPage(await Page(1280, 800), Hall.Site);
        await result.Open(heat.Id);

        foreach (var onPaper in new[] { false, true })
        {
            await result.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = onPaper ? Media.Print : Media.Screen });
            await Expect(result.Strip(1, onPaper)).ToBeVisibleAsync();
            await Expect(result.Strip(1, !onPaper)).Not.ToBeVisibleAsync();
            await result.Strip(1, onPaper).TapeIs(1);
            await result.Strip(2, onPaper).TapeIs(0.5);
            await result.Strip(3, onPaper).TapeIs(0);
            Assert.Empty(await result.Page.Faults("main", scrolls: true));
        }

        // Within the margins of A4, and so of Letter, which is wider: 186 mm at 96 pixels to the inch.
        var right = await result.Page.EvaluateAsync<double>("() => Math.max(...[...document.querySelectorAll('.on-paper *')].map(part => part.getBoundingClientRect().right)) - document.querySelector('main').getBoundingClientRect().left");
        Assert.InRange(right, 400, 186 / 25.4 * 96);
    }

    private static string Function(string expression) => $"([strip]) => {{ {Steps} return {expression}; }}";

    private async Task Are(string expression, params double[] expected) =>
        Assert.Equal(expected, (await Run<double[]>(Strip, Function(expression))).Select(number => Math.Round(number, 9)));
}
