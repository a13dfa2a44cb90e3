using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Server.Time;

public sealed class TimebaseTests
{
    private static readonly DateTimeOffset Start = DateTimeOffset.FromUnixTimeMilliseconds(1_795_600_000_000);

    [Fact]
    public void It_begins_at_utc_and_goes_on_by_the_monotonic_clock()
    {
        var time = new FakeTimeProvider(Start);
        var timebase = new Timebase(time);

        Assert.Equal((1_795_600_000_000, 1_795_600_000_000d), (timebase.Now.UnixMs, timebase.NowMs));
        time.Advance(TimeSpan.FromMilliseconds(1500.75));
        Assert.Equal((1_795_600_001_500, 1_795_600_001_500.75), (timebase.Now.UnixMs, timebase.NowMs));
    }

    [Fact]
    public void A_machine_whose_clock_is_set_moves_no_heat()
    {
        var machine = new SteppingClock(Start);
        var timebase = new Timebase(machine);

        machine.Advance(TimeSpan.FromSeconds(10));
        machine.Utc -= TimeSpan.FromHours(1);

        Assert.Equal(1_795_600_010_000, timebase.Now.UnixMs);
    }

    [Fact]
    public void Every_process_names_its_own()
    {
        var time = new FakeTimeProvider(Start);

        Assert.NotEqual(new Timebase(time).Process, new Timebase(time).Process);
        Assert.Equal((1, 20), (new Timebase(time).Rate, new Timebase(time, 20).Rate));
    }

    [Fact]
    public void It_never_goes_back()
    {
        var timebase = new Timebase(TimeProvider.System);
        var last = timebase.NowMs;
        for (var i = 0; i < 100_000; i++)
        {
            var now = timebase.NowMs;
            Assert.True(now >= last);
            last = now;
        }
    }

    /// <summary>A machine whose wall clock somebody sets while its monotonic clock goes on.</summary>
    private sealed class SteppingClock(DateTimeOffset start) : TimeProvider
    {
        private long ticks;

        public DateTimeOffset Utc { get; set; } = start;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override DateTimeOffset GetUtcNow() => Utc;

        public override long GetTimestamp() => ticks;

        public void Advance(TimeSpan by)
        {
            Utc += by;
            ticks += by.Ticks;
        }
    }
}
