using LiveHeat.Contracts;
using LiveHeat.Rehearsal.Phones;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Server.Rehearsal.Phones;

public class PhoneClockTests
{
    private readonly FakeTimeProvider crystal = new();

    /// <summary>One exchange over a link with the same delay both ways, on a server that is so far ahead.</summary>
    private void Exchange(PhoneClock clock, double serverAheadMs, double oneWayMs, string process = "p", double rate = 1)
    {
        var sent = clock.MonoMs;
        crystal.Advance(TimeSpan.FromMilliseconds(oneWayMs));
        var server = serverAheadMs + (clock.MonoMs * rate);
        crystal.Advance(TimeSpan.FromMilliseconds(oneWayMs));
        clock.Add(sent, new ClockAnswer(server, server, process, rate), clock.MonoMs);
    }

    [Fact]
    public void Knows_nothing_before_the_first_exchange()
    {
        var clock = new PhoneClock(crystal);
        Assert.Null(clock.NowMs);
        Assert.Equal("none", clock.Quality);
        Assert.Equal(60_000, clock.Stamp().UncertaintyMs);
    }

    [Fact]
    public void Finds_the_servers_time_with_half_the_delay_as_bound()
    {
        var clock = new PhoneClock(crystal);
        Exchange(clock, 1_795_600_000_000, oneWayMs: 20);
        Assert.Equal(1_795_600_000_000 + clock.MonoMs, clock.NowMs!.Value, 3);
        Assert.Equal(20, clock.UncertaintyMs);
        Assert.Equal("good", clock.Quality);
    }

    [Fact]
    public void Believes_the_exchange_with_the_least_delay()
    {
        var clock = new PhoneClock(crystal);
        Exchange(clock, 1000, oneWayMs: 10);
        Exchange(clock, 1400, oneWayMs: 200);
        Assert.Equal(1000, clock.NowMs!.Value - clock.MonoMs, 3);
    }

    [Fact]
    public void Runs_as_fast_as_the_server_says()
    {
        var clock = new PhoneClock(crystal);
        Exchange(clock, 5000, oneWayMs: 1, rate: 20);
        var before = clock.NowMs!.Value;
        crystal.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(20_000, clock.NowMs!.Value - before, 3);
    }

    [Fact]
    public void Starts_over_when_the_server_is_another_process()
    {
        var clock = new PhoneClock(crystal);
        Exchange(clock, 1000, oneWayMs: 1);
        Exchange(clock, 9000, oneWayMs: 30, process: "q");
        Assert.Equal(9000, clock.NowMs!.Value - clock.MonoMs, 3);
    }

    [Fact]
    public void Drifts_100_parts_per_million_at_most()
    {
        var clock = new PhoneClock(crystal);
        Exchange(clock, 1000, oneWayMs: 5);
        crystal.Advance(TimeSpan.FromSeconds(100));
        Assert.InRange(clock.UncertaintyMs!.Value, 15, 16);
    }

    [Fact]
    public void Stamps_what_its_own_clocks_said()
    {
        var clock = new PhoneClock(crystal, wallErrorMs: 2500);
        Exchange(clock, (crystal.GetUtcNow() - DateTimeOffset.UnixEpoch).TotalMilliseconds, oneWayMs: 5);
        var (instant, _, readings) = clock.Stamp();
        Assert.Equal(instant.UnixMs, readings.WallMs + readings.OffsetMs, 1.0);
        Assert.Equal(-2500, readings.OffsetMs, 20.0);
    }
}
