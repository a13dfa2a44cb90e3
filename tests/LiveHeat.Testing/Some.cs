using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Testing;

/// <summary>Ordinary things that a test needs and does not care about. All invented.</summary>
public static class Some
{
    /// <summary>The GO of heats told as score sheets.</summary>
    public static readonly Instant Go = new(1_795_600_420_000);

    public static readonly HeatId Heat = new("h1");
    public static readonly By Organiser = new("in-desk", "Ona", Role.Organiser);
    public static readonly By HeadJudge = new("in-head", "Hedda", Role.HeadJudge);

    public static By Judge(int lane) => new($"in-{lane}", $"Judge {lane}", Role.Judge);

    public static LaneNumber Lane(int lane) => new(lane);

    /// <summary>An id of an outbox named by a few letters.</summary>
    public static FactId Id(string outbox, long counter) => new(outbox.PadRight(FactId.OutboxLength, 'A'), counter);

    public static Asking Asking(By by, Instant now, int? lane = null, HeatSnapshot? setup = null, params MissingTaps[] missing) =>
        new(by, lane is { } own ? new LaneNumber(own) : null, now, "fresh", setup, missing.ToItems());

    public static Movement Movement(string id = "wall-ball", string name = "wall balls", Unit unit = Unit.Reps, double seconds = 2, double fastest = 0.5) =>
        new(id, name, unit, seconds, fastest, "Below parallel, above the line.", ["short of the line", "not low enough"]);

    public static Prescription Prescription(string division = "open", int rounds = 3, int capMs = 600_000, params PrescribedSet[] round) =>
        new(division, char.ToUpperInvariant(division[0]) + division[1..], capMs, rounds, [], round.Length > 0 ? round.ToItems() : [new("wall-ball", 10), new("row", 12)], []);

    /// <summary>
    /// Three rounds, one each in turn: 10 wall balls and 12 cal row, then the tag; across the line at the end. For three athletes the steps are
    /// 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish. Cap 10:00. Counted in reps, every rep.
    /// </summary>
    public static Workout Workout(RelayOrder? order = null, Counting counting = Counting.Reps, FinishKind finish = FinishKind.Line, params Prescription[] prescriptions) => new(
        "w1", "Low Tide", order ?? new RelayOrder.InTurn(), counting, 1, finish,
        [Movement(), Movement("row", "row", Unit.Cal, 3, 1), Movement("carry", "sled carry", Unit.M, 1, 0.2), Movement("bar", "one lift", Unit.Kg, 20, 1)],
        prescriptions.Length > 0
            ? prescriptions.ToItems()
            : [Prescription(), Prescription("scaled", 3, 600_000, new PrescribedSet("wall-ball", 8), new PrescribedSet("row", 9))]);

    /// <summary>The heaviest load by attempts in 10:00: one lift, in kilograms.</summary>
    public static Workout Lifting(int attempts = 3, LoadSum sum = LoadSum.SumOfBest, RelayOrder? order = null, TiebreakSet? tiebreak = null) =>
        Workout(order, Counting.Sets, FinishKind.None, Prescription("open", 0, 600_000, new PrescribedSet("bar", 1)) with { Tiebreak = tiebreak }) with { Scoring = new ScoringRule.HeaviestLoad(attempts, sum) };

    public static LineUp LineUp(int athletes = 3, string division = "open") => new("t1", "Harbour Anvils", division, Names(athletes));

    public static LaneEntry Entry(int lane, string division = "open", int athletes = 3) =>
        new(new LaneNumber(lane), $"t{lane}", $"Team {lane}", division, Names(athletes));

    /// <summary>A heat of so many lanes, all in one division unless said.</summary>
    public static HeatSnapshot Snapshot(int lanes = 3, Workout? workout = null, int athletes = 3, params string[] divisions) => new(
        "Breakwater Relays", "Heat 1", workout ?? Workout(),
        Enumerable.Range(1, lanes).Select(lane => Entry(lane, divisions.Length > 0 ? divisions[(lane - 1) % divisions.Length] : "open", athletes)).ToItems(),
        Rounding.UpTenth);

    private static Items<string> Names(int count) =>
        new[] { "Ann", "Bo", "Cy", "Dot", "Eli", "Fay", "Gus", "Hal", "Ivy", "Jo", "Kit", "Lou", "Max" }.Take(count).ToItems();
}
