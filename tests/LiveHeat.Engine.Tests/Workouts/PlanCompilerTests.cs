using CsCheck;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Workouts;

public class PlanCompilerTests
{
    private static RelayPlan Plan(Workout workout, int athletes = 3, string division = "open") =>
        Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(workout, Some.LineUp(athletes, division))).Relay;

    /// <summary>Steps as letters: who does a set in which round, a tag as "->", the finish as "|".</summary>
    private static string Story(RelayPlan plan) => string.Join(' ', plan.Steps.Select(step => step.Kind switch
    {
        StepKind.Tag => "->",
        StepKind.Finish => "|",
        _ => $"{(step.Athlete == 0 ? "all" : plan.Athletes[step.Athlete - 1])}{(step.Round is { } round ? round.ToString() : "+")}",
    }));

    private static Workout Rounds(RelayOrder order, int rounds = 4, int sets = 1, FinishKind finish = FinishKind.None) =>
        Some.Workout(order, finish: finish, prescriptions: Some.Prescription(rounds: rounds, round: [.. Enumerable.Repeat(new PrescribedSet("wall-ball", 10), sets)]));

    [Fact]
    public void In_turn_each_does_a_round() => Assert.Equal("Ann1 -> Bo2 -> Cy3 -> Ann4", Story(Plan(Rounds(new RelayOrder.InTurn()))));

    [Fact]
    public void In_blocks_each_does_several_rounds() => Assert.Equal("Ann1 Ann2 -> Bo3 Bo4 -> Cy5 Cy6 -> Ann7", Story(Plan(Rounds(new RelayOrder.Blocks(2), rounds: 7))));

    [Fact]
    public void By_movement_the_team_changes_after_every_set() =>
        Assert.Equal("Ann1 -> Bo1 -> Cy2 -> Ann2 -> Bo3 -> Cy3", Story(Plan(Rounds(new RelayOrder.EachMovement(), rounds: 3, sets: 2))));

    [Fact]
    public void A_list_says_who_does_each_round_and_starts_again_when_it_is_short() =>
        Assert.Equal("Cy1 -> Ann2 Ann3 -> Cy4", Story(Plan(Rounds(new RelayOrder.Listed([3, 1, 1])))));

    [Fact]
    public void Together_nobody_tags() => Assert.Equal("all1 all2 all3 all4", Story(Plan(Rounds(new RelayOrder.Together()))));

    [Fact]
    public void Work_before_is_the_first_athletes_work_after_the_last_ones_and_the_finish_comes_last()
    {
        var workout = Some.Workout(prescriptions: new Prescription("open", "Open", 600_000, 2, Before: [new("row", 30)], Round: [new("wall-ball", 10)], After: [new("carry", 50), new("bar", 1, Reading: true)]));
        var plan = Plan(workout);

        Assert.Equal("Ann0 Ann1 -> Bo2 Bo+ Bo+ |", Story(plan));
        Assert.Equal([1, 1, 1, 2, 2, 2, 2], plan.Steps.Select(step => step.Leg));
        Assert.Equal(["30 cal row", "10 wall balls", "tag Bo", "10 wall balls", "50 m sled carry", "one lift", "across the line"], plan.Steps.Select(step => step.Label));
        Assert.Equal([StepKind.Set, StepKind.Set, StepKind.Tag, StepKind.Set, StepKind.Set, StepKind.Value, StepKind.Finish], plan.Steps.Select(step => step.Kind));
        Assert.Equal([0, 1, 1, 2, null, null, null], plan.Steps.Select(step => step.Round));
    }

    [Fact]
    public void Work_before_by_a_list_is_done_by_who_does_the_first_round() =>
        Assert.Equal("Cy0 Cy1 -> Ann2 Ann+", Story(Plan(Some.Workout(new RelayOrder.Listed([3, 1]), finish: FinishKind.None, prescriptions:
            new Prescription("open", "Open", 600_000, 2, [new("row", 30)], [new("wall-ball", 10)], [new("row", 5)])))));

    [Fact]
    public void Work_without_rounds_is_a_plan_too() =>
        Assert.Equal("Ann0 |", Story(Plan(Some.Workout(prescriptions: new Prescription("open", "Open", 600_000, 0, [new("row", 30)], [], [])))));

    [Theory]
    [InlineData(FinishKind.Line, "across the line")]
    [InlineData(FinishKind.Mat, "all on the mat")]
    public void A_finish_scores_nothing(FinishKind kind, string label)
    {
        var finish = Plan(Rounds(new RelayOrder.InTurn(), finish: kind)).Steps[^1];

        Assert.Equal((StepKind.Finish, label, 0, 0), (finish.Kind, finish.Label, finish.Worth, finish.Quantity));
    }

    [Fact]
    public void A_tag_names_who_goes_and_who_comes()
    {
        var tag = Plan(Rounds(new RelayOrder.InTurn())).Steps[1];

        Assert.Equal((1, 2, 0, 1), (tag.Athlete, tag.To, tag.Worth, tag.Leg));
        Assert.NotEmpty(tag.Faults);
    }

    [Fact]
    public void A_set_is_worth_its_quantity_unless_it_says_otherwise()
    {
        var plan = Plan(Some.Workout(prescriptions: Some.Prescription(rounds: 1, round: [new("wall-ball", 18), new("carry", 400, Worth: 1, Increment: 100), new("row", 20, Worth: 0)])));

        Assert.Equal([18, 1, 0, 0], plan.Steps.Select(step => step.Worth));
        Assert.Equal([1, 100, 1, 1], plan.Steps.Select(step => step.Increment));
        Assert.Equal([0, 18, 19, 19, 19], Enumerable.Range(0, 5).Select(plan.WorthThrough));
    }

    [Fact]
    public void Durations_come_from_the_movements_pace()
    {
        var plan = Plan(Rounds(new RelayOrder.InTurn(), finish: FinishKind.Line));

        Assert.Equal((20_000, 5_000), (plan.Steps[0].ExpectedMs, plan.Steps[0].EarliestMs));    // 10 at 2 s and at 0.5 s
        Assert.Equal(plan.Steps.Sum(step => (long)step.ExpectedMs), plan.ExpectedMs);
        Assert.Equal(plan.ExpectedMs, plan.ExpectedMsThrough(plan.LastStep));
        Assert.All(plan.Steps, step => Assert.InRange(step.EarliestMs, 0, step.ExpectedMs));
    }

    [Fact]
    public void A_pace_that_is_no_binary_fraction_loses_no_millisecond()
    {
        // 12 at 2.3 s are 27.6 s; in binary fractions a hair less.
        var workout = Rounds(new RelayOrder.InTurn()) with { Movements = [Some.Movement(seconds: 2.3, fastest: 1.1)] };
        var step = Plan(workout with { Prescriptions = [Some.Prescription(round: new PrescribedSet("wall-ball", 12))] }).Steps[0];

        Assert.Equal((27_600, 13_200), (step.ExpectedMs, step.EarliestMs));
    }

    [Fact]
    public void The_division_decides_the_prescription_the_group_and_the_cap()
    {
        var workout = Some.Workout(prescriptions: [Some.Prescription(), Some.Prescription("scaled", 2, 480_000, new PrescribedSet("wall-ball", 5))]);
        var plan = Plan(workout, division: "scaled");

        Assert.Equal(("scaled", "scaled", "Scaled", 480_000), (plan.Group, plan.Division, plan.DivisionName, plan.CapMs));
        Assert.Equal(5, plan.Steps[0].Quantity);
    }

    [Fact]
    public void Equal_input_gives_an_equal_plan() => Assert.Equal(Plan(Rounds(new RelayOrder.InTurn())), Plan(Rounds(new RelayOrder.InTurn())));

    [Fact]
    public void Whatever_the_order_and_the_team_the_plan_is_whole() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[0, 4], Gen.Int[1, 20], Gen.Int[1, 4], Gen.Int[0, 3], Gen.Enum<FinishKind>()).Sample((athletes, kind, rounds, sets, around, finish) =>
        {
            RelayOrder order = kind switch
            {
                0 => new RelayOrder.InTurn(),
                1 => new RelayOrder.Blocks(1 + (rounds % 3)),
                2 => new RelayOrder.EachMovement(),
                3 => new RelayOrder.Listed([athletes, 1]),
                _ => new RelayOrder.Together(),
            };
            Items<PrescribedSet> extra = Enumerable.Repeat(new PrescribedSet("row", 5), around).ToItems();
            var plan = Plan(Some.Workout(order, finish: finish, prescriptions:
                new Prescription("open", "Open", 600_000, rounds, extra, Enumerable.Repeat(new PrescribedSet("wall-ball", 10), sets).ToItems(), extra)), athletes);
            var work = plan.Steps.Where(step => step.Kind == StepKind.Set).ToList();

            Assert.Equal(Enumerable.Range(1, plan.LastStep), plan.Steps.Select(step => step.Number));
            Assert.Equal((rounds * sets) + (2 * around), work.Count);
            Assert.Equal(work.Sum(step => step.Worth), plan.WorthThrough(plan.LastStep));
            Assert.Equal(finish != FinishKind.None, plan.Steps[^1].Kind == StepKind.Finish);
            Assert.All(plan.Steps, step => Assert.InRange(step.Athlete, order is RelayOrder.Together ? 0 : 1, athletes));

            // Between two sets stands a tag when, and only when, somebody else works; legs count the tags.
            Assert.Equal(work.Zip(work.Skip(1)).Count(pair => pair.First.Athlete != pair.Second.Athlete), plan.Steps.Count(step => step.Kind == StepKind.Tag));
            Assert.All(plan.Steps, step => Assert.Equal(1 + plan.Steps.Take(step.Number - 1).Count(before => before.Kind == StepKind.Tag), step.Leg));
            foreach (var tag in plan.Steps.Where(step => step.Kind == StepKind.Tag))
            {
                Assert.Equal((plan.Steps[tag.Number - 2].Athlete, plan.Steps[tag.Number].Athlete), (tag.Athlete, tag.To));
            }

            Assert.Null(plan.Find(0));
            Assert.Null(plan.Find(plan.LastStep + 1));
        });

    [Fact]
    public void One_athlete_tags_nobody()
    {
        foreach (RelayOrder order in new RelayOrder[] { new RelayOrder.InTurn(), new RelayOrder.Blocks(2), new RelayOrder.EachMovement(), new RelayOrder.Listed([1]) })
        {
            Assert.DoesNotContain(Plan(Rounds(order), athletes: 1).Steps, step => step.Kind == StepKind.Tag);
        }
    }
}
