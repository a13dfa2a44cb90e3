using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>One moment of a heat played again.</summary>
/// <param name="At">When it became so.</param>
/// <param name="Entry">The fact that made it so, as the ledger has it.</param>
/// <param name="State">The heat from then on, until the next moment.</param>
public sealed record Moment(Instant At, Entry Entry, HeatState State);

/// <summary>
/// Plays a heat again, fact by fact: as it happened (every fact at its own instant, whenever it arrived), or as it was known (every fact when the ledger
/// had it). Both are folds of a part of the facts.
/// </summary>
public static class Replay
{
    /// <summary>What happened, in the order in which it happened.</summary>
    /// <remarks>Desk facts keep their ledger order, as the fold wants; their instants are the server's and agree with it.</remarks>
    public static IEnumerable<Moment> AsHappened(HeatId heat, IEnumerable<Entry> entries)
    {
        // Taps that were added from paper or video happened when they say, not when they were added.
        var ordered = entries.OrderBy(entry => InstantOf(entry.Fact)).ThenBy(entry => entry.Sequence).ToList();
        return Play(heat, ordered, entry => InstantOf(entry.Fact));
    }

    /// <summary>What was known, in the order in which it became known.</summary>
    public static IEnumerable<Moment> AsKnown(HeatId heat, IEnumerable<Entry> entries) =>
        Play(heat, entries.OrderBy(entry => entry.Sequence), entry => entry.ReceivedAt);

    private static IEnumerable<Moment> Play(HeatId heat, IEnumerable<Entry> entries, Func<Entry, Instant> at)
    {
        var state = HeatState.Empty(heat);
        foreach (var entry in entries)
        {
            // Numbered anew, so that a heat can be folded in another order than the ledger's.
            state = state.Apply(entry with { Sequence = state.Head + 1 });
            yield return new Moment(at(entry), entry, state);
        }
    }

    private static Instant InstantOf(HeatFact fact) => fact is HeatFact.FactAdded added ? added.Tap.Instant : fact.Instant;
}
