using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Paper;

/// <summary>A round by the clock on the form.</summary>
/// <param name="window">Its steps and its time.</param>
/// <param name="entries">Its lines.</param>
public sealed class PaperRound(Window window, IReadOnlyList<PaperEntry> entries)
{
    public Window Window => window;

    public int Number => entries[0].Step.Round ?? 0;

    /// <summary>How much of the open set was done when the round was over; empty where it is not compared.</summary>
    public string Left { get; set; } = "";

    /// <summary>The set that is open on the card; null when all is done, or it is no set.</summary>
    public SheetStep? Open => entries.Select(entry => entry.Step).FirstOrDefault(step => step.Step > DoneTo) is { Kind: StepKind.Set } set ? set : null;

    /// <summary>Something can have been left open in it: a set that is not ticked; or what is typed says so.</summary>
    public bool TakesLeft => Open is not null || Left.Trim().Length > 0;

    private int DoneTo => entries.Where(entry => entry.Done).Select(entry => entry.Step.Step).DefaultIfEmpty(0).Max();
}
