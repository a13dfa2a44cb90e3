using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Paper;

/// <summary>One line of the form: a step, and what is typed of it.</summary>
/// <param name="step">The step.</param>
/// <param name="athletes">How many the lane has: each may have a part of a shared set.</param>
public sealed class PaperEntry(SheetStep step, int athletes)
{
    private string time = "";
    private string value = "";
    private string load = "";
    private bool? good;

    public SheetStep Step => step;

    public bool Done { get; set; }

    /// <summary>As on the floor's clock: m:ss, or m:ss.t. Whoever writes a time, a reading or an attempt says that it is done.</summary>
    public string Time
    {
        get => time;
        set => (time, Done) = (value, Done || Says(value));
    }

    /// <summary>The reading of a value step.</summary>
    public string Value
    {
        get => value;
        set => (this.value, Done) = (value, Done || Says(value));
    }

    /// <summary>The load of an attempt.</summary>
    public string Load
    {
        get => load;
        set => (load, Done) = (value, Says(value) || good is not null);
    }

    /// <summary>A good lift, or no lift; null before it is marked.</summary>
    public bool? Good
    {
        get => good;
        set => (good, Done) = (value, Says(load) || value is not null);
    }

    /// <summary>By athlete, in the lane's order: how much of the shared set.</summary>
    public string[] Shares { get; } = [.. Enumerable.Repeat("", step.MinimumEach is null ? 0 : athletes)];

    /// <summary>How many strokes on the no-rep line; empty where they are not compared.</summary>
    public string NoReps { get; set; } = "";

    public bool TakesValue => step.Kind == StepKind.Value;

    public bool TakesAttempt => step.Kind == StepKind.Attempt;

    public bool TakesNoReps => step.Kind == StepKind.Set;

    /// <summary>It is not done after all.</summary>
    public void Clear() => (time, value, load, good, Done) = ("", "", "", null, false);

    private static bool Says(string typed) => typed.Trim().Length > 0;
}
