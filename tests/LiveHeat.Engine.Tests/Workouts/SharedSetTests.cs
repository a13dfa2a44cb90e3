using LiveHeat.Testing;

namespace LiveHeat.Engine.Workouts;

public class SharedSetTests
{
    private static Workout With(RelayOrder? order, params PrescribedSet[] round) =>
        Some.Workout(order, finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 2, round: round));

    private static RelayPlan Plan(Workout workout, int athletes = 3) => Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(workout, Some.LineUp(athletes))).Relay;

    private static string Steps(RelayPlan plan) => string.Join("; ", plan.Steps.Select(step => $"{step.Label} {string.Join('+', step.Workers())}"));

    private static string[] Wrong(Workout workout, int athletes = 3) =>
        [.. Assert.IsType<Compiled.Impossible>(PlanCompiler.Compile(workout, Some.LineUp(athletes))).Errors.Select(error => error.Field)];

    [Fact]
    public void A_synchronised_set_is_done_by_the_one_whose_turn_it_is_and_the_next_of_the_team()
    {
        var plan = Plan(With(null, new PrescribedSet("wall-ball", 10) { Together = 2 }, new PrescribedSet("row", 12)));

        Assert.Equal("10 synchro wall balls 1+2; 12 cal row 1; tag Bo 1; 10 synchro wall balls 2+3; 12 cal row 2", Steps(plan));
        Assert.Equal(["not together", "short of the line", "not low enough"], plan.Steps[0].Faults);
        Assert.Equal(["short of the line", "not low enough"], plan.Steps[1].Faults);
    }

    [Fact]
    public void After_the_last_of_the_team_comes_the_first() =>
        Assert.Equal(
            "10 synchro wall balls 3+1+2; tag Bo 3; 10 synchro wall balls 2+3+1",
            Steps(Plan(With(new RelayOrder.Listed([3, 2]), new PrescribedSet("wall-ball", 10) { Together = 3 }))));

    [Fact]
    public void A_team_that_works_as_one_has_nobody_beside_anybody() =>
        Assert.Equal("10 synchro wall balls ; 10 synchro wall balls ", Steps(Plan(With(new RelayOrder.Together(), new PrescribedSet("wall-ball", 10) { Together = 2 }))));

    [Fact]
    public void A_shared_set_is_of_the_team_and_nobody_tags_into_it_or_out_of_it()
    {
        var plan = Plan(With(null, new PrescribedSet("row", 60) { MinimumEach = 10 }, new PrescribedSet("wall-ball", 10)));

        Assert.Equal("60 cal row ; 10 wall balls 1; 60 cal row ; 10 wall balls 2", Steps(plan));
        Assert.Equal([10, null, 10, null], plan.Steps.Select(step => step.MinimumEach));
    }

    [Fact]
    public void Who_is_beside_whom_follows_a_changed_line_up()
    {
        var workout = With(null, new PrescribedSet("wall-ball", 10) { Together = 2 });
        var plan = Plan(workout);
        var changed = Assert.IsType<Compiled.Plan>(PlanSplice.LineUp(plan, 3, ["Ann", "Cy", "Zed"], workout, Some.LineUp())).Relay;

        Assert.Equal(["Ann", "Bo"], changed.Steps[0].Workers().Select(number => changed.Athletes[number - 1]));
        Assert.Equal(["Cy", "Zed"], changed.Steps[2].Workers().Select(number => changed.Athletes[number - 1]));
    }

    [Fact]
    public void What_cannot_be_is_said_at_its_field()
    {
        Assert.Equal(["prescriptions[0].round[0].together"], Wrong(With(null, new PrescribedSet("wall-ball", 10) { Together = 1 })));
        Assert.Equal(["prescriptions[0].round[0].minimumEach", "athletes"], Wrong(With(null, new PrescribedSet("row", 10) { MinimumEach = 11 })));
        Assert.Equal(["prescriptions[0].round[0].minimumEach"], Wrong(With(null, new PrescribedSet("row", 10) { MinimumEach = 0, Together = 2 })));
        Assert.Equal(["prescriptions[0].round[0].minimumEach"], Wrong(With(null, new PrescribedSet("row", 10, Reading: true) { MinimumEach = 2 })));
        Assert.Equal(["athletes"], Wrong(With(null, new PrescribedSet("wall-ball", 10) { Together = 4 })));
        Assert.Equal(["athletes"], Wrong(With(null, new PrescribedSet("row", 60) { MinimumEach = 21 })));
        Assert.Equal(60, Plan(With(null, new PrescribedSet("row", 60) { MinimumEach = 20 })).Steps[0].Quantity);
    }
}
