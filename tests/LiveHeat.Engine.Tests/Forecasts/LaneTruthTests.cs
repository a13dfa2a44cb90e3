using LiveHeat.Testing;
using LiveHeat.Testing.Paced;

namespace LiveHeat.Engine.Forecasts;

/// <summary>How forecasts are judged of teams that the cap stopped: a rule that rewards a forecast for what nobody saw would flatter it.</summary>
public class LaneTruthTests
{
    private const int Cases = 1000;

    /// <summary>A forecast that is right: finishes come evenly from 0 to 1000, it says so, and its 80 % interval is 100 to 900.</summary>
    private static double Held(int capMs, int early = 100, int late = 900)
    {
        var forecast = new LaneForecast(Some.Lane(1), 500, early, late, capMs / (double)Cases, []);
        return Enumerable.Range(0, Cases).Average(finish => new LaneTruth(Some.Lane(1), finish < capMs ? finish : null, capMs, false).Held(forecast));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(100)]
    [InlineData(500)]
    [InlineData(899)]
    [InlineData(950)]
    [InlineData(1000)]
    public void A_right_forecast_holds_in_four_of_five_cases_wherever_the_cap_is(int capMs) => Assert.Equal(0.8, Held(capMs), 0.002);

    [Fact]
    public void A_finish_that_was_seen_is_in_it_or_not() => Assert.Equal(0.4, Held(1000, 300, 699), 0.002);
}
