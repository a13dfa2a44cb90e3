namespace LiveHeat.Server.Time;

/// <summary>Clocks and timers that run a number of times as fast as the machine's: for a rehearsal that nobody wants to wait for.</summary>
public sealed class FastTime(double rate) : TimeProvider
{
    private readonly DateTimeOffset origin = System.GetUtcNow();
    private readonly long originStamp = System.GetTimestamp();

    /// <inheritdoc/>
    public override long TimestampFrequency => System.TimestampFrequency;

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow() => origin + (System.GetElapsedTime(originStamp) * rate);

    /// <inheritdoc/>
    public override long GetTimestamp() => originStamp + (long)((System.GetTimestamp() - originStamp) * rate);

    /// <inheritdoc/>
    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        System.CreateTimer(callback, state, Shorter(dueTime), Shorter(period));

    private TimeSpan Shorter(TimeSpan span) => span <= TimeSpan.Zero ? span : span / rate;
}
