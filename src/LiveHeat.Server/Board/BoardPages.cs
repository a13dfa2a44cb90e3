using System.Text.Json;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Hubs;
using LiveHeat.Server.Language;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;

namespace LiveHeat.Server.Board;

/// <summary>The big screen, rendered here with its newest state in it, so that it shows something before anything else is loaded.</summary>
internal static class BoardPages
{
    /// <summary>Between two heats in the address of a screen that shows both: no id of a heat has it.</summary>
    private const char And = '+';

    public static void MapBoardPages(this IEndpointRouteBuilder app)
    {
        app.MapGet("/", () => Results.Redirect("/board")).AnyoneMay().ExcludeFromDescription();
        app.MapGet("/board", (HttpRequest request, BoardPageMaking making, CancellationToken cancellation) => making.Page<BoardPage>(HeatHub.Current, request, cancellation))
            .AnyoneMay().ExcludeFromDescription();
        app.MapGet("/board/{heat}", (string heat, HttpRequest request, BoardPageMaking making, CancellationToken cancellation) =>
                heat.Split(And) is [{ Length: > 0 } one, { Length: > 0 } other] ? Task.FromResult(Both(one, other, request)) : making.Page<BoardPage>(heat, request, cancellation))
            .AnyoneMay().ExcludeFromDescription();
    }

    private static IResult Both(string one, string other, HttpRequest request) => new RazorComponentResult<TwoBoardsPage>(new Dictionary<string, object?>
    {
        [nameof(TwoBoardsPage.Language)] = RequestLanguage.Of(request),
        [nameof(TwoBoardsPage.Addresses)] = new[] { Half(one, "left", request, "kiosk"), Half(other, "right", request, "kiosk", "sound") },
    });

    /// <summary>One of two boards: the page around them fills the screen, and only the left one is heard.</summary>
    private static string Half(string heat, string side, HttpRequest request, params string[] without) =>
        $"/board/{Uri.EscapeDataString(heat)}{QueryString.Create(request.Query.Where(option => !without.Contains(option.Key))).Add("side", side)}";
}

/// <summary>Makes a page that carries a heat's newest state and its language's words.</summary>
internal sealed class BoardPageMaking(FindHeat heats, ProgramReader program, BoardWords words)
{
    public async Task<IResult> Page<T>(string follow, HttpRequest request, CancellationToken cancellation)
        where T : IComponent
    {
        var session = follow == HeatHub.Current ? await heats.Current() : await heats.Called(follow);
        var state = new BoardState(await program.Read(cancellation), session?.Sheet(), session?.Frame());
        var language = RequestLanguage.Of(request);
        return new RazorComponentResult<T>(new Dictionary<string, object?>
        {
            [nameof(BoardPage.Screen)] = new BoardScreen(follow, state, language, words.Read(language)),
        });
    }
}

/// <summary>What a page is made of.</summary>
/// <param name="Follow">The heat it shows, or the current one.</param>
/// <param name="State">As of now.</param>
/// <param name="Language">Of its words: "de".</param>
/// <param name="Words">Keys and sentences.</param>
public sealed record BoardScreen(string Follow, BoardState State, string Language, IReadOnlyDictionary<string, string> Words)
{
    // The default encoder writes "<" as \u003c, so that no name can end the script element.
    public string StateJson => JsonSerializer.Serialize(State, WireJson.Options);

    public string WordsJson => JsonSerializer.Serialize(Words);

    public string Title => State.Sheet is { } sheet ? $"{sheet.Title} · {sheet.Competition}" : State.Program.Competition;
}

/// <summary>What the page carries with it.</summary>
public sealed record BoardState(ProgramList Program, Sheet? Sheet, Frame? Frame);
