using LiveHeat.Contracts.Standings;
using LiveHeat.Contracts.Wire;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Time;
using Microsoft.AspNetCore.Http.HttpResults;

namespace LiveHeat.Server.Standings;

/// <summary>The standings over the whole competition: as JSON, and as a page to read on any screen and to print.</summary>
internal static class StandingsPages
{
    public static void MapStandings(this IEndpointRouteBuilder app)
    {
        app.MapGet("/api/standings", async (HeatSessions sessions, SetupReader setup, Timebase time, CancellationToken cancellation) =>
                Results.Json(await Read(sessions, setup, time, cancellation), WireJson.Options))
            .AnyoneMay().Produces<StandingsTable>().WithName("Standings").WithSummary("The overall standings of every division, with what each workout gave.");
        app.MapGet("/standings", async (HeatSessions sessions, SetupReader setup, Timebase time, CancellationToken cancellation) =>
                new RazorComponentResult<StandingsPage>(new Dictionary<string, object?>
                {
                    [nameof(StandingsPage.Table)] = await Read(sessions, setup, time, cancellation),
                    [nameof(StandingsPage.PrintedAt)] = DateTimeOffset.FromUnixTimeMilliseconds(time.Now.UnixMs).ToLocalTime(),
                }))
            .AnyoneMay().ExcludeFromDescription();
    }

    internal static async Task<StandingsTable> Read(HeatSessions sessions, SetupReader setup, Timebase time, CancellationToken cancellation) =>
        StandingsMaking.Of(await setup.All(cancellation), [.. (await sessions.Called()).Select(session => session.State)], time.Now);
}
