namespace LiveHeat.Engine.Timing;

public class TimeTextTests
{
    [Theory]
    [InlineData(0, "0:00.0")]
    [InlineData(512_400, "8:32.4")]
    [InlineData(47_510, "0:47.51")]
    [InlineData(59_999, "0:59.99")]
    [InlineData(3_600_000, "1:00:00.0")]
    [InlineData(7_785_000, "2:09:45.0")]
    [InlineData(-1_500, "−0:01.5")]
    public void A_time_has_tenths_and_hundredths_only_when_there_are_any(long ms, string text) => Assert.Equal(text, TimeText.Of(ms));

    [Theory]
    [InlineData(47_519, "0:47.5", "0:47")]
    [InlineData(-1_900, "−0:01.9", "−0:01")]
    [InlineData(3_661_990, "1:01:01.9", "1:01:01")]
    public void What_is_finer_is_cut_off(long ms, string tenths, string whole) => Assert.Equal((tenths, whole), (TimeText.Tenths(ms), TimeText.Whole(ms)));
}
