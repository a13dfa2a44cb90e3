namespace LiveHeat.Screens.Heats;

/// <summary>Draws at most ten times a second, whatever arrives, and never misses the last.</summary>
/// <param name="time">The clock.</param>
/// <param name="draw">Called on a timer's thread or the asker's.</param>
public sealed class Redraw(TimeProvider time, Action draw) : IDisposable
{
    private static readonly TimeSpan Least = TimeSpan.FromMilliseconds(100);
    private long? drawnAt;
    private ITimer? due;
    private bool ended;

    /// <summary>Something changed.</summary>
    public void Ask()
    {
        if (ended || due is not null)
        {
            return;
        }

        var wait = drawnAt is { } at ? Least - time.GetElapsedTime(at) : TimeSpan.Zero;
        if (wait <= TimeSpan.Zero)
        {
            Draw();
        }
        else
        {
            due = time.CreateTimer(_ => Due(), null, wait, Timeout.InfiniteTimeSpan);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        ended = true;
        due?.Dispose();
    }

    private void Due()
    {
        due?.Dispose();
        due = null;
        if (!ended)
        {
            Draw();
        }
    }

    private void Draw()
    {
        drawnAt = time.GetTimestamp();
        draw();
    }
}
