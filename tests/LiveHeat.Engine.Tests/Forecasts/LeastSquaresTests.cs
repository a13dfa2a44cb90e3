using MathNet.Numerics.LinearAlgebra;

namespace LiveHeat.Engine.Forecasts;

/// <summary>The regression held to MathNet.Numerics' matrices.</summary>
public class LeastSquaresTests
{
    [Theory]
    [InlineData(1, 3, 2)]
    [InlineData(2, 8, 5)]
    [InlineData(3, 25, 200)]
    [InlineData(4, 6, 0)]
    public void Means_and_covariances_are_those_of_the_normal_equations(int seed, int size, int count)
    {
        var random = new Random(seed);
        var priors = Enumerable.Range(0, size).Select(_ => (Mean: random.NextDouble() - 0.5, Variance: 0.01 + random.NextDouble())).ToList();
        var rows = Enumerable.Range(0, count).Select(_ => new LeastSquares.Row(
            [.. Enumerable.Range(0, size).OrderBy(_ => random.Next()).Take(Math.Min(4, size)).Select(i => (i, random.NextDouble() - 0.5))], random.NextDouble() - 0.5, 0.01 + random.NextDouble())).ToList();
        var precision = Matrix<double>.Build.DenseOfDiagonalArray([.. priors.Select(prior => 1 / prior.Variance)]);
        var pull = Vector<double>.Build.DenseOfEnumerable(priors.Select(prior => prior.Mean / prior.Variance));
        foreach (var row in rows)
        {
            var x = Vector<double>.Build.Dense(size);
            foreach (var (i, weight) in row.Terms)
            {
                x[i] = weight;
            }

            precision += x.OuterProduct(x) / row.Variance;
            pull += x * row.Value / row.Variance;
        }

        var fit = new LeastSquares(priors, rows);

        var covariance = precision.Inverse();
        Close(covariance * pull, fit.Means);
        for (var i = 0; i < size; i++)
        {
            var own = fit.Rounded(Unit(size, i));
            Close(covariance.Row(i), [.. Enumerable.Range(0, size).Select(j => own.Zip(fit.Rounded(Unit(size, j)), (left, right) => left * right).Sum())]);
        }

        Close(precision.Cholesky().Factor.Enumerate(), LeastSquares.Cholesky(precision.ToArray()).Cast<double>(), byRow: size);
    }

    [Fact]
    public void A_value_is_the_sum_of_what_the_row_names() =>
        Assert.Equal(0.5, new LeastSquares([(1, 1), (2, 1), (-1, 1)], []).Value([(1, 0.5), (2, 0.5)]), 12);

    private static double[] Unit(int size, int one) => [.. Enumerable.Range(0, size).Select(i => i == one ? 1.0 : 0)];

    private static void Close(IEnumerable<double> expected, IEnumerable<double> actual, int byRow = 0)
    {
        // MathNet tells a matrix column by column, an array is row by row.
        var (told, own) = (expected.ToList(), actual.ToList());
        var ordered = byRow == 0 ? own : [.. own.Select((_, i) => own[(i % byRow * byRow) + (i / byRow)])];
        Assert.Equal(told.Count, ordered.Count);
        Assert.All(told.Zip(ordered), pair => Assert.InRange(pair.Second - pair.First, -1e-9, 1e-9));
    }
}
