namespace LiveHeat.Engine.Timing;

/// <summary>One four-timestamp exchange between a client and the server, in milliseconds with fraction, each on its own clock.</summary>
/// <param name="Sent">T1, client's clock: the question left.</param>
/// <param name="Received">T2, server's clock: it arrived.</param>
/// <param name="Answered">T3, server's clock: the answer left.</param>
/// <param name="Back">T4, client's clock: it arrived.</param>
public readonly record struct ClockExchange(double Sent, double Received, double Answered, double Back)
{
    /// <summary>Server's clock relative to the client's: ((T2-T1)+(T3-T4))/2 (RFC 5905, section 8).</summary>
    public double OffsetMs => ((Received - Sent) + (Answered - Back)) / 2;

    /// <summary>Round trip without the server's own time: (T4-T1)-(T3-T2) (RFC 5905, section 8). Clocks of different rate can make it negative.</summary>
    public double DelayMs => (Back - Sent) - (Answered - Received);
}

/// <summary>Keeps the last eight exchanges and believes the one with the least delay (RFC 5905, section 10).</summary>
/// <remarks>Not for several threads at once. A change of the server's process means a new filter.</remarks>
public sealed class ClockFilter
{
    /// <summary>What a clock of unknown rate may drift: 100 parts per million.</summary>
    public const double UnknownRate = 100e-6;

    /// <summary>What a clock of measured rate may drift: PHI of RFC 5905, 15 parts per million.</summary>
    public const double MeasuredRate = 15e-6;

    private const int Kept = 8;
    private readonly Queue<ClockExchange> samples = new();

    /// <summary>The exchange in use; null before the first.</summary>
    public ClockExchange? Best { get; private set; }

    /// <summary>Takes one more exchange.</summary>
    public void Add(ClockExchange exchange)
    {
        samples.Enqueue(exchange);
        if (samples.Count > Kept)
        {
            samples.Dequeue();
        }

        Best = samples.MinBy(sample => sample.DelayMs);
    }

    /// <summary>Half-width of the interval that holds the true server time, in milliseconds: delay/2 and the drift since.</summary>
    /// <param name="nowMs">The client's clock, as in <see cref="ClockExchange.Back"/>.</param>
    /// <param name="rate">Drift, as a fraction: <see cref="UnknownRate"/> or <see cref="MeasuredRate"/>.</param>
    public double UncertaintyMs(double nowMs, double rate = UnknownRate) =>
        Best is { } best ? (Math.Max(0, best.DelayMs) / 2) + (Math.Abs(nowMs - best.Back) * rate) : double.PositiveInfinity;
}
