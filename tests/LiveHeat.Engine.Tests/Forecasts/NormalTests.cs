namespace LiveHeat.Engine.Forecasts;

public class NormalTests
{
    // Abramowitz & Stegun, table of the normal distribution (from memory, recomputed).
    [Theory]
    [InlineData(0.5, 0.6914624613)]
    [InlineData(1, 0.8413447461)]
    [InlineData(1.96, 0.9750021049)]
    [InlineData(-1, 0.1586552539)]
    public void The_distribution_is_the_tables(double x, double below) => Assert.InRange(Normal.Below(x), below - 2e-7, below + 2e-7);

    /// <summary>MathNet.Numerics as an outside check, over the whole range in use.</summary>
    [Fact]
    public void It_agrees_with_a_reference_library()
    {
        for (var x = -6.0; x <= 6; x += 0.01)
        {
            Assert.InRange(Normal.Below(x) - MathNet.Numerics.Distributions.Normal.CDF(0, 1, x), -2e-7, 2e-7);
            Assert.InRange(Normal.Density(x) - MathNet.Numerics.Distributions.Normal.PDF(0, 1, x), -1e-12, 1e-12);
        }
    }

    [Fact]
    public void Drawn_numbers_have_its_mean_and_spread()
    {
        var chance = new Chance(3);
        var drawn = Enumerable.Range(0, 20_000).Select(_ => chance.Normal()).ToList();

        Assert.InRange(MathNet.Numerics.Statistics.Statistics.Mean(drawn), -0.03, 0.03);            // four standard errors
        Assert.InRange(MathNet.Numerics.Statistics.Statistics.StandardDeviation(drawn), 0.98, 1.02);
    }
}
