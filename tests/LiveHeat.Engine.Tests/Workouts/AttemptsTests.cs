using LiveHeat.Testing;

namespace LiveHeat.Engine.Workouts;

/// <summary>How attempts are laid out, and what cannot be where a load or a reading is the score.</summary>
public class AttemptsTests
{
    private static string Steps(Workout workout, int athletes = 2) => string.Join(' ', Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(workout, Some.LineUp(athletes))).Relay.Steps
        .Select(step => step.Kind == StepKind.Tag ? "tag" : $"{step.Athlete}.{step.Label[^1]}"));

    private static Workout Reading(params PrescribedSet[] round) =>
        Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription("open", 2, 540_000, round)) with { Scoring = new ScoringRule.MostReading() };

    private static string Wrong(Workout workout) => string.Join(' ', WorkoutCheck.Errors(workout).Select(error => error.Field));

    [Fact]
    public void In_turn_each_has_all_attempts_before_the_tag() => Assert.Equal("1.1 1.2 1.3 tag 2.1 2.2 2.3", Steps(Some.Lifting()));

    [Fact]
    public void With_a_tag_after_each_the_first_attempts_of_all_are_the_first_round()
    {
        var workout = Some.Lifting(3, order: new RelayOrder.EachMovement());

        Assert.Equal("1.1 tag 2.1 tag 1.2 tag 2.2 tag 1.3 tag 2.3", Steps(workout));
        Assert.Equal([1, 1, 2, 2, 3, 3], Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(workout, Some.LineUp(2))).Relay.Steps.Where(step => step.Kind == StepKind.Attempt).Select(step => step.Round));
    }

    [Fact]
    public void The_team_as_one_has_its_attempts_once() => Assert.Equal("0.1 0.2", Steps(Some.Lifting(2, order: new RelayOrder.Together()), 4));

    [Fact]
    public void An_attempt_says_what_is_lifted_in_which_unit_and_has_its_faults()
    {
        var step = Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(Some.Lifting(), Some.LineUp(2))).Relay.Steps[1];

        Assert.Equal(("one lift, attempt 2", Unit.Kg, 0, 0, "bar"), (step.Label, step.Unit, step.Quantity, step.Worth, step.MovementId));
        Assert.Equal(2, step.Faults.Count);
    }

    [Fact]
    public void What_cannot_be_is_named_by_its_field()
    {
        var good = Some.Lifting();
        Prescription With(Func<Prescription, Prescription> change) => change(good.Prescriptions[0]);

        Assert.Equal("", Wrong(good));
        Assert.Equal("scoring.attempts", Wrong(good with { Scoring = new ScoringRule.HeaviestLoad(11, LoadSum.SumOfBest) }));
        Assert.Equal("scoring.attempts", Wrong(good with { Scoring = new ScoringRule.HeaviestLoad(0, LoadSum.SumOfBest) }));
        Assert.Equal("order", Wrong(good with { Order = new RelayOrder.Blocks(2) }));
        Assert.Equal("finish", Wrong(good with { Finish = FinishKind.Line }));
        Assert.Equal("prescriptions[0].rounds", Wrong(good with { Prescriptions = [With(one => one with { Rounds = 2 })] }));
        Assert.Equal("prescriptions[0].before prescriptions[0].after", Wrong(good with { Prescriptions = [With(one => one with { Before = [new("row", 5)], After = [new("row", 5)] })] }));
        Assert.Equal("prescriptions[0].round", Wrong(good with { Prescriptions = [With(one => one with { Round = [new("bar", 1), new("bar", 1)] })] }));
        Assert.Equal("prescriptions[0].round", Wrong(good with { Prescriptions = [With(one => one with { Round = [new("row", 1)] })] }));
        Assert.Equal("prescriptions[0].tiebreak.set", Wrong(good with { Prescriptions = [With(one => one with { Tiebreak = new TiebreakSet(1, 4) })] }));
        Assert.Equal("movements", Wrong(good with
        {
            Movements = [.. good.Movements, Some.Movement("iron", "other lift", Unit.Lb, 20, 1)],
            Prescriptions = [.. good.Prescriptions, Some.Prescription("scaled", 0, 600_000, new PrescribedSet("iron", 1))],
        }));
    }

    [Fact]
    public void Readings_must_be_there_and_of_one_unit_that_is_no_load()
    {
        Assert.Equal("", Wrong(Reading(new PrescribedSet("row", 20, Reading: true), new PrescribedSet("wall-ball", 10))));
        Assert.Equal("prescriptions[0].round", Wrong(Reading(new PrescribedSet("row", 20))));
        Assert.Equal("movements", Wrong(Reading(new PrescribedSet("row", 20, Reading: true), new PrescribedSet("carry", 100, Reading: true))));
        Assert.Equal("prescriptions[0].round", Wrong(Reading(new PrescribedSet("bar", 1, Reading: true))));
    }
}
