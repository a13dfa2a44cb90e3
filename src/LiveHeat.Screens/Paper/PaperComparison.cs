using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Paper;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Paper;

/// <summary>A card beside what is on a lane's record, and what people chose of each difference. Folded here, on this screen, from the facts themselves.</summary>
public sealed class PaperComparison
{
    private readonly Dictionary<(DifferenceKind Kind, int Step), string> taken = [];
    private FactBook? foldedOf;

    /// <summary>The heat with this lane's facts alone; null before they are read.</summary>
    public HeatState? Heat { get; private set; }

    /// <summary>The lane on the record; null when the heat has none of that number.</summary>
    public LaneState? Lane { get; private set; }

    public PaperCard Card { get; private set; } = PaperCard.Empty;

    public Items<CardDifference> Differences { get; private set; }

    /// <summary>Where the card's word stands, with the reasons.</summary>
    public IReadOnlyList<TakenFromPaper> Taken => [.. Differences.Where(IsTaken).Select(one => new TakenFromPaper(one, taken[(one.Kind, one.Step)]))];

    /// <summary>Something is on the record already.</summary>
    public bool HasTaps => Heat is { } heat && Lane is { } lane && CardDifferences.HasTaps(heat, lane.Lane);

    /// <summary>Reads what is on the record. Folding takes a moment, so it is done only when facts are new.</summary>
    public void Fold(HeatId heat, FactBook book, LaneNumber lane)
    {
        if (!ReferenceEquals(foldedOf, book) || Lane?.Lane != lane)
        {
            Heat = HeatState.Fold(heat, book.Lines
                .Where(line => book.LaneOf(line.Fact) is not { } about || about == lane)
                .Select(line => new Entry(line.Sequence, line.ReceivedAt, line.Sender, line.Fact)));
            Lane = Heat.Find(lane);
            foldedOf = book;
        }
    }

    /// <summary>Compares the lane's card with what was folded last.</summary>
    public void Compare(LaneNumber lane, PaperCard card)
    {
        Card = card;
        Differences = CardDifferences.Of(Heat!, lane, card);
    }

    public bool IsTaken(CardDifference difference) => taken.ContainsKey((difference.Kind, difference.Step));

    /// <summary>A time that was taken and lost again is missing afterwards, not another.</summary>
    private bool WasTaken(CardDifference left) =>
        Taken.Any(one => one.Difference.Step == left.Step && (one.Difference.Kind == left.Kind || (left.Kind == DifferenceKind.TimeMissing && one.Difference.Kind == DifferenceKind.Time)));

    /// <summary>The card's word counts, for a reason; or, without one, what is on the record stands.</summary>
    public void Choose(CardDifference difference, string? reason)
    {
        if (reason is null)
        {
            taken.Remove((difference.Kind, difference.Step));
        }
        else
        {
            taken[(difference.Kind, difference.Step)] = reason;
        }
    }

    public string ReasonFor(CardDifference difference) => taken.GetValueOrDefault((difference.Kind, difference.Step), "");

    /// <summary>What is to be written, and what comes of it: the lane afterwards, the first refusal, what would not come out as chosen.</summary>
    public PaperPlan Plan(Func<FactId> newId, By by, Instant now)
    {
        var writes = CardWriting.Of(Heat!, Lane!.Lane, Card, Taken, newId, now);
        var (after, refused) = CardWriting.Preview(Heat!, writes, by, now);
        var left = CardDifferences.Of(after, Lane.Lane, Card).Where(WasTaken).ToItems();
        return new PaperPlan(writes, after.Find(Lane.Lane)!, refused?.Sentence(), refused is null ? left : []);
    }
}

/// <summary>What is to be written to a lane's record.</summary>
/// <param name="Writes">In order.</param>
/// <param name="After">The lane afterwards.</param>
/// <param name="Refused">Why it cannot be; null when it can.</param>
/// <param name="NotSo">Chosen as the card has it and, by what else stands on the record, not so afterwards.</param>
public sealed record PaperPlan(Items<CardWrite> Writes, LaneState After, string? Refused, Items<CardDifference> NotSo);
