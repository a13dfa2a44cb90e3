using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Paper;

/// <summary>Steps of which each implies those before it: a round by the clock, or, where none is, the whole plan; and how far card and phone came in it.</summary>
/// <param name="First">Its first step.</param>
/// <param name="Last">Its last step.</param>
/// <param name="Phone">The last step that the phone has done; the one before the first where it has none.</param>
/// <param name="PhoneCount">Units of the step after that one.</param>
/// <param name="Paper">The last step that the card has done.</param>
/// <param name="PaperCount">Units of the step after that one; null when not written.</param>
/// <param name="Window">The round's time; null where the plan follows no clock.</param>
internal sealed record CardStretch(int First, int Last, int Phone, int PhoneCount, int Paper, int? PaperCount, Window? Window)
{
    /// <summary>All stretches of a lane, in order.</summary>
    public static IEnumerable<CardStretch> Of(LaneState lane, PaperCard card)
    {
        if (lane.Plan.Windows.Count == 0)
        {
            return [new CardStretch(1, lane.Plan.LastStep, lane.DoneSteps, lane.Count, Done(card, 1, lane.Plan.LastStep), card.AtCap, null)];
        }

        return lane.Plan.Windows.Select((window, i) => new CardStretch(
            window.First, window.Last, lane.Rounds[i].Done, lane.Rounds[i].Count, Done(card, window.First, window.Last), Left(card, lane.Plan.Find(window.First)!.Round), window));
    }

    /// <summary>Whether the step is in it.</summary>
    public bool Has(int step) => step >= First && step <= Last;

    private static int Done(PaperCard card, int first, int last) =>
        card.Lines.Where(line => line.Done && line.Step >= first && line.Step <= last).Select(line => line.Step).DefaultIfEmpty(first - 1).Max();

    private static int? Left(PaperCard card, int? round) => card.AtEnds.Where(left => left.Round == round).Select(left => (int?)left.Units).FirstOrDefault();
}
