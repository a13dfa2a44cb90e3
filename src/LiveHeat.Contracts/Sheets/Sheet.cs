using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Sheets;

/// <summary>What is to be done, compiled for every lane. See docs/wire.md, section 3.</summary>
public sealed record Sheet(
    HeatId Heat, [property: System.Text.Json.Serialization.JsonPropertyName("sheet")] int Version, string Epoch, string Competition, string Title,
    SheetWorkout Workout, Counting Counting, int CheckpointEvery, int CapMs, Items<SheetLane> Lanes);

/// <summary>The workout in a line.</summary>
public sealed record SheetWorkout(string Name, string Summary);

/// <summary>One lane's part of the sheet.</summary>
public sealed record SheetLane(
    LaneNumber Lane, string Team, string Name, string Division, string DivisionName, string Group, Items<string> Athletes, int Colour, int CapMs, int Plan,
    Items<SheetStep> Steps);

/// <summary>One step of a lane.</summary>
public sealed record SheetStep(
    int Step, StepKind Kind, int? Round, int Leg, int Athlete, int? To, string Movement, int Quantity, Unit Unit, int Worth, int Increment,
    int ExpectedMs, int EarliestMs, string Label, Items<string> Faults);
