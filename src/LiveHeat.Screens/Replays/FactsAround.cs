using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Replays;

/// <summary>A fact near the moment that is shown.</summary>
/// <param name="Line">The fact.</param>
/// <param name="At">When it stands: when it happened, or when it was known.</param>
/// <param name="Ahead">It lies after the moment: not yet so on this picture.</param>
public sealed record NearFact(FactLine Line, Instant At, bool Ahead);

/// <summary>The facts around a moment.</summary>
public static class FactsAround
{
    /// <summary>How far on either side, milliseconds of the server's time.</summary>
    public const int ReachMs = 15_000;

    /// <summary>In the order in which they stand.</summary>
    /// <param name="book">All facts.</param>
    /// <param name="by">When a fact stands.</param>
    /// <param name="now">The moment.</param>
    /// <param name="lane">Only this lane's, and the rulings on them; null for all, and what is about the whole heat.</param>
    public static IReadOnlyList<NearFact> Of(FactBook book, ReplayBy by, Instant now, LaneNumber? lane) =>
        [.. (lane is { } one ? book.Of(one) : book.Lines)
            .Select(line => new NearFact(line, AtOf(line, by), AtOf(line, by) > now))
            .Where(near => Math.Abs(near.At - now) <= ReachMs)
            .OrderBy(near => near.At).ThenBy(near => near.Line.Sequence)];

    /// <summary>When a fact stands. What was added happened when it says, and was known when it was added.</summary>
    public static Instant AtOf(FactLine line, ReplayBy by) =>
        by == ReplayBy.Known ? line.ReceivedAt : line.Fact is HeatFact.FactAdded added ? added.Tap.Instant : line.Fact.Instant;
}
