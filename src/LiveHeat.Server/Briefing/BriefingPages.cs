using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Setup;
using Microsoft.AspNetCore.Http.HttpResults;

namespace LiveHeat.Server.Briefing;

/// <summary>The briefing of a heat, set up or called: to print on A4, and with <c>?slides</c> for the big screen.</summary>
internal static class BriefingPages
{
    public static void MapBriefingPages(this IEndpointRouteBuilder app) =>
        app.MapGet("/briefing/{heat}", Page).AnyoneMay().ExcludeFromDescription();

    private static async Task<IResult> Page(string heat, HttpRequest request, FindHeat heats, SetupReader setup, CancellationToken cancellation)
    {
        // What the heat was called with stands above what was set up since.
        var snapshot = (await heats.Called(heat))?.State.Snapshot ?? await setup.Snapshot(new HeatId(heat), cancellation);
        var briefing = snapshot is null ? null : BriefingMaking.Of(snapshot);
        var status = briefing is null ? StatusCodes.Status404NotFound : StatusCodes.Status200OK;
        if (request.Query.ContainsKey("slides"))
        {
            return new RazorComponentResult<SlidesPage>(new Dictionary<string, object?>
            {
                [nameof(SlidesPage.Heat)] = briefing is null ? "" : $"{briefing.Competition} · {briefing.Title}",
                [nameof(SlidesPage.Slides)] = briefing is null ? [Slides.NoHeat] : Slides.Of(briefing),
            })
            { StatusCode = status };
        }

        return new RazorComponentResult<BriefingPage>(new Dictionary<string, object?> { [nameof(BriefingPage.Briefing)] = briefing }) { StatusCode = status };
    }
}
