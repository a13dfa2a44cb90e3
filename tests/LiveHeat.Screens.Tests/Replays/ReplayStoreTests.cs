using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Replays;

public sealed class ReplayStoreTests
{
    private const string Score = SomeReplay.Score;

    [Theory]
    [InlineData(29_999, "")]
    [InlineData(30_000, "1")]
    [InlineData(38_000, "1 2")]
    public void As_it_happened_a_step_is_done_at_its_own_time(long heatMs, string done) => Assert.Equal(done, DoneAt(ReplayBy.Happened, heatMs));

    [Theory]
    [InlineData(38_000, "1")]
    [InlineData(57_999, "1")]
    [InlineData(58_000, "1 2")]
    public void As_it_was_known_it_is_done_when_it_came_in(long heatMs, string done) => Assert.Equal(done, DoneAt(ReplayBy.Known, heatMs));

    [Fact]
    public void A_heat_time_is_found_across_a_halt()
    {
        var store = SomeReplay.Store("""
            start
            lane 1 step 1 done at 0:30
            halt at 0:40
            resume at 1:40
            lane 1 step 2 done at 2:00
            """, ReplayBy.Happened, out _);

        store.SeekHeat(45_000);
        Assert.Equal((Some.Go + 105_000, 45_000L), (store.Player.Now, store.HeatMs));
    }

    [Fact]
    public void At_GO_lanes_begin_to_work_and_past_the_cap_they_are_through_although_nothing_was_tapped()
    {
        var store = SomeReplay.Store("""
            start
            lane 1 step 1 done at 0:30
            end at 10:20
            """, ReplayBy.Happened, out _);

        Assert.Equal((LaneStatus.Ready, LaneStatus.Working), (StatusAt(store, -1), StatusAt(store, 1)));
        Assert.Equal((LaneStatus.Working, LaneStatus.Capped), (StatusAt(store, 600_000), StatusAt(store, 600_001)));
    }

    [Fact]
    public void It_steps_from_fact_to_fact_and_back_and_stands_there()
    {
        var store = SomeReplay.Store(Score, ReplayBy.Happened, out _);
        store.Toggle();
        Assert.Equal([30_000, 38_000, 60_000, 70_000, 70_000], Enumerable.Range(0, 5).Select(_ => Stepped(store, true)));
        Assert.Equal([60_000, 38_000, 30_000], Enumerable.Range(0, 3).Select(_ => Stepped(store, false)));
        Assert.False(store.Player.Playing);
    }

    [Fact]
    public void It_steps_through_one_lanes_facts_only()
    {
        var store = SomeReplay.Store(Score, ReplayBy.Happened, out _);
        var lane2 = SomeReplay.Book(Score).Of(new LaneNumber(2)).Select(line => line.Sequence).ToHashSet();
        store.Step(true, lane2.Contains);
        Assert.Equal(38_000, store.HeatMs);
        store.Step(true, lane2.Contains);
        Assert.Equal(70_000, store.HeatMs);
    }

    [Fact]
    public void The_other_order_stays_at_the_moment_and_a_late_answer_is_dropped()
    {
        var store = SomeReplay.Store(Score, ReplayBy.Happened, out _);
        store.SeekHeat(40_000);
        store.Begin(Some.Heat, ReplayBy.Known);
        store.Take(Some.Heat, ReplayBy.Happened, new Reply<ReplayLines>(SomeReplay.Told(Score, ReplayBy.Happened), null));
        store.Take(Some.Heat, ReplayBy.Known, new Reply<ReplayLines>(SomeReplay.Told(Score, ReplayBy.Known), null));
        Assert.Equal((40_000L, "1"), (store.HeatMs, Done(store)));
    }

    [Fact]
    public void Played_it_tells_ten_times_a_second_until_the_end_and_then_no_more()
    {
        var store = SomeReplay.Store(Score, ReplayBy.Happened, out var time);
        store.SetSpeed(20);
        store.Toggle();
        var told = 0;
        store.Changed += () => told++;
        time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal((10, 20_000L), (told, store.HeatMs));
        time.Advance(TimeSpan.FromSeconds(30));
        Assert.Equal((false, 70_000L), (store.Player.Playing, store.HeatMs));
        told = 0;
        time.Advance(TimeSpan.FromSeconds(30));
        Assert.Equal(0, told);
    }

    [Fact]
    public void After_a_problem_the_last_good_one_stays()
    {
        var store = SomeReplay.Store(Score, ReplayBy.Happened, out _);
        store.Take(Some.Heat, ReplayBy.Happened, Problem.Of(Problem.NoAnswer, "The server does not answer."));
        Assert.True(store.IsHere);
        Assert.Equal("The server does not answer.", store.Problem!.Detail);
    }

    [Fact]
    public void Closed_it_is_empty_and_stands()
    {
        var store = SomeReplay.Store(Score, ReplayBy.Happened, out var time);
        store.Toggle();
        store.Close();
        var told = 0;
        store.Changed += () => told++;
        time.Advance(TimeSpan.FromSeconds(5));
        Assert.Equal((null, false, 0), (store.Heat, store.IsHere, told));
        Assert.Null(store.Scene.Frame);
    }

    private static string DoneAt(ReplayBy by, long heatMs)
    {
        var store = SomeReplay.Store(Score, by, out _);
        store.SeekHeat(heatMs);
        return Done(store);
    }

    private static string Done(ReplayStore store) => string.Join(' ', store.Scene.Lanes.Where(lane => lane.State.Open > 1).Select(lane => lane.Lane));

    private static long? Stepped(ReplayStore store, bool forward)
    {
        store.Step(forward);
        return store.HeatMs;
    }

    private static LaneStatus StatusAt(ReplayStore store, long heatMs)
    {
        store.SeekHeat(heatMs);
        return store.Scene.Lanes[1].State.Status;
    }
}
