namespace LiveHeat.Contracts;

/// <summary>GET /health: the server answers, and whether it can write.</summary>
/// <param name="Status">"ok", or "ledger-unavailable": the disk refuses; nothing is acknowledged, all else goes on.</param>
/// <param name="Epoch">The ledger's id.</param>
/// <param name="Detail">A sentence to show; null when all is well.</param>
public sealed record Health(string Status, string Epoch, string? Detail = null)
{
    /// <summary>All is well.</summary>
    public const string Well = "ok";

    /// <summary>The code of a write that the disk refused, too.</summary>
    public const string LedgerUnavailable = "ledger-unavailable";
}
