using System.Text.Json;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>A tiebreak time is the time at the end of a named part of the work: common practice, no source. Here the row of the first round, step 2.</summary>
public class TiebreakTests
{
    private static readonly TiebreakSet Row = new(1, 2);

    private static Workout With(TiebreakSet? tiebreak, ScoringRule? scoring = null) =>
        Some.Workout(prescriptions: Some.Prescription() with { Tiebreak = tiebreak }) with { Scoring = scoring };

    private static HeatSnapshot Heat(int lanes = 2, ScoringRule? scoring = null) => Some.Snapshot(lanes, With(Row, scoring));

    private const string Level = """
        start
        lane 1 step 2 done at 1:00.11
        lane 2 step 2 done at 1:05
        lane 1 step 7 done at 9:00
        lane 2 step 7 done at 8:00
        """;

    private static string Order(HeatState heat) => string.Join(", ", HeatResult.Of(heat, HeatScript.At("20:00")).Select(line => $"{line.Place} lane {line.Lane.Lane}{(line.TiebreakMs is { } ms ? $" {ms}" : "")}"));

    private static Verdict Freeze(HeatState heat, string? over = null, params MissingTaps[] missing) => HeatRules.Decide(
        heat, new HeatCommand.Freeze { Id = Some.Id("asks", 1), Head = heat.Head, Over = over }, Some.Asking(Some.Organiser, HeatScript.At("20:00"), missing: missing));

    [Fact]
    public void Of_two_teams_with_the_same_worth_the_earlier_tiebreak_is_ahead_of_who_got_there_first()
    {
        Assert.Equal("1 lane 1 60200, 2 lane 2 65000", Order(HeatScript.Play($"{Level}\nend at 10:10", Heat())));
        Assert.Equal("1 lane 1 60200, 2 lane 2 65000", Order(HeatScript.Play($"{Level}\nend at 10:10", Heat(scoring: new ScoringRule.ForTime(Unfinished.CapPlusSeconds)))));
        Assert.Equal("1 2", HeatScript.Board(HeatScript.Play(Level, Heat())));
        Assert.Equal("2 1", HeatScript.Board(HeatScript.Play(Level, Some.Snapshot(2, With(null)))));
    }

    [Fact]
    public void More_worth_is_ahead_whatever_the_tiebreak_and_a_finish_by_its_time() =>
        Assert.Equal("1 lane 4 80000, 2 lane 3 70000, 3 lane 2 65000, 4 lane 1 60200", Order(HeatScript.Play($"""
            {Level}
            lane 3 step 2 done at 1:10
            lane 3 step 9 done at 9:30
            lane 4 step 2 done at 1:20
            lane 4 step 9 done at 9:20
            lane 2 1 reps at cap in step 8 at 10:05
            end at 10:10
            """, Heat(4))));

    [Fact]
    public void Who_has_no_tiebreak_time_is_behind_of_the_same_worth() =>
        Assert.Equal("1 lane 1 60200, 2 lane 2", Order(HeatScript.Play("""
            start
            lane 1 step 2 done at 1:00.11
            lane 1 step 7 done at 9:00
            lane 2 step 7 done at 8:00
            end at 10:10
            """, Heat())));

    [Fact]
    public void Over_several_heats_the_tiebreak_decides_too()
    {
        var heats = new[] { "8:59", "9:01" }.Select((time, i) => HeatScript.Play($"start\nlane 1 step 2 done at 1:0{5 - i}\nlane 1 step 7 done at {time}\nend at 10:10", Heat(1))).ToList();
        var results = heats.Select((heat, i) => new TeamResult($"t{i}", new HeatId($"h{i}"), HeatResult.Of(heat, HeatScript.At("20:00"))[0], Certified: true));

        Assert.Equal("1 t1, 2 t0", string.Join(", ", WorkoutOrder.Of(results).Select(place => $"{place.Place} {place.Team}")));
    }

