using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>A tap with the instant at which the fold plays it.</summary>
/// <param name="Entry">The ledger's line.</param>
/// <param name="Tap">The tap: the entry's own fact, or the one inside a <see cref="HeatFact.FactAdded"/>.</param>
/// <param name="At">The tap's instant, or where its phone's counter order put it.</param>
public sealed record PlacedTap(Entry Entry, HeatFact.Floor Tap, Instant At);

/// <summary>
/// Puts taps in the order in which they happened, whatever order they arrived in: by instant, while each phone's own taps keep
/// their counter order. Where a phone's instants contradict its counter, the more uncertain instant yields.
/// </summary>
public static class TapOrder
{
    /// <summary>The same set of taps gives the same list, whatever order it comes in.</summary>
    public static List<PlacedTap> Arrange(IEnumerable<Entry> entries)
    {
        var placed = new List<PlacedTap>();
        var byOutbox = new Dictionary<string, List<Entry>>();
        foreach (var entry in entries)
        {
            if (entry.Fact is HeatFact.FactAdded added)
            {
                placed.Add(new(entry, added.Tap, added.Tap.Instant));
            }
            else if (byOutbox.TryGetValue(entry.Fact.Id.Outbox, out var list))
            {
                list.Add(entry);
            }
            else
            {
                byOutbox.Add(entry.Fact.Id.Outbox, [entry]);
            }
        }

        foreach (var taps in byOutbox.Values)
        {
            SortUnlessSorted(taps, (left, right) => left.Fact.Id.Counter.CompareTo(right.Fact.Id.Counter));
            var instants = KeepCounterOrder(taps);
            for (var i = 0; i < taps.Count; i++)
            {
                placed.Add(new(taps[i], (HeatFact.Floor)taps[i].Fact, instants[i]));
            }
        }

        SortUnlessSorted(placed, Earlier);
        return placed;
    }

    /// <summary>Nearly always taps come in order.</summary>
    private static void SortUnlessSorted<T>(List<T> list, Comparison<T> compare)
    {
        for (var i = 1; i < list.Count; i++)
        {
            if (compare(list[i - 1], list[i]) > 0)
            {
                list.Sort(compare);
                return;
            }
        }
    }

    private static int Earlier(PlacedTap left, PlacedTap right)
    {
        var byInstant = left.At.CompareTo(right.At);
        return byInstant != 0 ? byInstant : left.Tap.Id.CompareTo(right.Tap.Id);
    }

    private static Instant[] KeepCounterOrder(List<Entry> taps)
    {
        var instants = new Instant[taps.Count];
        var inOrder = true;
        for (var i = 0; i < taps.Count; i++)
        {
            instants[i] = taps[i].Fact.Instant;
            inOrder &= i == 0 || instants[i - 1] <= instants[i];
        }

        if (inOrder)
        {
            return instants;
        }

        var fixedAt = new SortedList<int, Instant>();
        foreach (var i in Enumerable.Range(0, instants.Length).OrderBy(i => UncertaintyMs(taps[i])).ThenBy(i => i))
        {
            var (floor, ceiling) = Neighbours(fixedAt, i);
            var at = instants[i] < floor ? floor : instants[i] > ceiling ? ceiling : instants[i];
            fixedAt.Add(i, at);
        }

        return [.. fixedAt.Values];
    }

    /// <summary>An instant after the tap's own arrival is wrong whatever the phone says of its clock: it yields to all others.</summary>
    private static int UncertaintyMs(Entry entry)
    {
        var tap = (HeatFact.Floor)entry.Fact;
        return TapStanding.InFuture(tap, entry) ? int.MaxValue : tap.UncertaintyMs;
    }

    private static (Instant Floor, Instant Ceiling) Neighbours(SortedList<int, Instant> fixedAt, int index)
    {
        var floor = new Instant(long.MinValue);
        foreach (var (i, at) in fixedAt)
        {
            if (i > index)
            {
                return (floor, at);
            }

            floor = at;
        }

        return (floor, new Instant(long.MaxValue));
    }
}
