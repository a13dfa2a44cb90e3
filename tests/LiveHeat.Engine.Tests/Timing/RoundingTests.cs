using CsCheck;

namespace LiveHeat.Engine.Timing;

public class RoundingTests
{
    [Theory]
    // Hand time on the track, up to the next 0.1 s unless exact: World Athletics Technical Rules, timing rule TR 19 (sub-number and first
    // example from memory; the others from national federations' practice).
    [InlineData(Rounding.UpTenth, "10.11", "10.2")]
    [InlineData(Rounding.UpTenth, "10.01", "10.1")]
    [InlineData(Rounding.UpTenth, "10.00", "10.0")]
    [InlineData(Rounding.UpTenth, "12.32", "12.4")]
    [InlineData(Rounding.UpTenth, "4:12.44", "4:12.5")]
    // The rounding after three timekeepers: TR 19 / IAAF rule 165.
    [InlineData(Rounding.UpTenth, "4:12.54", "4:12.6")]
    // Partly outside the stadium, up to the whole second: the same rule (older IAAF rule 165).
    [InlineData(Rounding.UpSecond, "2:09:44.3", "2:09:45")]
    [InlineData(Rounding.UpSecond, "2:25:08.1", "2:25:09")]
    // Photo finish, up to the next 0.01 s: the same rule, from memory.
    [InlineData(Rounding.UpHundredth, "26:17.533", "26:17.54")]
    // Swimming: two decimals, the third is dropped, equal is a tie: World Aquatics SW 11.2.
    [InlineData(Rounding.DownHundredth, "47.519", "47.51")]
    [InlineData(Rounding.DownHundredth, "47.511", "47.51")]
    public void Official_times_are_those_of_the_published_rules(Rounding rule, string measured, string official) =>
        Assert.Equal(Ms(official), rule.Official(Ms(measured)));

    [Fact]
    public void Up_is_never_earlier_down_is_never_later_and_twice_is_once() =>
        Gen.Select(Gen.Enum<Rounding>(), Gen.Long[0, 4 * 3_600_000]).Sample((rule, ms) =>
        {
            var (gridMs, officialMs) = (rule switch { Rounding.UpTenth => 100, Rounding.UpSecond => 1000, _ => 10 }, rule.Official(ms));
            Assert.Equal(0, officialMs % gridMs);
            Assert.InRange(rule == Rounding.DownHundredth ? ms - officialMs : officialMs - ms, 0, gridMs - 1);
            Assert.Equal(officialMs, rule.Official(officialMs));
        });

    [Fact]
    public void A_rule_that_does_not_exist_rounds_nothing() => Assert.Throws<ArgumentOutOfRangeException>(() => ((Rounding)99).Official(1));

    private static long Ms(string time)
    {
        var parts = time.Split(':');
        var seconds = decimal.Parse(parts[^1], System.Globalization.CultureInfo.InvariantCulture);
        var minutes = parts.SkipLast(1).Aggregate(0, (sum, part) => (sum * 60) + int.Parse(part, System.Globalization.CultureInfo.InvariantCulture));
        return (long)(((minutes * 60) + seconds) * 1000);
    }
}
