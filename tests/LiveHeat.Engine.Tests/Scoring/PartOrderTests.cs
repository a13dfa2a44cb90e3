using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>Three rounds; the first (steps 1 to 2) is scored apart from the rest (steps 3 to 9).</summary>
public class PartOrderTests
{
    private static readonly WorkoutPart First = new("The opening", new TiebreakSet(1, 2));
    private static readonly WorkoutPart Rest = new("The long end", null);

    private static Workout With(params WorkoutPart[] parts) =>
        Some.Workout(prescriptions: [Some.Prescription() with { Parts = parts.ToItems() }, Some.Prescription("scaled", 3, 600_000, new PrescribedSet("wall-ball", 8), new PrescribedSet("row", 9)) with { Parts = parts.ToItems() }]);

    private static string Order(string score, int part, HeatSnapshot? snapshot = null)
    {
        var heat = HeatScript.Play($"start\n{score}\nend at 10:10", snapshot ?? Some.Snapshot(3, With(First, Rest)));
        return string.Join(", ", PartOrder.Of(HeatResult.Of(heat, HeatScript.At("20:00")).Select(line => new TeamResult(line.Lane.Entry.Team, heat.Heat, line, false)), part, Rounding.UpTenth)
            .Select(one => $"{(one.Place.Taken == Taken.Placed ? one.Place.Place : "-")} {one.Place.Team} {(one.Score.OfficialMs is { } ms ? TimeText.Of(ms) : one.Score.Worth)}"));
    }

    private const string Score = """
        lane 1 step 2 done at 1:00.11
        lane 2 step 2 done at 0:50
        lane 3 step 1 done at 0:40
        lane 1 step 9 done at 7:00
        lane 2 step 9 done at 7:00
        lane 3 step 8 done at 9:50
        """;

    [Fact]
    public void The_first_part_is_timed_from_GO_and_who_has_no_time_is_last_of_those_through() =>
        Assert.Equal("1 t2 0:50.0, 2 t1 1:00.2, 3 t3 22", Order(Score, 0));

    [Fact]
    public void Every_other_is_timed_from_the_end_of_the_one_before_and_the_rest_counts_its_worth() =>
        Assert.Equal("1 t1 5:59.9, 2 t2 6:10.0, 3 t3 44", Order(Score, 1));

    [Fact]
    public void Equal_scores_share_a_place() =>
        // 1 2 2 4, of 10,15,15,20 with the lower ahead (RosettaCode's ranking-methods data, recomputed).
        Assert.Equal("1 t1 0:10.0, 2 t2 0:15.0, 2 t3 0:15.0, 4 t4 0:20.0", Order("""
            lane 1 step 2 done at 0:10
            lane 2 step 2 done at 0:15
            lane 3 step 2 done at 0:15
            lane 4 step 2 done at 0:20
            """, 0, Some.Snapshot(4, With(First, Rest))));

    [Fact]
    public void Who_stopped_in_the_part_is_behind_and_who_did_not_start_has_no_place() =>
        Assert.Equal("1 t3 10, 2 t1 10, - t2 0", Order("""
            withdraw lane 2 at 0:01
            lane 1 step 1 done at 0:20
            lane 3 step 1 done at 0:40
            lane 1 stopped medical at 0:50
            """, 0));

    [Fact]
    public void Other_work_in_the_part_ranks_below_all_and_in_an_earlier_part_not_at_all()
    {
        var score = $"{Score}\nlane 2 variant scaled from step 4 at 1:30";
        Assert.Equal("1 t2 0:50.0, 2 t1 1:00.2, 3 t3 22", Order(score, 0));
        Assert.StartsWith("1 t1 5:59.9, 2 t3 44, 3 t2", Order(score, 1), StringComparison.Ordinal);
    }

    [Fact]
    public void A_workout_of_one_piece_has_no_parts() => Assert.Equal("", Order(Score, 0, Some.Snapshot(3)));

    [Fact]
    public void What_cannot_be_is_said_at_its_field()
    {
        Assert.Equal(["prescriptions[0].parts", "prescriptions[1].parts"], Wrong(With(Rest)));
        Assert.Equal(["prescriptions[0].parts[1].name", "prescriptions[1].parts[1].name"], Wrong(With(First, Rest with { Name = First.Name })));
        Assert.Equal(["prescriptions[0].parts[1].last", "prescriptions[1].parts[1].last"], Wrong(With(First, new WorkoutPart("x", new TiebreakSet(2, 1)))));
        Assert.Equal(["prescriptions[0].parts[0].last", "prescriptions[1].parts[0].last"], Wrong(With(new WorkoutPart("x", new TiebreakSet(4, 1)), Rest)));
        Assert.Equal(["prescriptions[0].parts[1].last", "prescriptions[1].parts[1].last"], Wrong(With(new WorkoutPart("a", new TiebreakSet(2, 2)), new WorkoutPart("b", new TiebreakSet(2, 1)), Rest)));
        Assert.Equal(["prescriptions[0].parts", "prescriptions[1].parts"], Wrong(Some.Workout(prescriptions:
            [Some.Prescription() with { Parts = (Items<WorkoutPart>)[First, Rest] }, Some.Prescription("scaled") with { Parts = (Items<WorkoutPart>)[First, Rest with { Name = "other" }] }])));
        Assert.Empty(Wrong(With(First, Rest)));
    }

    private static string[] Wrong(Workout workout) => [.. WorkoutCheck.Errors(workout).Select(error => error.Field)];
}
