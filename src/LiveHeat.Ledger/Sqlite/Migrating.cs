using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Sqlite;

/// <summary>Brings a file's tables up to date. Only for whoever holds the file's <see cref="OneProcess"/>.</summary>
internal static class Migrating
{
    internal static void BringUpToDate(DbContext context, string path)
    {
        try
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
        catch (SqliteException e) when (e.SqliteErrorCode is Corrupt or NotADatabase)
        {
            throw new FileDamaged(path, e);
        }
    }

    // https://www.sqlite.org/rescode.html
    private const int Corrupt = 11;
    private const int NotADatabase = 26;
}

/// <summary>The file was written by a newer version, which may mean something else by what it wrote.</summary>
public sealed class MadeByNewerVersion : IOException
{
    internal MadeByNewerVersion(string path, string migration)
        : base($"{path} was written by a newer version of LiveHeat (it knows the change {migration}). Start that version, or give this one another data folder.")
    {
    }
}

/// <summary>What is in the file cannot be read as a database.</summary>
public sealed class FileDamaged : IOException
{
    internal FileDamaged(string path, Exception cause)
        : base($"{path} is damaged or is no file of LiveHeat ({cause.Message}). Put it aside and restore a backup in its place.", cause)
    {
    }
}
