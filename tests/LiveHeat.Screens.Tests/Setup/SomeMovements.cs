using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

/// <summary>A few movements to choose from. All invented.</summary>
internal static class SomeMovements
{
    public static readonly LibraryMovement WallBalls = new(
        "wall-ball", "wall balls", Unit.Reps, 2.3, 0.9, "Standing.", "The ball meets the wall.", ["Hips below the knees."],
        [new("below the line", "It met the wall too low."), new("hips above the knees", "")], ["Letting it fall."], [new("lighter ball", "Less weight.", null), new("no ball", "Squats.", "air-squat")],
        "Look up.", "common practice, no source");

    public static readonly LibraryMovement WallWalks = WallBalls with { Id = "wall-walk", Name = "wall walks" };

    public static readonly LibraryMovement Row = WallBalls with { Id = "row-cal", Name = "row", Unit = Unit.Cal };

    public static readonly LibraryMovement Tag = WallBalls with { Id = Movement.TagId, Name = "tags" };

    public static readonly LibraryMovement OwnWallBalls = WallBalls with { Id = "wall-balls-2", Start = "Seated.", BasedOn = "wall-ball" };

    public static readonly IReadOnlyList<MovementChoice> Choices = [new(OwnWallBalls, true), new(WallBalls, false), new(WallWalks, false), new(Row, false), new(Tag, false)];
}
