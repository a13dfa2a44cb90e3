using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Sqlite;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Registry;

/// <summary>The registry's file as its parts use it: many readers, one write at a time, all of it off the caller's thread.</summary>
internal sealed class RegistryFile : IAsyncDisposable
{
    private readonly string path;
    private readonly OneProcess held;
    private readonly TimeProvider time;
    private readonly DbContextOptions<RegistryContext> reading;
    private readonly SemaphoreSlim oneWrite = new(1, 1);
    private RegistryContext? writing;

    private RegistryFile(string path, OneProcess held, TimeProvider time)
    {
        this.path = path;
        this.held = held;
        this.time = time;
        reading = SqliteFile.Options<RegistryContext>(SqliteFile.ForReading(path));
    }

    internal Instant Now => new(time.GetUtcNow().ToUnixTimeMilliseconds());

    internal static RegistryFile Open(string path, TimeProvider time)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        var held = OneProcess.Take(path);
        var file = new RegistryFile(path, held, time);
        try
        {
            using (var context = new RegistryContext(SqliteFile.Options<RegistryContext>(SqliteFile.ForMaking(path))))
            {
                Migrating.BringUpToDate(context, path);
            }

            file.writing = file.Connect();
            return file;
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    internal Task<T> Read<T>(Func<RegistryContext, T> question, CancellationToken cancellation) => Task.Run(
        () =>
        {
            using var context = new RegistryContext(reading);
            return question(context);
        },
        cancellation);

    /// <summary>Runs work in one transaction. After an exception nothing of it is in.</summary>
    internal async Task<T> Write<T>(Func<RegistryContext, T> work, CancellationToken cancellation)
    {
        await oneWrite.WaitAsync(cancellation).ConfigureAwait(false);
        try
        {
            return await Task.Run(() => InTransaction(work), CancellationToken.None).ConfigureAwait(false);
        }
        finally
        {
            oneWrite.Release();
        }
    }

    public async ValueTask DisposeAsync()
    {
        await oneWrite.WaitAsync().ConfigureAwait(false);   // the last write is through
        writing?.Dispose();
        SqliteFile.ForgetReaders(path);
        held.Dispose();
        oneWrite.Dispose();
    }

    private T InTransaction<T>(Func<RegistryContext, T> work)
    {
        writing ??= Reconnect();
        var context = writing;
        try
        {
            using var transaction = context.Database.BeginTransaction();
            var answer = work(context);
            context.SaveChanges();
            transaction.Commit();
            context.ChangeTracker.Clear();
            return answer;
        }
        catch (Exception e)
        {
            // The next write starts from a connection that remembers nothing of this one.
            writing = null;
            context.Dispose();
            if (e is SqliteException or DbUpdateException)
            {
                throw new RegistryUnavailable(e);
            }

            throw;
        }
    }

    private RegistryContext Reconnect()
    {
        try
        {
            return Connect();
        }
        catch (SqliteException e)
        {
            throw new RegistryUnavailable(e);
        }
    }

    private RegistryContext Connect()
    {
        var context = new RegistryContext(SqliteFile.Options<RegistryContext>(SqliteFile.ForWriting(path)));
        try
        {
            context.Database.OpenConnection();
            SqliteFile.MakeDurable(context.Database.GetDbConnection());
            return context;
        }
        catch
        {
            context.Dispose();
            throw;
        }
    }
}

/// <summary>The disk did not take a change of the registry, and nothing of it is in.</summary>
public sealed class RegistryUnavailable : IOException
{
    internal RegistryUnavailable(Exception cause)
        : base($"The setup cannot be written ({(cause.InnerException ?? cause).Message}). Nothing was changed. Free space on the disk, or make it writable, and try again.", cause)
    {
    }
}
