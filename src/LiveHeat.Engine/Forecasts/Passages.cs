using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Forecasts;

/// <summary>When a lane may be past each of its next steps.</summary>
internal static class Passages
{
    /// <summary>A catch further ahead than this is not told, milliseconds.</summary>
    private const long Horizon = 30_000;

    /// <summary>A catch less likely than this is not told.</summary>
    private const double LeastChance = 0.5;

    /// <summary>One step's end: mean lane time, variance of its own, and what it owes to the model.</summary>
    private readonly record struct Passage(int Step, double Ms, double Variance, double[] Gradient);

    /// <summary>Each lane's next tag, where it comes before the lane's cap.</summary>
    public static IEnumerable<TagToCome> Tags(PaceModel model, IEnumerable<LaneState> lanes, long heatMs)
    {
        foreach (var lane in lanes.Where(AtWork))
        {
            var laneMs = heatMs - lane.HeldMs;
            if (Of(model, lane, laneMs).Cast<Passage?>().FirstOrDefault(passage => lane.Plan.Steps[passage!.Value.Step - 1].Kind == StepKind.Tag) is { } tag
                && tag.Ms <= CapMs(lane))
            {
                yield return new TagToCome(lane.Lane, tag.Step, (long)(tag.Ms - laneMs));
            }
        }
    }

    /// <summary>Pairs of neighbours in the order of which the hinder one may be ahead soon.</summary>
    public static IEnumerable<CatchToCome> Catches(PaceModel model, HeatState heat, List<LaneState> lanes, long heatMs)
    {
        var order = lanes.Where(AtWork).ToList();
        order.Sort((left, right) => LiveOrder.Compare(heat, left, right));
        foreach (var (chased, chaser) in order.Zip(order.Skip(1)))
        {
            if (LiveOrder.Compare(heat, chased, chaser) != 0 && First(model, chased, chaser, heatMs) is { } found)
            {
                yield return found;
            }
        }
    }

    private static CatchToCome? First(PaceModel model, LaneState chased, LaneState chaser, long heatMs)
    {
        var laneMs = heatMs - chaser.HeldMs;
        var capMs = CapMs(chaser);
        var soon = Of(model, chaser, laneMs).TakeWhile(passage => passage.Ms - laneMs <= Horizon && passage.Ms <= capMs).ToList();
        var theirs = Of(model, chased, heatMs - chased.HeldMs).TakeWhile(passage => soon.Count > 0 && passage.Step <= soon[^1].Step).ToDictionary(passage => passage.Step);
        foreach (var mine in soon)
        {
            if (!theirs.TryGetValue(mine.Step, out var other))
            {
                continue;       // the one ahead has it behind them already
            }

            var apart = model.Rounded([.. mine.Gradient.Zip(other.Gradient, (one, two) => one - two)]);
            var deviation = Math.Sqrt(mine.Variance + other.Variance + apart.Sum(part => part * part));
            var chance = deviation > 0 ? Normal.Below((other.Ms - mine.Ms) / deviation) : other.Ms > mine.Ms ? 1 : 0;
            // It must come before the cap too; taken as if that were another matter, which says a little too little.
            chance *= Normal.Below((capMs - mine.Ms) / Math.Sqrt(mine.Variance + model.Rounded(mine.Gradient).Sum(part => part * part)));
            if (chance >= LeastChance)
            {
                return new CatchToCome(chaser.Lane, chased.Lane, mine.Step, Math.Max(0, (long)(mine.Ms - laneMs)), chance);
            }
        }

        return null;
    }

    /// <summary>The lane's cap in its own time; with none, or while nobody knows it, none stands in the way.</summary>
    private static double CapMs(LaneState lane) => lane.CapHeatMs is { } cap ? cap - lane.HeldMs : double.PositiveInfinity;

    private static bool AtWork(LaneState lane) => !lane.Finished && lane.HeldSince is null && lane.DoneSteps >= Forecast.LeastSteps;

    /// <summary>The ends of the steps that are not done, in order.</summary>
    private static IEnumerable<Passage> Of(PaceModel model, LaneState lane, long laneMs)
    {
        var (known, since) = lane.LastSplit() is { } last ? (last.Step, last.Split.LaneMs) : (0, 0L);
        var (at, variance, gradient) = (known == lane.DoneSteps ? (double)Math.Max(laneMs, since) : since, 0.0, new double[model.Size]);
        for (var number = known + 1; number <= lane.Plan.LastStep; number++)
        {
            var (ms, spread, terms) = model.Ahead(lane, lane.Plan.Steps[number - 1]);
            var (stepMean, stepVariance) = Remaining.Left(ms, spread, number == known + 1 && known == lane.DoneSteps ? laneMs - since : 0);
            at += stepMean;
            variance += stepVariance;
            foreach (var (coefficient, weight) in terms)
            {
                gradient[coefficient] += weight * stepMean;
            }

            if (number > lane.DoneSteps)
            {
                yield return new Passage(number, at, variance, [.. gradient]);
            }
        }
    }
}
