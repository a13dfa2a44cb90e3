using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

/// <summary>A movement while it is written. What is a list is typed one a line.</summary>
public sealed class MovementDraft
{
    public required string Id { get; init; }

    public string Name { get; set; } = "";

    public Unit Unit { get; set; }

    /// <summary>Expected seconds for one, as typed.</summary>
    public string Seconds { get; set; } = "3";

    /// <summary>Nobody is faster, as typed.</summary>
    public string Fastest { get; set; } = "1";

    /// <summary>In short; empty: made of start and finish.</summary>
    public string Standard { get; set; } = "";

    public string Start { get; set; } = "";

    public string Finish { get; set; } = "";

    public string Between { get; set; } = "";

    public string Allowed { get; set; } = "";

    /// <summary>Behind an equals sign what it means: <c>ball below the line = It met the wall below the line.</c></summary>
    public string Faults { get; set; } = "";

    public string Caution { get; set; } = "";

    /// <summary>Its address; null without one.</summary>
    public string? Picture { get; set; }

    /// <summary>One that is there.</summary>
    public static MovementDraft Of(Movement movement)
    {
        var draft = new MovementDraft { Id = movement.Id };
        draft.Fill(movement);
        return draft;
    }

    /// <summary>All but the id becomes that of another movement.</summary>
    public void Fill(Movement movement)
    {
        var full = movement.FullStandard;
        (Name, Unit) = (movement.Name, movement.Unit);
        (Seconds, Fastest) = (Text(movement.SecondsPerUnit), Text(movement.FastestSecondsPerUnit));
        Standard = movement.Standard == full?.InShort() ? "" : movement.Standard;
        (Start, Finish, Caution, Picture) = (full?.Start ?? "", full?.Finish ?? "", full?.Caution ?? "", full?.Picture);
        (Between, Allowed) = (Lines.Join(full?.Between ?? []), Lines.Join(full?.Allowed ?? []));
        Faults = Lines.Join(movement.Faults.Select(name => Lines.Explained(name, full?.Faults.FirstOrDefault(fault => fault.Name == name)?.How)));
    }

    /// <summary>The movement as a workout has it.</summary>
    /// <param name="seconds">Reads typed seconds, and notes for a field what cannot be read.</param>
    /// <param name="at">The movement's path, with the point behind it; empty where it stands alone.</param>
    public Movement Make(Func<string, string, double> seconds, string at)
    {
        var (faults, full) = (Lines.Explanations(Faults).ToItems(), Parts());
        var inShort = Standard.Trim() is { Length: > 0 } text ? text : full is { Start.Length: > 0 } or { Finish.Length: > 0 } ? full.InShort() : "";
        return new Movement(
            Id, Name.Trim(), Unit, seconds(Seconds, $"{at}secondsPerUnit"), seconds(Fastest, $"{at}fastestSecondsPerUnit"), inShort, faults.Select(fault => fault.Name).ToItems())
        {
            FullStandard = full,
        };
    }

    /// <summary>The standard part by part; null when nothing of it was written.</summary>
    private Standard? Parts()
    {
        var faults = Lines.Explanations(Faults).ToItems();
        var full = new Standard(
            Start.Trim(), Finish.Trim(), Lines.Of(Between), Lines.Of(Allowed), faults, Caution.Trim() is { Length: > 0 } caution ? caution : null, Picture);
        return full is { Start: "", Finish: "", Between.Count: 0, Allowed.Count: 0, Caution: null, Picture: null } && faults.All(fault => fault.How.Length == 0) ? null : full;
    }

    private static string Text(double seconds) => seconds.ToString(Numbers.Format);
}
