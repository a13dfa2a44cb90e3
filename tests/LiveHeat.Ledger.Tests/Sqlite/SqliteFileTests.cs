using Microsoft.Data.Sqlite;

namespace LiveHeat.Ledger.Sqlite;

public sealed class SqliteFileTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_commit_waits_for_the_disk()
    {
        using var connection = Open(SqliteFile.ForMaking(folder.File("some.db")));
        SqliteFile.MakeDurable(connection);
        Assert.Equal(("wal", "2"), (Ask(connection, "PRAGMA journal_mode"), Ask(connection, "PRAGMA synchronous")));
    }

    [Theory]
    [InlineData("PRAGMA synchronous = OFF")]
    [InlineData("PRAGMA synchronous = NORMAL")]
    [InlineData("PRAGMA journal_mode = DELETE")]
    public void A_connection_that_would_not_wait_is_refused(string pragma)
    {
        using var connection = Open(SqliteFile.ForMaking(folder.File("some.db")));
        SqliteFile.MakeDurable(connection);
        Ask(connection, pragma);
        Assert.Throws<NotDurable>(() => SqliteFile.CheckDurable(connection));
    }

    [Fact]
    public void Where_there_is_no_write_ahead_log_it_does_not_run()
    {
        using var connection = Open("Data Source=:memory:");
        Assert.Throws<NotDurable>(() => SqliteFile.MakeDurable(connection));
    }

    [Fact]
    public void Readers_cannot_write()
    {
        using (var writer = Open(SqliteFile.ForMaking(folder.File("some.db"))))
        {
            Ask(writer, "CREATE TABLE t (n INTEGER)");
        }

        using var reader = Open(SqliteFile.ForReading(folder.File("some.db")));
        Assert.Throws<SqliteException>(() => Ask(reader, "INSERT INTO t VALUES (1)"));
        reader.Close();
        SqliteFile.ForgetReaders(folder.File("some.db"));
    }

    private static SqliteConnection Open(string connectionString)
    {
        var connection = new SqliteConnection(connectionString);
        connection.Open();
        return connection;
    }

    private static string? Ask(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar()?.ToString();
    }
}
