using LiveHeat.Contracts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>What a phone knows of the server's time: the exchange with the least delay of the last eight (RFC 5905, sections 8 and 10).</summary>
/// <param name="crystal">The phone's own clock. It runs in real time also in a fast rehearsal; the server's <c>rate</c> stretches it.</param>
/// <param name="wallErrorMs">How wrong the phone's wall clock is, milliseconds.</param>
public sealed class PhoneClock(TimeProvider crystal, double wallErrorMs = 0)
{
    private const int GoodMs = 50;
    private const int FairMs = 150;

    private readonly Lock turn = new();
    private readonly long origin = crystal.GetTimestamp();
    private ClockFilter filter = new();
    private string? process;
    private double rate = 1;

    /// <summary>The phone's monotonic clock, milliseconds since it was switched on.</summary>
    public double MonoMs => crystal.GetElapsedTime(origin).TotalMilliseconds;

    /// <summary>Takes one exchange. Another process or rate is another timebase: start over.</summary>
    /// <param name="sentMonoMs">T1, the phone's clock.</param>
    /// <param name="answer">T2 and T3, the server's.</param>
    /// <param name="backMonoMs">T4, the phone's clock.</param>
    public void Add(double sentMonoMs, ClockAnswer answer, double backMonoMs)
    {
        lock (turn)
        {
            if (process != answer.Process || rate != answer.Rate)
            {
                filter = new ClockFilter();
                (process, rate) = (answer.Process, answer.Rate);
            }

            filter.Add(new ClockExchange(sentMonoMs * rate, answer.Received, answer.Sent, backMonoMs * rate));
        }
    }

    /// <summary>Now on the server's timebase, milliseconds; null before the first exchange.</summary>
    public double? NowMs => At(MonoMs);

    /// <summary>Error bound of <see cref="NowMs"/>; null before the first exchange.</summary>
    public int? UncertaintyMs
    {
        get
        {
            lock (turn)
            {
                return filter.Best is null ? null : (int)Math.Ceiling(filter.UncertaintyMs(MonoMs * rate));
            }
        }
    }

    /// <summary>good, fair, poor or none.</summary>
    public string Quality => UncertaintyMs switch { null => "none", <= GoodMs => "good", <= FairMs => "fair", _ => "poor" };

    /// <summary>One moment as the phone stamps it: instant, error bound, and what its own clocks said.</summary>
    /// <remarks>A phone that never heard the server gives its wall clock, for what it is worth: a minute.</remarks>
    public (Instant Instant, int UncertaintyMs, PhoneReadings Readings) Stamp()
    {
        const int UnknownMs = 60_000;
        var monoMs = MonoMs;
        var wallMs = (crystal.GetUtcNow() - DateTimeOffset.UnixEpoch).TotalMilliseconds + wallErrorMs;
        var nowMs = At(monoMs) ?? wallMs;
        return (new Instant((long)Math.Round(nowMs)), UncertaintyMs ?? UnknownMs, new PhoneReadings(Tenth(monoMs), Math.Round(wallMs), Tenth(nowMs - wallMs)));
    }

    private double? At(double monoMs)
    {
        lock (turn)
        {
            return (monoMs * rate) + filter.Best?.OffsetMs;
        }
    }

    private static double Tenth(double ms) => Math.Round(ms, 1);
}
