using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>Makes plays of steps.</summary>
public static class SetPlaying
{
    private const double ReactionLeastMs = 100;
    private const double ReactionMostMs = 300;

    /// <param name="step">What is done.</param>
    /// <param name="paceMs">How long it takes without no-reps.</param>
    /// <param name="checkpointEvery">Units between two counts; 0: only the end is tapped.</param>
    /// <param name="rates">How often something goes wrong.</param>
    /// <param name="random">The chance of it.</param>
    public static SetPlay Make(SheetStep step, double paceMs, int checkpointEvery, MistakeRates rates, Random random)
    {
        if (step.Kind is StepKind.Tag or StepKind.Finish or StepKind.Attempt)
        {
            return Touch(step, paceMs, rates, random);
        }

        var moments = new List<Moment>();
        var units = Units(step, paceMs, rates, random, moments);
        for (var count = checkpointEvery; checkpointEvery > 0 && count < step.Quantity; count += checkpointEvery)
        {
            moments.Add(new Moment(units[count - 1] + Reaction(random), Deed.Count, count));
        }

        var wrong = Wrong(step, units[^1], rates, random);
        var judged = Order(moments, wrong);
        var doneMs = Math.Max(units[^1] + Reaction(random), judged.Count == 0 ? 0 : judged[^1].AtMs + ReactionLeastMs);
        judged.Add(new Moment(doneMs, Deed.Done));
        if (random.Chance(rates.DoubleTap))
        {
            judged.Add(new Moment(doneMs + random.Between(80, 250), Deed.Done));
        }

        return new SetPlay(units[^1], units, judged);
    }

    private static double Reaction(Random random) => random.Between(ReactionLeastMs, ReactionMostMs);

    private static SetPlay Touch(SheetStep step, double paceMs, MistakeRates rates, Random random)
    {
        var moments = new List<Moment>();
        var endMs = paceMs;
        if (step.Kind == StepKind.Tag && random.Chance(rates.TagFault))
        {
            moments.Add(new Moment(endMs + Reaction(random), Deed.TagFault, Fault: FaultOf(step, random)));
            endMs += random.Between(2500, 4500);
        }

        moments.Add(new Moment(endMs + Reaction(random), Deed.Done));
        return new SetPlay(endMs, [], moments);
    }

    /// <summary>When each unit is done. A rep that does not count takes as long as one that does, and is repeated.</summary>
    private static double[] Units(SheetStep step, double paceMs, MistakeRates rates, Random random, List<Moment> moments)
    {
        var weights = Enumerable.Range(0, step.Quantity).Select(_ => Math.Exp(0.1 * random.NextNormal())).ToArray();
        var scale = paceMs / weights.Sum();
        var units = new double[step.Quantity];
        var atMs = 0.0;
        for (var i = 0; i < units.Length; i++)
        {
            while (step.Unit == Unit.Reps && random.Chance(rates.NoRep))
            {
                atMs += weights[i] * scale;
                moments.Add(new Moment(atMs + Reaction(random), Deed.NoRep, Fault: FaultOf(step, random)));
            }

            units[i] = atMs += weights[i] * scale;
        }

        return units;
    }

    /// <summary>At most one wrong tap a set: when it is made, and when it is noticed and taken back. Empty when all goes well.</summary>
    private static Moment[] Wrong(SheetStep step, double endMs, MistakeRates rates, Random random)
    {
        var early = random.Chance(rates.EarlyTap);
        if (!early && !(step.Unit == Unit.Reps && random.Chance(rates.WrongNoRep)))
        {
            return [];
        }

        var atMs = endMs * (early ? random.Between(0.7, 0.85) : random.Between(0.2, 0.7));
        var noticedMs = atMs + random.Between(1100, 2400);
        return noticedMs > endMs - ReactionMostMs ? [] : [new(atMs, early ? Deed.Done : Deed.NoRep), new(noticedMs, Deed.Undo)];
    }

    /// <summary>A judge has one finger: what falls between a wrong tap and its undo waits until it is undone.</summary>
    private static List<Moment> Order(List<Moment> moments, Moment[] wrong)
    {
        if (wrong.Length == 0)
        {
            return [.. moments.OrderBy(moment => moment.AtMs)];
        }

        var (fromMs, untilMs) = (wrong[0].AtMs, wrong[1].AtMs);
        var waited = moments.OrderBy(moment => moment.AtMs).Select((moment, i) =>
            moment.AtMs > fromMs && moment.AtMs <= untilMs + ReactionMostMs ? moment with { AtMs = untilMs + ReactionMostMs + i } : moment);
        return [.. waited.Concat(wrong).OrderBy(moment => moment.AtMs)];
    }

    private static string? FaultOf(SheetStep step, Random random) =>
        step.Faults.Count > 0 && random.Chance(0.8) ? step.Faults[random.Next(step.Faults.Count)] : null;
}
