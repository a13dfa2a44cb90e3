using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Forecasts;

/// <summary>When a team may be through. An estimate, never a result; confirmed and estimated do not mix.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="FinishMs">Lane time of the finish that is as likely too early as too late, milliseconds.</param>
/// <param name="EarlyMs">One of ten finishes comes before it.</param>
/// <param name="LateMs">One of ten comes after it: between the two lie 80 %.</param>
/// <param name="BeatsCap">The chance to finish in time, 0 to 1.</param>
/// <param name="Places">The chance of each place among the lanes of its prescription, from the first; they add up to 1.</param>
public sealed record LaneForecast(LaneNumber Lane, long FinishMs, long EarlyMs, long LateMs, double BeatsCap, Items<double> Places);

/// <summary>Forecasts of a running heat.</summary>
public static class Forecast
{
    /// <summary>A lane says nothing of its finish before it has done so many steps.</summary>
    public const int LeastSteps = 3;

    private const int Draws = 400;
    private const double Quantile90 = 1.2815515655446004;

    /// <summary>One forecast a lane that is at work and has shown enough; empty while there is too little to know, and where nobody finishes.</summary>
    /// <param name="heat">The heat.</param>
    /// <param name="now">The instant.</param>
    /// <param name="priors">What earlier heats of the same workout say.</param>
    /// <param name="seed">For the chances of places, which are drawn: the same seed gives the same figures.</param>
    public static Items<LaneForecast> Of(HeatState heat, Instant now, PacePriors priors, int seed) => Whole(heat, now, priors, seed).Lanes;

    /// <summary>The same, with who may be past whom soon and when the next tags come.</summary>
    public static HeatForecast Whole(HeatState heat, Instant now, PacePriors priors, int seed)
    {
        if (heat.Clock.HeatMs(now) is not { } at || at <= 0)
        {
            return HeatForecast.Nothing;
        }

        var groups = heat.Lanes.Where(lane => !lane.Unranked && Foretold(lane.Plan) && lane.Stopped is null)
            .GroupBy(lane => lane.Plan.Group).Select(group => Of(heat, group.ToList(), at, priors, seed)).ToList();
        return new HeatForecast(
            groups.SelectMany(group => group.Lanes).OrderBy(lane => lane.Lane).ToItems(), groups.SelectMany(group => group.Catches).ToItems(),
            groups.SelectMany(group => group.Tags).OrderBy(tag => tag.InMs).ThenBy(tag => tag.Lane).ToItems());
    }

    /// <summary>What a heat says of its movements' pace, for the next one.</summary>
    public static IReadOnlyDictionary<PaceKey, PacePrior> Learned(HeatState heat) =>
        heat.Lanes.Where(lane => Foretold(lane.Plan)).GroupBy(lane => lane.Plan.Group).SelectMany(group => new PaceModel([.. group], PacePriors.None).Learned()).ToDictionary(pair => pair.Key, pair => pair.Value);

    /// <summary>One step follows the other: with rounds by the clock rest stands between them, and attempts and readings take the time they take.</summary>
    private static bool Foretold(RelayPlan plan) => plan.Timed || (plan.Endless && plan.Windows.Count == 0);

    private static HeatForecast Of(HeatState heat, List<LaneState> lanes, long heatMs, PacePriors priors, int seed)
    {
        if (lanes.Count(lane => lane.DoneSteps >= LeastSteps) * 2 < lanes.Count)
        {
            return HeatForecast.Nothing;
        }

        var model = new PaceModel(lanes, priors);
        return new HeatForecast(lanes[0].Plan.Timed ? Finishes(model, lanes, heatMs, seed) : [], Passages.Catches(model, heat, lanes, heatMs).ToItems(), Passages.Tags(model, lanes, heatMs).ToItems());
    }

    private static Items<LaneForecast> Finishes(PaceModel model, List<LaneState> lanes, long heatMs, int seed)
    {
        var ahead = lanes.ConvertAll(lane => Remaining.Of(model, lane, heatMs - lane.HeldMs));
        var places = Places(ahead, seed);
        return ahead.Select((rest, i) => (Before: rest, Places: places[i])).Where(one => !one.Before.Lane.Finished && one.Before.Lane.DoneSteps >= LeastSteps).Select(one => new LaneForecast(
            one.Before.Lane.Lane, Finish(one.Before, 0), Finish(one.Before, -Quantile90), Finish(one.Before, Quantile90),
            one.Before.Below(one.Before.Lane.CapHeatMs - one.Before.Lane.HeldMs), one.Places)).ToItems();
    }

    private static long Finish(Remaining rest, double quantile) => (long)Math.Round(rest.FromMs + Math.Exp(rest.LogMean + (quantile * rest.LogDeviation)));

    /// <summary>The lanes' finishes drawn together: what the model does not know of the movements and of tiring is the same for all.</summary>
    private static Items<double>[] Places(List<Remaining> ahead, int seed)
    {
        var chance = new Chance(seed);
        var triangle = LeastSquares.Cholesky(Covariance(ahead));
        var counts = ahead.ConvertAll(_ => new int[ahead.Count]);
        var (normals, finishes, order) = (new double[ahead.Count], new double[ahead.Count], new int[ahead.Count]);
        for (var draw = 0; draw < Draws; draw++)
        {
            for (var i = 0; i < ahead.Count; i++)
            {
                normals[i] = chance.Normal();
                var shared = 0.0;
                for (var j = 0; j <= i; j++)
                {
                    shared += triangle[i, j] * normals[j];
                }

                finishes[i] = ahead[i].Draw(shared, chance.Normal());
                order[i] = i;
            }

            Array.Sort(finishes, order);
            for (var place = 0; place < order.Length; place++)
            {
                counts[order[place]][place]++;
            }
        }

        return [.. counts.Select(lane => lane.Select(count => (double)count / Draws).ToItems())];
    }

    private static double[,] Covariance(List<Remaining> ahead)
    {
        const double Nothing = 1e-12;       // lets a lane that is through be drawn like the others
        var covariance = new double[ahead.Count, ahead.Count];
        for (var i = 0; i < ahead.Count; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                covariance[i, j] = covariance[j, i] = ahead[i].With(ahead[j]) + (i == j ? Nothing : 0);
            }
        }

        return covariance;
    }
}
