using System.Collections.Concurrent;
using LiveHeat.Engine.Heats;
using LiveHeat.Server.Forecasts;
using LiveHeat.Server.Hubs;
using LiveHeat.Server.Phones;
using LiveHeat.Server.Setup;

namespace LiveHeat.Server.Heats;

/// <summary>
/// Pushes frames: at once after a change, at most ten a second a heat, and once a second while a heat is live. Written as JSON once, whoever watches.
/// </summary>
/// <remarks>Its pauses are real time even in a fast rehearsal: screens redraw no faster.</remarks>
internal sealed class FramePublisher(HeatSessions sessions, Viewers viewers, FloorPhones phones, SetupReader setup, Forecasting forecasts, OverallNewsroom overall, ILogger<FramePublisher> log) : BackgroundService
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    /// <summary>With the pause, the turn and a busy machine that makes less than a second between two frames.</summary>
    private static readonly TimeSpan Beacon = TimeSpan.FromMilliseconds(750);

    private static readonly TimeSpan PhonesBeacon = TimeSpan.FromSeconds(3);
    private static readonly TimeSpan PhonesPause = TimeSpan.FromMilliseconds(300);
    private readonly ConcurrentDictionary<HeatId, SemaphoreSlim> changes = new();
    private readonly SemaphoreSlim phonesChanged = new(0, 1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        sessions.Changed += session => Wake(session, stoppingToken);
        setup.Changed += viewers.OfferProgram;
        phones.Changed += () => Ring(phonesChanged);
        foreach (var session in await sessions.Called())
        {
            Wake(session, stoppingToken);
        }

        await PublishPhones(stoppingToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    private void Wake(HeatSession session, CancellationToken stopping)
    {
        var fresh = new SemaphoreSlim(0, 1);
        var bell = changes.GetOrAdd(session.Heat, fresh);
        if (ReferenceEquals(bell, fresh))
        {
            _ = Publish(session, bell, stopping);
        }

        Ring(bell);
    }

    private async Task Publish(HeatSession session, SemaphoreSlim bell, CancellationToken stopping)
    {
        var (told, people, wasCurrent) = (Phase.Planned, 0, false);
        while (!stopping.IsCancellationRequested)
        {
            try
            {
                var changed = await bell.WaitAsync(Beacon, stopping);
                var current = sessions.Current();
                if (wasCurrent && current is not null && current != session)
                {
                    // Whoever follows the floor has this heat on the screen still; the one that is current now need not change by itself.
                    Wake(current, stopping);
                    viewers.OfferProgram();
                }

                wasCurrent = current == session;
                var frame = session.Frame();
                if (!changed && frame.Phase is not (Phase.CountingDown or Phase.Running or Phase.Halted or Phase.Ended) && frame.Phase == told)
                {
                    continue;
                }

                viewers.Offer(session.Heat, wasCurrent, RawJson.Of(frame));
                if (frame.Phase != told || frame.Lanes.Count != people)
                {
                    (told, people) = (frame.Phase, frame.Lanes.Count);
                    viewers.OfferProgram();
                    TellResult(session, frame.Phase, stopping);
                }

                var leads = await overall.Newest(stopping);
                viewers.OfferForecast(session.Heat, wasCurrent, () => RawJson.Of(forecasts.Of(session, leads)));
                await Task.Delay(Pause, stopping);
            }
            catch (OperationCanceledException)
            {
                return;
            }
            catch (Exception wrong)
            {
                log.LogError(wrong, "Heat {Heat} could not be pushed; it goes on with the next change", session.Heat);
                await Task.Delay(Beacon, stopping).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            }
        }
    }

    /// <summary>A result that came in is worth saying where another heat is on, of which nothing need have changed.</summary>
    private void TellResult(HeatSession session, Phase phase, CancellationToken stopping)
    {
        var current = sessions.Current();
        foreach (var other in phase is Phase.Frozen or Phase.Certified ? sessions.Open() : [])
        {
            if (other != session && (other == current || other.State.Told is Phase.Called or Phase.Running or Phase.Halted or Phase.Ended))
            {
                Wake(other, stopping);
            }
        }
    }

    private async Task PublishPhones(CancellationToken stopping)
    {
        while (!stopping.IsCancellationRequested)
        {
            // Silence is news too, so it is told every few seconds without a change.
            await phonesChanged.WaitAsync(PhonesBeacon, stopping);
            try
            {
                viewers.OfferPhones(RawJson.Of(phones.All()));
            }
            catch (Exception wrong)
            {
                log.LogError(wrong, "The list of phones could not be pushed; it goes on with the next change");
            }

            await Task.Delay(PhonesPause, stopping);
        }
    }

    private static void Ring(SemaphoreSlim bell)
    {
        try
        {
            if (bell.CurrentCount == 0)
            {
                bell.Release();
            }
        }
        catch (SemaphoreFullException)
        {
            // Two rang at once; one ring is enough.
        }
    }
}
