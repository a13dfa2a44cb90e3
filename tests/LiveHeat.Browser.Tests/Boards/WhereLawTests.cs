using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;
using LiveHeat.Testing.Places;

namespace LiveHeat.Browser.Boards;

/// <summary>Where a lane is by the clock, on the board, on the strip and on the pad: held to the table that the Blazor screens are held to as well.</summary>
public sealed class WhereLawTests(Hall hall) : ModuleTest(hall)
{
    [Fact]
    public async Task Every_case_of_the_table_is_where_it_says()
    {
        var told = await Run<string[]>(["/floor/where.js", "/pad/lane.js"], """
            ([where, pad], text) => {
              const { cases, windows, steps: count } = JSON.parse(text), steps = Array.from({ length: count }, (_, at) => ({ step: at + 1 }));
              return cases.map(({ name, laneMs, confirmed, plain }) => {
                const { open, round, resting, turnsMs } = where.whereIs({ steps, windows: plain ? null : windows }, { open: confirmed }, laneMs);
                const own = pad.roundNow({ windows: plain ? null : windows }, laneMs ?? 0);
                return `${name}: ${open} ${round} ${resting} ${turnsMs}, pad ${own && windows.findIndex(one => one.first === own.first) + 1} ${own && own.over}`;
              });
            }
            """, PlaceCases.Text);

        Assert.Equal(
            PlaceCases.All.Select(one => FormattableString.Invariant($"{one.Name}: {one.Open} {one.Round?.ToString() ?? "null"} {(one.Resting ? "true" : "false")} {one.TurnsMs?.ToString() ?? "null"}, pad {one.Round?.ToString() ?? "null"} {(one.Plain ? "null" : one.Over ? "true" : "false")}")),
            told);
    }

    /// <summary>Every 200 ms of a heat in which nobody taps but once: the dash stays within the round that the clock is in, and there is none in a rest.</summary>
    [Fact]
    public async Task The_strip_never_runs_past_the_round_that_the_clock_is_in() =>
        Assert.Empty(await Run<string[]>(["/floor/strip.js"], """
            ([strip], text) => {
              const { windows } = JSON.parse(text), whole = 240_000, faults = [];
              for (const expectedMs of [10_000, 25_000, 50_000]) for (const confirmed of [1, 2, 4]) {
                const steps = Array.from({ length: 6 }, (_, at) => ({ step: at + 1, kind: 'set', quantity: 10, expectedMs })), layout = strip.layoutOf(steps, windows);
                for (let ms = 0; ms < whole; ms += 200) {
                  const lane = { status: 'working', open: confirmed, count: null, sinceMs: confirmed === 1 ? null : 20_000 };
                  const guess = strip.estimatedAt(layout, steps, lane, ms, windows), { round, resting } = strip.whereIs({ steps, windows }, lane, ms);
                  const { fromMs, untilMs } = windows[round - 1];
                  if (resting !== (guess === null)) faults.push(`${expectedMs} ${confirmed} at ${ms}: ${resting ? 'rest, and yet' : 'work, and'} ${guess}`);
                  if (guess !== null && guess * whole > untilMs + 1) faults.push(`${expectedMs} ${confirmed} at ${ms}: ${guess * whole} is past the round's end`);
                  if (guess !== null && confirmed < windows[round - 1].first && guess * whole < fromMs - 1) faults.push(`${expectedMs} ${confirmed} at ${ms}: ${guess * whole} is before the round`);
                }
              }
              return faults.slice(0, 5);
            }
            """, PlaceCases.Text));
}
