using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Boards;

/// <summary>The parts of the board that only compute: words, places, pages, scenes.</summary>
public sealed class BoardModulesTests(Hall hall) : ModuleTest(hall)
{
    [Theory]
    [InlineData(0, 0, "0:00")]
    [InlineData(422_390, 1, "7:02.3")]
    [InlineData(702_130, 2, "11:42.13")]
    [InlineData(3_661_000, 0, "1:01:01")]
    [InlineData(-5, 0, "0:00")]
    public async Task Times_are_cut_and_not_rounded(int ms, int decimals, string text) =>
        Assert.Equal(text, await Run<string>(["/floor/board/words.js"], "([words], [ms, decimals]) => words.timeText(ms, decimals)", new[] { ms, decimals }));

    [Fact]
    public async Task What_is_left_says_a_second_until_there_is_none() =>
        Assert.Equal(["0:01", "0:00", "1:00"], await Run<string[]>(["/floor/board/words.js"], "([words]) => [1, 0, 59_001].map(words.leftText)"));

    [Fact]
    public async Task An_official_time_has_the_decimals_that_its_rounding_left() =>
        Assert.Equal(["10:42.3", "10:42.35", "10:42.0"], await Run<string[]>(["/floor/board/words.js"], "([words]) => [642_300, 642_350, 642_000].map(words.officialText)"));

    [Fact]
    public async Task Scores_stand_in_their_unit() => Assert.Equal(
        "327.5 kg, 1,284 m, 1 rep, 12 reps, 100 kg, 100 kg",
        await Run<string>(["/floor/board/words.js", "/floor/board/standing.js"], """
            ([{ words }, standing]) => {
              const kg = { unit: 'kg', scale: 1000 }, lane = { status: 'through', worth: 100_000, score: kg, place: 1, tied: false, open: 4 };
              return [words.worth(327_500, kg), words.worth(1284, { unit: 'm', scale: 1 }), words.worth(1), words.worth(12), ...['running', 'result'].map(scene => standing.standingOf(lane, scene).beside)].join(', ');
            }
            """));

    [Fact]
    public async Task Places_have_their_English_endings() =>
        Assert.Equal("1st 2nd 3rd 4th 11th 12th 13th 21st 22nd 111th", await Run<string>(
            ["/floor/board/words.js"], "([words]) => [1, 2, 3, 4, 11, 12, 13, 21, 22, 111].map(words.ordinal).map(({ number, suffix }) => number + suffix).join(' ')"));

    [Theory]
    [InlineData(10, "1 column, 10 rows, 1 page")]
    [InlineData(11, "1 column, 6 rows, 2 pages")]
    [InlineData(20, "1 column, 10 rows, 2 pages")]
    public async Task Lanes_turn_through_pages_rather_than_shrink(int lanes, string plan) =>
        Assert.Equal(plan, await Run<string>(["/floor/board/pages.js"], """
            ([pages], count) => {
              const plan = pages.pagesOf({ count, width: 1786, height: 850, screen: 1080, text: 40.1 }), many = (n, word) => `${n} ${word}${n === 1 ? '' : 's'}`;
              return [many(plan.columns, 'column'), many(plan.rows, 'row'), many(plan.pages, 'page')].join(', ');
            }
            """, lanes));

    [Theory]
    [InlineData(100, 4, "whole, 2 a page, 2 pages")]
    [InlineData(100, 10, "short, 5 a page, 2 pages")]
    [InlineData(100, 20, "short, 5 a page, 4 pages")]
    [InlineData(60, 10, "whole, 5 a page, 2 pages")]
    [InlineData(900, 4, "short, 1 a page, 4 pages")]
    public async Task Where_whole_lanes_need_many_pages_they_tell_less(int text, int lanes, string plan) =>
        Assert.Equal(plan, await Run<string>(["/floor/board/pages.js"], """
            ([pages], [text, count]) => {
              const plan = pages.pagesOf({ count, width: 1786, height: 790, screen: 1080, text });
              return `${plan.short ? 'short' : 'whole'}, ${plan.perPage} a page, ${plan.pages} pages`;
            }
            """, new[] { text, lanes }));

