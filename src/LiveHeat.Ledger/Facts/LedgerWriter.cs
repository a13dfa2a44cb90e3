using System.Threading.Channels;
using Microsoft.Extensions.Logging;

namespace LiveHeat.Ledger.Facts;

/// <summary>The one writer: takes what waits, writes it in one transaction, and answers when the commit is on disk.</summary>
/// <remarks>
/// While one commit waits for the disk the next batch gathers, so that sixty judges tapping at once cost a few commits, not sixty.
/// It has a thread of its own: it sleeps in the disk's synchronisation, and the pool has few threads on a small machine.
/// </remarks>
internal sealed class LedgerWriter : IAsyncDisposable
{
    /// <summary>Jobs committed together at most: bounds how long the first of a crowd waits for the last.</summary>
    internal const int BatchSize = 256;

    /// <summary>Jobs that may wait. Beyond that callers wait for a place; nothing is dropped.</summary>
    private const int QueueSize = 4096;

    private readonly Channel<LedgerJob> queue = Channel.CreateBounded<LedgerJob>(new BoundedChannelOptions(QueueSize) { SingleReader = true });
    private readonly TaskCompletionSource stopped = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly string path;
    private readonly ILogger log;
    private LedgerStore? store;
    private readonly TimeProvider time;
    private volatile LedgerTrouble? trouble;

    /// <param name="path">The ledger's file, migrated.</param>
    /// <param name="store">Opened on it, so that a file that cannot be kept safe is refused before anybody relies on it.</param>
    /// <param name="time">For the moment at which the disk began to refuse.</param>
    /// <param name="log">Told when the disk fails and when it is back.</param>
    internal LedgerWriter(string path, LedgerStore store, TimeProvider time, ILogger log)
    {
        this.path = path;
        this.store = store;
        this.time = time;
        this.log = log;
        new Thread(WriteUntilClosed) { IsBackground = true, Name = "ledger writer" }.Start();
    }

    /// <summary>Why the last write was refused; null when it was not.</summary>
    internal LedgerTrouble? Trouble => trouble;

    internal async Task<T> Do<T>(LedgerJob<T> job, CancellationToken cancellation)
    {
        try
        {
            await queue.Writer.WriteAsync(job, cancellation).ConfigureAwait(false);
        }
        catch (ChannelClosedException)
        {
            throw new ObjectDisposedException(nameof(HeatLedger), "The ledger is closed; nothing was recorded.");
        }

        return await job.Answer.ConfigureAwait(false);
    }

    /// <summary>Takes nothing more, writes what waits, and closes the file.</summary>
    public async ValueTask DisposeAsync()
    {
        queue.Writer.TryComplete();
        await stopped.Task.ConfigureAwait(false);
    }

    private void WriteUntilClosed()
    {
        var batch = new List<LedgerJob>(BatchSize);
        while (queue.Reader.WaitToReadAsync().AsTask().GetAwaiter().GetResult())
        {
            while (batch.Count < BatchSize && queue.Reader.TryRead(out var job))
            {
                if (job.GivenUp)
                {
                    job.Cancel();
                }
                else
                {
                    batch.Add(job);
                }
            }

            Write(batch);
            batch.Clear();
        }

        store?.Dispose();
        stopped.SetResult();
    }

    private void Write(List<LedgerJob> batch)
    {
        var failed = new Dictionary<LedgerJob, LineNotKept>();
        try
        {
            store ??= new LedgerStore(path);
            store.InTransaction(() => RunEach(batch, store, failed));
        }
        catch (Exception e)
        {
            GiveUp(batch, e);
            return;
        }

        if (trouble is not null)
        {
            trouble = null;
            log.LogWarning("The ledger can be written again.");
        }

        foreach (var job in batch)
        {
            if (failed.TryGetValue(job, out var cause))
            {
                job.Fail(cause);
            }
            else
            {
                job.Tell();
            }
        }
    }

    private static void RunEach(List<LedgerJob> batch, LedgerStore store, Dictionary<LedgerJob, LineNotKept> failed)
    {
        foreach (var job in batch)
        {
            try
            {
                job.Run(store);
            }
            catch (LineNotKept e)
            {
                failed.Add(job, e);
            }
        }
    }

    private void GiveUp(List<LedgerJob> batch, Exception cause)
    {
        trouble ??= new LedgerTrouble(time.GetUtcNow(), cause.Message);
        log.LogError(cause, "The ledger could not be written; {Count} appends were refused and nothing of them is recorded.", batch.Count);

        // A new connection for the next batch: what this one remembers of the file may be wrong now.
        try
        {
            store?.Dispose();
        }
        catch (Exception e)
        {
            log.LogError(e, "The ledger's failed connection did not close cleanly.");
        }

        store = null;
        foreach (var job in batch)
        {
            job.Fail(new LedgerUnavailable(cause));
        }
    }
}
