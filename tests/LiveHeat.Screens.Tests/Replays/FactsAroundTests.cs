using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Replays;

public sealed class FactsAroundTests
{
    private const string Score = """
        start
        lane 1 step 1 done at 0:30
        lane 2 step 1 done at 0:45 arriving 1:20
        lane 1 step 2 done at 1:00
        halt at 1:05
        resume at 1:06
        lane 3 step 1 done at 1:15.001
        """;

    [Fact]
    public void Within_fifteen_seconds_on_either_side_in_order_and_what_is_yet_to_come_is_told() =>
        Assert.Equal(["0:45", "1:00", "1:05 ahead", "1:06 ahead"], Around(ReplayBy.Happened, "1:00", null));

    [Fact]
    public void One_lanes_only() => Assert.Equal(["1:00"], Around(ReplayBy.Happened, "1:00", 1));

    [Fact]
    public void As_it_was_known_a_late_tap_stands_when_it_came_in() => Assert.Equal(["1:20 ahead"], Around(ReplayBy.Known, "1:15", 2));

    [Fact]
    public void What_was_added_happened_when_it_says() => Assert.Equal(["0:40"], Around(ReplayBy.Happened, "0:40", 2, Score + "\nadd lane 2 step 2 done at 0:40", only: true));

    private static IEnumerable<string> Around(ReplayBy by, string now, int? lane, string score = Score, bool only = false) =>
        FactsAround.Of(SomeReplay.Book(score), by, HeatScript.At(now), lane is { } number ? new LaneNumber(number) : null)
            .Where(near => !only || near.Line.Fact is HeatFact.FactAdded)
            .Select(near => $"{Engine.Timing.TimeText.Whole(near.At - Some.Go)}{(near.Ahead ? " ahead" : "")}");
}
