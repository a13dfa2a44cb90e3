using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Demo;

/// <summary>The movements of the demo competition: the library's own, so that every judge reads them in the pad's language.</summary>
public static class DemoMovements
{
    public static readonly Movement WallBalls = Take("wall-ball", "wall-ball");
    public static readonly Movement Burpees = Take("burpee", "burpee");
    public static readonly Movement Shuttle = Take("shuttle-run", "shuttle");
    public static readonly Movement Row = Take("row-cal", "row");
    public static readonly Movement Swings = Take("kettlebell-swing", "swing");
    public static readonly Movement Carry = Take("sandbag-carry", "carry");
    public static readonly Movement Thrusters = Take("dumbbell-thruster", "thruster");
    public static readonly Movement SitUps = Take("sit-up", "sit-up");
    public static readonly Movement Lunges = Take("walking-lunge", "lunge");

    private static Movement Take(string id, string inWorkout) => LibraryFiles.In("en").Movements.First(movement => movement.Id == id).ToMovement(inWorkout);
}
