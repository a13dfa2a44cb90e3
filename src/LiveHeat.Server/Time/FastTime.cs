namespace LiveHeat.Server.Time;

/// <summary>Clocks and timers that run a number of times as fast as the machine's: for a rehearsal that nobody wants to wait for.</summary>
/// <param name="rate">Times as fast, above 0.</param>
/// <param name="machine">The clock to be faster than; null for the machine's own.</param>
public sealed class FastTime(double rate, TimeProvider? machine = null) : TimeProvider
{
    private readonly TimeProvider machine = machine ?? System;
    private readonly DateTimeOffset origin = (machine ?? System).GetUtcNow();
    private readonly long originStamp = (machine ?? System).GetTimestamp();

    /// <inheritdoc/>
    public override long TimestampFrequency => machine.TimestampFrequency;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => origin + (machine.GetElapsedTime(originStamp) * rate);

    /// <inheritdoc/>
    public override long GetTimestamp() => originStamp + (long)((machine.GetTimestamp() - originStamp) * rate);

    /// <inheritdoc/>
    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        new FastTimer(this, machine.CreateTimer(callback, state, Shorter(dueTime), Shorter(period)));

    /// <summary>The system's timers count whole milliseconds and take a period of none for "not again".</summary>
    private TimeSpan Shorter(TimeSpan span) =>
        span <= TimeSpan.Zero ? span : TimeSpan.FromMilliseconds(Math.Max(1, span.TotalMilliseconds / rate));

    private sealed class FastTimer(FastTime fast, ITimer timer) : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) => timer.Change(fast.Shorter(dueTime), fast.Shorter(period));

        public void Dispose() => timer.Dispose();

        public ValueTask DisposeAsync() => timer.DisposeAsync();
    }
}
