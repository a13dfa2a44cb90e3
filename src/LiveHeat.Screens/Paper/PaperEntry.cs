using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Paper;

/// <summary>One line of the form: a step, and what is typed of it.</summary>
public sealed class PaperEntry(SheetStep step)
{
    private string time = "";

    public SheetStep Step => step;

    public bool Done { get; set; }

    /// <summary>As on the floor's clock: m:ss, or m:ss.t. Whoever writes a time says that it is done.</summary>
    public string Time
    {
        get => time;
        set => (time, Done) = (value, Done || value.Trim().Length > 0);
    }

    /// <summary>The reading of a value step.</summary>
    public string Value { get; set; } = "";

    /// <summary>How many strokes on the no-rep line; empty where they are not compared.</summary>
    public string NoReps { get; set; } = "";

    public bool TakesValue => step.Kind == StepKind.Value;

    public bool TakesNoReps => step.Kind == StepKind.Set;
}
