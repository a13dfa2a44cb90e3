using System.Collections.Concurrent;
using Microsoft.Extensions.Logging.Abstractions;

namespace LiveHeat.Screens.Connection;

/// <summary>The screens knock for ever, slower up to two seconds, and not all at once. HubTests says the same of board and pad.</summary>
public sealed class RetryDelayTests
{
    /// <summary>After so many failures in a row: the least and the most of the wait, milliseconds.</summary>
    [Theory]
    [InlineData(-1, 0, 0)]
    [InlineData(0, 0, 0)]
    [InlineData(1, 125, 250)]
    [InlineData(2, 250, 500)]
    [InlineData(3, 500, 1000)]
    [InlineData(4, 1000, 2000)]
    [InlineData(5, 1000, 2000)]
    [InlineData(int.MaxValue, 1000, 2000)]
    public void The_wait_grows_up_to_two_seconds_and_half_of_it_is_by_chance(int attempt, int least, int most) =>
        Assert.Equal((least, most), (RetryDelay.Before(attempt, 0).TotalMilliseconds, RetryDelay.Before(attempt, 1).TotalMilliseconds));

    /// <summary>Fifty refused links one after the other: nobody listens at that port, and no wait is waited for.</summary>
    [Fact]
    public async Task It_never_stops_knocking()
    {
        var time = new HastyTime(50);
        await using var connection = new HeatConnection(new Uri("http://127.0.0.1:1/hub"), new ServerClock(time), time, NullLogger<HeatConnection>.Instance);
        var states = new ConcurrentQueue<LinkState>();    // it goes on knocking while they are counted
        connection.StateChanged += states.Enqueue;
        connection.Start();
        await time.Enough.Task.WaitAsync(TimeSpan.FromSeconds(60));

        var waits = time.Waits.Take(50).ToList();
        Assert.All(waits, wait => Assert.InRange(wait.TotalMilliseconds, 1, 2000));
        Assert.All(waits.Skip(4), wait => Assert.True(wait.TotalMilliseconds >= 1000, $"knocks again after {wait}"));
        Assert.True(states.Count(state => state == LinkState.Connecting) > 50);
        Assert.DoesNotContain(LinkState.Online, states);
    }

    /// <summary>A clock whose timers ring at once, and remember how long they were to wait.</summary>
    private sealed class HastyTime(int enough) : TimeProvider
    {
        private readonly List<TimeSpan> waits = [];

        public TaskCompletionSource Enough { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public IReadOnlyList<TimeSpan> Waits
        {
            get
            {
                lock (waits)
                {
                    return [.. waits];
                }
            }
        }

        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
        {
            lock (waits)
            {
                waits.Add(dueTime);
                if (waits.Count == enough)
                {
                    Enough.TrySetResult();
                }
            }

            return base.CreateTimer(callback, state, TimeSpan.Zero, period);
        }
    }
}
