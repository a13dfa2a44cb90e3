namespace LiveHeat.Engine.Forecasts;

/// <summary>The normal distribution.</summary>
public static class Normal
{
    /// <summary>The chance of a value up to <paramref name="x"/>, mean 0, standard deviation 1.</summary>
    /// <remarks>By the complementary error function of W. J. Cody's kind (rational approximation of Numerical Recipes, erfc with Chebyshev coefficients, from memory): below 2e-7 off everywhere.</remarks>
    public static double Below(double x) => 0.5 * Erfc(-x / Math.Sqrt(2));

    /// <summary>The density at <paramref name="x"/>.</summary>
    public static double Density(double x) => Math.Exp(-0.5 * x * x) / Math.Sqrt(2 * Math.PI);

    private static double Erfc(double x)
    {
        var z = Math.Abs(x);
        var t = 1 / (1 + (0.5 * z));
        var tail = t * Math.Exp((-z * z) - 1.26551223 + (t * (1.00002368 + (t * (0.37409196 + (t * (0.09678418 + (t * (-0.18628806 + (t * (0.27886807
            + (t * (-1.13520398 + (t * (1.48851587 + (t * (-0.82215223 + (t * 0.17087277))))))))))))))))));
        return x >= 0 ? tail : 2 - tail;
    }
}
