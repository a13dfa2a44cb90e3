using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing.Paced;

/// <summary>
/// How good forecasts are, on heats whose truth is known: how often the 80 % interval holds, and the Brier score (the mean squared error of a chance; less is better)
/// of "beats the cap" and "wins", beside two simpler rules: the pace so far goes on, and the order now stands.
/// </summary>
public sealed class Calibration
{
    /// <summary>Parts of the time until the first finish at which forecasts are judged.</summary>
    public static readonly IReadOnlyList<double> Moments = [1 / 3.0, 1 / 2.0, 2 / 3.0, 5 / 6.0];

    private readonly List<double> off = [];

    /// <summary>Of 80 % intervals, how many held, by moment.</summary>
    public IReadOnlyList<Coverage> ByMoment { get; } = [.. Moments.Select(_ => new Coverage())];

    public int Forecasts => ByMoment.Sum(moment => moment.Count);

    /// <summary>Of 80 % intervals, how many held: 0 to 1.</summary>
    public double Coverage => ByMoment.Sum(moment => moment.Share * moment.Count) / Forecasts;

    public Brier Cap { get; } = new();

    public Brier Wins { get; } = new();

    /// <summary>By how much the finish was wrong, as a share of it: the middle of all.</summary>
    public double Off => off.Order().ElementAt(off.Count / 2);

    /// <summary>How many forecasts were of lanes that the cap stopped.</summary>
    public int Capped { get; private set; }

    /// <summary>Plays so many pairs of heats, each pair in a hall: the second knows what the first showed.</summary>
    /// <param name="halls">How many.</param>
    /// <param name="seed">Other heats.</param>
    /// <param name="shape">What is done.</param>
    /// <param name="lanes">In each heat.</param>
    public static Calibration Of(int halls, int seed, PacedShape? shape = null, int lanes = 10)
    {
        var made = new Calibration();
        var random = new Random(seed);
        for (var i = 0; i < halls; i++)
        {
            var hall = PacedHeat.Hall(random, shape?.Workout.Prescriptions.Count > 1 ? 0.15 : 0);
            var first = PacedHeat.From(random, hall, lanes, shape);
            made.Judge(first, PacePriors.None, seed + i, i);
            made.Judge(PacedHeat.From(random, hall, lanes, shape), PacePriors.From([Forecast.Learned(first.At(first.Finishes.Max()))]), seed + i, i);
        }

        return made;
    }

    /// <summary>Second heats of two prescriptions alone, which is where it matters what the first has to say to whom.</summary>
    /// <param name="apart">By how much the lighter prescription's movements differ, see <see cref="PacedHeat.Hall"/>.</param>
    /// <param name="oneFactor">What the first heat showed of a movement is taken together for both prescriptions.</param>
    public static Calibration SecondHeats(int halls, int seed, double apart, bool oneFactor)
    {
        var made = new Calibration();
        var random = new Random(seed);
        for (var i = 0; i < halls; i++)
        {
            var hall = PacedHeat.Hall(random, apart);
            var first = PacedHeat.From(random, hall, shape: PacedShape.TwoDivisions);
            var learned = Forecast.Learned(first.At(first.Finishes.Max()));
            made.Judge(PacedHeat.From(random, hall, shape: PacedShape.TwoDivisions), PacePriors.From([oneFactor ? Together(learned) : learned]), seed + i, i);
        }

        return made;
    }

    /// <summary>Judges the forecasts of a heat at one moment.</summary>
    /// <param name="moment">Which of <see cref="Moments"/>.</param>
    /// <param name="heat">The heat as it was then.</param>
    /// <param name="at">The instant.</param>
    /// <param name="priors">What earlier heats said.</param>
    /// <param name="truth">What became of its lanes.</param>
    /// <param name="seed">For the chances of places.</param>
    /// <param name="cluster">What shares its luck with others.</param>
    public void Judge(int moment, HeatState heat, Instant at, PacePriors priors, IReadOnlyDictionary<LaneNumber, LaneTruth> truth, int seed, int cluster)
    {
        var (simple, places, heatMs) = (Simple(heat), LiveOrder.Of(heat).ToDictionary(placing => placing.Lane), heat.Clock.HeatMs(at)!.Value);
        foreach (var lane in Forecast.Of(heat, at, priors, seed).Where(lane => truth.ContainsKey(lane.Lane)))
        {
            var (became, state, pace) = (truth[lane.Lane], heat.Find(lane.Lane)!, simple[lane.Lane]);
            ByMoment[moment].Add(became.Held(lane), cluster);
            Capped += became.FinishMs is null ? 1 : 0;
            if (became.FinishMs is { } finish)
            {
                off.Add(Math.Abs(lane.FinishMs - finish) / (double)finish);
            }

            var aheadOfCap = state.Plan.ExpectedMsThrough(state.DoneSteps) * (double)became.CapMs / state.Plan.ExpectedMs >= heatMs - state.HeldMs - 1;
            var fastest = simple.Where(other => heat.Find(other.Key)!.Plan.Group == state.Plan.Group).Min(other => other.Value);
            Cap.Add(became.BeatCap, lane.BeatsCap, pace <= became.CapMs ? 1 : 0, aheadOfCap ? 1 : 0);
            Wins.Add(became.Won, lane.Places[0], pace <= fastest ? 1 : 0, places[lane.Lane].Place == 1 ? 1 : 0);
        }
    }

    private void Judge(PacedHeat heat, PacePriors priors, int seed, int cluster)
    {
        var finishes = heat.Finishes.ToList();
        var truth = heat.Groups.SelectMany(group => group.Select(lane => new LaneTruth(Some.Lane(lane), finishes[lane - 1], heat.Caps[lane - 1], finishes[lane - 1] == group.Min(other => finishes[other - 1]))))
            .ToDictionary(lane => lane.Lane);
        for (var moment = 0; moment < Moments.Count; moment++)
        {
            var at = (long)(finishes.Min() * Moments[moment]);
            Judge(moment, heat.At(at), Some.Go + at, priors, truth, seed, cluster);
        }
    }

    /// <summary>Each lane's finish if it went on at the pace so far.</summary>
    private static Dictionary<LaneNumber, double> Simple(HeatState heat) => heat.Lanes.ToDictionary(lane => lane.Lane, lane => lane.LastSplit() is { } last
        ? last.Split.LaneMs * (double)lane.Plan.ExpectedMs / lane.Plan.ExpectedMsThrough(last.Step)
        : double.MaxValue);

    private static Dictionary<PaceKey, PacePrior> Together(IReadOnlyDictionary<PaceKey, PacePrior> learned) => learned.ToDictionary(pair => pair.Key, pair =>
    {
        var all = learned.Where(other => other.Key.Movement == pair.Key.Movement).Select(other => other.Value).ToList();
        var weight = all.Sum(one => 1 / one.Variance);
        return new PacePrior(all.Sum(one => one.Mean / one.Variance) / weight, 1 / weight);
    });
}
