using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

/// <summary>What a workout says of departures is applied by the fold, from the facts that stand.</summary>
public class LaneConsequencesTests
{
    /// <summary>All three lanes are through: lane 1 at 2:00, lane 2 at 2:10, lane 3 at 2:20.</summary>
    private const string Through = "start\nlane 1 step 9 done at 2:00\nlane 2 step 9 done at 2:10\nlane 3 step 9 done at 2:20\n";

    private static HeatSnapshot With(Consequences consequences, PenaltyRule? penalty = null) =>
        Some.Snapshot(workout: Some.Workout() with { Consequences = consequences, Penalty = penalty });

    private static HeatState Play(Consequences consequences, string score, PenaltyRule? penalty = null) => HeatScript.Play(score, With(consequences, penalty));

    private static LaneState Lane1(HeatState heat) => heat.Find(Some.Lane(1))!;

    private static string Result(HeatState heat) =>
        string.Join(' ', HeatResult.Of(heat, HeatScript.At("3:00")).Select(line => $"{line.Lane.Lane}:{line.Place?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-"}"));

    [Fact]
    public void A_workout_that_says_nothing_lets_the_wrong_athlete_work_and_gives_a_variant_no_place()
    {
        var said = Through.Replace("start\n", "start\nlane 1 athlete 3 works step 1 at 0:10\nlane 2 line-up Cy,Bo,Ann from step 4 at 0:20\nlane 3 variant scaled from step 4 at 0:30\n", StringComparison.Ordinal);
        var heat = HeatScript.Play(said);

        Assert.All(heat.Lanes, lane => Assert.Empty(lane.Applied));
        Assert.Equal("1:1 2:2 3:-", Result(heat));
        Assert.True(heat.Find(Some.Lane(3))!.Apart);
    }

    [Fact]
    public void A_wrong_athlete_costs_the_penalty_once_for_each_leg()
    {
        var penalty = new PenaltyRule(30_000);
        var heat = Play(new(Consequence.Penalty), Through.Replace("start\n", """
            start
            lane 1 athlete 3 works step 1 at 0:10
            lane 1 athlete 3 works step 2 at 0:20
            lane 1 athlete 3 works step 5 at 0:30

            """, StringComparison.Ordinal), penalty);

        Assert.Equal([new Applied(Departure.WrongAthlete, Consequence.Penalty, 1, 30_000, 0), new(Departure.WrongAthlete, Consequence.Penalty, 5, 30_000, 0)], Lane1(heat).Applied);
        Assert.Equal(180_000, Lane1(heat).MeasuredMs);
        Assert.Equal("2:1 3:2 1:3", Result(heat));
    }

    [Fact]
    public void The_planned_athlete_is_no_wrong_one_and_what_is_taken_back_costs_nothing()
    {
        Assert.Empty(Lane1(Play(new(Consequence.Void), Through + "lane 1 athlete 1 works step 1 at 0:10")).Applied);
        Assert.Empty(Lane1(Play(new(Consequence.Void), "start\nlane 1 athlete 3 works step 1 at 0:10 [wrong]\nlane 1 undo wrong at 0:12")).Applied);
        Assert.True(Lane1(Play(new(Consequence.Void), "start\nlane 1 athlete 3 works step 1 at 0:10")).ResultVoid);
    }

    [Fact]
    public void A_line_up_may_change_before_go_and_has_its_consequence_after_it()
    {
        var consequences = new Consequences(LineUpChange: Consequence.RanksBelow);

        Assert.False(Lane1(Play(consequences, "lane 1 line-up Cy,Bo,Ann from step 1 at -0:20\n" + Through)).RanksBelow);
        Assert.True(Lane1(Play(consequences, Through.Replace("start\n", "start\nlane 1 line-up Cy,Bo,Ann from step 4 at 0:00\n", StringComparison.Ordinal))).RanksBelow);
    }

    [Fact]
    public void Who_is_ranked_below_comes_after_all_who_did_as_prescribed_in_order_among_themselves()
    {
        var heat = Play(new() { Variant = Consequence.RanksBelow }, """
            start
            lane 1 variant scaled from step 4 at 0:10
            lane 2 variant scaled from step 7 at 0:10
            lane 1 step 9 done at 2:00
            lane 2 step 9 done at 1:50
            lane 3 step 1 done at 1:00
            end at 10:10
            """);

        Assert.Equal("3:1 2:2 1:3", Result(heat));
        Assert.Equal("3 2 1", HeatScript.Board(heat));
        Assert.False(Lane1(heat).Apart);
    }

    [Theory]
    [InlineData(Consequence.Allowed, "1:1 2:2 3:3")]
    [InlineData(Consequence.Penalty, "2:1 1:2 3:3")]
    [InlineData(Consequence.RanksBelow, "2:1 3:2 1:3")]
    [InlineData(Consequence.Void, "2:1 3:2 1:-")]
    public void A_variant_counts_as_the_workout_says(Consequence consequence, string result)
    {
        var heat = Play(new() { Variant = consequence }, Through.Replace("start\n", "start\nlane 1 variant scaled from step 4 at 0:10\n", StringComparison.Ordinal), new PenaltyRule(15_000));

        Assert.Equal(result, Result(heat));
    }

    [Fact]
    public void A_void_result_is_not_ranked_at_once_and_is_again_when_the_ruling_is_voided()
    {
        var script = new HeatScript(With(new() { Variant = Consequence.Void })).Then(Through + "lane 1 variant scaled from step 4 at 2:30 [taken]");

        Assert.Equal("2 3", HeatScript.Board(script.State));
        Assert.Equal("1 2 3", HeatScript.Board(script.Then("void taken").State));
    }

    [Fact]
    public void A_near_tie_with_a_team_that_ranks_below_decides_nothing()
    {
        var close = "start\nlane 1 athlete 3 works step 1 at 0:10\nlane 1 step 9 done at 2:00.0\nlane 2 step 9 done at 2:00.05";

        Assert.NotEmpty(NearTies.Of(Play(new(), close)));
        Assert.Empty(NearTies.Of(Play(new(Consequence.RanksBelow), close)));
        Assert.Empty(NearTies.Of(Play(new(Consequence.Void), close)));
    }

    [Fact]
    public void Reps_of_a_penalty_come_off_the_worth()
    {
        var heat = Play(new(Consequence.Penalty), "start\nlane 1 athlete 3 works step 1 at 0:10\nlane 1 step 2 done at 1:00\nlane 2 step 2 done at 1:30\nend at 10:10", new PenaltyRule(0, 5));

        Assert.Equal(17, LiveOrder.Worth(Lane1(heat)));
        Assert.Equal("2:1 1:2 3:3", Result(heat));
    }
}
