using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Sqlite;

/// <summary>Brings a file's tables up to date. Only for whoever holds the file's <see cref="OneProcess"/>.</summary>
internal static class Migrating
{
    internal static void BringUpToDate(DbContext context, string path)
    {
        // A process killed while migrating leaves its row in EF's lock table, and every later start would wait for it for ever.
        // Nobody else can be migrating: we hold the file.
        context.Database.ExecuteSqlRaw("DROP TABLE IF EXISTS \"__EFMigrationsLock\"");

        var ours = context.Database.GetMigrations();
        var unknown = context.Database.GetAppliedMigrations().Except(ours, StringComparer.Ordinal).ToList();
        if (unknown.Count > 0)
        {
            throw new MadeByNewerVersion(path, unknown[0]);
        }

        context.Database.Migrate();
    }
}

/// <summary>The file was written by a newer version, which may mean something else by what it wrote.</summary>
public sealed class MadeByNewerVersion : IOException
{
    internal MadeByNewerVersion(string path, string migration)
        : base($"{path} was written by a newer version of LiveHeat (it knows the change {migration}). Start that version, or give this one another data folder.")
    {
    }
}
