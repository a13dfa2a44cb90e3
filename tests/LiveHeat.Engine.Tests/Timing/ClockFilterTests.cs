using CsCheck;

namespace LiveHeat.Engine.Timing;

public class ClockFilterTests
{
    /// <summary>An exchange with this offset and delay, back at this moment of the client's clock.</summary>
    private static ClockExchange Sample(double offsetMs, double delayMs, double backMs = 1000) =>
        new(backMs - delayMs, backMs - (delayMs / 2) + offsetMs, backMs - (delayMs / 2) + offsetMs, backMs);

    [Fact]
    public void Of_the_last_samples_the_one_with_the_least_delay_is_believed()
    {
        // (offset, delay) in ms: (12.0,80) (3.1,31) (9.4,64) (-1.0,45) (3.9,33) -> 3.1. Computed from RFC 5905, section 10.
        var filter = new ClockFilter();
        foreach (var (offset, delay) in new[] { (12.0, 80.0), (3.1, 31), (9.4, 64), (-1.0, 45), (3.9, 33) })
        {
            filter.Add(Sample(offset, delay));
        }

        Assert.Equal(3.1, filter.Best!.Value.OffsetMs, 9);
    }

    [Fact]
    public void Only_the_last_eight_are_kept()
    {
        // Eight stages: RFC 5905, section 10.
        var filter = new ClockFilter();
        filter.Add(Sample(1, 10));
        for (var i = 0; i < 7; i++)
        {
            filter.Add(Sample(2, 50 + i));
        }

        Assert.Equal(1, filter.Best!.Value.OffsetMs, 9);
        filter.Add(Sample(3, 60));
        Assert.Equal(2, filter.Best!.Value.OffsetMs, 9);
    }

    [Fact]
    public void What_is_believed_is_never_older_than_what_was_believed_before() =>
        // RFC 5905, section 10: a sample that is not newer than the last one used is not used.
        Gen.Double[1, 200].Array[1, 40].Sample(delays =>
        {
            var filter = new ClockFilter();
            var used = double.NegativeInfinity;
            for (var i = 0; i < delays.Length; i++)
            {
                filter.Add(Sample(0, delays[i], i * 1000));
                Assert.InRange(filter.Best!.Value.Back, used, i * 1000);
                used = filter.Best.Value.Back;
            }
        });

    [Fact]
    public void The_error_is_half_the_delay_and_grows_with_the_clocks_drift()
    {
        // Maximum error delay/2 + dispersion (RFC 5905, sections 4, 10); PHI 15e-6 is 1.296 s a day (sections 7.2, 9.2).
        var filter = new ClockFilter();
        filter.Add(Sample(0, 20, backMs: 0));

        Assert.Equal(10, filter.UncertaintyMs(0), 9);
        Assert.Equal(10 + 1296, filter.UncertaintyMs(86_400_000, ClockFilter.MeasuredRate), 6);
        Assert.Equal(10 + 6.4, filter.UncertaintyMs(64_000, ClockFilter.UnknownRate), 9);
    }

    [Fact]
    public void Nothing_is_known_before_the_first_exchange()
    {
        Assert.Null(new ClockFilter().Best);
        Assert.Equal(double.PositiveInfinity, new ClockFilter().UncertaintyMs(0));
    }

    [Fact]
    public void A_negative_delay_makes_no_negative_error()
    {
        var filter = new ClockFilter();
        filter.Add(Sample(0, -6.4, backMs: 0));

        Assert.Equal(0, filter.UncertaintyMs(0), 9);
    }
}
