using System.Globalization;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

/// <summary>A movement while it is written.</summary>
public sealed class MovementDraft
{
    public required string Id { get; init; }

    public string Name { get; set; } = "";

    public Unit Unit { get; set; }

    /// <summary>Expected seconds for one, as typed.</summary>
    public string Seconds { get; set; } = "3";

    /// <summary>Nobody is faster, as typed.</summary>
    public string Fastest { get; set; } = "1";

    public string Standard { get; set; } = "";

    /// <summary>One a line.</summary>
    public string Faults { get; set; } = "";

    /// <summary>One that is there.</summary>
    public static MovementDraft Of(Movement movement) => new()
    {
        Id = movement.Id, Name = movement.Name, Unit = movement.Unit, Standard = movement.Standard, Faults = string.Join('\n', movement.Faults),
        Seconds = movement.SecondsPerUnit.ToString(CultureInfo.InvariantCulture), Fastest = movement.FastestSecondsPerUnit.ToString(CultureInfo.InvariantCulture),
    };

    /// <summary>The movement; what cannot be read is noted with the workout.</summary>
    internal Movement Make(WorkoutDraft workout, string at) => new(
        Id, Name.Trim(), Unit, workout.Seconds(Seconds, $"{at}.secondsPerUnit"), workout.Seconds(Fastest, $"{at}.fastestSecondsPerUnit"), Standard.Trim(),
        Faults.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToItems());
}
