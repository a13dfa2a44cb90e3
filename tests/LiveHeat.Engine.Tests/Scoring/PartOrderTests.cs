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

    private static string Order(HeatSnapshot snapshot, int part, string score)
    {
        var heat = HeatScript.Play($"start\n{score}", snapshot);
        return string.Join(", ", PartOrder.Of(HeatResult.Of(heat, HeatScript.At("20:00")).Select(line => new TeamResult(line.Lane.Entry.Team, heat.Heat, line, false)), part, Rounding.UpTenth)
            .Select(one => $"{one.Place.Place} {one.Place.Team} {(one.Score.OfficialMs is { } ms ? TimeText.Of(ms) : one.Score.Worth)}"));
    }

    /// <summary>Four rounds by the clock of 1:00 with 0:30 rest, each done once: balls and row in the first two (steps 1-2, 3-4), only the row in the last two (5, 6). Two rounds make a part.</summary>
    private static HeatSnapshot ByClock(int lanes = 2) => Some.Snapshot(lanes, Some.Workout(finish: FinishKind.None, prescriptions:
        Some.Prescription(rounds: 4, capMs: 330_000, round: [new("wall-ball", 10) { InRound = 1 }, new("wall-ball", 10) { InRound = 2 }, new("row", 12)]) with
        {
            Clock = new WorkClock(60_000, 30_000, false),
            Parts = (Items<WorkoutPart>)[new("Balls and rower", new TiebreakSet(2, 2)), new("Rower alone", null)],
        }) with
    { Scoring = new ScoringRule.MostWork() });

    private const string ByClockScore = """
        lane 1 step 2 done at 0:55
        lane 2 step 2 done at 0:50
        lane 1 count 7 of step 3 at 1:50
        lane 2 step 3 done at 1:50
        lane 1 step 5 done at 3:50
        lane 1 4 reps at cap in step 6 at 5:31
        lane 2 5 reps at cap in step 5 at 4:01
        """;

    [Fact]
    public void By_the_clock_a_part_is_its_rounds_and_counts_what_was_done_in_them()
    {
        Assert.Equal("1 t2 32, 2 t1 29", Order(ByClock(), 0, ByClockScore));
        Assert.Equal("1 t1 16, 2 t2 5", Order(ByClock(), 1, ByClockScore));
    }

    private static string Stopped(string at) => ByClockScore.Replace("lane 1 step 5", $"lane 2 stopped medical at {at}\nlane 1 step 5", StringComparison.Ordinal);

    [Fact]
    public void Who_stops_after_a_part_that_the_clock_has_ended_stands_in_it_like_all_others()
    {
        Assert.Equal("1 t2 32, 2 t1 29", Order(ByClock(), 0, Stopped("2:31")));
        Assert.Equal("1 t1 16, 2 t2 5", Order(ByClock(), 1, Stopped("2:31")));
        Assert.Equal("1 t1 29, 2 t2 32", Order(ByClock(), 0, Stopped("2:29")));
    }

    [Fact]
    public void What_is_read_counts_in_its_own_part_and_how_fast_it_was_does_not()
    {
        var machines = Some.Snapshot(2, Some.Workout(new RelayOrder.Together(), finish: FinishKind.None, prescriptions:
            Some.Prescription(rounds: 2, round: new PrescribedSet("row", 1, Reading: true)) with { Parts = (Items<WorkoutPart>)[new("First machine", new TiebreakSet(1, 1)), new("Second machine", null)] })
            with
        { Scoring = new ScoringRule.MostReading() });
        const string Score = """
            lane 1 value 40 in step 1 at 1:00
            lane 2 value 45 in step 1 at 3:00
            lane 1 value 30 in step 2 at 5:00
            lane 2 value 30 in step 2 at 6:00
            """;
        Assert.Equal("1 t2 45, 2 t1 40", Order(machines, 0, Score));
        Assert.Equal("1 t2 30, 1 t1 30", Order(machines, 1, Score));
    }

    [Fact]
    public void A_penalty_costs_in_the_part_that_the_team_was_in_and_after_the_work_in_the_last()
    {
        Assert.Equal("1 t1 29, 2 t2 27", Order(ByClock(), 0, $"{ByClockScore}\npenalise lane 2 by 5 reps at 2:00"));
        Assert.Equal("1 t1 16, 2 t2 5", Order(ByClock(), 1, $"{ByClockScore}\npenalise lane 2 by 5 reps at 2:00"));
        Assert.Equal("1 t1 16, 2 t2 3", Order(ByClock(), 1, $"{ByClockScore}\npenalise lane 2 by 2 reps at 9:00"));
        Assert.Equal("1 t2 32, 2 t1 29", Order(ByClock(), 0, $"{ByClockScore}\npenalise lane 2 by 2 reps at 9:00"));
        Assert.Equal("1 t1 1:00.2, 2 t2 1:20.0, 3 t3 22", Order($"{Score}\npenalise lane 2 by 30000 ms at 0:40", 0));
        Assert.Equal("1 t1 5:59.9, 2 t2 6:40.0, 3 t3 44", Order($"{Score}\npenalise lane 2 by 30000 ms at 0:51", 1));
    }

    [Fact]
    public void A_penalty_that_names_its_part_costs_there_whenever_it_is_given_and_one_for_the_whole_in_none()
    {
        Assert.Equal("1 t2 30, 2 t1 29", Order(ByClock(), 0, $"{ByClockScore}\npenalise lane 2 by 2 reps in part 1 at 9:00"));
        Assert.Equal("1 t1 16, 2 t2 5", Order(ByClock(), 1, $"{ByClockScore}\npenalise lane 2 by 2 reps in part 1 at 9:00"));
        Assert.Equal("1 t2 32, 2 t1 29", Order(ByClock(), 0, $"{ByClockScore}\npenalise lane 2 by 5 reps in part 2 at 0:30"));
        Assert.Equal("1 t1 16, 2 t2 0", Order(ByClock(), 1, $"{ByClockScore}\npenalise lane 2 by 5 reps in part 2 at 0:30"));
        Assert.Equal("1 t1 1:00.2, 2 t2 1:20.0, 3 t3 22", Order($"{Score}\npenalise lane 2 by 30000 ms in part 1 at 9:00", 0));
        Assert.Equal("1 t1 5:59.9, 2 t2 6:10.0, 3 t3 44", Order($"{Score}\npenalise lane 2 by 30000 ms in part 1 at 9:00", 1));

        const string Whole = $"{ByClockScore}\npenalise lane 2 by 5 reps in part 0 at 0:30";
        Assert.Equal("1 t2 32, 2 t1 29", Order(ByClock(), 0, Whole));
        Assert.Equal("1 t1 16, 2 t2 5", Order(ByClock(), 1, Whole));
        Assert.Equal(32 + 5 - 5, HeatResult.Of(HeatScript.Play($"start\n{Whole}", ByClock()), HeatScript.At("20:00")).Single(line => line.Lane.Lane == Some.Lane(2)).Worth);
    }

    [Fact]
    public void What_an_appeal_gives_back_counts_in_the_part_that_it_names()
    {
        Assert.Equal("1 t1 33, 2 t2 32", Order(ByClock(), 0, $"{ByClockScore}\nlane 1 appeals at 8:00 [appeal]\ndecide appeal: -4 reps in part 1 at 9:00"));
        Assert.Equal("1 t1 16, 2 t2 5", Order(ByClock(), 1, $"{ByClockScore}\nlane 1 appeals at 8:00 [appeal]\ndecide appeal: -4 reps in part 1 at 9:00"));
        Assert.Equal("1 t1 20, 2 t2 5", Order(ByClock(), 1, $"{ByClockScore}\nlane 1 appeals at 8:00 [appeal]\ndecide appeal: -4 reps at 9:00"));
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

    [Fact]
    public void By_the_clock_a_part_ends_with_a_whole_round_and_a_lift_has_no_parts()
    {
        var good = ByClock().Workout;
        Workout Changed(Func<Prescription, Prescription> change) => good with { Prescriptions = [change(good.Prescriptions[0])] };
        Workout EndsWith(int round, int set) => Changed(one => one with { Parts = (Items<WorkoutPart>)[new("a", new TiebreakSet(round, set)), new("b", null)] });

        Assert.Empty(Wrong(good));
        Assert.Empty(Wrong(EndsWith(3, 1)));
        Assert.Equal(["prescriptions[0].parts[0].last"], Wrong(EndsWith(2, 1)));
        Assert.Equal(["prescriptions[0].parts[0].last"], Wrong(EndsWith(5, 1)));
        Assert.Equal(["prescriptions[0].parts"], Wrong(Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, round: new PrescribedSet("bar", 1)) with { Parts = (Items<WorkoutPart>)[First, Rest] })
            with
        { Scoring = new ScoringRule.HeaviestLoad(3, LoadSum.SumOfBest) }));
    }

    [Fact]
    public void A_set_of_one_round_needs_a_round_that_there_is_and_every_round_needs_work()
    {
        var good = ByClock().Workout;
        string[] With(params PrescribedSet[] round) => Wrong(good with { Prescriptions = [good.Prescriptions[0] with { Round = round.ToItems(), Parts = null }] });

        Assert.Empty(With(new("row", 5), new("wall-ball", 5) { InRound = 4 }));
        Assert.Equal(["prescriptions[0].round[1].inRound"], With(new("row", 5), new("wall-ball", 5) { InRound = 5 }));
        Assert.Equal(["prescriptions[0].round[1].inRound"], With(new("row", 5), new("wall-ball", 5) { InRound = 0 }));
        Assert.Equal(["prescriptions[0].round", "prescriptions[0].round", "prescriptions[0].round"], With(new PrescribedSet("row", 5) { InRound = 2 }));
        Assert.Equal(["prescriptions[0].round[0].inRound"], Wrong(Some.Workout(prescriptions: Some.Prescription(round: new PrescribedSet("row", 5) { InRound = 1 }))));
    }

    [Fact]
    public void A_round_that_is_repeated_repeats_its_own_sets()
    {
        var work = ByClock().Workout;
        var plan = Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(work with { Prescriptions = [work.Prescriptions[0] with { Clock = new WorkClock(60_000, 30_000, true) }] }, Some.LineUp())).Relay;
        Assert.Equal(["wall balls", "row"], plan.Steps.Where(step => step.Round == 2).Select(step => step.Movement).Distinct());
        Assert.Equal(["row"], plan.Steps.Where(step => step.Round == 3).Select(step => step.Movement).Distinct());
        Assert.Equal(plan.Windows[1].Last, plan.Parts[0].Last);
        Assert.True(plan.Steps.Count(step => step.Round == 2) > 2);
    }

    private static string[] Wrong(Workout workout) => [.. WorkoutCheck.Errors(workout).Select(error => error.Field)];
}
