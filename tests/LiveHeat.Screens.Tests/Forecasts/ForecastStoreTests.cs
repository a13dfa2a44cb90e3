using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Frames;
using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Forecasts;

public sealed class ForecastStoreTests
{
    private static ForecastFrame Frame(long sequence, long atMs, params string[] callouts) => new(
        Some.Heat, "e1", sequence, Some.Go + atMs, [], [], [],
        callouts.Select(id => new Callout(id, CalloutKind.Tag, 30, Some.Go, CalloutGrounds.Confirmed, [Some.Lane(1)])).ToItems(), []);

    [Fact]
    public void An_older_forecast_is_dropped_and_the_same_facts_may_be_foretold_again()
    {
        var store = new ForecastStore();
        store.Take(Frame(6, 2_000, "new"));
        store.Take(Frame(5, 3_000, "old"));
        store.Take(Frame(6, 1_000, "old"));
        Assert.Equal("new", store.Frame!.Callouts[0].Id);

        store.Take(Frame(6, 2_500, "newer"));
        Assert.Equal("newer", store.Frame!.Callouts[0].Id);
    }

    [Fact]
    public void In_a_dead_network_nothing_is_said_after_ten_seconds_of_a_live_heat()
    {
        var store = new ForecastStore();
        store.Take(Frame(6, 2_000, "a"));

        Assert.NotNull(store.Of(Some.Heat, live: true, Some.Go + 12_000));
        Assert.Null(store.Of(Some.Heat, live: true, Some.Go + 12_001));
        Assert.NotNull(store.Of(Some.Heat, live: false, Some.Go + 60_000));
        Assert.Null(store.Of(new HeatId("h2"), live: true, Some.Go + 3_000));
    }

    [Fact]
    public void Places_gained_and_lost_are_those_of_the_last_minute()
    {
        var trend = new PlaceTrend();
        trend.Take(Standing(1, 100_000, 3, 1));
        trend.Take(Standing(2, 110_000, 2, 1));
        Assert.Equal(0, trend.Gained(Some.Lane(1), Some.Go + 110_000));
        Assert.Equal(1, trend.Gained(Some.Lane(1), Some.Go + 120_000));

        trend.Take(Standing(3, 150_000, 1, 2));
        Assert.Equal((2, -1), (trend.Gained(Some.Lane(1), Some.Go + 155_000), trend.Gained(Some.Lane(2), Some.Go + 155_000)));
        Assert.Equal((1, -1), (trend.Gained(Some.Lane(1), Some.Go + 170_000), trend.Gained(Some.Lane(2), Some.Go + 170_000)));
    }

    [Fact]
    public void Another_start_begins_anew()
    {
        var trend = new PlaceTrend();
        trend.Take(Standing(1, 100_000, 3, 1));
        var again = Standing(2, 130_000, 1, 2);
        trend.Take(again with { Start = again.Start! with { Id = "start-2" } });

        Assert.Equal(0, trend.Gained(Some.Lane(1), Some.Go + 150_000));
    }

    private static Frame Standing(long sequence, long atMs, params int[] places)
    {
        var (frame, _) = SomeHeat.Told("start\nlane 1 step 1 done at 0:30\nlane 2 step 1 done at 0:38");
        return frame with
        {
            Sequence = sequence,
            MadeAt = Some.Go + atMs,
            Lanes = frame.Lanes.Take(places.Length).Select((lane, i) => lane with { Place = places[i] }).ToItems(),
        };
    }
}
