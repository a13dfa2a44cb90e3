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

        // A single insert that fails undoes itself; only several need a savepoint to go back to.
        var savepoint = news.Count > 1;
        if (savepoint)
        {
            commands.Savepoint();
        }

        try
        {
            var lines = Insert(head, heat, news);
            if (savepoint)
            {
                commands.Release();
            }

            return new Append.Done(lines);
        }
        catch (Exception e) when (ConcernsOneLine(e))
        {
            if (savepoint)
            {
                commands.RollBackToSavepoint();
            }

            return WhatStandsInTheWay(heat, after, news) ?? throw new LineNotKept(e);
        }
    }

    public void Dispose()
    {
        commands.Dispose();
        Context.Dispose();
    }

    /// <summary>Everything else means that the file itself could not be written.</summary>
    private static bool ConcernsOneLine(Exception e) =>
        e is not SqliteException sqlite || sqlite.SqliteErrorCode is SqliteConstraint or SqliteTooBig or SqliteMismatch;

    private LedgerLine[] Insert(LedgerHead head, HeatId heat, IReadOnlyList<NewLine> news)
    {
        var lines = new LedgerLine[news.Count];
        for (var i = 0; i < lines.Length; i++)
        {
            lines[i] = LedgerLine.After(head, heat, news[i]);
            commands.Insert(lines[i]);
            head = new(lines[i].Sequence, lines[i].Hash);
        }

        pending[heat] = head;
        return lines;
    }

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
