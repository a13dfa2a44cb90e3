using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Ledger.Facts;

/// <summary>A line of the ledger as a row of the table <c>facts</c>. Times are whole milliseconds, so that every database orders them alike.</summary>
internal sealed class FactRow
{
    public required string Heat { get; init; }

    public required long Sequence { get; init; }

    public required string Outbox { get; init; }

    public required long Counter { get; init; }

    public required string Sender { get; init; }

    public required long ReceivedAtMs { get; init; }

    public required string BodyHash { get; init; }

    public required string Body { get; init; }

    public required string PreviousHash { get; init; }

    public required string Hash { get; init; }

    internal LedgerLine ToLine() => new(
        new HeatId(Heat), Sequence, new FactId(Outbox, Counter), Sender, new Instant(ReceivedAtMs), BodyHash, Body, PreviousHash, Hash);
}

/// <summary>A life of the ledger: from its making, or from a restored backup, until the next one. The highest number counts.</summary>
internal sealed class EpochRow
{
    public required long Number { get; init; }

    /// <summary>128 random bits in base64url.</summary>
    public required string Epoch { get; init; }

    public required long MadeAtMs { get; init; }
}
