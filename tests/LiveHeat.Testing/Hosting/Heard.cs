namespace LiveHeat.Testing.Hosting;

/// <summary>What came so far, in order. A test waits here for what it needs, and for nothing longer than it takes.</summary>
internal sealed class Heard<T>
{
    /// <summary>Only a broken server is waited for so long.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly Lock turn = new();
    private readonly List<T> all = [];
    private TaskCompletionSource more = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>All so far.</summary>
    public IReadOnlyList<T> All
    {
        get
        {
            lock (turn)
            {
                return [.. all];
            }
        }
    }

    public void Add(T item)
    {
        TaskCompletionSource told;
        lock (turn)
        {
            all.Add(item);
            (told, more) = (more, new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously));
        }

        told.SetResult();
    }

    /// <summary>The first that fits, of those that came or the next that comes.</summary>
    /// <param name="wanted">What fits.</param>
    /// <param name="from">How many to pass over.</param>
    public async Task<T> First(Func<T, bool> wanted, int from = 0)
    {
        using var late = new CancellationTokenSource(Patience);
        for (var looked = from; ;)
        {
            Task coming;
            lock (turn)
            {
                for (; looked < all.Count; looked++)
                {
                    if (wanted(all[looked]))
                    {
                        return all[looked];
                    }
                }

                coming = more.Task;
            }

            try
            {
                await coming.WaitAsync(late.Token);
            }
            catch (OperationCanceledException)
            {
                throw new TimeoutException($"It did not come in {Patience.TotalSeconds} s. What came: {string.Join(", ", All.TakeLast(3))}");
            }
        }
    }
}
