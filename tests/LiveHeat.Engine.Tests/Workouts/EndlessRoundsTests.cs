using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Workouts;

public class EndlessRoundsTests
{
    private static readonly Workout Good = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 240_000)) with { Scoring = new ScoringRule.MostWork() };

    private static RelayPlan Plan(Workout workout, int athletes = 3) => Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(workout, Some.LineUp(athletes))).Relay;

    private static Workout With(Func<Prescription, Prescription> change) => Good with { Prescriptions = [change(Good.Prescriptions[0])] };

    private static string Refused(Workout workout) => string.Join(' ', WorkoutCheck.Errors(workout).Select(error =>
    {
        Assert.True(error.Why.Sentence().Length > 10 && error.Why.Sentence()[^1] == '.', $"\"{error.Why.Sentence()}\" is no sentence.");
        return error.Field;
    }));

    [Fact]
    public void As_many_rounds_are_laid_out_as_the_fastest_possible_team_could_begin()
    {
        // 10 wall balls at 0.5 s and 12 cal at 1 s: 17 s a round; in 240 s 14 are whole and the 15th is begun.
        var plan = Plan(Good);

        Assert.True(plan.Endless);
        Assert.Equal((15, 44), (plan.Steps[^1].Round, plan.LastStep));
        Assert.Equal(15, Plan(With(prescription => prescription with { Before = [new("wall-ball", 4)] })).Steps[^1].Round);
        Assert.Equal(14, Plan(With(prescription => prescription with { Before = [new("wall-ball", 6)] })).Steps[^1].Round);
    }

    [Fact]
    public void Where_nobody_knows_how_fast_that_is_a_lane_has_at_most_a_thousand_steps()
    {
        var workout = Good with { Movements = Good.Movements.Select(movement => movement with { FastestSecondsPerUnit = 0 }).ToItems() };

        Assert.Equal((333, 998), (Plan(workout).Steps[^1].Round, Plan(workout).LastStep));
        Assert.Equal(1000, Plan(workout with { Order = new RelayOrder.Together() }).LastStep);
        Assert.Equal(999, Plan(workout with { Order = new RelayOrder.EachMovement() }).LastStep);
    }

    [Fact]
    public void What_cannot_be_is_told_by_its_field()
    {
        Assert.Equal("", Refused(Good));
        Assert.Equal("finish", Refused(Good with { Finish = FinishKind.Line }));
        Assert.Equal("prescriptions[0].rounds", Refused(With(prescription => prescription with { Rounds = 3 })));
        Assert.Equal("prescriptions[0].after", Refused(With(prescription => prescription with { After = [new("row", 5)] })));
        Assert.Equal("prescriptions[0].round", Refused(With(prescription => prescription with { Round = [] })));
        Assert.Equal("prescriptions[0].round[0].quantity", Refused(With(prescription => prescription with { Round = [new("row", 0), new("wall-ball", 10)] })));
        Assert.Equal("prescriptions[0].capMs", Refused(With(prescription => prescription with { CapMs = 0 })));
    }

    [Fact]
    public void More_than_a_lane_can_be_judged_on_at_the_expected_pace_is_refused()
    {
        // One wall ball a round at 2 s, then the tag: in 1000 s 501 rounds are begun, 500 can be.
        Assert.Equal("", Refused(With(prescription => prescription with { Round = [new("wall-ball", 1)], CapMs = 999_000 })));
        Assert.Equal("prescriptions[0].round", Refused(With(prescription => prescription with { Round = [new("wall-ball", 1)], CapMs = 1_000_000 })));
    }

    [Fact]
    public void The_sheet_says_how_far_a_team_at_the_expected_pace_comes_and_that_the_rounds_have_no_number()
    {
        var sheet = SheetMaking.Of(HeatScript.Play("start", Some.Snapshot(1, Good)), "e")!;

        // 20 s, 36 s and 2 s for the tag: 58 s a round; at 240 s it is in the fifth, whose last step is 15.
        Assert.Equal(15, sheet.Lanes[0].ExpectedSteps);
        Assert.Equal("as many rounds as possible, one each in turn", sheet.Workout.Summary);
        Assert.Null(SheetMaking.Of(HeatScript.Play("start"), "e")!.Lanes[0].ExpectedSteps);
    }

    [Fact]
    public void A_variant_or_a_new_line_up_takes_over_the_rest_though_it_is_laid_out_more_often()
    {
        var workout = Good with { Prescriptions = [Good.Prescriptions[0], Some.Prescription("scaled", 0, 240_000, new PrescribedSet("wall-ball", 8), new PrescribedSet("row", 9))] };
        var lane = HeatScript.Play("""
            start
            lane 1 step 3 done at 1:00
            lane 1 variant scaled from step 4 at 1:10
            lane 1 line-up Cy,Ann,Bo from step 7 at 1:20
            lane 1 step 5 done at 1:40
            """, Some.Snapshot(1, workout)).Lanes[0];

        Assert.Equal((3, 39, true), (lane.PlanVersion, lane.Worth, lane.Plan.Endless));
        Assert.Equal("8 wall balls", lane.Plan.Steps[3].Label);

        var other = workout with { Prescriptions = [workout.Prescriptions[0], workout.Prescriptions[1] with { Round = [new("wall-ball", 8)] }] };
        Assert.Equal(1, HeatScript.Play("start\nlane 1 variant scaled from step 4 at 1:10", Some.Snapshot(1, other)).Lanes[0].PlanVersion);
    }
}
