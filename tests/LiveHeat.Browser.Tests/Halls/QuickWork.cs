using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Browser.Halls;

/// <summary>Workouts that a test judges in seconds: nobody is implausibly early, so that only the pad's own dead time has to pass.</summary>
internal static class QuickWork
{
    private static readonly Movement WallBalls = new("wall-ball", "wall balls", Unit.Reps, 2, 0.001, "Below parallel, above the line.", ["Ball short of the line", "Hips above knees"]);
    private static readonly Movement Row = new("row", "row", Unit.Cal, 3, 0.001, "Handle to the chain guard.", []);
    private static readonly Movement Lift = new("lift", "one lift", Unit.Kg, 20, 0, "Locked out.", ["Not locked out"]);

    /// <summary>
    /// Two rounds, one each in turn: 10 wall balls and 8 cal row, a tag between, across the line at the end. For two athletes the steps are
    /// 1 set, 2 set, 3 tag, 4 set, 5 set, 6 finish. Sets only.
    /// </summary>
    public static Workout Sets(int capMs = 600_000) => Of(Counting.Sets, 1, capMs, [new("wall-ball", 10), new("row", 8)]);

    /// <summary>The same, with the wall balls counted in fives.</summary>
    public static Workout Reps(int capMs = 600_000) => Of(Counting.Reps, 5, capMs, [new("wall-ball", 10), new("row", 8)]);

    /// <summary>One round: the kilograms lifted are entered, then 10 wall balls; no line at the end.</summary>
    public static Workout Lifted() => Of(Counting.Sets, 1, 600_000, [new("lift", 1, Reading: true), new("wall-ball", 10)]) with { Finish = FinishKind.None };

    /// <summary>The heaviest load: so many attempts at one lift for each athlete, one after the other.</summary>
    public static Workout Attempts(int attempts = 3) => Of(Counting.Sets, 1, 600_000, [new("lift", 1)], rounds: 0) with
    {
        Finish = FinishKind.None,
        Scoring = new ScoringRule.HeaviestLoad(attempts, LoadSum.SumOfBest),
    };

    /// <summary>As <see cref="Sets"/>, but ten wall balls take nobody less than 30 s.</summary>
    public static Workout Slow()
    {
        var sets = Sets();
        return sets with { Movements = sets.Movements.Select(movement => movement with { SecondsPerUnit = 4, FastestSecondsPerUnit = 3 }).ToItems() };
    }

    /// <summary>Many rounds for a big screen, with the names of a real programme.</summary>
    public static Workout Long(params string[] divisions)
    {
        Items<PrescribedSet> round = [new("wall-ball", 18), new("row", 14)];
        return Of(Counting.Sets, 1, 720_000, round, rounds: 8) with
        {
            Prescriptions = (divisions is [] ? ["open"] : divisions)
                .Select((division, i) => new Prescription(division, division == "open" ? "Open" : "Masters 45+", 720_000 + (i * 120_000), 8, [], round, [])).ToItems(),
        };
    }

    private static Workout Of(Counting counting, int every, int capMs, Items<PrescribedSet> round, int rounds = 2) => new(
        "", "Low Tide", new RelayOrder.InTurn(), counting, every, FinishKind.Line, [WallBalls, Row, Lift], [new("open", "Open", capMs, rounds, [], round, [])]);
}
