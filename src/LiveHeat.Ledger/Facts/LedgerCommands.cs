using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Facts;

/// <summary>The writer's statements, prepared once on the connection of its <see cref="LedgerContext"/>.</summary>
/// <remarks>
/// The only SQL by hand. SaveChanges would build change tracking, a command and ten parameters for every tap, and after a row that fails
/// it would have to be picked apart which rows are still to be saved; a prepared statement does neither, and the 0.7 of a bare SQLite
/// loop is not to be had otherwise. Tables and migrations are EF's; a test reads through EF what these statements wrote.
/// </remarks>
internal sealed class LedgerCommands : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly List<SqliteCommand> all = [];
    private readonly SqliteCommand insert;
    private readonly SqliteCommand head;
    private readonly SqliteCommand find;
    private readonly SqliteCommand savepoint;
    private readonly SqliteCommand release;
    private readonly SqliteCommand rollBack;

    internal LedgerCommands(DbContext context)
    {
        connection = (SqliteConnection)context.Database.GetDbConnection();
        insert = Prepare(
            "INSERT INTO facts (heat, sequence, outbox, counter, sender, received_at_ms, body_hash, body, previous_hash, hash) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)",
            10);
        head = Prepare("SELECT sequence, hash FROM facts WHERE heat = $1 ORDER BY sequence DESC LIMIT 1", 1);
        find = Prepare(
            "SELECT heat, sequence, outbox, counter, sender, received_at_ms, body_hash, body, previous_hash, hash FROM facts WHERE outbox = $1 AND counter = $2",
            2);
        savepoint = Prepare("SAVEPOINT one_append", 0);
        release = Prepare("RELEASE one_append", 0);
        rollBack = Prepare("ROLLBACK TO one_append; RELEASE one_append", 0);
    }

    /// <summary>All statements from now on belong to this transaction.</summary>
    internal void Join(SqliteTransaction transaction)
    {
        foreach (var command in all)
        {
            command.Transaction = transaction;
        }
    }

    internal void Savepoint() => savepoint.ExecuteNonQuery();

    internal void Release() => release.ExecuteNonQuery();

    internal void RollBackToSavepoint() => rollBack.ExecuteNonQuery();

    internal void Insert(LedgerLine line) => Bind(
        insert,
        line.Heat.Value,
        line.Sequence,
        line.Id.Outbox,
        line.Id.Counter,
        line.Sender,
        line.ReceivedAt.UnixMs,
        line.BodyHash,
        line.Body,
        line.PreviousHash,
        line.Hash).ExecuteNonQuery();

    internal LedgerHead Head(HeatId heat)
    {
        using var row = Bind(head, heat.Value).ExecuteReader();
        return row.Read() ? new(row.GetInt64(0), row.GetString(1)) : LedgerHead.None;
    }

    internal LedgerLine? Find(FactId id)
    {
        using var row = Bind(find, id.Outbox, id.Counter).ExecuteReader();
        return row.Read()
            ? new(
                new HeatId(row.GetString(0)),
                row.GetInt64(1),
                new FactId(row.GetString(2), row.GetInt64(3)),
                row.GetString(4),
                new Instant(row.GetInt64(5)),
                row.GetString(6),
                row.GetString(7),
                row.GetString(8),
                row.GetString(9))
            : null;
    }

    public void Dispose()
    {
        foreach (var command in all)
        {
            command.Dispose();
        }
    }

    private static SqliteCommand Bind(SqliteCommand command, params ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            command.Parameters[i].Value = values[i] ?? DBNull.Value;
        }

        return command;
    }

    private SqliteCommand Prepare(string sql, int parameters)
    {
        var command = connection.CreateCommand();
        all.Add(command);
        command.CommandText = sql;
        for (var i = 1; i <= parameters; i++)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
        }

        command.Prepare();
        return command;
    }
}
