using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Ledger.Registry;

namespace LiveHeat.Server.Access;

/// <summary>Signing in and out, joining by a code, and making codes.</summary>
internal static class AccessEndpoints
{
    private const int MostMinutes = 2880;

    public static IEndpointRouteBuilder MapAccess(this IEndpointRouteBuilder app)
    {
        app.MapGet("/api/me", (HttpContext context) =>
            {
                context.Response.Headers.CacheControl = "no-store";
                return Results.Json(Entrance.Me(context.SignedIn()), WireJson.Options);
            })
            .AnyoneMay().Produces<Me>().WithName("Me").WithSummary("Who is signed in on this device.");
        app.MapPost("/api/sign-in", (Body<SignInRequest> body, HttpContext context, Entrance entrance) => entrance.SignIn(context, body.Value))
            .AnyoneMay().Produces<Me>().ProducesProblem(400).ProducesProblem(403).ProducesProblem(429)
            .WithName("SignIn").WithSummary("Signs the organiser in with the passphrase.");
        app.MapPost("/api/join", (Body<JoinRequest> body, HttpContext context, Entrance entrance) => entrance.Join(context, body.Value))
            .AnyoneMay().Produces<Me>().ProducesProblem(400).ProducesProblem(403).ProducesProblem(429)
            .WithName("Join").WithSummary("Signs in as what the code is for. The code stays good for the next phone.");
        app.MapPost("/api/sign-out", (HttpContext context, Entrance entrance) => entrance.SignOut(context))
            .AnyoneMay().Produces<Me>().WithName("SignOut").WithSummary("Ends the sign-in of this device. Safe to repeat.");
        app.MapPost("/api/codes", MakeCode)
            .WhoMay(Role.Organiser).Produces<CodeMade>().ProducesProblem(400)
            .WithName("MakeCode").WithSummary("Makes a join code for a role and lane; the one before it is over.");
        return app;
    }

    private static async Task<IResult> MakeCode(Body<CodeRequest> body, HttpContext context, HeatRegistry registry, CancellationToken cancellation)
    {
        var (role, lane, minutes) = body.Value;
        Items<FieldError> errors = [.. Errors(body.Value)];
        if (errors.Count > 0)
        {
            return Problems.BadSetup(errors);
        }

        var made = await registry.JoinCodes.Make(role, lane, TimeSpan.FromMinutes(minutes), cancellation);
        var page = role == Role.Judge ? "pad" : "join";
        var url = $"{context.Request.Scheme}://{context.Request.Host}/{page}/#{made.Text}";
        context.Response.Headers.CacheControl = "no-store";
        return Results.Json(new CodeMade(made.Text, url, role, lane, made.Code.ExpiresAt), WireJson.Options);
    }

    private static IEnumerable<FieldError> Errors(CodeRequest request)
    {
        if (request.Role is not (Role.Judge or Role.HeadJudge or Role.Announcer))
        {
            yield return new("role", AccessRefusals.CodeRole);
        }

        if (request.Role == Role.Judge && request.Lane is null)
        {
            yield return new("lane", AccessRefusals.CodeNeedsLane);
        }

        if (request.Role != Role.Judge && request.Lane is not null)
        {
            yield return new("lane", AccessRefusals.CodeHasNoLane);
        }

        if (request.Minutes is < 1 or > MostMinutes)
        {
            yield return new("minutes", AccessRefusals.CodeMinutes(MostMinutes));
        }
    }
}
