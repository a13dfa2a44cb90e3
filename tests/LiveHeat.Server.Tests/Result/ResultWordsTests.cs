using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Server.Result;

public sealed class ResultWordsTests
{
    private static readonly ResultLane Lane = ResultMaking.Of(HeatScript.Play("start"), "", Some.Go)!.Lanes[0] with { WorthOfAll = 66 };

    [Theory]
    [InlineData(1, false, "1st")]
    [InlineData(2, true, "2nd =")]
    [InlineData(3, false, "3rd")]
    [InlineData(4, false, "4th")]
    [InlineData(11, false, "11th")]
    [InlineData(12, false, "12th")]
    [InlineData(13, false, "13th")]
    [InlineData(21, false, "21st")]
    [InlineData(112, false, "112th")]
    [InlineData(null, false, "–")]
    public void A_place_is_said_as_one(int? place, bool tied, string words) =>
        Assert.Equal(words, ResultWords.Place(Lane with { Place = place, Tied = tied }));

    [Theory]
    [InlineData(Outcome.Finished, 180_000L, "3:00.0", "")]
    [InlineData(Outcome.FinishedTimeUnknown, null, "finished, time to be settled", "")]
    [InlineData(Outcome.Capped, null, "50 of 66 reps", "time cap")]
    [InlineData(Outcome.Capped, 736_000L, "12:16.0", "time cap, 16 reps missing")]
    [InlineData(Outcome.Stopped, null, "50 of 66 reps", "withdrew")]
    [InlineData(Outcome.Working, null, "50 of 66 reps", "still working")]
    [InlineData(Outcome.DidNotStart, null, "did not start", "")]
    public void A_score_says_how_it_came_about(Outcome outcome, long? officialMs, string score, string how)
    {
        var lane = Lane with { Outcome = outcome, OfficialMs = officialMs, Worth = 50 };

        Assert.Equal((score, how), (ResultWords.Score(lane), ResultWords.How(lane)));
    }

    [Fact]
    public void Rulings_are_told_with_their_reasons()
    {
        var lane = Lane with
        {
            Penalties = [new(5000, 0, "left too early"), new(0, 3, ""), new(2000, 2, "x")],
            AdjustMs = -4000,
            HeldMs = 12_300,
        };

        Assert.Equal("+0:05.0 (left too early); −3 reps (reason to follow); +0:02.0 −2 reps (x); time adjusted −0:04.0; held 0:12.3", ResultWords.Penalties(lane));
        Assert.Equal("", ResultWords.Penalties(Lane));
        Assert.Equal("time adjusted +0:04.0", ResultWords.Penalties(Lane with { AdjustMs = 4000 }));
    }

    [Theory]
    [InlineData(5, 12, "5 rounds + 12 reps")]
    [InlineData(1, 1, "1 round + 1 rep")]
    [InlineData(4, 0, "4 rounds")]
    [InlineData(0, 9, "9 reps")]
    public void Work_without_an_end_is_told_in_rounds_and_reps(int rounds, int reps, string words)
    {
        var lane = Lane with { Outcome = Outcome.Capped, RoundsAndReps = new(rounds, reps) };

        Assert.Equal((words, ""), (ResultWords.Score(lane), ResultWords.How(lane)));
    }

    [Fact]
    public void A_tiebreak_is_told_of_teams_that_are_not_through()
    {
        var lane = Lane with { Outcome = Outcome.Capped, Tiebreak = "12 cal row (round 1)", TiebreakMs = 60_200 };

        Assert.Equal("tiebreak 1:00.2 at 12 cal row (round 1)", ResultWords.Penalties(lane));
        Assert.Equal("tiebreak – at 12 cal row (round 1)", ResultWords.Penalties(lane with { TiebreakMs = null }));
        Assert.Equal("", ResultWords.Penalties(lane with { Outcome = Outcome.Finished }));
    }

    [Fact]
    public void One_missing_rep_is_one() => Assert.Equal("time cap, 1 rep missing", ResultWords.How(Lane with { Outcome = Outcome.Capped, OfficialMs = 721_000, Worth = 65 }));

