using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace LiveHeat.Ledger.Facts;

/// <summary>The writer's hold on the file: one connection, its prepared statements, and where each heat's head is. Used by one thread.</summary>
/// <remarks>The remembered heads save a query a tap. The primary key (heat, sequence) stays the judge: if it objects, the memory was wrong.</remarks>
internal sealed class LedgerStore : IDisposable
{
    private readonly Dictionary<HeatId, LedgerHead> committed = [];
    private readonly Dictionary<HeatId, LedgerHead> pending = [];
    private readonly LedgerCommands commands;

    internal LedgerStore(string path)
    {
        Context = new LedgerContext(SqliteFile.Options<LedgerContext>(SqliteFile.ForWriting(path)));
        try
        {
            Context.Database.OpenConnection();
            SqliteFile.MakeDurable(Context.Database.GetDbConnection());
            commands = new LedgerCommands(Context);
        }
        catch
        {
            Context.Dispose();
            throw;
        }
    }

    internal LedgerContext Context { get; }

    /// <summary>Runs work in one transaction and commits it. After an exception nothing of it is in, and this store is to be thrown away.</summary>
    internal void InTransaction(Action work)
    {
        using var transaction = Context.Database.BeginTransaction();
        commands.Join((SqliteTransaction)transaction.GetDbTransaction());
        work();
        transaction.Commit();
        foreach (var (heat, head) in pending)
        {
            committed[heat] = head;
        }

        pending.Clear();
    }

    /// <summary>All lines or none, whatever else the transaction holds.</summary>
    internal Append Append(HeatId heat, long after, IReadOnlyList<NewLine> news)
    {
        var head = HeadOf(heat);
        if (head.Sequence != after)
        {
            return new Append.Behind(head.Sequence);
        }

        var lines = new List<LedgerLine>(news.Count);
        commands.Savepoint();
        try
        {
            foreach (var line in news)
            {
                lines.Add(LedgerLine.After(head, heat, line));
                commands.Insert(lines[^1]);
                head = new(lines[^1].Sequence, lines[^1].Hash);
            }

            commands.Release();
        }
        catch (Exception e) when (ConcernsOneLine(e))
        {
            commands.RollBackToSavepoint();
            return WhatStandsInTheWay(heat, after, news) ?? throw new LineNotKept(e);
        }

        pending[heat] = head;
        return new Append.Done(lines);
    }

    public void Dispose()
    {
        commands.Dispose();
        Context.Dispose();
    }

    /// <summary>Everything else means that the file itself could not be written.</summary>
    private static bool ConcernsOneLine(Exception e) =>
        e is not SqliteException sqlite || sqlite.SqliteErrorCode is SqliteConstraint or SqliteTooBig or SqliteMismatch;

    private Append? WhatStandsInTheWay(HeatId heat, long after, IReadOnlyList<NewLine> news)
    {
        foreach (var line in news)
        {
            if (commands.Find(line.Id) is { } existing)
            {
                return new Append.IdTaken(line.Id, existing);
            }
        }

        var head = commands.Head(heat);
        pending[heat] = head;
        return head.Sequence != after ? new Append.Behind(head.Sequence) : null;
    }

    private LedgerHead HeadOf(HeatId heat)
    {
        if (!pending.TryGetValue(heat, out var head) && !committed.TryGetValue(heat, out head))
        {
            head = commands.Head(heat);
            committed[heat] = head;
        }

        return head;
    }

    // https://www.sqlite.org/rescode.html
    private const int SqliteTooBig = 18;
    private const int SqliteConstraint = 19;
    private const int SqliteMismatch = 20;
}
