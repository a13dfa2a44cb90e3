using LiveHeat.Contracts.Judging;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;

namespace LiveHeat.Server.Judging;

/// <summary>The judging watch: a heat's lanes, and afterwards every judge. For organiser and head judge.</summary>
internal static class JudgingPages
{
    public static void MapJudging(this IEndpointRouteBuilder app)
    {
        app.MapGet("/api/heats/{heat}/judging", async (string heat, FindHeat heats) => await heats.Called(heat) is { } session
                ? Results.Json(JudgingMaking.Of(session.State), WireJson.Options)
                : Problems.Of(StatusCodes.Status404NotFound, "no-such-heat", HeatRefusals.NoSuchHeat(heat)))
            .WhoMay(Role.Organiser, Role.HeadJudge).Produces<JudgingTable>().ProducesProblem(404).WithName("Judging").WithSummary("No-rep rates by lane and movement; a lane that stands out is a question.");
        app.MapGet("/api/judges", async (HeatSessions sessions) => Results.Json(JudgingMaking.Judges((await sessions.Called()).Select(session => session.State)), WireJson.Options))
            .WhoMay(Role.Organiser, Role.HeadJudge).Produces<Items<JudgePage>>().WithName("Judges").WithSummary("No-rep rates by judge and movement over all heats: for training, not for blame.");
    }
}
