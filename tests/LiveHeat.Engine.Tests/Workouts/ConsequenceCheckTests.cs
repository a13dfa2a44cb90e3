using LiveHeat.Testing;

namespace LiveHeat.Engine.Workouts;

public class ConsequenceCheckTests
{
    private static string Fields(PenaltyRule? penalty, Consequences? consequences = null) =>
        string.Join(' ', WorkoutCheck.Errors(Some.Workout() with { Penalty = penalty, Consequences = consequences }).Select(error => error.Field));

    [Fact]
    public void A_penalty_costs_something_and_not_more_than_an_hour()
    {
        Assert.Equal("", Fields(null));
        Assert.Equal("", Fields(new(30_000)));
        Assert.Equal("", Fields(new(0, 5)));
        Assert.Equal("penalty.addMs", Fields(new(0)));
        Assert.Equal("penalty.addMs", Fields(new(-1, 5)));
        Assert.Equal("penalty.addMs", Fields(new(3_600_001)));
        Assert.Equal("penalty.reps", Fields(new(1_000, -1)));
        Assert.Equal("penalty.reps", Fields(new(0, 10_001)));
    }

    [Fact]
    public void A_consequence_that_is_the_penalty_needs_one()
    {
        Assert.Equal("", Fields(null, new(Consequence.RanksBelow, Consequence.Void)));
        Assert.Equal("consequences", Fields(null, new(Consequence.Penalty)));
        Assert.Equal("consequences", Fields(null, new(LineUpChange: Consequence.Penalty)));
        Assert.Equal("consequences", Fields(null, new() { Variant = Consequence.Penalty }));
        Assert.Equal("", Fields(new(30_000), new() { Variant = Consequence.Penalty }));
    }
}
