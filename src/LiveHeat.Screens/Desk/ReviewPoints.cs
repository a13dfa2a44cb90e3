using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Desk;

/// <summary>Something to look at before freezing.</summary>
/// <param name="Lane">Where; null when it is about the whole heat.</param>
/// <param name="Words">What, all of a lane in one line.</param>
public sealed record ReviewPoint(LaneNumber? Lane, string Words);

/// <summary>All that is flagged, held, disputed, not read back, not arrived or without a reason.</summary>
public static class ReviewPoints
{
    /// <summary>In floor order, what is about the whole heat last.</summary>
    public static IReadOnlyList<ReviewPoint> Of(IReadOnlyList<LaneView> lanes, Frame frame, IReadOnlyList<PhoneSeen> phones, FactBook book) =>
    [
        .. from lane in lanes
            let words = string.Join("; ", OfLane(lane, frame, phones, book).Distinct())
            where words.Length > 0
            select new ReviewPoint(lane.Lane, words),
        .. book.Lines.Where(line => book.LaneOf(line.Fact) is null && book.ReasonMissing(line.Fact))
            .Select(line => new ReviewPoint(null, $"{FactWords.Of(line.Fact, null, book)}: {CommonWords.ReasonMissing}")),
    ];

    private static IEnumerable<string> OfLane(LaneView lane, Frame frame, IReadOnlyList<PhoneSeen> phones, FactBook book)
    {
        foreach (var mark in LaneMarks.Of(lane, frame).Where(mark => mark.Kind != MarkKind.Plain))
        {
            yield return mark.Words;
        }

        var unsent = phones.Where(phone => phone.Lane == lane.Lane && (phone.Status?.Heat is null || phone.Status.Heat == frame.Heat.Value)).Sum(phone => phone.Status?.Unsent ?? 0);
        if (unsent > 0)
        {
            yield return ReviewWords.Unsent(unsent);
        }

        if (lane.State.ReadBack is null && lane.State.Status is LaneStatus.Finished or LaneStatus.Through or LaneStatus.Capped)
        {
            yield return ReviewWords.NotReadBack;
        }

        foreach (var line in book.Of(lane.Lane).Where(line => book.ReasonMissing(line.Fact)))
        {
            yield return $"{FactWords.Of(line.Fact, lane, book)}: {CommonWords.ReasonMissing}";
        }
    }
}
