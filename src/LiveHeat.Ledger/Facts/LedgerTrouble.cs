namespace LiveHeat.Ledger.Facts;

/// <summary>Nothing can be written now. It goes on by itself when the disk takes writes again.</summary>
/// <param name="Since">The first write that was refused.</param>
/// <param name="Cause">What the disk said.</param>
public sealed record LedgerTrouble(DateTimeOffset Since, string Cause);
