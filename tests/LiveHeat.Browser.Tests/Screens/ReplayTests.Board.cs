using System.Text.RegularExpressions;
using LiveHeat.Browser.Pages;
using LiveHeat.Testing.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>The same on the board, as the desk opens it beside the review.</summary>
public sealed partial class ReplayTests
{
    [Fact]
    public async Task On_the_board_a_step_stands_at_its_own_moment_and_as_it_was_known_only_when_it_came_in()
    {
        var board = await BoardAt(floor.Organiser, "replay=happened&at=100000&speed=4");
        await Expect(board.Page.Locator(".replay-by")).ToHaveTextAsync("replay: as it happened");
        await Expect(board.Page.Locator(".replay-speed")).ToHaveValueAsync("4");
        await Expect(board.Page.Locator(".replay-play")).ToHaveTextAsync("play");
        await Expect(board.Clock).ToHaveTextAsync("1:40.0");
        await board.Shows("running");
        await board.HasPlace(1, 1);
        await Expect(board.Beside(2)).ToHaveTextAsync("20 s");
        await Expect(board.Lane(2).Locator(".task")).ToHaveTextAsync("tag");

        for (var press = 0; press < 10; press++)
        {
            await board.Page.Keyboard.PressAsync("ArrowLeft");
        }

        await Expect(board.Clock).ToHaveTextAsync("0:50.0");
        await Expect(board.Page.Locator(".replay-time")).ToHaveTextAsync("0:50");
        await board.HasPlace(2, 1);

        var known = await BoardAt(floor.Organiser, "replay=known&at=100000");
        await Expect(known.Page.Locator(".replay-by")).ToHaveTextAsync("replay: as it was known");
        await Expect(known.Clock).ToHaveTextAsync("1:40.0");
        await known.HasPlace(1, 1);
        await Expect(known.Lane(2).Locator(".task")).ToHaveTextAsync("row");
    }

    /// <summary>From before GO to the result, at a speed that the address asks for; what is replayed is never out of date.</summary>
    [Fact]
    public async Task On_the_board_it_plays_by_itself_from_before_go_to_the_end()
    {
        var board = await BoardAt(floor.Organiser, "replay=happened&speed=40");
        await Expect(board.Page.Locator(".replay-play")).ToHaveTextAsync("pause");
        await board.HasStatus(1, "finished");
        await board.Shows("result");
        await Expect(board.Clock).ToHaveTextAsync("under review");
        await Expect(board.Main).ToHaveAttributeAsync("data-freshness", "fresh");
        await Expect(board.Page.Locator(".notice-text")).ToBeEmptyAsync();
    }

    [Fact]
    public async Task Who_may_not_see_a_replay_is_told_so_on_the_board()
    {
        using var nobody = floor.Visitor();
        var board = await BoardAt(nobody, "replay=happened");
        await Expect(board.Page.Locator(".replay-refused")).ToHaveTextAsync(new Regex("\\w+ \\w+"));
        await Expect(board.Page.Locator(".replay")).ToHaveCountAsync(0);
    }

    private async Task<BigBoard> BoardAt(Visitor who, string query)
    {
        var board = new BigBoard(await Page(who, 1920, 1080), floor.App.ClientOptions.BaseAddress);
        await board.Open(heat.Id, $"?{query}");
        return board;
    }
}
