using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Ledger.Facts;

/// <summary>A fact to be put on the ledger.</summary>
/// <param name="Id">Made where the fact was made; unique over all heats for ever.</param>
/// <param name="Sender">The sign-in it came from.</param>
/// <param name="ReceivedAt">When the server had it.</param>
/// <param name="BodyHash">SHA-256 in hex of what the sender sent: the same id with another hash is a conflict.</param>
/// <param name="Body">The fact as canonical JSON, stored to the byte.</param>
public sealed record NewLine(FactId Id, string Sender, Instant ReceivedAt, string BodyHash, string Body);

/// <summary>A fact on the ledger. It is never changed.</summary>
/// <param name="Heat">The heat it belongs to.</param>
/// <param name="Sequence">Its number within the heat, from 1 without gaps.</param>
/// <param name="Id">The fact's own id.</param>
/// <param name="Sender">The sign-in it came from.</param>
/// <param name="ReceivedAt">When the server had it.</param>
/// <param name="BodyHash">SHA-256 in hex of what the sender sent.</param>
/// <param name="Body">The fact as canonical JSON.</param>
/// <param name="PreviousHash">The hash of the heat's line before this one.</param>
/// <param name="Hash">The hash of this line, see <see cref="HashChain"/>.</param>
public sealed record LedgerLine(
    HeatId Heat, long Sequence, FactId Id, string Sender, Instant ReceivedAt, string BodyHash, string Body, string PreviousHash, string Hash)
{
    /// <summary>The line as the hash chain sees it.</summary>
    public ChainLink Link => new(new ChainEntry(Heat, Sequence, Id, Sender, ReceivedAt, BodyHash, Body), PreviousHash, Hash);

    /// <summary>The line that follows <paramref name="head"/> with what <paramref name="news"/> says.</summary>
    internal static LedgerLine After(LedgerHead head, HeatId heat, NewLine news)
    {
        var entry = new ChainEntry(heat, head.Sequence + 1, news.Id, news.Sender, news.ReceivedAt, news.BodyHash, news.Body);
        return new(
            heat, entry.Sequence, news.Id, news.Sender, news.ReceivedAt, news.BodyHash, news.Body, head.Hash, HashChain.Next(head.Hash, entry));
    }
}

/// <summary>The last line of a heat: its sequence, 0 for a heat without lines, and its hash.</summary>
internal readonly record struct LedgerHead(long Sequence, string Hash)
{
    internal static readonly LedgerHead None = new(0, HashChain.Start);
}