    [Fact]
    public void The_foot_of_the_page_says_how_unfinished_teams_rank()
    {
        Assert.StartsWith("Unfinished teams rank after finishers", ResultWords.Order(ScoringRule.Usual), StringComparison.Ordinal);
        Assert.Contains("one second for each rep that is missing", ResultWords.Order(new ScoringRule.ForTime(Unfinished.CapPlusSeconds)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(327_500, Unit.Kg, "327.5 kg")]
    [InlineData(327_250, Unit.Kg, "327.25 kg")]
    [InlineData(1_205_000, Unit.Lb, "1,205 lb")]
    [InlineData(1284, Unit.M, "1,284 m")]
    [InlineData(96, Unit.Cal, "96 cal")]
    [InlineData(0, Unit.Kg, "0 kg")]
    [InlineData(1, Unit.Reps, "1 rep")]
    public void What_was_lifted_or_read_is_told_in_its_unit(int worth, Unit unit, string words)
    {
        var lane = Lane with { Outcome = Outcome.Through, Worth = worth, WorthOfAll = 0, Score = ScoreUnit.Of(unit) };

        Assert.Equal((words, ""), (ResultWords.Score(lane), ResultWords.How(lane)));
        Assert.Equal(("", "withdrew"), (ResultWords.How(lane with { Outcome = Outcome.Capped }), ResultWords.How(lane with { Outcome = Outcome.Stopped })));
    }

    [Fact]
    public void A_penalty_is_told_in_the_unit_of_the_score() =>
        Assert.Equal("−5 kg (dropped)", ResultWords.Penalties(Lane with { Score = ScoreUnit.Of(Unit.Kg), Penalties = [new(0, 5, "dropped")] }));

    [Fact]
    public void The_foot_of_the_page_says_what_the_score_is_and_how_ties_are_parted()
    {
        var table = ResultMaking.Of(HeatScript.Play("start", Some.Snapshot(2, Some.Lifting(tiebreak: new TiebreakSet(1, 2)))), "", Some.Go)!;

        Assert.Equal("Before that the tiebreak decides: who was done first with one lift, attempt 2 (round 1).", ResultWords.Ties(table));
        Assert.Equal("", ResultWords.Ties(ResultMaking.Of(HeatScript.Play("start"), "", Some.Go)!));
        Assert.Equal(
            ["The heaviest load first: the best good lift of each athlete, added up.", "The heaviest load first: the best good lift of any athlete.", "The most on the machines first: the readings added up, their fractions cut."],
            new ScoringRule[] { new ScoringRule.HeaviestLoad(3, LoadSum.SumOfBest), new ScoringRule.HeaviestLoad(3, LoadSum.BestSingle), new ScoringRule.MostReading() }
                .Select(rule => ResultWords.Order(rule)[..(ResultWords.Order(rule).IndexOf(". ", StringComparison.Ordinal) + 1)]));
    }

    [Fact]
    public void The_foot_of_the_page_says_what_becomes_of_equal_scores()
    {
        string Said(Workout workout) => ResultWords.EqualScores(ResultMaking.Of(HeatScript.Play("start", Some.Snapshot(2, workout)), "", Some.Go)!);
        var rounds = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0)) with { Scoring = new ScoringRule.MostWork() };
        var byClock = rounds with { Prescriptions = [Some.Prescription() with { Clock = new WorkClock(60_000, 30_000, false) }] };

        Assert.Equal("Equal times share the place. Of teams that the cap stopped with the same score, whoever got there first stands ahead.", Said(Some.Workout()));
        Assert.Equal("Equal times share the place. Teams that the cap stopped with the same score share the place.", Said(Some.Workout() with { EqualWork = EqualWork.Shared }));
        Assert.Equal("Of teams that the cap stopped with the same score, whoever got there first stands ahead.", Said(rounds));
        Assert.Equal("Teams that the cap stopped with the same score share the place.", Said(rounds with { EqualWork = EqualWork.Shared }));
        Assert.Equal("Teams with the same score share the place.", Said(byClock));
        Assert.Equal("", Said(Some.Lifting()));
    }

    [Fact]
    public void A_read_back_is_told_by_name()
    {
        Assert.Equal("agreed by Bo", ResultWords.ReadBack(new ReadBack(true, "Bo")));
        Assert.Equal("disputed by Bo", ResultWords.ReadBack(new ReadBack(false, "Bo")));
        Assert.Equal("", ResultWords.ReadBack(null));
    }

    [Fact]
    public void Parts_have_places_of_their_own_and_shared_sets_say_who_did_how_much()
    {
        var workout = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 1, round: [new PrescribedSet("row", 75) { MinimumEach = 25 }, new("wall-ball", 10)])
            with
        { Parts = (Items<WorkoutPart>)[new("Row", new TiebreakSet(1, 1)), new("Balls", null)] });
        var table = ResultMaking.Of(HeatScript.Play("""
            start
            lane 1 athlete 1 works step 1 at 0:01
            lane 1 count 55 of step 1 at 1:00
            lane 1 athlete 2 works step 1 at 1:01
            lane 1 step 1 done at 2:00
            lane 2 step 2 done at 3:00
            """, Some.Snapshot(2, workout)), "", Some.Go)!;

        var first = table.Lanes.Single(lane => lane.Lane == Some.Lane(1));
        Assert.Equal([new ResultPart("Row", 1, false, 120_000, 75), new("Balls", 2, false, null, 0)], first.Parts);
        Assert.Equal([("Ann", 55, 0), ("Bo", 20, 5), ("Cy", 0, 25)], first.Shares.Select(share => (share.Athlete, share.Units, share.Missing)));
        Assert.Equal([new ResultPart("Row", 2, false, null, 75), new("Balls", 1, false, null, 10)], table.Lanes.Single(lane => lane.Lane == Some.Lane(2)).Parts);
    }

    [Fact]
    public void Parts_on_machines_are_told_in_what_the_machines_read()
    {
        var workout = Some.Workout(new RelayOrder.Together(), finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 2, round: new PrescribedSet("row", 1, Reading: true))
            with
        { Parts = (Items<WorkoutPart>)[new("First", new TiebreakSet(1, 1)), new("Second", null)] }) with
        { Scoring = new ScoringRule.MostReading() };
        var table = ResultMaking.Of(HeatScript.Play("start\nlane 1 value 40 in step 1 at 1:00", Some.Snapshot(1, workout)), "", Some.Go)!;

        Assert.Equal(["40 cal", "0 cal"], table.Lanes[0].Parts.Select(part => ScoreWords.Of(part.Worth, part.Score)));
    }

    /// <summary>Everybody may read a result: nothing in it tells who was stopped for health from who gave up.</summary>
    [Fact]
    public void Whoever_stopped_withdrew_and_nothing_says_why()
    {
        static ResultLane Of(string reason) => ResultMaking.Of(HeatScript.Play($"start\nlane 1 step 1 done at 1:00\nlane 1 stopped {reason} at 2:00\nend at 10:10"), "", HeatScript.At("11:00"))!.Lanes.Single(lane => lane.Lane.Value == 1);

        Assert.Equal("withdrew", ResultWords.How(Of("medical")));
        Assert.Equal(
            System.Text.Json.JsonSerializer.Serialize(Of("withdrew"), WireJson.Options),
            System.Text.Json.JsonSerializer.Serialize(Of("medical"), WireJson.Options));
    }
}
