using CsCheck;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats.Laws;

/// <summary>A fact on its way to the ledger.</summary>
public sealed record Arrival(HeatFact Fact, string Sender, Instant ReceivedAt);

/// <summary>
/// Heats of 2 to 6 lanes in which everything happens that can: odd steps, phones that take over, witnesses, strangers, undos, rulings, voids,
/// recalled and corrected starts, halts, clocks that are wrong. Deliberately more chaos than a floor ever makes.
/// </summary>
public sealed record GeneratedHeat(HeatSnapshot Snapshot, IReadOnlyList<Arrival> Facts)
{
    private const int LastKind = 99;

    /// <summary>Phones whose clocks jump, so that instants contradict the counters.</summary>
    public static readonly Gen<GeneratedHeat> WithWrongClocks = Of(wobbleMs: 4000);

    /// <summary>Facts that happen one after another in the order told.</summary>
    public static readonly Gen<GeneratedHeat> InOrder = Of(wobbleMs: 0);

    /// <summary>The ledger when facts arrive in the order given.</summary>
    public static IReadOnlyList<Entry> Ledger(IEnumerable<Arrival> arrivals) =>
        [.. arrivals.Select((arrival, i) => new Entry(i + 1, arrival.ReceivedAt, arrival.Sender, arrival.Fact))];

    public static HeatState Fold(IEnumerable<Arrival> arrivals) => HeatState.Fold(Some.Heat, Ledger(arrivals));

    /// <summary>The same desk facts in their order; the taps scattered among them in any order.</summary>
    public IReadOnlyList<Arrival> Scattered(int seed)
    {
        var random = new Random(seed);
        var desk = new Queue<Arrival>(Facts.Where(arrival => arrival.Fact is HeatFact.Desk));
        var taps = Facts.Where(arrival => arrival.Fact is HeatFact.Floor).ToArray();
        random.Shuffle(taps);
        var places = Enumerable.Range(0, Facts.Count).ToArray();
        random.Shuffle(places);
        var tapPlaces = places.Take(taps.Length).ToHashSet();
        var left = new Queue<Arrival>(taps);
        return [.. Enumerable.Range(0, Facts.Count).Select(place => tapPlaces.Contains(place) ? left.Dequeue() : desk.Dequeue())];
    }

    public override string ToString() => string.Join('\n', Facts.Skip(1).Select(arrival => $"{arrival.Sender} {arrival.ReceivedAt - Some.Go}: {arrival.Fact}"));

    private static Gen<GeneratedHeat> Of(int wobbleMs) =>
        Gen.Select(Gen.Int[2, 6], Gen.Bool, Gen.Bool, Beat(wobbleMs).Array[0, 70]).Select((lanes, mixed, sets, beats) =>
        {
            string[] divisions = mixed ? ["open", "scaled"] : ["open"];
            var heat = Some.Snapshot(lanes, Some.Workout(counting: sets ? Counting.Sets : Counting.Reps), divisions: divisions);
            return new GeneratedHeat(heat, new HeatWriter(heat).Write(beats));
        });

    private static Gen<Beat> Beat(int wobbleMs) =>
        Gen.Select(Gen.Int[0, LastKind], Gen.Int[0, 5], Gen.Int[0, 10], Gen.Int[0, 12], Gen.Int[1, 30_000], Gen.Int[-wobbleMs, wobbleMs], Gen.Int[0, 400], Gen.Int[0, 10_000])
            .Select((kind, lane, step, count, gapMs, wobble, uncertaintyMs, pick) => new Beat(kind, lane, step, count, gapMs, wobble, uncertaintyMs, pick));
}

/// <summary>One throw of the dice.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="Lane">Where, from 0, modulo the lanes there are.</param>
/// <param name="Step">A step, 0 and 10 being none of the plan.</param>
/// <param name="Count">A count or number.</param>
/// <param name="GapMs">Since the beat before.</param>
/// <param name="WobbleMs">How wrong the phone's clock is.</param>
/// <param name="UncertaintyMs">How wrong it says it may be.</param>
/// <param name="Pick">Chooses whatever else is to be chosen.</param>
public sealed record Beat(int Kind, int Lane, int Step, int Count, int GapMs, int WobbleMs, int UncertaintyMs, int Pick);
