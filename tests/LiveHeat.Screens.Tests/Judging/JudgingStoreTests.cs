using LiveHeat.Contracts.Judging;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Judging;

public sealed class JudgingStoreTests
{
    private readonly JudgingStore store = new();

    [Fact]
    public void A_lane_that_stands_out_is_a_question_until_it_is_put_aside_and_again_when_it_is_taken_up()
    {
        store.Take(SomeJudging.Table);
        Assert.Equal([1], Asked());
        store.PutAside(Some.Heat, Some.Lane(1));
        Assert.Empty(Asked());
        store.TakeUp(Some.Heat, Some.Lane(1));
        Assert.Equal([1], Asked());
    }

    [Fact]
    public void Put_aside_is_for_one_heat_and_stays_when_new_figures_come()
    {
        store.PutAside(Some.Heat, Some.Lane(1));
        store.Take(SomeJudging.Table);
        Assert.Empty(Asked());
        store.Take(SomeJudging.Table with { Heat = new HeatId("h2") });
        Assert.Equal([1], store.Questions(new HeatId("h2")).Select(lane => lane.Lane.Value));
        Assert.Empty(Asked());
    }

    [Fact]
    public void After_a_problem_the_last_good_table_stays()
    {
        store.Take(SomeJudging.Table);
        store.Take(new Reply<JudgingTable>(null, Problem.Of(Problem.NoAnswer, "no answer")));
        Assert.Equal([1], Asked());
        Assert.NotNull(store.Problem);
    }

    private IEnumerable<int> Asked() => store.Questions(Some.Heat).Select(lane => lane.Lane.Value);
}
