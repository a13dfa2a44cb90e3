using System.Text.Json;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Standings;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;
using LiveHeat.Server.Setup;
using LiveHeat.Server.Standings;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Exports;

/// <summary>Results, splits, facts and standings for spreadsheets and programs: in English whoever asks. The same as JSON is at the address without <c>.csv</c>.</summary>
internal static class ExportEndpoints
{
    public static void MapExports(this IEndpointRouteBuilder all)
    {
        var app = all.MapGroup("").AddEndpointFilter((context, next) =>
        {
            Tongue.Speak(Tongue.All[0]);
            return next(context);
        });
        app.MapGet("/api/heats/{heat}/result.csv", async (string heat, FindHeat heats, Timebase time) =>
                await Table(heat, heats, time) is { } table ? Result(table) : Nothing(heat))
            .AnyoneMay().Produces<string>(contentType: "text/csv").ProducesProblem(404).WithName("ResultCsv");
        app.MapGet("/api/heats/{heat}/splits.csv", async (string heat, FindHeat heats, Timebase time) =>
                await Table(heat, heats, time) is { } table ? Splits(table) : Nothing(heat))
            .AnyoneMay().Produces<string>(contentType: "text/csv").ProducesProblem(404).WithName("SplitsCsv");
        app.MapGet("/api/heats/{heat}/facts.csv", async (string heat, FindHeat heats) => await heats.Called(heat) is { } session ? Facts(session.State) : Nothing(heat))
            .WhoMay(Role.Organiser, Role.HeadJudge).Produces<string>(contentType: "text/csv").ProducesProblem(404).WithName("FactsCsv");
        app.MapGet("/api/standings.csv", async (HeatSessions sessions, SetupReader setup, Timebase time, CancellationToken cancellation) =>
                Standings(await StandingsPages.Read(sessions, setup, time, cancellation)))
            .AnyoneMay().Produces<string>(contentType: "text/csv").WithName("StandingsCsv");
    }

    private static async Task<ResultTable?> Table(string heat, FindHeat heats, Timebase time) =>
        await heats.Called(heat) is { } session ? ResultMaking.Of(session.State, session.HeadHash, time.Now) : null;

    private static IResult Nothing(string heat) => Problems.Of(StatusCodes.Status404NotFound, "no-such-heat", HeatRefusals.NoSuchHeat(heat));

    internal static IResult Result(ResultTable table) => Csv.File(
        $"result-{table.Heat}",
        ["heat", "workout", "status", "revision", "division", "place", "tied", "lane", "team", "athletes", "outcome", "time", "time_ms", "worth", "worth_of_all", "no_reps", "tag_faults", "penalty_ms", "penalty_reps", "read_back", "head_hash", "score", "unit", "disqualified", "pending", "rounds", "reps"],
        table.Lanes.Select(lane => new object?[]
        {
            table.Heat, table.Workout, table.Status, table.Revision, lane.DivisionName, lane.Place, lane.Tied, lane.Lane, lane.Name, string.Join("; ", lane.Athletes),
            Word(lane.Outcome), lane.OfficialMs is { } ms ? TimeText.Of(ms) : null, lane.OfficialMs, lane.Worth, lane.WorthOfAll, lane.NoReps, lane.TagFaults,
            lane.Penalties.Sum(penalty => penalty.AddMs), lane.Penalties.Sum(penalty => penalty.Reps),
            lane.ReadBack is { } read ? read.Agreed ? "agreed" : "disputed" : null, table.HeadHash,
            Amount(lane.Worth, lane.Score), Word((lane.Score ?? ScoreUnit.Reps).Unit), lane.Disqualified, lane.Pending, lane.RoundsAndReps?.Rounds, lane.RoundsAndReps?.Reps,
        }));

    private static IResult Splits(ResultTable table) => Csv.File(
        $"splits-{table.Heat}",
        ["heat", "lane", "team", "step", "round", "kind", "label", "athlete", "time", "time_ms", "no_reps", "reading", "load", "good"],
        table.Lanes.OrderBy(lane => lane.Lane).SelectMany(lane => lane.Splits.Select(split => new object?[]
        {
            table.Heat, lane.Lane, lane.Name, split.Step, split.Round, Word(split.Kind), split.Label, split.Athlete,
            split.Ms is { } ms ? TimeText.Tenths(ms) : null, split.Ms, split.NoReps, split.Value, Attempt(lane, split)?.Load, Attempt(lane, split)?.Good,
        })));

    private static IResult Facts(HeatState heat) => Csv.File(
        $"facts-{heat.Heat}",
        ["heat", "sequence", "received_at_ms", "sender", "fact", "lane", "instant_ms", "heat_time_ms", "json"],
        heat.Entries.Select(entry => (Entry: entry, Json: WireJson.Write(entry.Fact))).Select(one => new object?[]
        {
            heat.Heat, one.Entry.Sequence, one.Entry.ReceivedAt.UnixMs, one.Entry.Sender, JsonDocument.Parse(one.Json).RootElement.GetProperty("fact").GetString(),
            (one.Entry.Fact as HeatFact.Floor)?.Lane ?? (one.Entry.Fact as HeatFact.LaneDesk)?.Lane, one.Entry.Fact.Instant.UnixMs, heat.Clock.HeatMs(one.Entry.Fact.Instant), one.Json,
        }));

    private static IResult Standings(StandingsTable table) => Csv.File(
        "standings",
        ["division", "place", "tied", "team", "total", "workout", "heat", "workout_place", "points", "excluded", "counts", "provisional", "time", "time_ms", "worth", "score", "unit", "rounds", "reps"],
        from division in table.Divisions
        from line in division.Lines
        from score in line.Scores.Select((score, i) => (Score: score, Workout: division.Workouts[i].Name))
        where score.Score is not null
        let given = score.Score!
        select new object?[]
        {
            division.Name, line.Place, line.Tied, line.Name, line.Total, score.Workout, given.Heat, given.Place, given.Points, given.Excluded, given.Counts, given.Provisional,
            given.OfficialMs is { } ms ? TimeText.Of(ms) : null, given.OfficialMs, given.Worth, Amount(given.Worth, given.Score), Word((given.Score ?? ScoreUnit.Reps).Unit), given.RoundsAndReps?.Rounds, given.RoundsAndReps?.Reps,
        });

    private static decimal Amount(int worth, ScoreUnit? score) => worth / (decimal)(score ?? ScoreUnit.Reps).Scale;

    private static ResultAttempt? Attempt(ResultLane lane, ResultSplit split) => lane.Attempts?.FirstOrDefault(attempt => attempt.Step == split.Step);

    private static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());
}
