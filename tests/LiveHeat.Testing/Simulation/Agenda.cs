using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Testing.Simulation;

/// <summary>What is to come, in the order of true time; one thing at a time, so that nothing hangs on chance.</summary>
/// <param name="clock">The server's clock, which is true time.</param>
/// <param name="goAt">The instant of true time 0, Unix milliseconds.</param>
internal sealed class Agenda(FakeTimeProvider clock, long goAt)
{
    private const double TicksPerMs = TimeSpan.TicksPerMillisecond;
    private readonly PriorityQueue<Func<Task>, (double AtMs, long Order)> due = new();
    private long order;

    /// <summary>True time since GO, milliseconds.</summary>
    public double NowMs { get; private set; } = Plot.CallMs;

    /// <summary>The instant of GO, Unix milliseconds.</summary>
    public long GoAt => goAt;

    /// <summary>Puts something on; what is past is due now.</summary>
    public void At(double atMs, Func<Task> what) => due.Enqueue(what, (Math.Max(atMs, NowMs), order++));

    /// <summary>Puts something on that waits for nothing.</summary>
    public void At(double atMs, Action what) => At(atMs, () =>
    {
        what();
        return Task.CompletedTask;
    });

    /// <summary>Lets time pass.</summary>
    public async Task RunUntil(double untilMs)
    {
        while (due.TryPeek(out var what, out var when) && when.AtMs <= untilMs)
        {
            due.Dequeue();
            Turn(when.AtMs);
            await what();
        }

        Turn(untilMs);
    }

    private void Turn(double atMs)
    {
        NowMs = Math.Max(NowMs, atMs);
        var now = DateTimeOffset.FromUnixTimeMilliseconds(goAt).AddTicks((long)Math.Round(NowMs * TicksPerMs));
        if (now > clock.GetUtcNow())
        {
            clock.SetUtcNow(now);
        }
    }
}
