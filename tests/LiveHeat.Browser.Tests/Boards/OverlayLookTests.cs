using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Contracts.Setup;

namespace LiveHeat.Browser.Boards;

/// <summary>What a video mix lays over its picture, in every phase: whole, within its plates, and with the strips as long as the work that is done.</summary>
public sealed class OverlayLookTests(Hall hall) : HallTest(hall)
{
    [Theory]
    [InlineData("third", 4, 1)]
    [InlineData("third", 20, 4)]
    [InlineData("full", 4, 1)]
    [InlineData("full", 20, 2)]
    public async Task Nothing_is_cut_or_beyond_its_plate_in_any_phase(string overlay, int lanes, int mostPages)
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, lanes, longNames: true, overlay: overlay);
        var faults = new List<string>();
        foreach (var scene in (await stage.Scenes()).Except(["idle", "message", "programme", "standings"]))
        {
            await stage.Show(scene);
            faults.AddRange((await stage.Page.Faults("#board")).Concat(await stage.Page.EvaluateAsync<string[]>(BeyondThePlate)).Select(fault => $"{scene}: {fault}"));
            Assert.True(await stage.Page.EvaluateAsync<int>("stage.plan.pages") <= mostPages, $"{scene}: too many pages");
        }

        Assert.Empty(faults);
    }

    [Theory]
    [InlineData("third", 4)]
    [InlineData("full", 20)]
    public async Task Where_two_divisions_lead_it_says_of_what(string overlay, int lanes)
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, lanes, mixed: true, overlay: overlay);
        await stage.Show("running");
        var leaders = await stage.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll(".lane[data-place='1']")].filter(lane => lane.offsetParent).map(lane => lane.querySelector('.lane-label').innerText.replace(/\s+/g, ' ').trim())
            """);

        Assert.NotEmpty(leaders);      // of several pages the first one is shown
        Assert.All(leaders, told => Assert.Matches("^1(st)? (Open|Masters 45\\+)", told));
    }

    /// <summary>Where the tape with its roll ends is what the team has done of the expected time: 8 rounds of 40 s and 44 s, 7 tags of 2 s, 4 s to the line.</summary>
    [Theory]
    [InlineData("third")]
    [InlineData("full")]
    public async Task Each_strip_is_there_and_as_long_as_the_work_that_is_done(string overlay)
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, 4, overlay: overlay);
        await stage.Show("running");
        var lengths = await stage.Page.EvaluateAsync<double[]>("""
            () => [...document.querySelectorAll('.lane:not([hidden]) .strip')].filter(strip => strip.querySelector('.strip-laid > .strip-tape')).map(strip => {
              const { left, width, height } = strip.getBoundingClientRect(), end = strip.querySelector('.strip-laid').getBoundingClientRect().right;
              const from = left + height, whole = width - height - height * 0.105 * 1.5;
              // The tape goes in under the middle of the roll, which is smaller the more of it is used, and whose front edge tells the work.
              return (end - from + height / 2) / (whole + 0.11 * height);
            })
            """);

        // As the stage has it, lanes 1 to 4 are at places 3, 4, 1, 2 and at their 15th, 14th, 17th and 16th step.
        double[] done = [(4 * 86) + 84, (4 * 86) + 40, (5 * 86) + 40, 5 * 86];
        Assert.Equal(4, lengths.Length);
        Assert.All(lengths.Zip(done), pair => Assert.Equal(pair.Second / ((8 * 84.0) + (7 * 2) + 4), pair.First, 0.004));
    }

    /// <summary>Whoever sees a video sits at home, wherever the hall's farthest seat is.</summary>
    [Theory]
    [InlineData("", 5)]
    [InlineData("?width=4&seat=25", 1)]
    public async Task The_seat_of_the_hall_s_screen_is_not_that_of_a_video(string query, int lanes)
    {
        var heat = await Hall.Call(QuickWork.Sets(), [.. Enumerable.Range(1, 5).Select(lane => new Entrant(lane, $"Harbour Anvils {lane}", "Joss", "Ilka"))]);
        (await Hall.Organiser.Put("/api/setup/competition", new CompetitionSetup("Breakwater Relays") { Screen = new ScreenSize(4, 25) })).Fine();
        var page = await Page(1920, 1080);
        await page.GotoAsync($"{Hall.Site}overlay/{heat.Id}{query}");
        await Microsoft.Playwright.Assertions.Expect(page.Locator("li.lane:visible")).ToHaveCountAsync(lanes);
    }

    /// <summary>Letters of the head and the count that reach beyond the plate that they stand on.</summary>
    private const string BeyondThePlate = """
        () => {
          const faults = [], SLACK = 1.5;
          for (const [plate, lines] of [['.heading', '.heading > div > *'], ['.count-number', '.count-number']]) {
            const ground = document.querySelector(`#board ${plate}`), box = ground.getBoundingClientRect();
            if (!ground.checkVisibility()) continue;
            if (!/^rgba\(.*0\.86\)$/.test(getComputedStyle(ground).backgroundColor)) faults.push(`${plate} has no plate: ${getComputedStyle(ground).backgroundColor}`);
            for (const line of document.querySelectorAll(`#board ${lines}`)) {
              if (!line.textContent.trim() || !line.checkVisibility()) continue;
              const text = document.createRange();
              text.selectNodeContents(line);
              const { top, bottom } = text.getBoundingClientRect(), half = parseFloat(getComputedStyle(line).fontSize) * 0.36, middle = (top + bottom) / 2;
              if (middle - half < box.top - SLACK || middle + half > box.bottom + SLACK) faults.push(`beyond its plate: "${line.textContent}" ${[middle - half - box.top, box.bottom - middle - half].map(Math.round)}`);
            }
          }
          return faults;
        }
        """;
}
