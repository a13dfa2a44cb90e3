using LiveHeat.Engine.Timing;
using LiveHeat.Testing;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Screens.Replays;

public sealed class ReplayPlayerTests
{
    private readonly FakeTimeProvider time = new();
    private readonly ReplayPlayer player;

    public ReplayPlayerTests()
    {
        player = new ReplayPlayer(time);
        player.Load(Some.Go, Some.Go + 60_000);
        player.Seek(Some.Go);
    }

    [Theory]
    [InlineData(1, 2_000)]
    [InlineData(5, 10_000)]
    [InlineData(20, 40_000)]
    public void Two_seconds_play_so_much(double speed, long ms)
    {
        player.SetSpeed(speed);
        player.Play();
        time.Advance(TimeSpan.FromSeconds(2));
        Assert.Equal(Some.Go + ms, player.Now);
    }

    [Fact]
    public void Standing_it_stays_and_a_screen_moves_nothing_in_between()
    {
        player.Play();
        time.Advance(TimeSpan.FromSeconds(3));
        player.Pause();
        time.Advance(TimeSpan.FromSeconds(30));
        Assert.Equal((Some.Go + 3_000, 0), (player.Now, player.Rate));
    }

    [Fact]
    public void Another_speed_goes_on_from_where_it_is()
    {
        player.Play();
        time.Advance(TimeSpan.FromSeconds(3));
        player.SetSpeed(20);
        time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(Some.Go + 23_000, player.Now);
    }

    [Fact]
    public void It_goes_beyond_neither_end_and_begins_again_at_the_end()
    {
        player.Seek(Some.Go + -5_000);
        Assert.Equal(Some.Go, player.Now);
        player.SetSpeed(20);
        player.Play();
        time.Advance(TimeSpan.FromMinutes(1));
        Assert.Equal(Some.Go + 60_000, player.Now);
        player.Play();
        Assert.Equal(Some.Go, player.Now);
    }

    [Fact]
    public void A_stretch_grown_longer_keeps_its_place()
    {
        player.Seek(Some.Go + 20_000);
        player.Load(Some.Go + -1_000, Some.Go + 90_000);
        Assert.Equal(Some.Go + 20_000, player.Now);
    }

    [Fact]
    public void Every_jump_is_another_turn()
    {
        var turns = new List<int> { player.Turn };
        foreach (var change in new Action[] { player.Play, player.Pause, () => player.Seek(Some.Go + 1), () => player.SetSpeed(5) })
        {
            change();
            turns.Add(player.Turn);
        }

        Assert.Equal(turns.Distinct(), turns);
    }

    [Fact]
    public void How_long_ago_goes_by_the_clock_that_is_shown()
    {
        player.Seek(Some.Go + 40_000);
        Assert.Equal(TimeSpan.FromSeconds(10), ((Clock.ISceneClock)player).Since(new Instant(Some.Go.UnixMs + 30_000)));
    }
}
