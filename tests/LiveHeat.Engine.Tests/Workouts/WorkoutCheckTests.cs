using LiveHeat.Contracts.Language;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Workouts;

/// <summary>Every refusal with the field named and a sentence beside it.</summary>
public class WorkoutCheckTests
{
    private static readonly Workout Good = Some.Workout();

    private static string Refused(Workout workout, LineUp? lineUp = null)
    {
        var errors = Assert.IsType<Compiled.Impossible>(PlanCompiler.Compile(workout, lineUp ?? Some.LineUp())).Errors;
        Assert.All(errors, error => Assert.True(error.Why.Sentence().Length > 10 && error.Why.Sentence()[^1] is '.' or '?', $"\"{error.Why.Sentence()}\" is no sentence."));
        return string.Join(' ', errors.Select(error => error.Field));
    }

    private static Workout With(Func<Prescription, Prescription> change) => Good with { Prescriptions = [change(Good.Prescriptions[0]), .. Good.Prescriptions.Skip(1)] };

    private static Workout WithSet(PrescribedSet set) => With(prescription => prescription with { Round = [set] });

    [Fact]
    public void A_good_workout_is_refused_nowhere()
    {
        Assert.Empty(WorkoutCheck.Errors(Good));
        Assert.Empty(LineUpCheck.Errors(Some.LineUp(), Good));
        for (var athletes = 1; athletes <= 12; athletes++)
        {
            Assert.Empty(LineUpCheck.Errors(Some.LineUp(athletes), Good));
        }
    }

    [Fact]
    public void A_team_has_one_to_twelve_athletes_with_names()
    {
        Assert.Equal("athletes", Refused(Good, Some.LineUp(0)));
        Assert.Equal("athletes", Refused(Good, Some.LineUp(13)));
        Assert.Equal("athletes[1]", Refused(Good, Some.LineUp() with { Athletes = ["Ann", "  ", "Cy"] }));
    }

    [Fact]
    public void What_is_said_of_a_nameless_athlete_is_a_whole_sentence() =>
        Assert.Equal("Harbour Anvils: athlete 2 has no name.", LineUpCheck.Errors(Some.LineUp() with { Athletes = ["Ann", "  "] }, Good).Single().Why.Sentence());

    [Fact]
    public void A_team_needs_a_prescription_for_its_division() => Assert.Equal("division", Refused(Good, Some.LineUp(division: "masters")));

    [Fact]
    public void Two_prescriptions_for_one_division_leave_it_open_which_counts() =>
        Assert.Equal("prescriptions[1].division", Refused(Good with { Prescriptions = [Good.Prescriptions[0], Good.Prescriptions[0]] }));

    [Fact]
    public void A_workout_has_a_name_and_a_prescription()
    {
        Assert.Equal("name", Refused(Good with { Name = " " }));
        Assert.Equal("prescriptions division", Refused(Good with { Prescriptions = [] }));
    }

    [Fact]
    public void A_relay_order_names_somebody_of_the_team()
    {
        Assert.Equal("order.size", Refused(Good with { Order = new RelayOrder.Blocks(0) }));
        Assert.Equal("order.athletes", Refused(Good with { Order = new RelayOrder.Listed([]) }));
        Assert.Equal("order.athletes[1]", Refused(Good with { Order = new RelayOrder.Listed([1, 0]) }));
        Assert.Equal("order.athletes", Refused(Good with { Order = new RelayOrder.Listed([1, 4]) }));
    }

    [Fact]
    public void Reps_are_reported_every_so_many()
    {
        Assert.Equal("checkpointEvery", Refused(Good with { CheckpointEvery = 0 }));
        Assert.IsType<Compiled.Plan>(PlanCompiler.Compile(Good with { CheckpointEvery = 0, Counting = Counting.Sets }, Some.LineUp()));
    }

    [Theory]
    [InlineData(0, "prescriptions[0].capMs")]
    [InlineData(-1, "prescriptions[0].capMs")]
    [InlineData(14_400_001, "prescriptions[0].capMs")]
    public void A_cap_is_above_nothing_and_below_four_hours(int capMs, string field) => Assert.Equal(field, Refused(With(prescription => prescription with { CapMs = capMs })));

