using System.Text.Json;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Contracts.Taps;

/// <summary>Taps from one phone, in counter order.</summary>
/// <param name="Taps">Each a floor fact; kept as JSON so that one that cannot be read blocks none behind it. At most <see cref="Most"/>.</param>
/// <param name="Epoch">The ledger the phone believes in; null when it knows none.</param>
public sealed record TapBatch(IReadOnlyList<JsonElement> Taps, string? Epoch = null)
{
    /// <summary>The most taps in one batch.</summary>
    public const int Most = 500;
}

/// <summary>What became of a tap.</summary>
public enum TapOutcome
{
    /// <summary>On disk now.</summary>
    Accepted,

    /// <summary>Was on disk already, with the same body.</summary>
    Known,

    /// <summary>The id is on disk with another body.</summary>
    Conflict,

    /// <summary>Not this judge's to make, or cannot be read.</summary>
    Refused,
}

/// <summary>The answer to one tap.</summary>
/// <param name="Id">The tap's id as sent; empty when it had none.</param>
/// <param name="Outcome">What became of it.</param>
/// <param name="Sequence">Its place on the ledger; null when it has none.</param>
/// <param name="Flags">How it is kept.</param>
/// <param name="Code">Why it was refused; null otherwise.</param>
/// <param name="Detail">The same for a person.</param>
public sealed record TapReceipt(string Id, TapOutcome Outcome, long? Sequence, FactFlags Flags, string? Code = null, string? Detail = null);

/// <summary>One receipt a tap, in the order sent.</summary>
/// <param name="Epoch">The ledger's own id; another one means a restored or new ledger: send everything again.</param>
/// <param name="Head">The heat's last sequence.</param>
/// <param name="Receipts">In the order sent.</param>
public sealed record TapReceipts(string Epoch, long Head, IReadOnlyList<TapReceipt> Receipts);

/// <summary>The answer to a command.</summary>
/// <param name="Outcome"><see cref="TapOutcome.Accepted"/> or <see cref="TapOutcome.Known"/>.</param>
/// <param name="Sequence">The fact it became.</param>
/// <param name="Head">The heat's last sequence.</param>
public sealed record CommandAnswer(TapOutcome Outcome, long Sequence, long Head);

/// <summary>A fact as read from the ledger.</summary>
/// <param name="Sequence">Its place.</param>
/// <param name="ReceivedAt">When the server had it.</param>
/// <param name="Sender">Device or sign-in.</param>
/// <param name="Flags">How it is kept.</param>
/// <param name="Fact">The fact.</param>
public sealed record FactLine(long Sequence, Engine.Timing.Instant ReceivedAt, string Sender, FactFlags Flags, HeatFact Fact);

/// <summary>Facts after a sequence.</summary>
public sealed record FactLines(long Head, IReadOnlyList<FactLine> Facts);
