using LiveHeat.Contracts;
using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Proof;
using LiveHeat.Contracts.Replays;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Server.Access;
using LiveHeat.Server.Proof;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Heats;

/// <summary>What can be read of heats.</summary>
internal static class HeatReading
{
    public static void MapHeatReading(this IEndpointRouteBuilder app)
    {
        app.MapGet("/api/program", async (ProgramReader program, CancellationToken cancellation) => Json(await program.Read(cancellation)))
            .AnyoneMay().Produces<ProgramList>().WithName("Program");
        app.MapGet("/api/heats/{heat}/frame", Frame).AnyoneMay().Produces<Frame>().ProducesProblem(404).WithName("Frame");
        app.MapGet("/api/heats/{heat}/sheet", async (string heat, int? lane, FindHeat heats) =>
                await heats.Called(heat) is { } session ? Json(lane is { } one ? session.Sheet()?.OfLane(new LaneNumber(one)) : session.Sheet()) : NotCalled(heat))
            .AnyoneMay().Produces<Sheet>().ProducesProblem(404).WithName("Sheet");
        app.MapGet("/api/heats/{heat}/result", async (string heat, FindHeat heats, Timebase time) =>
                await heats.Called(heat) is { } session ? Json(ResultMaking.Of(session.State, session.HeadHash, time.Now)) : NotCalled(heat))
            .AnyoneMay().Produces<ResultTable>().ProducesProblem(404).WithName("Result");
        app.MapGet("/api/heats/{heat}/facts", async (string heat, long? after, FindHeat heats) =>
                await heats.Called(heat) is { } session ? Json(Lines(session.State, session.State.Entries, after ?? 0)) : NotCalled(heat))
            .WhoMay(Role.Organiser, Role.HeadJudge).Produces<FactLines>().ProducesProblem(404).WithName("Facts");
        app.MapGet("/api/heats/{heat}/lanes/{lane:int}/facts", LaneFacts)
            .WhoMay(Role.Judge, Role.Organiser, Role.HeadJudge).Produces<FactLines>().ProducesProblem(404).WithName("LaneFacts");
        app.MapGet("/api/heats/{heat}/replay", async (string heat, string? by, FindHeat heats, HeatSessions sessions) =>
                await heats.Called(heat) is { } session ? Json(ReplayMaking.Of(session.Heat, session.State.Entries, by == "known", sessions.Epoch)) : NotCalled(heat))
            .WhoMay(Role.Organiser, Role.HeadJudge, Role.Announcer).Produces<HeatReplay>().ProducesProblem(404).WithName("Replay");
        app.MapGet("/api/heats/{heat}/export", async (string heat, FindHeat heats, Certificates certificates, CancellationToken cancellation) =>
                await heats.Called(heat) is { } session ? Json(await certificates.Export(session, cancellation)) : NotCalled(heat))
            .WhoMay(Role.Organiser, Role.HeadJudge).Produces<HeatExport>().ProducesProblem(404).WithName("Export");
        app.MapGet("/api/pad", async (HttpContext context, PadReader pad, CancellationToken cancellation) => Json(await pad.Read(context.SignedIn(), cancellation)))
            .WhoMay(Role.Judge).Produces<PadState>().WithName("Pad");
        app.MapGet("/health", (LedgerWatch watch) => Json(watch.Health)).AnyoneMay().Produces<Health>().WithName("Health");
    }

    private static async Task<IResult> Frame(string heat, HttpContext context, FindHeat heats)
    {
        if (await heats.Called(heat) is not { } session)
        {
            return NotCalled(heat);
        }

        var frame = session.Frame();
        context.Response.Headers.CacheControl = "no-cache";
        // Of all that it says but the moment it was made: the cap is reached without a fact.
        return TaggedJson.Of(context, frame, frame with { MadeAt = new Instant(0) });
    }

    private static async Task<IResult> LaneFacts(string heat, int lane, long? after, HttpContext context, FindHeat heats)
    {
        if (await heats.Called(heat) is not { } session)
        {
            return NotCalled(heat);
        }

        var (who, number, state) = (context.SignedIn(), new LaneNumber(lane), session.State);
        var own = who.Lane == number || state.Seats.Any(seat => seat.Lane == number && seat.SignIn == who.Id);
        if (who.Role == Role.Judge && !own)
        {
            return Problems.Of(403, "not-your-lane", HeatRefusals.JudgesOtherLane(lane));
        }

        // A lane that a new call left out still has its facts.
        return state.Find(number) is null && state.EntriesOf(number).Count == 0
            ? Problems.Of(404, "no-such-lane", Refusals.NoSuchLane(number))
            : Json(Lines(state, state.EntriesOf(number), after ?? 0));
    }

    private static FactLines Lines(HeatState heat, IEnumerable<Entry> entries, long after) => new(
        heat.Head,
        [.. entries.Where(entry => entry.Sequence > after).Select(entry => new FactLine(entry.Sequence, entry.ReceivedAt, entry.Sender, Flags(heat, entry.Fact), entry.Fact))]);

    private static FactFlags Flags(HeatState heat, HeatFact fact) => fact switch
    {
        HeatFact.FactAdded added => heat.Find(added.Tap.Lane)?.FlagsOf(added.Tap.Id) ?? FactFlags.None,
        HeatFact.Floor tap => heat.Find(tap.Lane)?.FlagsOf(tap.Id) ?? FactFlags.None,
        _ => FactFlags.None,
    };

    private static IResult Json<T>(T value) => Results.Json(value, WireJson.Options);

    private static IResult NotCalled(string heat) => Problems.Of(404, "no-such-heat", HeatRefusals.NoSuchHeat(heat));
}
