using LiveHeat.Engine.Heats;
using LiveHeat.Rehearsal.Phones;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>What keeps a lane from working on.</summary>
internal enum Interruption
{
    /// <summary>Nothing: the time was worked.</summary>
    None,

    /// <summary>The lane's cap came.</summary>
    Capped,

    /// <summary>A ruling moved the lane to another step.</summary>
    Moved,

    /// <summary>The start was recalled, or another one is in force.</summary>
    StartOver,

    /// <summary>The heat ended, or another phone judges the lane.</summary>
    Over,
}

/// <summary>A judge's eyes: on the clock, the heat and the lane.</summary>
internal sealed class LaneWatch(SimulatedPhone phone, TimeProvider time)
{
    private static readonly TimeSpan Glance = TimeSpan.FromSeconds(5);
    private (string Start, int Open)? doneWith;
    private long saidReadyAt = -1;

    /// <summary>The start that is worked on; null before.</summary>
    public string? Start { get; private set; }

    /// <summary>How long the lane has been at work when work is taken up: since GO. Milliseconds.</summary>
    public double SinceGoMs => phone.Frame?.Start is { } start && phone.Clock.NowMs is { } now ? now - start.GoAt.UnixMs : 0;

    /// <summary>This start's work is through: finished, capped or stopped. Only a ruling that sends the lane back opens it again.</summary>
    public void DoneWithStart() => doneWith = (Start!, phone.Now.Open);

    /// <summary>Waits for GO, saying ready as often as it is asked for.</summary>
    /// <returns>False when there is nothing more to judge in this heat.</returns>
    public async Task<bool> UntilWork(CancellationToken stopping)
    {
        while (true)
        {
            var change = phone.Changed.Next;
            if (Over || phone.Told?.Status == Contracts.Frames.LaneStatus.Withdrawn)
            {
                return false;
            }

            if (phone is { Frame.Start: { } start, Line: not null } && (start.Id != doneWith?.Start || (phone.Now.Open < doneWith?.Open && CapLeftMs > 0)))
            {
                if (SinceGoMs >= 0)
                {
                    Start = start.Id;
                    return true;
                }

                await time.For(TimeSpan.FromMilliseconds(Math.Max(1, -SinceGoMs)), change, stopping).ConfigureAwait(false);
                continue;
            }

            if (phone is { Frame.Phase: Phase.Called, Told.Ready: false, Seat: not null } && phone.Frame.Sequence > saidReadyAt)
            {
                await SayReady(stopping).ConfigureAwait(false);
            }

            await time.For(Glance, change, stopping).ConfigureAwait(false);
        }
    }

    /// <summary>Works so many milliseconds, standing still while the heat or the lane does.</summary>
    /// <param name="ms">How long.</param>
    /// <param name="open">The step that is open meanwhile.</param>
    /// <param name="stopping">Stops the rehearsal.</param>
    /// <returns>What came in between, and how much was worked.</returns>
    public async Task<(Interruption Why, double WorkedMs)> Work(double ms, int open, CancellationToken stopping)
    {
        var workedMs = 0.0;
        while (true)
        {
            var change = phone.Changed.Next;
            if (Interrupted(open) is var why and not Interruption.None)
            {
                return (why, workedMs);
            }

            if (phone.Frame!.Phase == Phase.Halted || phone.Told?.HeldAt is not null)
            {
                await change.WaitAsync(stopping).ConfigureAwait(false);
                continue;
            }

            if (workedMs >= ms)
            {
                return (Interruption.None, workedMs);
            }

            var from = time.GetTimestamp();
            await time.For(TimeSpan.FromMilliseconds(Math.Max(1, Math.Min(ms - workedMs, CapLeftMs))), change, stopping).ConfigureAwait(false);
            workedMs += time.GetElapsedTime(from).TotalMilliseconds;
        }
    }

    /// <summary>The heat is over for this judge.</summary>
    public bool Over => phone.SeatLost || phone.Frame?.Phase is Phase.Ended or Phase.Frozen or Phase.Certified;

    /// <summary>Milliseconds to the lane's cap; without end while a hold moves it.</summary>
    private double CapLeftMs
    {
        get
        {
            var (frame, nowMs) = (phone.Frame!, phone.Clock.NowMs ?? 0);
            var haltedMs = frame.HaltedMs + (frame.HaltedAt is { } since ? Math.Max(0, nowMs - since.UnixMs) : 0);
            return (phone.Told is { } told ? told.CapMs ?? double.PositiveInfinity : frame.CapMs) + haltedMs - SinceGoMs;
        }
    }

    private Interruption Interrupted(int open)
    {
        if (Over)
        {
            return Interruption.Over;
        }

        if (phone.Frame?.Start?.Id != Start)
        {
            return Interruption.StartOver;
        }

        return phone.Now.Open != open ? Interruption.Moved : CapLeftMs <= 0 ? Interruption.Capped : Interruption.None;
    }

    private async Task SayReady(CancellationToken stopping)
    {
        try
        {
            saidReadyAt = (await phone.Ready(stopping).ConfigureAwait(false)).Sequence;
        }
        catch (SiteRefusedException refused) when (refused.Code is "seat-given-up" or "wrong-phase")
        {
            // Another phone took the lane, or the heat went on: the next frame says so.
        }
    }
}
