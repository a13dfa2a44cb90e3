using System.Buffers.Text;
using System.Security.Cryptography;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;

namespace LiveHeat.Ledger.Facts;

/// <summary>The ledger of all heats: lines are added and read, never changed. For any number of callers at once.</summary>
public sealed class HeatLedger : IAsyncDisposable
{
    private readonly OneProcess held;
    private readonly LedgerWriter writer;
    private readonly TimeProvider time;
    private readonly string path;
    private readonly DbContextOptions<LedgerContext> reading;
    private volatile string epoch;

    private HeatLedger(string path, OneProcess held, LedgerWriter writer, TimeProvider time, string epoch)
    {
        this.path = path;
        this.held = held;
        this.writer = writer;
        this.time = time;
        this.epoch = epoch;
        reading = SqliteFile.Options<LedgerContext>(SqliteFile.ForReading(path));
    }

    /// <summary>128 random bits in base64url, made with the file and again when a backup is restored: phones then send again what they keep.</summary>
    public string Epoch => epoch;

    /// <summary>Why nothing can be written now; null when the last write went well.</summary>
    public LedgerTrouble? Trouble => writer.Trouble;

    /// <summary>Opens the ledger in a file, which it makes when there is none.</summary>
    /// <exception cref="FileInUse">Another process has it open.</exception>
    /// <exception cref="NotDurable">The file system cannot keep what is committed.</exception>
    /// <exception cref="MadeByNewerVersion">The file is from a later version.</exception>
    /// <exception cref="FileDamaged">The file cannot be read.</exception>
    public static Task<HeatLedger> Open(string path, TimeProvider time, ILogger log, CancellationToken cancellation) =>
        Task.Run(() => OpenFile(Path.GetFullPath(path), time, log), cancellation);

    /// <summary>Adds lines to a heat that must stand at <paramref name="after"/>. All of them or none; the answer comes when they are on disk.</summary>
    /// <remarks>Cancelling works while the lines wait for the writer. Whoever cancelled and wonders offers them again: the ids tell.</remarks>
    /// <exception cref="LedgerUnavailable">The disk failed; nothing of these lines is in.</exception>
    /// <exception cref="LineNotKept">One of these lines cannot be stored; nothing of them is in.</exception>
    public Task<Append> TryAppend(HeatId heat, long after, IReadOnlyList<NewLine> news, CancellationToken cancellation)
    {
        if (news.Count > 1 && news.DistinctBy(line => line.Id).Count() != news.Count)
        {
            throw new ArgumentException("The same fact stands twice in one append.", nameof(news));
        }

        return writer.Do(new AppendJob(heat, after, news, cancellation), cancellation);
    }

    /// <summary>The heat's lines after a sequence, in order; 0 for all.</summary>
    public Task<IReadOnlyList<LedgerLine>> Read(HeatId heat, long after, CancellationToken cancellation) =>
        Ask<IReadOnlyList<LedgerLine>>(
            context =>
            [
                .. context.Facts.AsNoTracking()
                    .Where(f => f.Heat == heat.Value && f.Sequence > after)
                    .OrderBy(f => f.Sequence)
                    .AsEnumerable()
                    .Select(f => f.ToLine()),
            ],
            cancellation);

    /// <summary>The line with this fact, in whatever heat, or null.</summary>
    public Task<LedgerLine?> Find(FactId id, CancellationToken cancellation = default) =>
        Ask(
            context => context.Facts.AsNoTracking().SingleOrDefault(f => f.Outbox == id.Outbox && f.Counter == id.Counter)?.ToLine(),
            cancellation);

    /// <summary>Every heat that has lines, and its last sequence.</summary>
    public Task<IReadOnlyList<(HeatId Heat, long Head)>> Heads(CancellationToken cancellation = default) =>
        Ask<IReadOnlyList<(HeatId, long)>>(
            context =>
            [
                .. context.Facts
                    .GroupBy(f => f.Heat)
                    .Select(heat => new { Heat = heat.Key, Head = heat.Max(f => f.Sequence) })
                    .OrderBy(heat => heat.Heat)
                    .AsEnumerable()
                    .Select(heat => (new HeatId(heat.Heat), heat.Head)),
            ],
            cancellation);

    /// <summary>After a restored backup: phones see another epoch and send again what the backup may lack.</summary>
    public async Task RenewEpoch(CancellationToken cancellation = default) =>
        epoch = await OnWriter(context => NewEpoch(context, time), cancellation).ConfigureAwait(false);

    /// <summary>Writes something that changes nothing, to see whether the disk takes it: <see cref="Trouble"/> tells.</summary>
    public async Task Try(CancellationToken cancellation = default)
    {
        try
        {
            await OnWriter(context => context.Database.ExecuteSqlRaw("UPDATE epochs SET made_at_ms = made_at_ms"), cancellation).ConfigureAwait(false);
        }
        catch (LedgerUnavailable)
        {
            // Still in trouble, which is the answer.
        }
    }

    /// <summary>Writes what waits, closes the file and lets go of it.</summary>
    public async ValueTask DisposeAsync()
    {
        await writer.DisposeAsync().ConfigureAwait(false);
        SqliteFile.ForgetReaders(path);
        held.Dispose();
    }

    /// <summary>Work on the writer's own connection, within its transaction.</summary>
    internal Task<T> OnWriter<T>(Func<LedgerContext, T> work, CancellationToken cancellation = default) =>
        writer.Do(new OtherJob<T>(work, cancellation), cancellation);

    private static HeatLedger OpenFile(string path, TimeProvider time, ILogger log)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var held = OneProcess.Take(path);
        LedgerStore? store = null;
        try
        {
            using (var context = new LedgerContext(SqliteFile.Options<LedgerContext>(SqliteFile.ForMaking(path))))
            {
                Migrating.BringUpToDate(context, path);
            }

            store = new LedgerStore(path);
            var epoch = store.Context.Epochs.OrderByDescending(e => e.Number).Select(e => e.Epoch).FirstOrDefault()
                ?? NewEpoch(store.Context, time);
            return new(path, held, new LedgerWriter(path, store, time, log), time, epoch);
        }
        catch
        {
            store?.Dispose();
            held.Dispose();
            throw;
        }
    }

    private static string NewEpoch(LedgerContext context, TimeProvider time)
    {
        var row = new EpochRow
        {
            Number = (context.Epochs.Max(e => (long?)e.Number) ?? 0) + 1,
            Epoch = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16)),
            MadeAtMs = time.GetUtcNow().ToUnixTimeMilliseconds(),
        };
        context.Epochs.Add(row);
        context.SaveChanges();
        context.ChangeTracker.Clear();
        return row.Epoch;
    }

    private Task<T> Ask<T>(Func<LedgerContext, T> question, CancellationToken cancellation) => Task.Run(
        () =>
        {
            using var context = new LedgerContext(reading);
            return question(context);
        },
        cancellation);
}
