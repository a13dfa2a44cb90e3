namespace LiveHeat.Engine.Judging;

/// <summary>A share between 0 and 1 that is not known exactly.</summary>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end.</param>
public readonly record struct Interval(double From, double To)
{
    private const double Quantile975 = 1.9599639845400545;

    /// <summary>Wilson's 95 % interval of a share: it stays inside 0 and 1, and says something even when nothing was counted.</summary>
    /// <remarks>NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1.</remarks>
    /// <param name="hits">How many of them, from 0.</param>
    /// <param name="trials">How many in all; with none the interval is 0 to 1.</param>
    public static Interval Wilson(int hits, int trials)
    {
        if (trials <= 0)
        {
            return new Interval(0, 1);
        }

        const double Z2 = Quantile975 * Quantile975;
        var share = (double)hits / trials;
        var middle = share + (Z2 / (2 * trials));
        var half = Quantile975 * Math.Sqrt((share * (1 - share) / trials) + (Z2 / (4.0 * trials * trials)));
        return new Interval(Math.Max(0, (middle - half) / (1 + (Z2 / trials))), Math.Min(1, (middle + half) / (1 + (Z2 / trials))));
    }
}
