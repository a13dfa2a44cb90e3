using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Ledger.Registry;
using LiveHeat.Server.Access;
using LiveHeat.Server.Library;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace LiveHeat.Server.Setup;

/// <summary>Setting up by hand. For the organiser; every write is safe to repeat.</summary>
internal static class SetupEndpoints
{
    /// <summary>Needs a <see cref="HeatRegistry"/> and <see cref="CalledHeats"/>.</summary>
    public static IServiceCollection AddSetup(this IServiceCollection services)
    {
        services.TryAddSingleton<SetupReader>();
        services.TryAddSingleton<SetupWriter>();
        return services;
    }

    public static IEndpointRouteBuilder MapSetup(this IEndpointRouteBuilder app)
    {
        var setup = app.MapGroup("/api/setup").WhoMay(Role.Organiser);
        setup.MapGet("", async (SetupReader reader, CancellationToken cancellation) => Results.Json(await reader.All(cancellation), WireJson.Options))
            .Produces<SetupAll>().WithName("Setup").WithSummary("Everything set up.");
        setup.MapPut("competition", (Body<CompetitionSetup> body, SetupWriter writer, CancellationToken cancellation) => Answer(writer.Put(body.Value, cancellation)))
            .Produces<CompetitionSetup>().ProducesProblem(400).WithName("PutCompetition");
        setup.MapPut("points", (Body<PointsSetup> body, SetupWriter writer, CancellationToken cancellation) => Answer(writer.Put(body.Value, cancellation)))
            .Produces<PointsSetup>().ProducesProblem(400).WithName("PutPoints");
        setup.MapPut("divisions/{id}", (string id, Body<DivisionSetup> body, SetupWriter writer, CancellationToken cancellation) =>
                Same(id, body.Value.Id) ?? Answer(writer.Put(body.Value, cancellation)))
            .Produces<DivisionSetup>().ProducesProblem(400).WithName("PutDivision");
        setup.MapPut("workouts/{id}", (string id, Body<Workout> body, SetupWriter writer, CancellationToken cancellation) =>
                Same(id, body.Value.Id) ?? Answer(writer.Put(body.Value, cancellation)))
            .Produces<Workout>().ProducesProblem(400).WithName("PutWorkout");
        setup.MapPut("teams/{id}", (string id, Body<TeamSetup> body, SetupWriter writer, CancellationToken cancellation) =>
                Same(id, body.Value.Id) ?? Answer(writer.Put(body.Value, cancellation)))
            .Produces<TeamSetup>().ProducesProblem(400).WithName("PutTeam");
        setup.MapPut("heats/{id}", (string id, Body<HeatSetup> body, SetupWriter writer, CancellationToken cancellation) =>
                Same(id, body.Value.Id) ?? Answer(writer.Put(body.Value, cancellation)))
            .Produces<HeatSetup>().ProducesProblem(400).WithName("PutHeat");
        setup.MapGet("movements/{id}", async (string id, SetupReader reader, CancellationToken cancellation) =>
                (await reader.All(cancellation)).Movements.FirstOrDefault(movement => movement.Id == id) is { } movement ? Results.Json(movement, WireJson.Options) : MovementSetup.None(id))
            .Produces<LibraryMovement>().ProducesProblem(404).WithName("OwnMovement").WithSummary("A movement of the organiser's own.");
        setup.MapPut("movements/{id}", (string id, Body<LibraryMovement> body, SetupWriter writer, CancellationToken cancellation) =>
                Same(id, body.Value.Id) ?? Answer(writer.Put(body.Value, cancellation)))
            .Produces<LibraryMovement>().ProducesProblem(400).WithName("PutMovement").WithSummary("A copy of a library's movement, or one of the organiser's own.");
        app.MapGet("/api/introductions", async (SetupReader reader, CancellationToken cancellation) =>
                Results.Json((await reader.All(cancellation)).Teams.Select(TeamIntroduction.Of).ToItems(), WireJson.Options))
            .WhoMay(Role.Announcer, Role.Organiser, Role.HeadJudge).Produces<IReadOnlyList<TeamIntroduction>>().WithName("Introductions")
            .WithSummary("How to say the teams' names, and what to say of them.");
        app.MapPictures();
        MapDelete(setup, "movements", SetupKind.Movement, "DeleteMovement");
        MapDelete(setup, "divisions", SetupKind.Division, "DeleteDivision");
        MapDelete(setup, "workouts", SetupKind.Workout, "DeleteWorkout");
        MapDelete(setup, "teams", SetupKind.Team, "DeleteTeam");
        MapDelete(setup, "heats", SetupKind.Heat, "DeleteHeat");
        return app;
    }

    private static void MapDelete(IEndpointRouteBuilder setup, string folder, string kind, string name) =>
        setup.MapDelete($"{folder}/{{id}}", (string id, SetupWriter writer, CancellationToken cancellation) => Answer(writer.Delete(kind, id, cancellation)))
            .Produces(StatusCodes.Status204NoContent).ProducesProblem(409).WithName(name);

    /// <summary>The address and the document must name the same thing.</summary>
    private static Task<IResult>? Same(string inAddress, string? inBody) => inAddress == inBody
        ? null
        : Task.FromResult(Problems.BadSetup([new("id", SetupRefusals.OtherDocument(inAddress, inBody))]));

    internal static async Task<IResult> Answer(Task<SetupChange> change) => await change switch
    {
        SetupChange.Done { Document: null } => Results.NoContent(),
        SetupChange.Done { Document: { } document } => Results.Json(document, WireJson.Options),
        SetupChange.Refused { Errors: var errors } => Problems.BadSetup(errors),
        SetupChange.InUse { Why: var why } => Problems.Of(StatusCodes.Status409Conflict, "in-use", why),
        _ => throw new InvalidOperationException("No such outcome."),
    };
}
