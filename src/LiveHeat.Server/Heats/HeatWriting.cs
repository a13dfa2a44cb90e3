using System.Text.Json;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Access;
using LiveHeat.Server.Phones;
using LiveHeat.Server.Proof;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Time;
using Microsoft.AspNetCore.Mvc;

namespace LiveHeat.Server.Heats;

/// <summary>The two ways to write: taps in batches, and commands.</summary>
internal static class HeatWriting
{
    public static void MapHeatWriting(this IEndpointRouteBuilder app)
    {
        app.MapPost("/api/heats/{heat}/taps", ReportTaps)
            .WhoMay(Role.Judge).WithMetadata(new RequestSizeLimitAttribute(Bodies.MostBytes))
            .Accepts<TapBatch>("application/json").Produces<TapReceipts>().ProducesProblem(400).ProducesProblem(404).ProducesProblem(413).ProducesProblem(503)
            .WithName("ReportTaps").WithSummary("Takes a batch of taps from one phone. Safe to repeat.");
        app.MapPost("/api/heats/{heat}/commands", Command)
            .WhoMay(Role.Judge, Role.HeadJudge, Role.Organiser).WithMetadata(new RequestSizeLimitAttribute(Bodies.MostCommandBytes))
            .Accepts<HeatCommand>("application/json").Produces<CommandAnswer>()
            .ProducesProblem(400).ProducesProblem(404).ProducesProblem(409).ProducesProblem(413).ProducesProblem(503)
            .WithName("Command").WithSummary("Decides a command and writes the fact it becomes. Safe to repeat with the same id.");
    }

    /// <summary>Takes a batch of taps from one phone. Safe to repeat: a tap already known is answered "known".</summary>
    private static async Task<IResult> ReportTaps(string heat, HttpContext context, FindHeat heats, CancellationToken cancellation)
    {
        var (body, problem) = await Bodies.Read(context.Request, cancellation);
        if (problem is not null)
        {
            return problem;
        }

        if (Batch(body) is not { } batch)
        {
            return Bodies.Unreadable(HeatRefusals.NoTaps);
        }

        if (batch.Taps.Count > TapBatch.Most)
        {
            return Problems.Of(413, "too-many-taps", HeatRefusals.TooManyTaps(batch.Taps.Count, TapBatch.Most));
        }

        return await heats.Called(heat) is not { } session
            ? NoSuchHeat(heat)
            : await Written(async () => Results.Json(await session.Take(batch, context.SignedIn(), cancellation), WireJson.Options));
    }

    /// <summary>Decides a command and writes the fact it becomes.</summary>
    private static async Task<IResult> Command(
        string heat, HttpContext context, FindHeat heats, FloorPhones phones, SetupReader setup, Certificates certificates, Timebase time, CancellationToken cancellation)
    {
        var (body, problem) = await Bodies.Read(context.Request, cancellation);
        if (problem is not null)
        {
            return problem;
        }

        HeatCommand command;
        string hash;
        try
        {
            (command, hash) = (WireJson.ReadCommand(body), HeatSession.HashOf(body));
        }
        catch (JsonException wrong)
        {
            return Bodies.Unreadable(wrong.Path is { Length: > 2 } path ? HeatRefusals.CommandFieldWrong(path[2..]) : HeatRefusals.NoCommand);
        }

        if (await heats.Known(heat, cancellation) is not { } session)
        {
            return NoSuchHeat(heat);
        }

        var who = context.SignedIn();
        var snapshot = command is HeatCommand.Call or HeatCommand.ReplaceCall ? await setup.Snapshot(session.Heat, cancellation) : null;
        Asking Ask(HeatState state) => new(
            who.By(), who.Lane, time.Now, NewId(), snapshot,
            command is HeatCommand.Freeze ? phones.Missing(session.Heat, state.Seats.Select(seat => seat.SignIn).ToHashSet()) : [])
        {
            VenueOffsetMinutes = (int)TimeZoneInfo.Local.GetUtcOffset(DateTimeOffset.FromUnixTimeMilliseconds(time.Now.UnixMs)).TotalMinutes,
        };

        return await Written(async () => await session.Do(command, hash, Ask, cancellation) switch
        {
            CommandResult.Done done => Results.Json(await Signed(done.Answer, command, session, certificates), WireJson.Options),
            CommandResult.Refused { Why: var why } => Refused(why, command, session.State),
            _ => throw new InvalidOperationException("No such result."),
        });
    }

    /// <summary>The second signature makes the certificate at once, so that it can be handed out with the result.</summary>
    private static async Task<CommandAnswer> Signed(CommandAnswer answer, HeatCommand command, HeatSession session, Certificates certificates)
    {
        if (command is HeatCommand.Certify && session.State.Told == Phase.Certified)
        {
            await certificates.Of(session, CancellationToken.None);
        }

        return answer;
    }

    private static TapBatch? Batch(JsonElement body)
    {
        try
        {
            return body.Deserialize<TapBatch>(WireJson.Options) is { Taps: not null } batch ? batch : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static IResult Refused(Verdict.Refused why, HeatCommand command, HeatState state) => why.Code == "head-moved"
        ? Results.Problem(
            why.Why.Sentence(), statusCode: 409, title: "Not done",
            extensions: new Dictionary<string, object?> { ["code"] = why.Code, ["head"] = HeadNews.Head(state, command), ["news"] = HeadNews.Since(state, command) })
        : Problems.Of(StatusOf(why.Code), why.Code, why.Why);

    private static int StatusOf(string code) => code switch
    {
        "not-yours" or "not-your-lane" => StatusCodes.Status403Forbidden,
        "no-such-heat" or "no-such-lane" or "no-such-fact" or "no-such-step" => StatusCodes.Status404NotFound,
        "unreadable" => StatusCodes.Status400BadRequest,
        _ => StatusCodes.Status409Conflict,
    };

    private static async Task<IResult> Written(Func<Task<IResult>> write)
    {
        try
        {
            return await write();
        }
        catch (LedgerUnavailable full)
        {
            return Problems.Of(StatusCodes.Status503ServiceUnavailable, "ledger-unavailable", HeatRefusals.LedgerUnavailable(full.InnerException!.Message));
        }
        catch (JsonException)
        {
            return Bodies.Unreadable(HeatRefusals.NumberTooLarge);
        }
    }

    private static IResult NoSuchHeat(string heat) => Problems.Of(404, "no-such-heat", HeatRefusals.NoSuchHeat(heat));

    private static string NewId() => Convert.ToHexStringLower(System.Security.Cryptography.RandomNumberGenerator.GetBytes(8));
}
