using LiveHeat.Engine.Heats;
using LiveHeat.Testing;
using LiveHeat.Testing.Paced;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;

namespace LiveHeat.Engine.Forecasts;

/// <summary>What is before a lane, held to MathNet.Numerics: its distributions, its integration and its matrices.</summary>
public class RemainingTests
{
    private static readonly PacedHeat Heat = PacedHeat.From(new Random(5), PacedHeat.Hall(new Random(6)));

    /// <summary>A heat, the instant at which a lane has just done a step, and that lane.</summary>
    private static (HeatState Heat, long At, LaneState Lane) JustDone(double share)
    {
        var at = Heat.Splits[0].First(split => split >= Heat.Finishes.Min() * share);
        var heat = Heat.At(at);
        return (heat, at, heat.Lanes[0]);
    }

    [Theory]
    [InlineData(20_000, 0.15, 0)]
    [InlineData(20_000, 0.15, 5_000)]
    [InlineData(20_000, 0.15, 20_000)]
    [InlineData(20_000, 0.15, 30_000)]
    [InlineData(4_000, 0.4, 2_500)]
    [InlineData(4_000, 0.4, 9_000)]
    [InlineData(90_000, 0.25, 120_000)]
    public void What_is_left_of_a_set_has_the_mean_and_the_variance_that_integration_finds(double median, double deviation, long lasted)
    {
        var duration = new LogNormal(Math.Log(median), deviation);
        var (still, end) = (1 - duration.CumulativeDistribution(lasted), duration.InverseCumulativeDistribution(1 - 1e-12));
        double Moment(int power) => GaussLegendreRule.Integrate(ms => Math.Pow(ms - lasted, power) * duration.Density(ms), Math.Max(lasted, 1), end, 512) / still;
        var (first, second) = (Moment(1), Moment(2));

        var (mean, variance) = Remaining.Left(median, deviation * deviation, lasted);

        Assert.InRange(mean / first, 0.999, 1.001);
        Assert.InRange(variance / (second - (first * first)), 0.995, 1.005);
    }

    [Theory]
    [InlineData(0.35)]
    [InlineData(0.8)]
    public void A_finish_is_log_normal_by_its_chances_and_by_its_quantiles(double share)
    {
        var (heat, at, lane) = JustDone(share);
        var rest = Remaining.Of(new PaceModel(heat.Lanes, PacePriors.None), lane, at);
        var finish = new LogNormal(rest.LogMean, rest.LogDeviation);
        var foretold = Forecast.Of(heat, Some.Go + at, PacePriors.None, 1)[0];

        Assert.All(Enumerable.Range(1, 40), i =>
        {
            var ms = (long)(finish.Median * i / 20);
            Assert.InRange(rest.Below((long)rest.FromMs + ms) - finish.CumulativeDistribution(ms), -1e-6, 1e-6);
        });
        foreach (var (told, part) in new[] { (foretold.EarlyMs, 0.1), (foretold.FinishMs, 0.5), (foretold.LateMs, 0.9) })
        {
            Assert.InRange(told - (rest.FromMs + finish.InverseCumulativeDistribution(part)), -1, 1);
        }
    }

    /// <summary>Exactly: the two first moments are kept, whatever the shape between them.</summary>
    [Theory]
    [InlineData(0.35)]
    [InlineData(0.8)]
    public void The_mean_of_what_is_left_is_the_sum_of_the_means_of_its_steps(double share)
    {
        var (heat, at, lane) = JustDone(share);
        var model = new PaceModel(heat.Lanes, PacePriors.None);
        var rest = Remaining.Of(model, lane, at);
        var sum = lane.Plan.Steps.Skip(lane.DoneSteps).Select(step => model.Ahead(lane, step)).Sum(step => new LogNormal(Math.Log(step.Ms), Math.Sqrt(step.Variance)).Mean);

        Assert.Equal(at, rest.FromMs);
        Assert.InRange(new LogNormal(rest.LogMean, rest.LogDeviation).Mean / sum, 1 - 1e-9, 1 + 1e-9);
    }

    /// <summary>A set that has lasted a while counts with what is left of it, and not as if it had just begun.</summary>
    [Theory]
    [InlineData(0.35, 5_000)]
    [InlineData(0.35, 60_000)]
    [InlineData(0.8, 20_000)]
    public void The_open_step_counts_with_what_is_left_of_it(double share, long lasted)
    {
        var (heat, at, lane) = JustDone(share);
        var model = new PaceModel(heat.Lanes, PacePriors.None);
        var rest = Remaining.Of(model, lane, at + lasted);
        var steps = lane.Plan.Steps.Skip(lane.DoneSteps).Select(step => model.Ahead(lane, step)).ToList();
        var sum = Remaining.Left(steps[0].Ms, steps[0].Variance, lasted).Mean + steps.Skip(1).Sum(step => Remaining.Left(step.Ms, step.Variance, 0).Mean);

        Assert.Equal(at + lasted, rest.FromMs);
        Assert.InRange(new LogNormal(rest.LogMean, rest.LogDeviation).Mean / sum, 1 - 1e-9, 1 + 1e-9);
    }

    /// <summary>The steps drawn one by one, with all that the model does not know of its factors, and added: what comes out is what one log-normal in their place says.</summary>
    [Theory]
    [InlineData(0.35)]
    [InlineData(0.8)]
    public void The_sum_of_the_steps_is_what_one_log_normal_in_their_place_says(double share)
    {
        var (heat, at, lane) = JustDone(share);
        var model = new PaceModel(heat.Lanes, PacePriors.None);
        var foretold = Forecast.Of(heat, Some.Go + at, PacePriors.None, 1)[0];
        var steps = lane.Plan.Steps.Skip(lane.DoneSteps).Select(step => model.Ahead(lane, step)).ToList();
        var rounded = Matrix<double>.Build.DenseOfRowArrays(Enumerable.Range(0, model.Size).Select(one => model.Rounded([.. Enumerable.Range(0, model.Size).Select(i => i == one ? 1.0 : 0)])));
        var random = new Random(3);
        var drawn = Enumerable.Range(0, 40_000).Select(_ =>
        {
            var wrong = rounded * Vector<double>.Build.Dense(model.Size, _ => Normal(random));
            var sum = steps.Sum(step => step.Ms * Math.Exp(step.Terms.Sum(term => wrong[term.Coefficient] * term.Weight) + (Math.Sqrt(step.Variance) * Normal(random))));
            return at + (sum * (1 + (0.04 * Normal(random))));
        }).Order().ToList();

        foreach (var (told, part) in new[] { (foretold.EarlyMs, 0.1), (foretold.FinishMs, 0.5), (foretold.LateMs, 0.9) })
        {
            // One hundredth of what is left to do.
            Assert.InRange(told - drawn[(int)(part * drawn.Count)], -0.01 * (foretold.FinishMs - at), 0.01 * (foretold.FinishMs - at));
        }
    }

    private static double Normal(Random random) => MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1);
}
