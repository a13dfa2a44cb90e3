using LiveHeat.Ledger.Registry;

namespace LiveHeat.Server.Access;

/// <summary>The organiser's passphrase at the start of the program.</summary>
internal sealed class OrganiserPassphrase(HeatRegistry registry)
{
    /// <summary>Makes it at the first start and tells it, this once; null ever after. To be printed, never logged.</summary>
    public Task<string?> EnsurePassphrase() => registry.Passphrase.MakeFirst(CancellationToken.None);
}
