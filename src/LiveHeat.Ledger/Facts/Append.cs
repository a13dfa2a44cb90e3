using LiveHeat.Engine.Heats;

namespace LiveHeat.Ledger.Facts;

/// <summary>What became of lines offered to the ledger. All of them are in, or none.</summary>
public abstract record Append
{
    private Append()
    {
    }

    /// <summary>On disk, in the order given.</summary>
    public sealed record Done(IReadOnlyList<LedgerLine> Lines) : Append;

    /// <summary>The heat's head is not where the caller thought: read from there on, fold, look again, offer again.</summary>
    /// <param name="Head">The heat's last sequence. Lower than the caller's after a backup was restored.</param>
    public sealed record Behind(long Head) : Append;

    /// <summary>A fact with this id is on the ledger, in this heat or another. The same body: it is known. Another: a conflict.</summary>
    public sealed record IdTaken(FactId Id, LedgerLine Existing) : Append;
}
