namespace LiveHeat.Engine.Judging;

public class IntervalTests
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1, Wilson's 95 % interval, recomputed.
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void A_share_has_Wilsons_interval(int hits, int trials, double from, double to)
    {
        var interval = Interval.Wilson(hits, trials);

        Assert.Equal(from, interval.From, 4);
        Assert.Equal(to, interval.To, 4);
    }

    [Fact]
    public void Of_nothing_nothing_is_known() => Assert.Equal(new Interval(0, 1), Interval.Wilson(0, 0));
}
