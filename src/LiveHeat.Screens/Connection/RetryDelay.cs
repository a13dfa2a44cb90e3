namespace LiveHeat.Screens.Connection;

/// <summary>How long to wait before knocking again: for ever, slower up to two seconds, and never all screens at once.</summary>
/// <remarks>A network that is back shows the newest state within five seconds; as floor/hub.js.</remarks>
public static class RetryDelay
{
    private static readonly int[] Ms = [0, 250, 500, 1000, 2000];

    /// <summary>Before the nth retry, from 0: half of it certain, half by chance.</summary>
    /// <param name="attempt">Failures in a row so far.</param>
    /// <param name="chance">From 0 to 1.</param>
    public static TimeSpan Before(int attempt, double chance)
    {
        var most = Ms[Math.Clamp(attempt, 0, Ms.Length - 1)];
        return TimeSpan.FromMilliseconds((most / 2.0) + (most / 2.0 * chance));
    }
}
