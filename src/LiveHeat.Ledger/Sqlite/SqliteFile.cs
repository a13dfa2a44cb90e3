using System.Data.Common;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Sqlite;

/// <summary>How a database file is opened: for its one writer and for its readers.</summary>
internal static class SqliteFile
{
    /// <summary>For the start: makes the file when there is none.</summary>
    internal static string ForMaking(string path) => Unshared(path, SqliteOpenMode.ReadWriteCreate);

    /// <summary>For the writer. A file that is gone stays gone: an empty new one would acknowledge what belongs to another.</summary>
    internal static string ForWriting(string path) => Unshared(path, SqliteOpenMode.ReadWrite);

    /// <summary>For readers, pooled. They cannot write even by mistake.</summary>
    internal static string ForReading(string path) => new SqliteConnectionStringBuilder
    {
        DataSource = path,
        Mode = SqliteOpenMode.ReadOnly,
    }.ToString();

    internal static DbContextOptions<TContext> Options<TContext>(string connectionString) where TContext : DbContext =>
        new DbContextOptionsBuilder<TContext>().UseSqlite(connectionString).Options;

    /// <summary>Closes the pooled connections of the readers of one file.</summary>
    internal static void ForgetReaders(string path)
    {
        using var connection = new SqliteConnection(ForReading(path));
        SqliteConnection.ClearPool(connection);
    }

    /// <summary>Makes a commit mean "on disk": write-ahead log, and the log synchronised before a commit returns. Refuses to go on without.</summary>
    internal static void MakeDurable(DbConnection connection)
    {
        Ask(connection, "PRAGMA journal_mode = WAL");
        Ask(connection, "PRAGMA synchronous = FULL");
        Ask(connection, "PRAGMA fullfsync = 1");   // macOS: past the disk's own cache; nothing elsewhere

        // What a savepoint may have to put back is kept in memory, not in a temporary file: of a batch of taps a few hundred kB.
        Ask(connection, "PRAGMA temp_store = MEMORY");
        CheckDurable(connection);
    }

    /// <summary>Throws when a commit on this connection could be lost with the power.</summary>
    internal static void CheckDurable(DbConnection connection)
    {
        var journal = Ask(connection, "PRAGMA journal_mode");
        var synchronous = Ask(connection, "PRAGMA synchronous");
        if (journal != "wal" || synchronous is not ("2" or "3"))
        {
            throw new NotDurable(connection.DataSource, journal, synchronous);
        }
    }

    /// <summary>Not from the pool, so that closing the connection really closes the file.</summary>
    private static string Unshared(string path, SqliteOpenMode mode) =>
        new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false }.ToString();

    private static string Ask(DbConnection connection, string pragma)
    {
        using var command = connection.CreateCommand();
        command.CommandText = pragma;
        return Convert.ToString(command.ExecuteScalar(), CultureInfo.InvariantCulture) ?? "";
    }
}

/// <summary>The file system cannot keep what SQLite was asked to keep.</summary>
public sealed class NotDurable : IOException
{
    internal NotDurable(string path, string journal, string synchronous)
        : base($"{path} cannot be kept safe here (journal_mode is {journal} and not wal, or synchronous is {synchronous} and not 2). Put the data folder on a local disk.")
    {
    }
}
