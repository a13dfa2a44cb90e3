using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Server.Time;

public sealed class FastTimeTests
{
    private static readonly DateTimeOffset Start = DateTimeOffset.FromUnixTimeMilliseconds(1_795_600_000_000);
    private readonly FakeTimeProvider real = new(Start);
    private readonly FastTime fast;
    private int rung;

    public FastTimeTests() => fast = new FastTime(20, real);

    [Fact]
    public void Wall_clock_and_monotonic_clock_go_twenty_times_as_fast_together()
    {
        var (utc, stamp) = (fast.GetUtcNow(), fast.GetTimestamp());
        Assert.Equal(Start, utc);

        real.Advance(TimeSpan.FromSeconds(3));

        Assert.Equal(TimeSpan.FromMinutes(1), fast.GetUtcNow() - utc);
        Assert.Equal(TimeSpan.FromMinutes(1), fast.GetElapsedTime(stamp));
    }

    [Fact]
    public void A_timebase_on_it_agrees_with_its_wall_clock()
    {
        var timebase = new Timebase(fast, 20);
        real.Advance(TimeSpan.FromSeconds(7));

        Assert.Equal(fast.GetUtcNow().ToUnixTimeMilliseconds(), timebase.Now.UnixMs);
    }

    [Fact]
    public void A_timer_rings_after_a_twentieth_of_its_time_and_again()
    {
        using var timer = fast.CreateTimer(_ => rung++, null, TimeSpan.FromSeconds(20), TimeSpan.FromSeconds(40));

        real.Advance(TimeSpan.FromMilliseconds(999));
        Assert.Equal(0, rung);
        real.Advance(TimeSpan.FromMilliseconds(1));
        Assert.Equal(1, rung);
        real.Advance(TimeSpan.FromSeconds(4));
        Assert.Equal(3, rung);
    }

    [Fact]
    public void A_timer_that_is_set_anew_is_as_fast()
    {
        using var timer = fast.CreateTimer(_ => rung++, null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        real.Advance(TimeSpan.FromDays(1));
        Assert.Equal(0, rung);

        Assert.True(timer.Change(TimeSpan.FromSeconds(20), Timeout.InfiniteTimeSpan));
        real.Advance(TimeSpan.FromSeconds(1));

        Assert.Equal(1, rung);
        real.Advance(TimeSpan.FromDays(1));
        Assert.Equal(1, rung);
    }

    [Fact]
    public void A_time_of_less_than_a_millisecond_still_passes()
    {
        // The system's timers count whole milliseconds; nothing is the word for "not again".
        using var timer = fast.CreateTimer(_ => rung++, null, TimeSpan.FromMilliseconds(10), TimeSpan.FromMilliseconds(10));

        real.Advance(TimeSpan.FromMilliseconds(5));

        Assert.Equal(5, rung);
    }

    [Fact]
    public async Task A_delay_ends_after_a_twentieth_of_its_time()
    {
        var delay = Task.Delay(TimeSpan.FromSeconds(60), fast);
        real.Advance(TimeSpan.FromMilliseconds(2999));
        Assert.False(delay.IsCompleted);

        real.Advance(TimeSpan.FromMilliseconds(1));

        await delay.WaitAsync(TimeSpan.FromSeconds(30));
    }

    [Fact]
    public void On_the_machines_own_clock_it_runs_on()
    {
        var machine = new FastTime(200);
        var stamp = machine.GetTimestamp();
        var since = TimeProvider.System.GetTimestamp();
        while (TimeProvider.System.GetElapsedTime(since) < TimeSpan.FromMilliseconds(2))
        {
            Thread.SpinWait(100);
        }

        Assert.True(machine.GetElapsedTime(stamp) >= TimeSpan.FromMilliseconds(400));
    }
}
