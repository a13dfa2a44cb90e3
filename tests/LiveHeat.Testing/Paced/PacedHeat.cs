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
    private static readonly Movement[] Movements =
    [
        Some.Movement(), Some.Movement("burpee", "burpees", Unit.Reps, 3.2, 1.2), Some.Movement("run", "shuttle run", Unit.M, 0.42, 0.2),
    ];

    private PacedHeat(HeatSnapshot snapshot, IReadOnlyList<IReadOnlyList<long>> splits, int capMs)
    {
        (Snapshot, Splits, CapMs) = (snapshot, splits, capMs);
        var script = new HeatScript(snapshot);
        Called = script.Then("start").State;
    }

    public HeatSnapshot Snapshot { get; }

    /// <summary>By lane from 1: the true heat time at the end of every step, milliseconds.</summary>
    public IReadOnlyList<IReadOnlyList<long>> Splits { get; }

    public int CapMs { get; }

    private HeatState Called { get; }

    public IEnumerable<long> Finishes => Splits.Select(lane => lane[^1]);

    /// <summary>How movements are in this hall: the same teams' heats share it when they are given the same.</summary>
    public static double[] Hall(Random random) => [.. Movements.Select(_ => Math.Exp(0.2 * Normal(random))), Math.Exp(0.3 * Normal(random))];

    /// <summary>A heat of ten teams of four, eight rounds one each in turn.</summary>
    public static PacedHeat From(Random random, double[] hall, int lanes = 10)
    {
        var prescription = Some.Prescription("open", 8, 3_600_000, new PrescribedSet("wall-ball", 15), new PrescribedSet("burpee", 8), new PrescribedSet("run", 50));
        var workout = Some.Workout(prescriptions: prescription) with { Movements = Movements.ToItems() };
        var plan = ((Compiled.Plan)PlanCompiler.Compile(workout, Some.LineUp(4))).Relay;
        var tiring = 0.12 + (0.08 * Normal(random));
        var splits = Enumerable.Range(0, lanes).Select(_ => Team(random, plan, hall, tiring)).ToList();
        // The cap lies where about seven teams of ten make it, as an organiser would set it from experience.
        var cap = (int)(splits.Select(lane => lane[^1]).Order().ElementAt(lanes * 7 / 10) * Math.Exp(0.04 * Normal(random)));
        workout = workout with { Prescriptions = [prescription with { CapMs = cap }] };
        return new PacedHeat(Some.Snapshot(lanes, workout, athletes: 4), splits, cap);
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
                Id = Some.Id($"paced{lane + 1}", ++counters[lane]), Instant = Some.Go + ms, Lane = new LaneNumber(lane + 1), Step = step + 1, Seat = new SeatId($"s-{lane + 1}"),
                Start = state.Clock.Start!.Id, Plan = 1, UncertaintyMs = 5,
            };
            state = state.Apply(new Entry(state.Head + 1, fact.Instant + 50, $"in-{lane + 1}", Kind(state, fact)));
        }

        return state;
    }

    private static HeatFact Kind(HeatState state, HeatFact.StepDone fact) => state.Find(fact.Lane)!.Plan.Steps[fact.Step - 1].Kind == StepKind.Tag
        ? new HeatFact.TagMade { Id = fact.Id, Instant = fact.Instant, Lane = fact.Lane, Step = fact.Step, Seat = fact.Seat, Start = fact.Start, Plan = fact.Plan, UncertaintyMs = fact.UncertaintyMs }
        : fact;

    private static List<long> Team(Random random, RelayPlan plan, double[] hall, double tiring)
    {
        var team = Math.Exp(0.11 * Normal(random));
        var athletes = Enumerable.Range(0, 4).Select(_ => Math.Exp(0.07 * Normal(random))).ToArray();
        var own = tiring + (0.06 * Normal(random));
        var at = 0.0;
        return plan.Steps.Select(step =>
        {
            var movement = Array.FindIndex(Movements, one => one.Name == step.Movement);
            var through = (double)step.Number / plan.LastStep;
            var luck = Math.Exp(0.13 * Normal(random)) * (random.NextDouble() < 0.03 ? 1.5 : 1);
            at += Math.Max(300, step.ExpectedMs * hall[movement < 0 ? Movements.Length : movement] * team * athletes[Math.Max(0, step.Athlete - 1)] * Math.Exp(own * (through - 0.5)) * luck);
            return (long)at;
        }).ToList();
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
