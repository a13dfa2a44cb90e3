namespace LiveHeat.Screens.Words;

public sealed class TimeWordsTests
{
    [Theory]
    [InlineData("8:32.4", 512_400)]
    [InlineData("12:00", 720_000)]
    [InlineData("0:05", 5_000)]
    [InlineData("45", 45_000)]
    [InlineData("1:02:03.5", 3_723_500)]
    public void A_time_is_read_as_it_is_written(string text, int ms) => Assert.Equal(ms, TimeWords.Parse(text));

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("eight")]
    [InlineData("8:61")]
    [InlineData("8:-1")]
    [InlineData("1:2:3:4")]
    public void What_is_no_time_is_not_read(string? text) => Assert.Null(TimeWords.Parse(text));

    [Theory]
    [InlineData(512_400, "8:32.4")]
    [InlineData(47_510, "0:47.51")]
    public void An_exact_time_shows_all_it_has(long ms, string text) => Assert.Equal(text, TimeWords.Exact(ms));

    [Theory]
    [InlineData(499, "under 1 s")]
    [InlineData(8_100, "8 s")]
    [InlineData(59_600, "60 s")]
    [InlineData(240_000, "4 min")]
    public void A_gap_carries_its_unit_and_no_false_precision(long ms, string text) => Assert.Equal(text, TimeWords.Gap(ms));
}
