namespace LiveHeat.Engine.Timing;

public class ClockExchangeTests
{
    [Fact]
    public void Offset_and_delay_are_those_of_the_worked_exchange()
    {
        // T1 0.410634, T2 0.415284, T3 0.415471, T4 0.430596 s: offset -0.0052375, delay 0.019775.
        // Public worked example of the formulas of RFC 5905 (2010), section 8.
        var exchange = new ClockExchange(410.634, 415.284, 415.471, 430.596);

        Assert.Equal(-5.2375, exchange.OffsetMs, 9);
        Assert.Equal(19.775, exchange.DelayMs, 9);
    }

    [Fact]
    public void The_error_of_the_worked_exchange_stays_under_half_its_delay()
    {
        // In that example the true offset was 0. The bound is the synchronisation distance of RFC 5905, sections 4 and 10.
        var exchange = new ClockExchange(410.634, 415.284, 415.471, 430.596);

        Assert.InRange(Math.Abs(exchange.OffsetMs), 0, exchange.DelayMs / 2);
    }

    [Fact]
    public void A_frequency_error_of_100_ppm_over_64_s_looks_like_a_delay_of_minus_6_4_ms()
    {
        // RFC 5905, section 8: the client's clock runs 100 ppm slow through T4-T1 = 64 s, all of it spent at the server.
        var exchange = new ClockExchange(0, 0, 64_000, 64_000 * (1 - 100e-6));

        Assert.Equal(-6.4, exchange.DelayMs, 9);
    }

    [Fact]
    public void Cristians_bound_holds_the_true_time()
    {
        // Round trip 80 ms, at least 30 ms one way: T + 40 +/- 10 ms. Computed from Cristian 1989, as restated in encyclopaedias.
        foreach (var outMs in new[] { 30.0, 35, 40, 45, 50 })
        {
            var exchange = new ClockExchange(1000, 1000 + outMs, 1000 + outMs, 1080);
            Assert.Equal(80, exchange.DelayMs, 9);
            Assert.InRange(exchange.OffsetMs, -10.000001, 10.000001);
        }
    }
}
