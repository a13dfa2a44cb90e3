namespace LiveHeat.Ledger.Facts;

/// <summary>The disk did not take it, and nothing of the append is on the ledger. Whoever offered it keeps it and offers it again.</summary>
public sealed class LedgerUnavailable : IOException
{
    internal LedgerUnavailable(Exception cause)
        : base($"The ledger cannot be written ({cause.Message}). Nothing was recorded. Free space on the disk, or make it writable; then it goes on by itself.", cause)
    {
    }
}

/// <summary>One line cannot be kept as it is (a missing text, a text that is no text). Nothing of its append is on the ledger.</summary>
public sealed class LineNotKept : ArgumentException
{
    internal LineNotKept(Exception cause)
        : base($"The ledger cannot keep this line: {cause.Message}", cause)
    {
    }
}