    /// <summary>Milliseconds since the first page, and the page that is shown, from 0.</summary>
    [Theory]
    [InlineData(3, "-5 0, 0 0, 9999 0, 10000 1, 20000 2, 29999 2, 30000 0, 3600000 0, 3610000 1")]
    [InlineData(1, "0 0, 10000 0, 25000 0")]
    [InlineData(0, "0 0, 10000 0")]
    public async Task A_page_stays_ten_seconds_and_after_the_last_comes_the_first(int pages, string told) =>
        Assert.Equal(told, await Run<string>(["/floor/board/pages.js"], "([{ pageAt }], { pages, at }) => at.map(ms => `${ms} ${pageAt(pages, ms)}`).join(', ')", new { pages, at = told.Split(", ").Select(one => int.Parse(one.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)) }));

    [Fact]
    public async Task A_text_that_must_get_shorter_loses_words_and_then_letters() =>
        Assert.Equal(["Low Tide…", "Low…", "Lo…", "L…"], await Run<string[]>(["/floor/board/fit.js"], "([fit]) => fit.shorterOf('Low Tide Relay')"));

    [Fact]
    public async Task Who_is_about_to_tag_is_told_for_sure_when_the_tag_is_open_and_else_by_the_expected_time() =>
        Assert.Equal(["null", "null", "Ilka false", "Ilka true", "null", "null"], await Run<string[]>(["/floor/board/work.js"], """
            ([work]) => {
              const sheet = { athletes: ['Joss', 'Ilka'], steps: [{ kind: 'set', athlete: 1, expectedMs: 10_000 }, { kind: 'set', athlete: 1, expectedMs: 20_000 }, { kind: 'tag', to: 2 }, { kind: 'set', athlete: 2, expectedMs: 10_000 }] };
              const at = (open, sinceMs, laneMs, status = 'working') => work.tagOf(sheet, { status, open, sinceMs }, laneMs);
              return [at(1, null, 9_000), at(2, 10_000, 24_000), at(2, 10_000, 26_000), at(3, 31_000, 32_000), at(2, null, 26_000), at(3, 31_000, 32_000, 'held')].map(tag => (tag ? `${tag.next} ${tag.sure}` : 'null'));
            }
            """));

    [Fact]
    public async Task A_line_that_does_not_fit_gets_narrower_first_and_then_smaller() =>
        Assert.Equal("0.9 1, 0.8 0.5, 1 1", await Run<string>(
            ["/floor/board/fit.js"], "([fit]) => [[100, 90], [100, 40], [80, 90]].map(([natural, room]) => fit.fitOf(natural, room)).map(({ narrow, size }) => `${narrow} ${size}`).join(', ')"));

    [Fact]
    public async Task The_count_down_turns_into_the_heat_without_a_frame_that_says_so()
    {
        var told = await Run<string>(["/floor/board/scene.js"], """
            ([scene]) => {
              const frame = { heat: 'h', phase: 'counting-down', start: { goAt: 10_000, observed: false } };
              return [[frame, 7_001], [frame, 10_000], [{ ...frame, phase: 'running' }, 10_500], [{ ...frame, phase: 'running' }, 12_000], [null, 0], [{ heat: 'h', phase: 'armed', start: null }, 0]]
                .map(([one, now]) => `${scene.sceneOf(one, now)} ${scene.countOf(one, now)}`).join(', ');
            }
            """);

        Assert.Equal("count-down 3, running 0, running 0, running null, idle null, before null", told);
    }

