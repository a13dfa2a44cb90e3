using LiveHeat.Contracts.Phones;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>What a phone does by itself.</summary>
public sealed partial class SimulatedPhone
{
    private const int ClockBurst = 8;
    private const int BetweenBurstMs = 120;
    private static readonly TimeSpan ExchangeEvery = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan AskAgain = TimeSpan.FromSeconds(1);

    private readonly Pulse connected = new();
    private volatile HeatReading? reading;

    /// <summary>Repeats until there is an answer: the same question under the same id.</summary>
    private async Task<T> Patiently<T>(Func<Task<T>> ask, CancellationToken stopping)
    {
        while (true)
        {
            try
            {
                return await ask().ConfigureAwait(false);
            }
            catch (Exception trouble) when (trouble is SiteSilentException or SiteRefusedException { MayPass: true })
            {
                await Task.Delay(AskAgain, make.Time, stopping).ConfigureAwait(false);
            }
        }
    }

    /// <summary>A burst of exchanges after each connect, then one now and then.</summary>
    private async Task KeepClock()
    {
        while (true)
        {
            var again = connected.Next;
            for (var i = 0; !again.IsCompleted; i++)
            {
                var sent = Clock.MonoMs;
                if (await hub.Exchange(sent, off.Token).ConfigureAwait(false) is { } answer)
                {
                    Clock.Add(sent, answer, Clock.MonoMs);
                }

                await make.Time.For(i < ClockBurst ? TimeSpan.FromMilliseconds(BetweenBurstMs) : ExchangeEvery, again, off.Token).ConfigureAwait(false);
            }
        }
    }

    private async Task KeepReporting()
    {
        while (true)
        {
            if (Pad is { } pad)
            {
                await hub.Report(
                    new PhoneStatus(pad.Lane, Heat?.Value, Outbox.Unsent, Outbox.OnPhone, Clock.Quality, Clock.UncertaintyMs, "safe", true, pad.Build),
                    off.Token).ConfigureAwait(false);
            }

            await Task.Delay(ReportEvery, make.Time, off.Token).ConfigureAwait(false);
        }
    }

    /// <summary>Reads what a frame says is new: another sheet, more facts of the lane.</summary>
    private async Task KeepReading()
    {
        while (true)
        {
            var next = changed.Next;
            if (reading is { IsBehind: true } behind)
            {
                await Patiently(() => behind.CatchUp(off.Token), off.Token).ConfigureAwait(false);
                if (behind.IsBehind)
                {
                    await Task.Delay(AskAgain, make.Time, off.Token).ConfigureAwait(false);
                }
            }
            else
            {
                await next.WaitAsync(off.Token).ConfigureAwait(false);
            }
        }
    }
}
