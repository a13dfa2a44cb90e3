using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Rehearsal.Rehearse;

/// <summary>Keeps a lane for a visitor for a while.</summary>
internal sealed class FreeLaneScript(Desk desk, LaneNumber lane, TimeProvider time)
{
    private static readonly TimeSpan ForSeat = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan ForReady = TimeSpan.FromMinutes(3);
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);

    private readonly HashSet<HeatId> settled = [];

    /// <summary>Waits for a heat with the lane on it, called and not yet started, that no visitor took.</summary>
    public async Task<HeatId> UntilNobodyCame(CancellationToken stopping)
    {
        while (true)
        {
            var programme = await desk.Programme(stopping).ConfigureAwait(false);
            foreach (var heat in programme.Heats.Where(heat => heat.Phase is Phase.Called or Phase.Armed && heat.Lanes.Any(line => line.Lane == lane)))
            {
                if (settled.Add(heat.Heat) && !await VisitorCame(heat.Heat, stopping).ConfigureAwait(false))
                {
                    return heat.Heat;
                }
            }

            await Task.Delay(Look, time, stopping).ConfigureAwait(false);
        }
    }

    /// <summary>A visitor has a minute for the seat and three for being ready.</summary>
    private async Task<bool> VisitorCame(HeatId heat, CancellationToken stopping)
    {
        var since = time.GetTimestamp();
        while (await desk.Frame(heat, stopping).ConfigureAwait(false) is { Phase: Phase.Called or Phase.Armed } frame)
        {
            var told = frame.Lanes.First(line => line.Lane == lane);
            if (told.Ready)
            {
                return true;
            }

            if (time.GetElapsedTime(since) > (told.Status == LaneStatus.Waiting ? ForSeat : ForReady))
            {
                return false;
            }

            await Task.Delay(Look, time, stopping).ConfigureAwait(false);
        }

        return true;
    }
}
