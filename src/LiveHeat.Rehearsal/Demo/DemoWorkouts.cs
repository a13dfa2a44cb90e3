using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Demo;

/// <summary>The workouts of the demo competition.</summary>
public static class DemoWorkouts
{
    public const string Open = "open";
    public const string Mixed = "mixed";
    private const int Minute = 60_000;

    /// <summary>Eight rounds, one each in turn, for time, across a line: about nine minutes, cap eleven.</summary>
    public static readonly Workout KettleRun = new(
        "w-kettle-run", "Kettle Run", new RelayOrder.InTurn(), Counting.Sets, 5, FinishKind.Line,
        [DemoMovements.WallBalls, DemoMovements.Burpees, DemoMovements.Shuttle],
        [
            new(Open, "Open", 11 * Minute, 8, [], [new("wall-ball", 12, Load: "6 and 9 kg"), new("burpee", 8), new("shuttle", 40, Worth: 4, Increment: 10)], []),
            new(Mixed, "Mixed", 11 * Minute, 8, [], [new("wall-ball", 11, Load: "4 and 6 kg"), new("burpee", 8), new("shuttle", 40, Worth: 4, Increment: 10)], []),
        ]);

    /// <summary>Counted rep by rep, two rounds each before the tag, with work before and after the rounds.</summary>
    public static readonly Workout StoneSoup = new(
        "w-stone-soup", "Stone Soup", new RelayOrder.Blocks(2), Counting.Reps, 5, FinishKind.None,
        [DemoMovements.Row, DemoMovements.Swings, DemoMovements.Carry, DemoMovements.Burpees],
        [
            new(Open, "Open", 10 * Minute, 8, [new("row", 20)], [new("swing", 12, Load: "16 and 24 kg"), new("carry", 30, Worth: 6, Increment: 5, Load: "30 and 45 kg")], [new("burpee", 20)]),
            new(Mixed, "Mixed", 10 * Minute, 8, [new("row", 18)], [new("swing", 12, Load: "12 and 20 kg"), new("carry", 30, Worth: 6, Increment: 5, Load: "20 and 35 kg")], [new("burpee", 20)]),
        ]);

    /// <summary>A tag after every movement, until all stand on the mat.</summary>
    public static readonly Workout LastFerry = new(
        "w-last-ferry", "Last Ferry", new RelayOrder.EachMovement(), Counting.Sets, 5, FinishKind.Mat,
        [DemoMovements.Thrusters, DemoMovements.SitUps, DemoMovements.Lunges],
        [
            new(Open, "Open", 9 * Minute, 6, [], [new("thruster", 9, Load: "12.5 and 20 kg"), new("sit-up", 14), new("lunge", 15, Worth: 3, Increment: 5, Load: "10 and 15 kg")], []),
            new(Mixed, "Mixed", 9 * Minute, 6, [], [new("thruster", 9, Load: "10 and 15 kg"), new("sit-up", 14), new("lunge", 15, Worth: 3, Increment: 5, Load: "5 and 10 kg")], []),
        ]);

    public static readonly Items<Workout> All = [KettleRun, StoneSoup, LastFerry];
}