    [Fact]
    public void A_missing_time_blocks_the_freeze_until_it_is_added_or_somebody_says_why_not()
    {
        var script = new HeatScript(Heat(4)).Then("""
            withdraw lane 4
            start
            lane 1 step 3 done at 1:40
            lane 2 step 9 done at 9:00
            lane 3 step 1 done at 2:00
            end at 10:10
            """);
        var refused = Assert.IsType<Verdict.Refused>(Freeze(script.State));
        Assert.Equal("tiebreak-missing", refused.Code);
        Assert.Contains("lane 1.", refused.Why.Sentence(), StringComparison.Ordinal);
        var missing = new MissingTaps(Some.Lane(3), 1, HeatScript.At("10:00"));
        Assert.Equal("reason-needed", Assert.IsType<Verdict.Refused>(Freeze(script.State, null, missing)).Code);

        HeatFact.Frozen Frozen(string? reason, params MissingTaps[] missing) => Assert.IsType<HeatFact.Frozen>(Assert.IsType<Verdict.Accepted>(Freeze(script.State, reason, missing)).Fact);
        var one = Frozen("no video");
        Assert.Equal(("no video", null, 1), (one.Over, one.Missing, one.NoTiebreak!.Value.Single().Value));
        var both = Frozen("no video", missing);
        Assert.Equal(("no video", missing, 1), (both.Over, both.Missing!.Value.Single(), both.NoTiebreak!.Value.Single().Value));

        script.Then("add lane 1 step 2 done at 1:05");
        Assert.Equal((null, null, null), (Frozen(null).Over, Frozen(null).Missing, Frozen(null).NoTiebreak));
    }

    [Fact]
    public void The_result_names_the_set_and_its_time()
    {
        var lane = ResultMaking.Of(HeatScript.Play($"{Level}\nend at 10:10", Heat()), "", HeatScript.At("20:00"))!.Lanes[0];

        Assert.Equal(("12 cal row (round 1)", 60_200), (lane.Tiebreak, lane.TiebreakMs));
    }

    [Theory]
    [InlineData(4, 1, "prescriptions[0].tiebreak.round")]
    [InlineData(-1, 1, "prescriptions[0].tiebreak.round")]
    [InlineData(1, 3, "prescriptions[0].tiebreak.set")]
    [InlineData(1, 0, "prescriptions[0].tiebreak.set")]
    [InlineData(0, 1, "prescriptions[0].tiebreak.set")]
    [InlineData(null, 1, "prescriptions[0].tiebreak.set")]
    [InlineData(3, 2, "")]
    public void A_tiebreak_is_a_set_that_there_is(int? round, int set, string field)
    {
        var errors = WorkoutCheck.Errors(With(new TiebreakSet(round, set))).ToList();

        Assert.Equal(field, string.Join(' ', errors.Select(error => error.Field)));
        Assert.All(errors, error => Assert.EndsWith(".", error.Why.Sentence(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(15, "")]
    [InlineData(16, "prescriptions[0].tiebreak.round")]
    public void Where_the_work_has_no_end_it_is_in_a_round_that_somebody_could_begin(int round, string field)
    {
        // 17 s a round at the fastest: 15 rounds are begun in 4:00.
        var workout = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 240_000) with { Tiebreak = new(round, 2) }) with { Scoring = new ScoringRule.MostWork() };

        Assert.Equal(field, string.Join(' ', WorkoutCheck.Errors(workout).Select(error => error.Field)));
        Assert.Equal(field.Length == 0 ? 44 : null, PlanCompiler.Compile(workout, Some.LineUp()) is Compiled.Plan(var plan) ? plan.TiebreakStep : null);
    }

    [Fact]
    public void It_is_absent_where_there_is_none_and_written_to_the_letter_where_there_is()
    {
        string Json(TiebreakSet? tiebreak) => JsonSerializer.Serialize(With(tiebreak).Prescriptions[0], WireJson.Options);

        Assert.DoesNotContain("tiebreak", Json(null), StringComparison.Ordinal);
        Assert.EndsWith(""","after":[],"tiebreak":{"round":1,"set":2}}""", Json(Row), StringComparison.Ordinal);
        Assert.Equal(Row, JsonSerializer.Deserialize<Prescription>(Json(Row), WireJson.Options)!.Tiebreak);
    }
}
