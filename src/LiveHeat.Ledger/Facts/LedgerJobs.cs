using LiveHeat.Engine.Heats;

namespace LiveHeat.Ledger.Facts;

/// <summary>Something that waits for the ledger's writer. Its outcome is told only after the commit that holds it.</summary>
internal abstract class LedgerJob(CancellationToken cancellation)
{
    /// <summary>Given up while it was waiting in the queue. Once taken up it is carried through.</summary>
    internal bool GivenUp => cancellation.IsCancellationRequested;

    /// <summary>Does the work within the open transaction and keeps the outcome to itself.</summary>
    internal abstract void Run(LedgerStore store);

    /// <summary>The commit is on disk.</summary>
    internal abstract void Tell();

    /// <summary>The commit failed, or this job alone did.</summary>
    internal abstract void Fail(Exception cause);

    internal abstract void Cancel();
}

/// <summary>A job with an answer.</summary>
internal abstract class LedgerJob<T>(CancellationToken cancellation) : LedgerJob(cancellation)
{
    // Continuations run elsewhere: the writer's thread is for writing.
    private readonly TaskCompletionSource<T> answer = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly CancellationToken cancellation = cancellation;
    private T? outcome;

    internal Task<T> Answer => answer.Task;

    internal sealed override void Run(LedgerStore store) => outcome = Do(store);

    internal sealed override void Tell() => answer.TrySetResult(outcome!);

    internal sealed override void Fail(Exception cause) => answer.TrySetException(cause);

    internal sealed override void Cancel() => answer.TrySetCanceled(cancellation);

    protected abstract T Do(LedgerStore store);
}

internal sealed class AppendJob(HeatId heat, long after, IReadOnlyList<NewLine> news, CancellationToken cancellation)
    : LedgerJob<Append>(cancellation)
{
    protected override Append Do(LedgerStore store) => store.Append(heat, after, news);
}

/// <summary>Any other work on the writer's own connection.</summary>
internal sealed class OtherJob<T>(Func<LedgerContext, T> work, CancellationToken cancellation) : LedgerJob<T>(cancellation)
{
    protected override T Do(LedgerStore store) => work(store.Context);
}