    [Fact]
    public void There_is_something_to_do()
    {
        Assert.Equal("prescriptions[0].rounds", Refused(With(prescription => prescription with { Rounds = 0 })));
        Assert.Equal("prescriptions[0].rounds", Refused(With(prescription => prescription with { Rounds = -1, Before = [new("row", 1)] })));
        Assert.Equal("prescriptions[0].rounds", Refused(With(prescription => prescription with { Rounds = 501 })));
        Assert.Equal("prescriptions[0].rounds", Refused(With(prescription => prescription with { Rounds = 500, Round = Enumerable.Repeat(new PrescribedSet("row", 1), 5).ToItems() })));
        Assert.Equal("prescriptions[0].round", Refused(With(prescription => prescription with { Round = [], Before = [new("row", 1)] })));
    }

    [Fact]
    public void An_absurd_number_of_rounds_is_told_once() =>
        Assert.Equal("prescriptions[0].rounds", Refused(With(prescription => prescription with { Rounds = int.MaxValue })));

    [Theory]
    [InlineData(0, "quantity")]
    [InlineData(-5, "quantity")]
    [InlineData(100_001, "quantity")]
    public void A_set_has_a_quantity(int quantity, string field) => Assert.Equal($"prescriptions[0].round[0].{field}", Refused(WithSet(new PrescribedSet("row", quantity))));

    [Fact]
    public void A_set_is_of_a_movement_of_the_workout_with_a_worth_and_an_increment_that_can_be()
    {
        Assert.Equal("prescriptions[0].round[0].movement", Refused(WithSet(new PrescribedSet("swim", 10))));
        Assert.Equal("prescriptions[0].round[0].worth", Refused(WithSet(new PrescribedSet("row", 10, Worth: -1))));
        Assert.Equal("prescriptions[0].round[0].worth", Refused(WithSet(new PrescribedSet("row", 10, Worth: 100_001))));    // a score must fit
        Assert.Equal("prescriptions[0].round[0].increment", Refused(WithSet(new PrescribedSet("row", 10, Increment: 0))));
        Assert.Equal("prescriptions[0].round[0].increment", Refused(WithSet(new PrescribedSet("row", 10, Increment: 11))));
    }

    [Fact]
    public void A_movement_has_a_name_of_its_own_and_a_pace_that_can_be()
    {
        Workout Of(Movement movement) => Good with { Movements = [movement, .. Good.Movements.Skip(1)] };

        Assert.Equal("movements[0].name", Refused(Of(Some.Movement(name: ""))));
        Assert.Equal("movements[1].id", Refused(Good with { Movements = [Some.Movement(), Some.Movement(), .. Good.Movements.Skip(1)] }));
        Assert.Equal("movements[0].secondsPerUnit", Refused(Of(Some.Movement(seconds: 0, fastest: 0))));
        Assert.Equal("movements[0].secondsPerUnit", Refused(Of(Some.Movement(seconds: 3600))));
        Assert.Equal("movements[0].secondsPerUnit movements[0].fastestSecondsPerUnit", Refused(Of(Some.Movement(seconds: double.NaN))));
        Assert.Equal("movements[0].fastestSecondsPerUnit", Refused(Of(Some.Movement(seconds: 2, fastest: 2.1))));
        Assert.Equal("movements[0].fastestSecondsPerUnit", Refused(Of(Some.Movement(seconds: 2, fastest: -1))));
    }

    [Fact]
    public void Work_before_and_after_is_looked_at_too()
    {
        Assert.Equal("prescriptions[0].before[1].quantity", Refused(With(prescription => prescription with { Before = [new("row", 1), new("row", 0)] })));
        Assert.Equal("prescriptions[0].after[0].quantity", Refused(With(prescription => prescription with { After = [new("row", 0)] })));
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once() =>
        Assert.Equal("name order.size prescriptions[0].capMs athletes", Refused(With(prescription => prescription with { CapMs = 0 }) with { Name = "", Order = new RelayOrder.Blocks(0) }, Some.LineUp(0)));
}