    [Fact]
    public async Task A_gap_is_told_in_seconds_where_it_is_known_and_in_reps_where_it_is_not()
    {
        var told = await Run<string[]>(["/floor/board/standing.js"], """
            ([standing]) => [
              { status: 'working', place: 1, tied: false, worth: 5, open: 2 },
              { status: 'working', place: 2, gapMs: 8100, worth: 5, open: 2 },
              { status: 'working', place: 2, gapMs: 400, worth: 5, open: 2 },
              { status: 'working', place: 2, gapMs: null, gapWorth: 14, worth: 5, open: 2 },
              { status: 'working', place: 1, tied: true, worth: 0, open: 1 },
              { status: 'withdrawn', place: null },
            ].map(lane => standing.standingOf(lane, 'running')).map(({ place, rank, beside }) => `${place?.number ?? '-'} ${rank} ${beside}`.trim())
            """);

        Assert.Equal(["1 1 leads", "2 2 8 s", "2 2 < 1 s", "2 2 −14 reps", "- 0", "- 0 did not start"], told);
    }

    /// <summary>The leader's score stands where others have their gap; a penalty's reps are gone from it.</summary>
    [Theory]
    [InlineData("en", "4 rounds + 12, −1 rep, 4 rounds, −40 reps, 12 reps, 1 round + 3, 30 reps, −6 reps")]
    [InlineData("es", "4 rondas + 12, −1 rep., 4 rondas, −40 reps., 12 reps., 1 ronda + 3, 30 reps., −6 reps.")]
    [InlineData("fr", "4 tours + 12, −1 rép., 4 tours, −40 rép., 12 rép., 1 tour + 3, 30 rép., −6 rép.")]
    [InlineData("de", "4 Runden + 12, −1 Wdh., 4 Runden, −40 Wdh., 12 Wdh., 1 Runde + 3, 30 Wdh., −6 Wdh.")]
    public async Task Most_work_is_told_in_rounds_and_reps_and_behind_it_in_reps(string language, string told)
    {
        var page = await Page(800, 600);
        await page.GotoAsync($"{Hall.Site}health?lang={language}");
        Assert.Equal(told, await page.EvaluateAsync<string>("""
            async () => {
              const { standingOf } = await import('/floor/board/standing.js');
              const lane = (scene, rounds, reps, more = {}, sheet = null) => standingOf({ status: scene === 'result' ? 'capped' : 'working', worth: 99, open: 9, place: 2, tied: false, gapMs: 9_000, gapWorth: 0, roundsAndReps: rounds === null ? undefined : { rounds, reps }, ...more }, scene, sheet).beside;
              return [
                lane('running', 4, 12, { place: 1 }), lane('running', 4, 11, { gapWorth: 1 }), lane('result', 4, 0), lane('running', 3, 2, { gapWorth: 40 }), lane('result', 0, 12), lane('result', 1, 3),
                lane('result', null, 0, { worth: 34, penaltyReps: 4 }), lane('running', null, 0, { gapWorth: 6 }, { windows: [{ first: 1, last: 2, fromMs: 0, untilMs: 9 }] }),
              ].join(', ').replaceAll('\u00a0', ' ');
            }
            """));
    }

    [Fact]
    public async Task The_result_stands_by_place_within_each_division()
    {
        var order = await Run<int[]>(["/floor/board/standing.js"], """
            ([standing]) => standing.resultOrder(
              [{ lane: 1, group: 'a' }, { lane: 2, group: 'b' }, { lane: 3, group: 'a' }], new Map([[1, { place: 2 }], [2, { place: 1 }], [3, { place: 1 }]]))
            """);

        Assert.Equal([3, 1, 2], order);
    }

