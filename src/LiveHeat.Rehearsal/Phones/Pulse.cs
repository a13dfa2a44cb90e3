namespace LiveHeat.Rehearsal.Phones;

/// <summary>Wakes whoever waits. Take <see cref="Next"/> before reading the state, so that no change is missed.</summary>
public sealed class Pulse
{
    private TaskCompletionSource next = New();

    /// <summary>Completes at the next beat.</summary>
    public Task Next => Volatile.Read(ref next).Task;

    public void Beat() => Interlocked.Exchange(ref next, New()).TrySetResult();

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}

/// <summary>Waiting, on whatever clock the rehearsal runs.</summary>
internal static class Waiting
{
    /// <summary>Returns at the first of: the time is up, the task completed. Throws only when stopped.</summary>
    public static async Task For(this TimeProvider time, TimeSpan most, Task or, CancellationToken stopping)
    {
        using var enough = CancellationTokenSource.CreateLinkedTokenSource(stopping);
        try
        {
            await Task.WhenAny(or, Task.Delay(most, time, enough.Token)).ConfigureAwait(false);
        }
        finally
        {
            await enough.CancelAsync().ConfigureAwait(false);
        }

        stopping.ThrowIfCancellationRequested();
    }
}
