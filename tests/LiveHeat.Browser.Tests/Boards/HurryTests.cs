using LiveHeat.Browser.Floor;
using LiveHeat.Browser.Halls;

namespace LiveHeat.Browser.Boards;

/// <summary>The last minute before a time cap, which the whole hall must see, and the cap itself.</summary>
[Collection(OneAtATime.Name)]
public sealed class HurryTests(Hall hall) : ModuleTest(hall)
{
    /// <summary>A cap of 12 minutes; with two divisions the second has 13. Heat time in milliseconds: what stands at the right of the head.</summary>
    [Theory]
    [InlineData(1, 659_999, "1:01 left, time cap 12:00")]
    [InlineData(1, 660_000, "hurry: 1:00 left, last minute")]
    [InlineData(1, 719_999, "hurry: 0:01 left, last minute")]
    [InlineData(1, 720_000, "over: cap reached, time cap 12:00")]
    [InlineData(2, 659_999, "Open: 1:01 left, Masters: 2:01 left")]
    [InlineData(2, 660_000, "hurry: Open: 1:00 left, Masters: 2:00 left")]
    [InlineData(2, 720_000, "hurry: Open: cap reached, Masters: 1:00 left")]
    [InlineData(2, 780_000, "over: Open: cap reached, Masters: cap reached")]
    public async Task The_last_minute_begins_when_one_is_left_and_ends_at_the_cap(int divisions, int heatMs, string told) => Assert.Equal(told, await Run<string>(["/floor/board/heading.js"], $$"""
        ([{ Heading }], { divisions, heatMs }) => {
          const heading = new Heading();
          ({{Given}})(heading, divisions);
          heading.turn(heatMs);
          const { hurry, over } = heading.element.dataset, [left, cap] = ['.time-left', '.time-cap'].map(line => heading.element.querySelector(line).textContent);
          return `${hurry ? 'hurry: ' : ''}${over ? 'over: ' : ''}${left}, ${cap}`;
        }
        """, new { divisions, heatMs }));

    /// <summary>A heat that is ended in its last minute hurries nobody any more.</summary>
    [Fact]
    public async Task A_result_hurries_nobody() => Assert.Equal("yes, undefined", await Run<string>(["/floor/board/heading.js"], $$"""
        ([{ Heading }]) => {
          const heading = new Heading(), { sheet, frame } = ({{Given}})(heading, 1);
          heading.turn(700_000);
          const before = heading.element.dataset.hurry;
          heading.update(sheet, { ...frame, phase: 'ended' }, 'result', []);
          return `${before}, ${heading.element.dataset.hurry}`;
        }
        """));

    [Fact]
    public async Task In_the_last_minute_what_is_left_stands_larger_and_on_tape()
    {
        var stage = new BoardStage(await Page(1920, 1080));
        await stage.Begin(Hall.Site, 10);
        const string Look = "() => { const { fontSize, backgroundColor } = getComputedStyle(document.querySelector('.time-left')); return [fontSize, backgroundColor]; }";
        await stage.Show("running");
        var calm = await stage.Page.EvaluateAsync<string[]>(Look);
        await stage.Show("last minute");
        var hurried = await stage.Page.EvaluateAsync<string[]>(Look);
        Assert.True(Pixels(hurried[0]) > Pixels(calm[0]) * 1.2, $"{calm[0]} and in the last minute {hurried[0]}");
        Assert.Equal(("rgba(0, 0, 0, 0)", "rgb(244, 240, 229)"), (calm[1], hurried[1]));
    }

    private static double Pixels(string size) => double.Parse(size[..^2], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A running heat whose GO was at instant 0, told to a head.</summary>
    private const string Given = """
        (heading, divisions) => {
          const lanes = [{ lane: 1, capMs: 720_000, divisionName: 'Open' }, { lane: 2, capMs: 780_000, divisionName: 'Masters' }].slice(0, divisions);
          const sheet = { competition: 'Breakwater Relays', title: 'Heat 12', workout: { name: 'Low Tide', summary: '' }, lanes };
          const frame = { phase: 'running', capMs: 720_000, start: { goAt: 0 }, lanes: [], revision: 1 };
          heading.update(sheet, frame, 'running', []);
          return { sheet, frame };
        }
        """;
}
