using LiveHeat.Contracts.Language;

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

    /// <summary>Names of days and months are those of Unicode CLDR's short forms, from memory.</summary>
    [Theory]
    [InlineData("en", "8:32.4", "under 1 s", "0.09 s", "Sun 29 Nov, 04:46")]
    [InlineData("es", "8:32,4", "menos de 1 s", "0,09 s", "dom 29 nov, 04:46")]
    [InlineData("fr", "8:32,4", "moins de 1 s", "0,09 s", "dim. 29 nov., 04:46")]
    [InlineData("de", "8:32,4", "unter 1 s", "0,09 s", "So., 29. Nov., 04:46")]
    public void Times_are_written_as_the_language_writes_them_and_read_again(string language, string exact, string gap, string seconds, string day)
    {
        Tongue.Speak(language);
        Assert.Equal(
            [exact, gap, seconds, day],
            [TimeWords.Exact(512_400), TimeWords.Gap(300), SecondsText.Of(90), TimeWords.DayAndTime(new DateTimeOffset(2026, 11, 29, 4, 46, 0, TimeSpan.Zero))]);
        Assert.Equal((512_400, 90), (TimeWords.Parse(exact), SecondsText.Ms(seconds[..^2])));
    }

    [Fact]
    public void Every_day_and_month_has_its_name()
    {
        foreach (var language in Tongue.All)
        {
            Tongue.Speak(language);
            Assert.Equal(7, Enumerable.Range(1, 7).Select(day => TimeWords.DayAndTime(At(1, day)).Split(' ', ',')[0]).Distinct().Count());
            Assert.Equal(12, Enumerable.Range(1, 12).Select(month => TimeWords.DayAndTime(At(month, 1))[4..].Trim(',', ' ')[2..]).Distinct().Count());
        }
    }

    private static DateTimeOffset At(int month, int day) => new(2026, month, day, 12, 0, 0, TimeSpan.Zero);
}
