using CsCheck;

namespace LiveHeat.Engine.Timing;

public class TimekeepersTests
{
    [Theory]
    // Athletics: two agree, that; all differ, the middle; two, the longer. World Athletics TR 19 / IAAF rule 165.
    [InlineData(TimekeeperRule.Athletics, new long[] { 10_200, 10_200, 10_400 }, 10_200)]
    [InlineData(TimekeeperRule.Athletics, new long[] { 252_440, 252_540, 252_620 }, 252_540)]
    [InlineData(TimekeeperRule.Athletics, new long[] { 10_200, 10_300 }, 10_300)]
    // Swimming: two agree, that; else the intermediate; two, the average. World Aquatics SW 11.3.1 to 11.3.3.
    [InlineData(TimekeeperRule.Swimming, new long[] { 58_210, 58_210, 58_350 }, 58_210)]
    [InlineData(TimekeeperRule.Swimming, new long[] { 58_210, 58_290, 58_350 }, 58_290)]
    [InlineData(TimekeeperRule.Swimming, new long[] { 58_200, 58_300 }, 58_250)]
    // The third decimal of the average is dropped: World Aquatics SW 11.2.
    [InlineData(TimekeeperRule.Swimming, new long[] { 58_200, 58_210 }, 58_200)]
    public void Times_combine_as_published(TimekeeperRule rule, long[] timesMs, long expectedMs) => Assert.Equal(expectedMs, Timekeepers.Combine(rule, timesMs));

    [Fact]
    public void Three_hand_times_combine_first_and_round_then() =>
        // (4:12.44, 4:12.54, 4:12.62) -> 4:12.54 -> 4:12.6: TR 19 / IAAF rule 165.
        Assert.Equal(252_600, Rounding.UpTenth.Official(Timekeepers.Combine(TimekeeperRule.Athletics, [252_620, 252_440, 252_540])!.Value));

    [Fact]
    public void One_timekeeper_is_believed_and_none_says_nothing()
    {
        Assert.Equal(10_210, Timekeepers.Combine(TimekeeperRule.Swimming, [10_210]));
        Assert.Null(Timekeepers.Combine(TimekeeperRule.Athletics, []));
    }

    [Fact]
    public void More_than_three_are_the_callers_error() =>
        Assert.Throws<ArgumentException>(() => Timekeepers.Combine(TimekeeperRule.Athletics, [1, 2, 3, 4]));

    [Fact]
    public void The_order_of_the_timekeepers_does_not_matter_and_nobody_is_outdone() =>
        Gen.Select(Gen.Enum<TimekeeperRule>(), Gen.Long[10_000, 90_000].Array[1, 3]).Sample((rule, times) =>
        {
            var combined = Timekeepers.Combine(rule, times)!.Value;
            Assert.Equal(combined, Timekeepers.Combine(rule, [.. times.Reverse()]));
            Assert.InRange(combined, times.Min() / 10 * 10, times.Max());
        });
}
