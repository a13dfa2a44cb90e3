using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Sheets;

/// <summary>What is to be done, compiled for every lane. See docs/wire.md, section 3.</summary>
public sealed record Sheet(
    HeatId Heat, [property: System.Text.Json.Serialization.JsonPropertyName("sheet")] int Version, string Epoch, string Competition, string Title,
    SheetWorkout Workout, Counting Counting, int CheckpointEvery, int CapMs, Items<SheetLane> Lanes)
{
    /// <summary>The standards that hold in this heat, each told once; steps name them by <see cref="SheetStep.MovementId"/>.</summary>
    public Items<SheetMovement> Movements { get; init; }

    /// <summary>What is shown for a step's fault in the language of the sheet, where that is other than its name; null where all are shown as they are recorded.</summary>
    public Items<FaultWords>? FaultWords { get; init; }
}

/// <summary>A fault that is shown in another language than the workout's.</summary>
/// <param name="Fault">What a tap records: the name in the workout, as in <see cref="SheetStep.Faults"/>, so that it is one fact whoever tapped it.</param>
/// <param name="Said">What a judge reads.</param>
public sealed record FaultWords(string Fault, string Said);

/// <summary>The workout in a line.</summary>
public sealed record SheetWorkout(string Name, string Summary);

/// <summary>One lane's part of the sheet.</summary>
public sealed record SheetLane(
    LaneNumber Lane, string Team, string Name, string Division, string DivisionName, string Group, Items<string> Athletes, int Colour, int CapMs, int Plan,
    Items<SheetStep> Steps)
{
    /// <summary>Where the work has no end: the last step of the round that a team at the expected pace is in at its cap. Null where it has one.</summary>
    public int? ExpectedSteps { get; init; }

    /// <summary>The rounds that begin and end by the clock, in order, all steps in one of them; null where one follows the other.</summary>
    public Items<Window>? Windows { get; init; }

    /// <summary>What its worth counts; null where it is work, in reps.</summary>
    public ScoreUnit? Score { get; init; }

    /// <summary>The names of parts that are scored apart, in order; null where the work is one.</summary>
    public Items<string>? Parts { get; init; }
}

/// <summary>One step of a lane.</summary>
public sealed record SheetStep(
    int Step, StepKind Kind, int? Round, int Leg, int Athlete, int? To, string Movement, int Quantity, Unit Unit, int Worth, int Increment,
    int ExpectedMs, int EarliestMs, string Label, Items<string> Faults, string? MovementId = null)
{
    /// <summary>Athletes who do every rep at the same moment as <see cref="Athlete"/>; null for one alone.</summary>
    public Items<int>? With { get; init; }

    /// <summary>The set is a pool that the team shares, each athlete at least so many units; null where it is not.</summary>
    public int? MinimumEach { get; init; }
}

/// <summary>A movement's standard, in the language of the sheet.</summary>
/// <param name="Id">Its id in the workout.</param>
/// <param name="Name">As said on the floor.</param>
/// <param name="Unit">What a quantity of it counts.</param>
/// <param name="Standard">What a good rep is, in a line or two.</param>
/// <param name="FullStandard">The same part by part; null when nobody wrote it.</param>
/// <param name="Faults">In the order of the buttons.</param>
public sealed record SheetMovement(string Id, string Name, Unit Unit, string Standard, SheetStandard? FullStandard, Items<SheetFault> Faults);

/// <summary>See <see cref="Engine.Workouts.Standard"/>.</summary>
public sealed record SheetStandard(string Start, string Finish, Items<string> Between, Items<string> Allowed, string? Caution, string? Picture);

/// <summary>A fault.</summary>
/// <param name="Name">The words of the button.</param>
/// <param name="How">What was wrong, in a sentence; null when nobody wrote it.</param>
public sealed record SheetFault(string Name, string? How);
