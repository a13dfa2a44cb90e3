namespace LiveHeat.Engine.Forecasts;

/// <summary>
/// Linear regression with a normal prior on every coefficient (ridge regression as Bayes sees it): what is seen pulls a coefficient from its prior as far as it
/// weighs more. Coefficients are numbered from 0; a row names those that it has, all others are 0.
/// </summary>
internal sealed class LeastSquares
{
    private readonly double[,] factor;

    /// <summary>Solves it.</summary>
    /// <param name="priors">Mean and variance of every coefficient before anything is seen.</param>
    /// <param name="rows">What is seen: coefficients with their weights, the value, and its variance.</param>
    public LeastSquares(IReadOnlyList<(double Mean, double Variance)> priors, IReadOnlyList<Row> rows)
    {
        var size = priors.Count;
        var precision = new double[size, size];
        var pull = new double[size];
        for (var i = 0; i < size; i++)
        {
            precision[i, i] = 1 / priors[i].Variance;
            pull[i] = priors[i].Mean / priors[i].Variance;
        }

        foreach (var row in rows)
        {
            foreach (var (i, own) in row.Terms)
            {
                pull[i] += own * row.Value / row.Variance;
                foreach (var (j, other) in row.Terms)
                {
                    precision[i, j] += own * other / row.Variance;
                }
            }
        }

        factor = Cholesky(precision);
        Means = Back(Forward(pull));
    }

    /// <summary>What the coefficients are, as far as is known.</summary>
    public double[] Means { get; }

    /// <summary>The value that a row would have, without its noise.</summary>
    public double Value(IReadOnlyList<(int Coefficient, double Weight)> terms) => terms.Sum(term => Means[term.Coefficient] * term.Weight);

    /// <summary>
    /// A sum of coefficients in coordinates in which what is not known of them is round: the product of two such sums with each other is their covariance, that of one with
    /// itself its variance.
    /// </summary>
    public double[] Rounded(double[] weights) => Forward(weights);

    /// <summary>The lower triangle whose product with its own transpose is the matrix, which is symmetric and positive.</summary>
    public static double[,] Cholesky(double[,] matrix)
    {
        var size = matrix.GetLength(0);
        var lower = new double[size, size];
        for (var i = 0; i < size; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = matrix[i, j];
                for (var k = 0; k < j; k++)
                {
                    sum -= lower[i, k] * lower[j, k];
                }

                lower[i, j] = i == j ? Math.Sqrt(sum) : sum / lower[j, j];
            }
        }

        return lower;
    }

    private double[] Forward(double[] right)
    {
        var solved = new double[right.Length];
        for (var i = 0; i < right.Length; i++)
        {
            var sum = right[i];
            for (var k = 0; k < i; k++)
            {
                sum -= factor[i, k] * solved[k];
            }

            solved[i] = sum / factor[i, i];
        }

        return solved;
    }

    private double[] Back(double[] right)
    {
        var solved = new double[right.Length];
        for (var i = right.Length - 1; i >= 0; i--)
        {
            var sum = right[i];
            for (var k = i + 1; k < right.Length; k++)
            {
                sum -= factor[k, i] * solved[k];
            }

            solved[i] = sum / factor[i, i];
        }

        return solved;
    }

    /// <summary>Something seen.</summary>
    public readonly record struct Row((int Coefficient, double Weight)[] Terms, double Value, double Variance);
}
