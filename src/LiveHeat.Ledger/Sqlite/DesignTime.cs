using LiveHeat.Ledger.Facts;
using LiveHeat.Ledger.Registry;
using Microsoft.EntityFrameworkCore.Design;

namespace LiveHeat.Ledger.Sqlite;

// For `dotnet ef migrations add NAME --project src/LiveHeat.Ledger --context LedgerContext --output-dir Sqlite/Migrations`
// (or RegistryContext). The tool opens no file; the name only has to be there.

internal sealed class LedgerDesign : IDesignTimeDbContextFactory<LedgerContext>
{
    public LedgerContext CreateDbContext(string[] args) => new(SqliteFile.Options<LedgerContext>(SqliteFile.ForMaking("design-time.db")));
}

internal sealed class RegistryDesign : IDesignTimeDbContextFactory<RegistryContext>
{
    public RegistryContext CreateDbContext(string[] args) => new(SqliteFile.Options<RegistryContext>(SqliteFile.ForMaking("design-time.db")));
}