    [Fact]
    public async Task Who_is_in_front_is_the_first_three_or_the_first_of_each_division() => Assert.Equal(
        ["1st A · 2nd B 8 s · 3rd C 9 s", "Open: A · Masters: D", "Open: A and B · Masters: D", ""],
        await Run<string[]>(["/floor/board/standing.js"], """
            ([{ leadersOf }]) => {
              const floor = divisions => ['A', 'B', 'C', 'D'].map((name, at) => ({ lane: at + 1, name, group: divisions[at], divisionName: divisions[at] }));
              const at = (places, worth = 9) => places.map((place, nth) => ({ lane: nth + 1, place, worth, open: 2, tied: false, status: 'working', gapMs: 7_000 + nth * 1_000 }));
              const one = floor(['Open', 'Open', 'Open', 'Open']), two = floor(['Open', 'Open', 'Open', 'Masters']);
              return [leadersOf(one, at([1, 2, 3, 4])), leadersOf(two, at([1, 2, 3, 1])), leadersOf(two, at([1, 1, 3, 1])), leadersOf(two, at([1, 1, 1, 1], 0))].map(told => told.join(' · '));
            }
            """));

    [Theory]
    [InlineData("en", "Open: A leads. Masters: D leads. | Open: A and B share the lead. Masters: D leads. | A leads. B is 7 s behind. | Result, unofficial. Open: First: A, 5:12.3. Masters: First: D, 5:12.3. | Result, unofficial. First: A, 9 reps.")]
    [InlineData("de", "Open: A führt. Masters: D führt. | Open: A und B liegen gemeinsam vorn. Masters: D führt. | A führt. B liegt 7 s zurück. | Ergebnis, inoffiziell. Open: Erster: A, 5:12,3. Masters: Erster: D, 5:12,3. | Ergebnis, inoffiziell. Erster: A, 9 Wdh.")]
    public async Task Who_is_first_is_told_to_screen_readers_with_the_division_where_there_are_two(string language, string told)
    {
        var page = await Page(800, 600);
        await page.GotoAsync($"{Hall.Site}health?lang={language}");
        Assert.Equal(told, await page.EvaluateAsync<string>("""
            async () => {
              const { summaryOf } = await import('/floor/board/summary.js');
              const floor = divisions => ['A', 'B', 'C', 'D'].map((name, at) => ({ lane: at + 1, name, group: divisions[at], divisionName: divisions[at] }));
              const at = (places, phase = 'running') => ({ phase, capMs: 0, lanes: places.map((place, nth) => ({ lane: nth + 1, place, worth: 9, open: 2, tied: false, status: phase === 'ended' ? 'finished' : 'working', officialMs: 312_300, gapMs: place === 1 ? null : 7_000 })) });
              const one = { lanes: floor(['Open', 'Open', 'Open', 'Open']) }, two = { lanes: floor(['Open', 'Open', 'Open', 'Masters']) };
              const ended = at([1, 2, 3, 4], 'ended'), capped = { ...ended, lanes: ended.lanes.map(lane => ({ ...lane, status: 'capped', officialMs: null })) };
              return [[two, at([1, 2, 3, 1]), 'running'], [two, at([1, 1, 3, 1]), 'running'], [one, at([1, 2, 3, 4]), 'running'], [two, at([1, 2, 3, 1], 'ended'), 'result'], [one, capped, 'result']]
                .map(([sheet, frame, scene]) => summaryOf(sheet, frame, scene, null).text).join(' | ').replaceAll('\u00a0', ' ');
            }
            """));
    }

    /// <summary>On a full screen 1786 pixels wide, wherever two divisions' lines are along strips that begin at 560 and end at 1490.</summary>
    [Fact]
    public async Task Labels_of_the_cap_pace_never_stand_on_each_other() =>
        Assert.Equal("", await Run<string>(["/floor/board/pace-labels.js"], """
            ([labels]) => {
              const faults = [], along = Array.from({ length: 94 }, (_, i) => 560 + 10 * i), widths = [180, 240];
              for (const one of along) for (const other of along.filter(x => x >= one)) {
                const [first, second] = labels.placesOf([one, other], widths, 1_786);
                if (first < 0 || first + widths[0] > second || second + widths[1] > 1_786) faults.push(`${one} ${other}: ${first} ${second}`);
              }
              return faults.slice(0, 5).join(' | ');
            }
            """));
}
