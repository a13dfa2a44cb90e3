using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Paper;

/// <summary>A lane's form and its record, from a score sheet. Steps: 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish.</summary>
internal static class SomeCard
{
    public static FactBook Book(string score)
    {
        var heat = HeatScript.Play(score);
        return new FactBook(heat.Head, heat.Entries.Select(entry => new FactLine(entry.Sequence, entry.ReceivedAt, entry.Sender, FactFlags.None, entry.Fact)));
    }

    public static PaperDraft Draft(string score = "start", int lane = 1) => new(SomeHeat.Lane(score, lane).Sheet);

    public static PaperComparison Compared(string score, PaperDraft draft)
    {
        var comparison = new PaperComparison();
        comparison.Compare(Some.Heat, Book(score), draft.Lane.Lane, draft.Read());
        return comparison;
    }

    public static PaperEntry At(this PaperDraft draft, int step) => draft.Entries[step - 1];
}
