using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Hubs;
using Microsoft.AspNetCore.Http.HttpResults;

namespace LiveHeat.Server.Board;

/// <summary>The big screen, rendered here with its newest state in it, so that it shows something before anything else is loaded.</summary>
internal static class BoardPages
{
    public static void MapBoardPages(this IEndpointRouteBuilder app)
    {
        app.MapGet("/", () => Results.Redirect("/board")).AnyoneMay().ExcludeFromDescription();
        app.MapGet("/board", (FindHeat heats, ProgramReader program, CancellationToken cancellation) => Page(HeatHub.Current, heats, program, cancellation))
            .AnyoneMay().ExcludeFromDescription();
        app.MapGet("/board/{heat}", (string heat, FindHeat heats, ProgramReader program, CancellationToken cancellation) => Page(heat, heats, program, cancellation))
            .AnyoneMay().ExcludeFromDescription();
    }

    private static async Task<IResult> Page(string follow, FindHeat heats, ProgramReader program, CancellationToken cancellation)
    {
        var session = follow == HeatHub.Current ? await heats.Current() : await heats.Called(follow);
        var state = new BoardState(await program.Read(cancellation), session?.Sheet(), session?.Frame());
        return new RazorComponentResult<BoardPage>(new Dictionary<string, object?>
        {
            [nameof(BoardPage.Follow)] = follow,
            [nameof(BoardPage.State)] = state,
            // The default encoder writes "<" as \u003c, so that no name can end the script element.
            [nameof(BoardPage.Json)] = JsonSerializer.Serialize(state, WireJson.Options),
        });
    }
}

/// <summary>What the page carries with it.</summary>
public sealed record BoardState(ProgramList Program, Sheet? Sheet, Frame? Frame);
