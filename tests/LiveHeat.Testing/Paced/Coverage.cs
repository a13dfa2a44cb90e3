namespace LiveHeat.Testing.Paced;

/// <summary>How often intervals held. Lanes of one heat share their luck, so that it is the heats that are counted when one asks how sure the figure is.</summary>
public sealed class Coverage
{
    private readonly Dictionary<int, (double Held, int Count)> clusters = [];

    public int Count => clusters.Values.Sum(cluster => cluster.Count);

    /// <summary>0 to 1.</summary>
    public double Share => clusters.Values.Sum(cluster => cluster.Held) / Count;

    /// <summary>The share's standard error, from how it differs between clusters (the ratio estimator's).</summary>
    public double Error
    {
        get
        {
            var (share, n) = (Share, (double)clusters.Count);
            var squares = clusters.Values.Sum(cluster => Math.Pow(cluster.Held - (share * cluster.Count), 2));
            return Math.Sqrt(squares * n / (n - 1)) / Count;
        }
    }

    /// <summary>One interval.</summary>
    /// <param name="held">1 if it did, 0 if not; between where nobody can know.</param>
    /// <param name="cluster">What it shares its luck with.</param>
    public void Add(double held, int cluster)
    {
        var (before, count) = clusters.GetValueOrDefault(cluster);
        clusters[cluster] = (before + held, count + 1);
    }
}
