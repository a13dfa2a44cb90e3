using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Setup;
using Microsoft.AspNetCore.Http.HttpResults;

namespace LiveHeat.Server.Cards;

/// <summary>The paper scorecards of a heat, set up or called, to print on A4.</summary>
internal static class CardPages
{
    public static void MapCardPages(this IEndpointRouteBuilder app) =>
        app.MapGet("/cards/{heat}", Page).AnyoneMay().ExcludeFromDescription();

    private static async Task<IResult> Page(string heat, FindHeat heats, SetupReader setup, CancellationToken cancellation)
    {
        // What the heat was called with stands above what was set up since.
        var state = (await heats.Called(heat))?.State;
        var snapshot = state?.Snapshot ?? await setup.Snapshot(new HeatId(heat), cancellation);
        return new RazorComponentResult<CardPage>(new Dictionary<string, object?> { [nameof(CardPage.Cards)] = snapshot is null ? null : CardMaking.Of(snapshot, state) })
        {
            StatusCode = snapshot is null ? StatusCodes.Status404NotFound : StatusCodes.Status200OK,
        };
    }
}
