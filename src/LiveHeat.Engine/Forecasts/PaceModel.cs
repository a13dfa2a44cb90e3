using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Forecasts;

/// <summary>
/// How fast the lanes of one prescription work. A step's duration is log-normal about its expectation times four factors: its movement's in this heat, the tiring of
/// all (grows through the relay), the team's own, and the team's own tiring. All are learned from the sets done so far: a team that has shown little
/// is taken to be like the others (partial pooling).
/// </summary>
internal sealed class PaceModel
{
    /// <summary>Standard deviations of logarithms before a heat, all assumed: teams differ by about 15 %, tire by about 8 % give or take 10 %, and each by 8 % more or less.</summary>
    private const double Team = 0.15, Tiring = 0.08, TiringSpread = 0.10, OwnTiring = 0.08;

    /// <summary>One set, or one tag, differs from the next by about 15 %; so many of each that assumption is worth.</summary>
    private const double Noise = 0.15, NoiseWorth = 10;

    /// <summary>A short step varies more: the tap itself and a stumble weigh more on it. Milliseconds.</summary>
    private const double Stumble = 4_000;

    private readonly string group;
    private readonly Dictionary<string, int> movements;
    private readonly Dictionary<LaneNumber, int> owns = [];
    private readonly LeastSquares fit;
    private double setVariance = Noise * Noise, tagVariance = Noise * Noise;

    /// <summary>Learns from the lanes.</summary>
    /// <param name="lanes">At least one, all of one prescription.</param>
    /// <param name="priors">What earlier heats say.</param>
    public PaceModel(IReadOnlyList<LaneState> lanes, PacePriors priors)
    {
        group = lanes[0].Plan.Group;
        movements = lanes.SelectMany(lane => lane.Plan.Steps).Select(step => step.Movement).Distinct().Select((name, i) => (name, i)).ToDictionary(pair => pair.name, pair => pair.i);
        var before = movements.OrderBy(pair => pair.Value).Select(pair => priors.Of(group, pair.Key)).Select(prior => (prior.Mean, prior.Variance))
            .Append((Tiring, TiringSpread * TiringSpread)).ToList();
        foreach (var lane in lanes)
        {
            owns[lane.Lane] = before.Count;
            before.AddRange([(0, Team * Team), (0, OwnTiring * OwnTiring)]);
        }

        var seen = lanes.SelectMany(Seen).ToList();
        Count = seen.Count;
        fit = new LeastSquares(before, Rows(seen));
        // The noise of this heat's sets and that of its tags, as far as it tells itself; then once more with it. A tag that waits for an athlete says nothing of sets.
        (setVariance, tagVariance) = (NoiseOf(seen.Where(one => !one.Tag)), NoiseOf(seen.Where(one => one.Tag)));
        fit = new LeastSquares(before, Rows(seen));
    }

    /// <summary>Steps whose duration is known.</summary>
    public int Count { get; }

    /// <summary>Coefficients in all.</summary>
    public int Size => fit.Means.Length;

    /// <summary>What this heat says of each movement that was done in it.</summary>
    public IReadOnlyDictionary<PaceKey, PacePrior> Learned() => movements.ToDictionary(pair => new PaceKey(group, pair.Key), pair =>
    {
        var weights = new double[Size];
        weights[pair.Value] = 1;
        return new PacePrior(fit.Means[pair.Value], fit.Rounded(weights).Sum(part => part * part));
    });

    /// <summary>A step's duration still to come.</summary>
    /// <returns>The median in milliseconds, the variance of its logarithm by itself, and the coefficients that make it.</returns>
    public (double Ms, double Variance, (int Coefficient, double Weight)[] Terms) Ahead(LaneState lane, Step step)
    {
        var terms = Terms(lane, step);
        return (step.ExpectedMs * Math.Exp(fit.Value(terms)), Variance(IsTag(step)) * Share(step), terms);
    }

    /// <summary>See <see cref="LeastSquares.Rounded"/>.</summary>
    public double[] Rounded(double[] weights) => fit.Rounded(weights);

    /// <summary>A tag, or the way across a line: no work.</summary>
    private static bool IsTag(Step step) => step.Kind is StepKind.Tag or StepKind.Finish;

    private double Variance(bool tag) => tag ? tagVariance : setVariance;

    private double NoiseOf(IEnumerable<Shown> shown)
    {
        var (squares, count) = (NoiseWorth * Noise * Noise, NoiseWorth);
        foreach (var one in shown)
        {
            squares += Math.Pow(one.Log - fit.Value(one.Terms), 2) / one.Share;
            count++;
        }

        return squares / count;
    }

    private static double Share(Step step) => 1 + (Stumble / step.ExpectedMs);

    private List<LeastSquares.Row> Rows(List<Shown> seen) => seen.ConvertAll(one => new LeastSquares.Row(one.Terms, one.Log, Variance(one.Tag) * one.Share));

    private (int, double)[] Terms(LaneState lane, Step step)
    {
        // How far through the relay the step's middle is, from -½ to ½: so the team's factor is that of its whole relay.
        // Where the work has no end the relay is its time until the cap: who is beyond what was expected by then is no more tired for it.
        var whole = lane.Plan.Endless ? lane.Plan.CapMs : lane.Plan.ExpectedMs;
        var through = Math.Min(1, (lane.Plan.ExpectedMsThrough(step.Number - 1) + (step.ExpectedMs / 2.0)) / whole) - 0.5;
        var own = owns[lane.Lane];
        return [(movements[step.Movement], 1), (movements.Count, through), (own, 1), (own + 1, through)];
    }

    /// <summary>Steps with a known beginning and end.</summary>
    private IEnumerable<Shown> Seen(LaneState lane)
    {
        for (var number = 1; number <= lane.DoneSteps; number++)
        {
            var from = number == 1 ? 0 : lane.Splits[number - 2]?.LaneMs;
            if (lane.Splits[number - 1]?.LaneMs - from is { } ms and > 0)
            {
                var step = lane.Plan.Steps[number - 1];
                yield return new Shown(Math.Log(ms / (double)step.ExpectedMs), IsTag(step), Share(step), Terms(lane, step));
            }
        }
    }

    /// <summary>A step that was done: the logarithm of its duration over what was expected, and what made it.</summary>
    private readonly record struct Shown(double Log, bool Tag, double Share, (int, double)[] Terms);
}
