using System.Text.Json;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>What becomes of teams of the same score that nothing else parts: both ways are common practice, no source.</summary>
public class EqualWorkTests
{
    private static readonly Workout Rounds = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 240_000)) with { Scoring = new ScoringRule.MostWork() };
    private static readonly Workout Timed = Some.Workout(prescriptions: Some.Prescription());

    /// <summary>Lanes 1 and 3 did the same, lane 3 sooner; lane 2 did more, lane 4 less.</summary>
    private const string Level = """
        start
        lane 2 step 6 done at 1:50
        lane 1 step 4 done at 2:10
        lane 3 step 4 done at 2:00
        lane 4 step 3 done at 2:00
        """;

    private static string Places(HeatState heat) => string.Join(" | ", HeatResult.Of(heat, HeatScript.At("20:00")).Select(line => $"{line.Place}{(line.Tied ? "=" : "")} lane {line.Lane.Lane}"));

    private static HeatState Play(string script, Workout workout, EqualWork? equal, int lanes = 4) => HeatScript.Play(script, Some.Snapshot(lanes, workout with { EqualWork = equal }));

    [Theory]
    [InlineData(null, "1 lane 2 | 2 lane 3 | 3 lane 1 | 4 lane 4")]
    [InlineData(EqualWork.EarlierAhead, "1 lane 2 | 2 lane 3 | 3 lane 1 | 4 lane 4")]
    [InlineData(EqualWork.Shared, "1 lane 2 | 2= lane 1 | 2= lane 3 | 4 lane 4")]
    public void At_the_cap_they_share_the_place_or_the_earlier_is_ahead(EqualWork? equal, string places)
    {
        Assert.Equal(places, Places(Play($"{Level}\nend at 10:10", Rounds, equal)));
        Assert.Equal(places, Places(Play($"{Level}\nend at 10:10", Timed, equal)));
        Assert.Equal(places, Places(Play($"{Level}\nend at 10:10", Timed with { Scoring = new ScoringRule.ForTime(Unfinished.CapPlusSeconds) }, equal)));
    }

    [Fact]
    public void A_tag_made_is_no_score_where_the_place_is_shared()
    {
        const string Script = "start\nlane 1 step 2 done at 1:00\nlane 2 step 3 done at 1:10\nend at 10:10";

        Assert.Equal("1 lane 2 | 2 lane 1", Places(Play(Script, Rounds, null, lanes: 2)));
        Assert.Equal("1= lane 1 | 1= lane 2", Places(Play(Script, Rounds, EqualWork.Shared, lanes: 2)));
    }

    [Fact]
    public void While_the_heat_goes_on_the_earlier_leads_whatever_holds_at_the_end()
    {
        Assert.Equal("2 3 1 4", HeatScript.Board(Play(Level, Timed, EqualWork.Shared)));
        Assert.Equal("2 1=3 4", HeatScript.Board(Play($"{Level}\nend at 10:10", Timed, EqualWork.Shared)));
    }

    [Fact]
    public void A_tiebreak_set_parts_them_before_that()
    {
        var workout = Timed with { Prescriptions = [Timed.Prescriptions[0] with { Tiebreak = new(1, 1) }] };

        Assert.Equal("1 lane 1 | 2 lane 2", Places(Play("start\nlane 1 step 1 done at 0:20\nlane 2 step 1 done at 0:30\nlane 1 step 4 done at 2:10\nlane 2 step 4 done at 2:00\nend at 10:10", workout, EqualWork.Shared, lanes: 2)));
    }

    [Fact]
    public void Over_several_heats_they_share_too_and_who_still_works_is_ahead_until_it_is_over()
    {
        string Order(EqualWork? equal, params string[] scripts) => string.Join(", ", WorkoutOrder.Of(scripts.Select((script, i) =>
            new TeamResult($"t{i + 1}", new HeatId($"h{i + 1}"), HeatResult.Of(Play(script, Rounds, equal, lanes: 1), HeatScript.At("3:00"))[0], Certified: false))).Select(place => $"{place.Place} {place.Team}"));
        const string Late = "start\nlane 1 step 4 done at 2:10", Soon = "start\nlane 1 step 4 done at 2:00", Over = "\nend at 2:30";

        Assert.Equal("1 t2, 2 t1", Order(null, Late + Over, Soon + Over));
        Assert.Equal("1 t1, 1 t2", Order(EqualWork.Shared, Late + Over, Soon + Over));
        Assert.Equal("1 t2, 2 t1", Order(EqualWork.Shared, Soon + Over, Late));
        Assert.Equal("1 t2, 2 t1", Order(EqualWork.Shared, Late, Soon));
        Assert.Equal("1 t3, 2 t1, 2 t2", Order(EqualWork.Shared, Late + Over, Soon + Over, Late));
    }

    [Fact]
    public void Who_cannot_have_been_first_is_not_asked_to_be()
    {
        var byClock = Timed with { Finish = FinishKind.None, Scoring = new ScoringRule.MostWork(), Prescriptions = [Some.Prescription(capMs: 240_000) with { Clock = new WorkClock(60_000, 30_000, false) }] };

        Assert.Equal(["equalWork"], WorkoutCheck.Errors(byClock with { EqualWork = EqualWork.EarlierAhead }).Select(error => error.Field));
        Assert.Equal(["equalWork"], WorkoutCheck.Errors(Some.Lifting() with { EqualWork = EqualWork.EarlierAhead }).Select(error => error.Field));
        Assert.Empty(WorkoutCheck.Errors(byClock with { EqualWork = EqualWork.Shared }));
        Assert.Empty(WorkoutCheck.Errors(Some.Lifting()));
        Assert.Empty(WorkoutCheck.Errors(Timed with { EqualWork = EqualWork.EarlierAhead }));
    }

    [Fact]
    public void A_workout_says_it_after_its_scoring_or_not_at_all_and_its_result_names_it()
    {
        var silent = JsonSerializer.Serialize(Rounds, WireJson.Options);
        Assert.DoesNotContain("equalWork", silent, StringComparison.Ordinal);
        Assert.Equal(silent[..^1] + ""","equalWork":"shared"}""", JsonSerializer.Serialize(Rounds with { EqualWork = EqualWork.Shared }, WireJson.Options));
        Assert.Equal(Rounds with { EqualWork = EqualWork.EarlierAhead }, JsonSerializer.Deserialize<Workout>(silent[..^1] + ""","equalWork":"earlier-ahead"}""", WireJson.Options));

        string Result(EqualWork? equal) => JsonSerializer.Serialize(ResultMaking.Of(Play($"{Level}\nend at 10:10", Rounds, equal), "", HeatScript.At("20:00")), WireJson.Options);
        Assert.Contains("\"equalWork\":\"shared\"", Result(EqualWork.Shared), StringComparison.Ordinal);
        Assert.DoesNotContain("equalWork", Result(null), StringComparison.Ordinal);
    }
}
