using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Testing.Paced;

/// <summary>
/// A heat whose truth is known: teams, athletes, movements, tiring and luck are drawn from one number, and every team is played to its end. The truth is made
/// otherwise than the forecast believes: athletes within a team differ, luck is now and then a long pause, and none of the spreads is the one assumed.
/// </summary>
public sealed class PacedHeat
{
    private PacedHeat(HeatSnapshot snapshot, IReadOnlyList<IReadOnlyList<long>> splits, IReadOnlyList<int> caps)
    {
        (Snapshot, Splits, Caps) = (snapshot, splits, caps);
        var script = new HeatScript(snapshot);
        Called = script.Then("start").State;
    }

    public HeatSnapshot Snapshot { get; }

    /// <summary>By lane from 1: the true heat time at the end of every step, milliseconds; the cap stops nobody.</summary>
    public IReadOnlyList<IReadOnlyList<long>> Splits { get; }

    /// <summary>By lane from 1: its cap, milliseconds.</summary>
    public IReadOnlyList<int> Caps { get; }

    /// <summary>The last of the caps.</summary>
    public int CapMs => Caps.Max();

    /// <summary>Whose truth it is, the lanes of one prescription together.</summary>
    public IEnumerable<IGrouping<string, int>> Groups => Enumerable.Range(1, Splits.Count).GroupBy(lane => Snapshot.Lanes[lane - 1].Division);

    private HeatState Called { get; }

    public IEnumerable<long> Finishes => Splits.Select(lane => lane[^1]);

    /// <summary>How movements are in a hall; what is prescribed lighter differs by so much more (standard deviation of a factor's logarithm).</summary>
    public static PacedHall Hall(Random random, double apart = 0)
    {
        double[] factors = [.. Enumerable.Range(0, 3).Select(_ => Math.Exp(0.2 * Normal(random))), Math.Exp(0.3 * Normal(random))];
        return new PacedHall(factors, apart == 0 ? factors : [.. factors.Select((factor, i) => i == factors.Length - 1 ? factor : factor * Math.Exp(apart * Normal(random)))]);
    }

    /// <summary>A heat; of ten teams in turn unless said.</summary>
    public static PacedHeat From(Random random, PacedHall hall, int lanes = 10, PacedShape? shape = null)
    {
        shape ??= PacedShape.InTurn;
        var plans = shape.Workout.Prescriptions.ToDictionary(
            prescription => prescription.Division, prescription => ((Compiled.Plan)PlanCompiler.Compile(shape.Workout, Some.LineUp(shape.Athletes, prescription.Division))).Relay);
        var tiring = 0.12 + (0.08 * Normal(random));
        var first = shape.Workout.Prescriptions[0].Division;
        var splits = Enumerable.Range(1, lanes).Select(lane => Team(random, plans[shape.Division(lane)], shape.Division(lane) == first ? hall.Movements : hall.Lighter, tiring)).ToList();
        var workout = shape.Workout with { Prescriptions = [.. shape.Workout.Prescriptions.Select(prescription => plans[prescription.Division].Endless ? prescription : prescription with { CapMs = Cap(prescription.Division) })] };
        var snapshot = Some.Snapshot(lanes, workout, shape.Athletes, [.. workout.Prescriptions.Select(prescription => prescription.Division)]);
        return new PacedHeat(snapshot, splits, [.. snapshot.Lanes.Select(lane => workout.Prescriptions.First(prescription => prescription.Division == lane.Division).CapMs)]);

        // The cap lies where about seven teams of ten make it, as an organiser would set it from experience.
        int Cap(string division)
        {
            var finishes = splits.Where((_, i) => shape.Division(i + 1) == division).Select(lane => lane[^1]).Order().ToList();
            return (int)(finishes[finishes.Count * 7 / 10] * Math.Exp(0.04 * Normal(random)));
        }
    }

    /// <summary>The heat as its facts have it at a heat time.</summary>
    public HeatState At(long heatMs)
    {
        var state = Called;
        var counters = new long[Splits.Count];
        foreach (var (lane, step, ms) in Splits.SelectMany((steps, lane) => steps.Select((ms, step) => (lane, step, ms))).Where(one => one.ms <= heatMs).OrderBy(one => one.ms))
        {
            var fact = new HeatFact.StepDone
            {
                Id = Some.Id($"paced{lane + 1}", ++counters[lane]),
                Instant = Some.Go + ms,
                Lane = new LaneNumber(lane + 1),
                Step = step + 1,
                Seat = new SeatId($"s-{lane + 1}"),
                Start = state.Clock.Start!.Id,
                Plan = 1,
                UncertaintyMs = 5,
            };
            state = state.Apply(new Entry(state.Head + 1, fact.Instant + 50, $"in-{lane + 1}", Kind(state, fact)));
        }

        return state;
    }

    private static HeatFact Kind(HeatState state, HeatFact.StepDone fact) => state.Find(fact.Lane)!.Plan.Steps[fact.Step - 1].Kind == StepKind.Tag
        ? new HeatFact.TagMade { Id = fact.Id, Instant = fact.Instant, Lane = fact.Lane, Step = fact.Step, Seat = fact.Seat, Start = fact.Start, Plan = fact.Plan, UncertaintyMs = fact.UncertaintyMs }
        : fact;

    private static List<long> Team(Random random, RelayPlan plan, IReadOnlyList<double> hall, double tiring)
    {
        var team = Math.Exp(0.11 * Normal(random));
        var athletes = plan.Athletes.Select(_ => Math.Exp(0.07 * Normal(random))).ToArray();
        var own = tiring + (0.06 * Normal(random));
        var movements = plan.Steps.Select(step => step.Movement).Where(name => name.Length > 0).Distinct().ToList();
        var at = 0.0;
        return plan.Steps.Select(step =>
        {
            var movement = movements.IndexOf(step.Movement);
            // Where the work has no end, people tire with the time that is gone.
            var through = plan.Endless ? at / plan.CapMs : (double)step.Number / plan.LastStep;
            var luck = Math.Exp(0.13 * Normal(random)) * (random.NextDouble() < 0.03 ? 1.5 : 1);
            at += Math.Max(300, step.ExpectedMs * hall[movement < 0 ? hall.Count - 1 : movement] * team * athletes[Math.Max(0, step.Athlete - 1)] * Math.Exp(own * (through - 0.5)) * luck);
            return (long)at;
        }).ToList();
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
