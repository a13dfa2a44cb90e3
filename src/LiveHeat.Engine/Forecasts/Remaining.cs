using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Forecasts;

/// <summary>The work still before a lane: its duration as a log-normal distribution with the mean and the variance of the sum of its steps.</summary>
/// <remarks>A sum of log-normals taken as one with the same first two moments: Fenton and Wilkinson's approximation (from memory).</remarks>
internal sealed class Remaining
{
    /// <summary>What the model does not know of a team's rest, as a share of it (assumed): one athlete is faster than the other, something falls over.</summary>
    private const double Unforeseen = 0.04;

    private readonly double ownDeviation;

    private Remaining(LaneState lane, double fromMs, double mean, double ownVariance, double[] gradient, PaceModel model)
    {
        (Lane, FromMs) = (lane, fromMs);
        ownVariance += Unforeseen * Unforeseen * mean * mean;
        Shared = mean > 0 ? model.Rounded([.. gradient.Select(weight => weight / mean)]) : [];
        var spread = mean > 0 ? Math.Log(1 + (ownVariance / (mean * mean)) + With(this)) : 0;
        LogDeviation = Math.Sqrt(spread);
        LogMean = mean > 0 ? Math.Log(mean) - (spread / 2) : double.NegativeInfinity;
        ownDeviation = mean > 0 ? Math.Sqrt(Math.Log(1 + (ownVariance / (mean * mean)))) : 0;
    }

    /// <summary>What is not known of the model, as far as it moves this lane's logarithm.</summary>
    private double[] Shared { get; }

    public LaneState Lane { get; }

    /// <summary>Lane time from which on the rest counts.</summary>
    public double FromMs { get; }

    public double LogMean { get; }

    public double LogDeviation { get; }

    /// <summary>What is before a lane at a lane time. The open step goes on since the last split: it may take longer than it has, not shorter.</summary>
    public static Remaining Of(PaceModel model, LaneState lane, long laneMs)
    {
        if (lane.Finish is { } finish)
        {
            return new Remaining(lane, finish.LaneMs, 0, 0, new double[model.Size], model);
        }

        var gradient = new double[model.Size];
        var (mean, variance) = (0.0, 0.0);
        var (known, since) = lane.LastSplit() is { } last ? (last.Step, last.Split.LaneMs) : (0, 0L);
        for (var number = known + 1; number <= lane.Plan.LastStep; number++)
        {
            var (ms, spread, terms) = model.Ahead(lane, lane.Plan.Steps[number - 1]);
            var (stepMean, stepVariance) = Left(ms, spread, number == lane.DoneSteps + 1 && number == known + 1 ? laneMs - since : 0);
            mean += stepMean;
            variance += stepVariance;
            foreach (var (coefficient, weight) in terms)
            {
                gradient[coefficient] += weight * stepMean;
            }
        }

        // With an open step that began at a known moment the rest counts from now; else from the last split.
        return new Remaining(lane, known == lane.DoneSteps ? Math.Max(laneMs, since) : since, mean, variance, gradient, model);
    }

    /// <summary>The chance to be through by a lane time; 1 without a cap.</summary>
    public double Below(long? laneMs) => laneMs is not { } by ? 1
        : by <= FromMs ? 0
        : LogDeviation == 0 ? 1
        : Normal.Below((Math.Log(by - FromMs) - LogMean) / LogDeviation);

    /// <summary>The covariance of two lanes' logarithms from what is not known of the model; 0 with a lane that is through.</summary>
    public double With(Remaining other) => Shared.Zip(other.Shared, (left, right) => left * right).Sum();

    /// <summary>A finish as it might be.</summary>
    /// <param name="shared">What the model may be wrong by for this lane, drawn.</param>
    /// <param name="own">A standard normal number for the lane's own luck.</param>
    public double Draw(double shared, double own) => FromMs + Math.Exp(LogMean + shared + (ownDeviation * own));

    /// <summary>Mean and variance of what is left of a log-normal duration that has lasted so long already.</summary>
    public static (double Mean, double Variance) Left(double median, double spread, long lasted)
    {
        if (lasted <= 0)
        {
            return (median * Math.Exp(spread / 2), median * median * Math.Exp(spread) * (Math.Exp(spread) - 1));
        }

        var deviation = Math.Sqrt(spread);
        var z = Math.Log(lasted / median) / deviation;
        var left = Normal.Below(-z);
        if (left < 1e-6)
        {
            // Far longer than ever expected: something is the matter; it may last as long again.
            return (lasted * 0.5, lasted * lasted * 0.25);
        }

        var first = median * Math.Exp(spread / 2) * Normal.Below(deviation - z) / left;
        var second = median * median * Math.Exp(2 * spread) * Normal.Below((2 * deviation) - z) / left;
        return (Math.Max(1, first - lasted), Math.Max(1, second - (first * first)));
    }
}
