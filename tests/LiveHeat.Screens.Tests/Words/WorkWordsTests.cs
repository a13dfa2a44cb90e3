using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Words;

public sealed class WorkWordsTests
{
    private const string Score = """
        start
        lane 1 step 1 done at 0:30
        lane 2 step 1 done at 0:38
        lane 1 step 2 done at 1:00
        lane 1 tag 3 at 1:02
        lane 2 step 2 done at 1:10
        """;

    [Fact]
    public void The_leader_leads() => Assert.Equal("leads", WorkWords.Gap(SomeHeat.Lane(Score, 1)));

    [Fact]
    public void A_trailing_team_is_so_many_seconds_behind_at_its_last_confirmed_point() =>
        Assert.StartsWith("10 s behind", WorkWords.Gap(SomeHeat.Lane(Score, 2)), StringComparison.Ordinal);

    [Fact]
    public void Who_works_is_named_after_the_tag() => Assert.Equal("Bo", WorkWords.Worker(SomeHeat.Lane(Score, 1)));

    [Fact]
    public void Loads_are_told_in_their_unit_and_gaps_too()
    {
        const string Loads = "start\nlane 1 lifts 102.5 in step 1 at 0:30\nlane 2 lifts 90 in step 1 at 0:40\nlane 1 lifts 60 in step 11 at 3:00\npenalise lane 1 by 2 reps";
        var heat = Some.Snapshot(2, Some.Lifting());
        var (first, second) = (SomeHeat.Lane(Loads, 1, heat), SomeHeat.Lane(Loads, 2, heat));

        Assert.Equal(("160.5 kg", "all done"), (WorkWords.Score(first), WorkWords.Status(first.State.Status)));
        Assert.Equal(("90 kg", "70.5 kg behind"), (WorkWords.Score(second), WorkWords.Gap(second)));
        Assert.Equal("on one lift, attempt 2", WorkWords.Distance(second)[^"on one lift, attempt 2".Length..]);
    }

    /// <summary>A round is 10 and 12 reps and the tag.</summary>
    [Fact]
    public void Work_without_an_end_is_told_in_rounds_and_reps_less_those_of_penalties()
    {
        var heat = Some.Snapshot(2, Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 240_000)) with { Scoring = new ScoringRule.MostWork() });
        const string Score = "start\nlane 1 step 7 done at 2:00\nlane 2 step 6 done at 2:10\nlane 2 count 3 of step 7 at 2:30";

        Assert.Equal(("2 rounds + 10 reps", "2 rounds + 3 reps"), (WorkWords.Score(SomeHeat.Lane(Score, 1, heat)), WorkWords.Score(SomeHeat.Lane(Score, 2, heat))));
        Assert.Equal("1 round + 21 reps", WorkWords.Score(SomeHeat.Lane($"{Score}\npenalise lane 2 by 4 reps", 2, heat)));
    }

    [Fact]
    public void The_place_is_written_as_one() => Assert.Equal("2nd", WorkWords.Place(SomeHeat.Lane(Score, 2)));
}
