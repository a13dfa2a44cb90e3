using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using Microsoft.Playwright;

namespace LiveHeat.Browser.Boards;

/// <summary>What the strip promises whatever a lane does: the estimate never passes a boundary that nobody confirmed, and falls back by no more than it was wrong.</summary>
[Collection(OneAtATime.Name)]
public sealed class StripLawTests(Hall hall) : ModuleTest(hall)
{
    /// <summary>400 lanes made from numbers: faster and slower than expected, counted and not, with frames that come late.</summary>
    [Fact]
    public async Task The_estimate_stays_between_what_is_confirmed_and_the_next_boundary_and_never_falls_back_further_than_it_was_wrong() =>
        Assert.Empty(await Run<string[]>(["/floor/strip.js"], """
            ([strip]) => {
              let state = 7;
              const chance = () => { state = (state * 1_103_515_245 + 12_345) % 2_147_483_648; return state / 2_147_483_648; };
              const faults = [];
              for (let lane = 0; lane < 400; lane++) {
                const steps = Array.from({ length: 6 }, (_, at) => ({ step: at + 1, kind: at % 3 === 2 ? 'tag' : 'set', quantity: 10, expectedMs: Math.round(2_000 + chance() * 40_000) }));
                const layout = strip.layoutOf(steps), pace = 0.4 + chance() * 1.8;
                let done = 0, doneAt = 0, from = 0, shown = 0, count = null;
                const truth = steps.map(step => (from += step.expectedMs * pace * (0.7 + chance() * 0.6)));
                for (let now = 0; now < from + 20_000; now += 250) {
                  while (done < steps.length && truth[done] <= now - 400) { doneAt = truth[done++]; count = null; }
                  const begun = done ? truth[done - 1] : 0;
                  if (lane % 2 && done < steps.length && chance() < 0.2) count = Math.max(count ?? 0, Math.floor(10 * (now - begun) / (truth[done] - begun)));
                  const place = { status: done < steps.length ? 'working' : 'finished', open: done + 1, count: count && Math.min(count, 9), sinceMs: done ? doneAt : 0 };
                  const sure = strip.confirmedAt(layout, steps, place), guess = strip.estimatedAt(layout, steps, place, now) ?? sure;
                  if (guess > layout.edges[Math.min(done + 1, steps.length)] + 1e-9) faults.push(`lane ${lane}: ${guess} is past the boundary at ${now}`);
                  if (guess < sure - 1e-9) faults.push(`lane ${lane}: ${guess} is behind what is confirmed, ${sure}`);
                  const wrong = Math.max(0, shown - sure);
                  if (shown - guess > wrong + 1e-9) faults.push(`lane ${lane}: fell back from ${shown} to ${guess}, though it was wrong by ${wrong} at most`);
                  if (guess < shown - 1e-9) faults.push(`lane ${lane}: fell back at ${now}`);
                  shown = guess;
                }
              }
              return faults.slice(0, 5);
            }
            """));

    /// <summary>
    /// Teams that work at a pace of their own, from half as long as the sheet says to twice as long: from the third step on the dash is in the last fifth of the step for no more than
    /// its last third, and there when the team is. By the sheet alone a team twice as slow would stand at the boundary for half of every step.
    /// </summary>
    [Theory]
    [InlineData(0.6)]
    [InlineData(1)]
    [InlineData(2)]
    public async Task A_team_of_any_pace_is_near_the_boundary_when_it_gets_there_and_not_long_before(double pace) =>
        Assert.Empty(await Run<string[]>(["/floor/strip.js"], $$"""
            ([strip]) => {
              const steps = Array.from({ length: 8 }, (_, at) => ({ step: at + 1, kind: at % 3 === 2 ? 'tag' : 'set', expectedMs: at % 3 === 2 ? 4_000 : 40_000 - 3_000 * at }));
              const layout = strip.layoutOf(steps), faults = [];
              let from = 0;
              steps.forEach((step, at) => {
                const took = step.expectedMs * {{pace.ToString(System.Globalization.CultureInfo.InvariantCulture)}};
                const within = part => {
                  const guess = strip.estimatedAt(layout, steps, { status: 'working', open: at + 1, count: null, sinceMs: from }, from + took * part);
                  return (guess - layout.edges[at]) / (layout.edges[at + 1] - layout.edges[at]);
                };
                if (at >= 3 && within(2 / 3) > 0.8 + 1e-9) faults.push(`step ${at + 1}: at ${within(2 / 3)} after two thirds of it`);
                if (at >= 3 && within(1) < 0.8) faults.push(`step ${at + 1}: at ${within(1)} when it is done`);
                from += took;
              });
              return faults;
            }
            """));

    [Fact]
    public async Task What_a_lane_shows_of_its_pace_weighs_more_the_more_it_has_done_and_never_without_bounds() =>
        Assert.Equal<double[]>([1, 1.5, 1.75, 2.5, 0.55], await Run<double[]>(["/floor/strip.js"], """
            ([strip]) => {
              const set = { kind: 'set', expectedMs: 1_000 }, three = [set, set, set];
              return [strip.ownPace([], 0), strip.ownPace([set], 2_000), strip.ownPace(three, 6_000), strip.ownPace(three, 600_000), strip.ownPace(three, 0)].map(pace => Math.round(pace * 1e6) / 1e6);
            }
            """));

    /// <summary>Pictures of a real strip while its lane works: the dash is never drawn past the open step's end, and the tape never goes back.</summary>
    [Theory]
    [InlineData(ReducedMotion.NoPreference)]
    [InlineData(ReducedMotion.Reduce)]
    public async Task What_is_drawn_keeps_to_it_and_moves_less_where_less_motion_is_asked_for(ReducedMotion motion)
    {
        var page = await Page(1000, 300, motion: motion);
        await page.GotoAsync(new Uri(Hall.Site, "health").ToString());
        await page.SetContentAsync("<link rel=stylesheet href=/floor/floor.css><div id=strip style='height:60px;width:900px'></div>");
        var drawn = await page.EvaluateAsync<double[][]>("""
            async () => {
              const { Strip } = await import('/floor/strip.js');
              const steps = [1, 2, 3].map(step => ({ step, kind: 'set', quantity: 10, expectedMs: 1_500, label: '' }));
              const strip = new Strip(document.getElementById('strip'), { steps, lane: 1, colour: 0 });
              const since = performance.now(), seen = [];
              const lane = open => ({ lane: 1, status: 'working', open, count: null, sinceMs: open === 1 ? null : (open - 1) * 1_000 });
              strip.update(lane(1), () => performance.now() - since);
              let open = 1;
              while (performance.now() - since < 4_000) {
                await new Promise(drawn => requestAnimationFrame(drawn));
                const next = Math.min(3, 1 + Math.floor((performance.now() - since) / 1_600));
                if (next !== open) strip.update(lane(open = next));
                if (strip.drawn.tape !== undefined && strip.drawn.ahead !== undefined) seen.push([strip.drawn.tape, strip.drawn.ahead, strip.along(open / 3), open]);
              }
              return seen;
            }
            """);

        Assert.NotEmpty(drawn);
        Assert.All(drawn, picture => Assert.True(picture[1] <= picture[2] + 0.5, $"the dash at {picture[1]} is past the boundary at {picture[2]}"));
        Assert.All(drawn.Zip(drawn.Skip(1)), pair => Assert.True(pair.Second[0] >= pair.First[0] - 0.5, "the tape went back"));
        var places = drawn.Select(picture => Math.Round(picture[1])).Distinct().Count();
        Assert.True(motion == ReducedMotion.Reduce ? places <= 8 : places > 12, $"{places} places in 4 s");
    }
}
