using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;

namespace LiveHeat.Testing.Paced;

/// <summary>
/// How good forecasts are, on heats whose truth is known: how often the 80 % interval holds, and the Brier score (the mean squared error of a chance; less is better)
/// of "beats the cap" and "wins", beside two simpler rules: the pace so far goes on, and the order now stands.
/// </summary>
public sealed class Calibration
{
    private static readonly double[] Moments = [1 / 3.0, 1 / 2.0, 2 / 3.0, 5 / 6.0];

    public int Forecasts { get; private set; }

    public int Held { get; private set; }

    /// <summary>Of 80 % intervals, how many held: 0 to 1.</summary>
    public double Coverage => (double)Held / Forecasts;

    public Brier Cap { get; } = new();

    public Brier Wins { get; } = new();

    /// <summary>Plays so many pairs of heats in one hall: the second knows what the first showed.</summary>
    public static Calibration Of(int halls, int seed)
    {
        var made = new Calibration();
        var random = new Random(seed);
        for (var i = 0; i < halls; i++)
        {
            var hall = PacedHeat.Hall(random);
            var first = PacedHeat.From(random, hall);
            made.Judge(first, PacePriors.None, seed + i);
            var learned = Forecast.Learned(first.At(first.Finishes.Max()));
            made.Judge(PacedHeat.From(random, hall), PacePriors.From([learned]), seed + i);
        }

        return made;
    }

    private void Judge(PacedHeat truth, PacePriors priors, int seed)
    {
        var finishes = truth.Finishes.ToList();
        var winner = finishes.IndexOf(finishes.Min());
        foreach (var moment in Moments)
        {
            var at = (long)(finishes.Min() * moment);
            var heat = truth.At(at);
            var simple = Simple(heat);
            var leader = LiveOrder.Of(heat).First(placing => placing.Place == 1).Lane;
            foreach (var lane in Forecast.Of(heat, Some.Go + at, priors, seed))
            {
                var finish = finishes[lane.Lane.Value - 1];
                Forecasts++;
                Held += finish >= lane.EarlyMs && finish <= lane.LateMs ? 1 : 0;
                var (pace, state) = (simple[lane.Lane], heat.Find(lane.Lane)!);
                var aheadOfCap = state.Plan.ExpectedMsThrough(state.DoneSteps) * (double)truth.CapMs / state.Plan.ExpectedMs >= at - 1;
                Cap.Add(finish <= truth.CapMs, lane.BeatsCap, pace <= truth.CapMs ? 1 : 0, aheadOfCap ? 1 : 0);
                Wins.Add(lane.Lane.Value - 1 == winner, lane.Places[0], pace <= simple.Values.Min() ? 1 : 0, lane.Lane == leader ? 1 : 0);
            }
        }
    }

    /// <summary>Each lane's finish if it went on at the pace so far.</summary>
    private static Dictionary<LaneNumber, double> Simple(HeatState heat) => heat.Lanes.ToDictionary(lane => lane.Lane, lane => lane.LastSplit() is { } last
        ? last.Split.LaneMs * (double)lane.Plan.ExpectedMs / lane.Plan.ExpectedMsThrough(last.Step)
        : double.MaxValue);
}

/// <summary>Brier scores of a forecast and of two simpler rules.</summary>
public sealed class Brier
{
    private int count;
    private double own, pace, order;

    public double Own => own / count;

    /// <summary>The pace so far goes on.</summary>
    public double Pace => pace / count;

    /// <summary>What is ahead now stays ahead.</summary>
    public double Order => order / count;

    public void Add(bool happened, double chance, double byPace, double byOrder)
    {
        var truth = happened ? 1 : 0;
        count++;
        own += Math.Pow(chance - truth, 2);
        pace += Math.Pow(byPace - truth, 2);
        order += Math.Pow(byOrder - truth, 2);
    }
}
