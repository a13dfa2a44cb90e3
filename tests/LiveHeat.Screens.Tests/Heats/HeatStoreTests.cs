using LiveHeat.Screens.Clock;
using LiveHeat.Screens.Connection;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Screens.Heats;

public sealed class HeatStoreTests
{
    private readonly FakeTimeProvider time = new();

    [Fact]
    public void An_older_frame_is_dropped()
    {
        var store = Store();
        var (newer, sheet) = SomeHeat.Told("start\nlane 1 step 1 done at 0:30", sequence: 20);
        var (older, _) = SomeHeat.Told("start", sequence: 19);
        store.Follow(newer.Heat.Value);
        store.Take(newer);
        store.Take(sheet);

        Assert.False(store.Take(older));
        Assert.Equal(20, store.Frame!.Sequence);
    }

    [Fact]
    public void A_frame_of_a_sheet_that_is_not_here_asks_for_it()
    {
        var store = Store();
        var (frame, sheet) = SomeHeat.Told("start");
        store.Follow(frame.Heat.Value);
        store.Take(frame);

        Assert.True(store.NeedsSheet);
        store.Take(sheet);
        Assert.False(store.NeedsSheet);
        Assert.Equal(frame.Lanes.Count, store.Lanes.Count);
    }

    [Fact]
    public void Every_change_is_told()
    {
        var store = Store();
        var told = 0;
        store.Changed += () => told++;
        var (frame, sheet) = SomeHeat.Told("start");
        store.Follow(frame.Heat.Value);
        var before = told;
        store.Take(frame);
        store.Take(sheet);

        Assert.True(told >= before + 2);
    }

    private HeatStore Store() => new(new ServerClock(time), time);
}
