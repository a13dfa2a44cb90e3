using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Replays;

/// <summary>Reads a heat to be played again, and reads it anew when the heat has moved on and somebody looks.</summary>
public sealed class ReplayFeed(HeatApi api, HeatStore heat, ReplayStore replay, TimeProvider time)
{
    private static readonly TimeSpan Least = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan LeastWhileLive = TimeSpan.FromSeconds(10);
    private int lookers;
    private bool reading;

    /// <summary>What was read.</summary>
    public ReplayStore Store => replay;

    /// <summary>Opens a heat.</summary>
    public Task Open(HeatId id, ReplayBy by, long? heatMs = null)
    {
        replay.Begin(id, by, heatMs);
        return Read(id, by);
    }

    /// <summary>Somebody looks, and wants what is new; to be ended with <see cref="LookAway"/>.</summary>
    public void Look()
    {
        if (lookers++ == 0)
        {
            heat.Changed += Follow;
        }
    }

    /// <summary>One fewer looks.</summary>
    public void LookAway()
    {
        if (--lookers == 0)
        {
            heat.Changed -= Follow;
        }
    }

    private bool Behind => heat.Frame is { } frame && replay.IsHere && replay.Heat == frame.Heat && frame.Sequence > replay.Head;

    private void Follow() => _ = reading || !Behind ? Task.CompletedTask : ReadNews();

    private async Task ReadNews()
    {
        reading = true;
        try
        {
            while (lookers > 0 && Behind && replay.Heat is { } id)
            {
                await Read(id, replay.By);
                await Task.Delay(HeatTime.IsLive(heat.Phase) ? LeastWhileLive : Least, time);
            }
        }
        finally
        {
            reading = false;
        }
    }

    private async Task Read(HeatId id, ReplayBy by) => replay.Take(id, by, await api.Replay(id, by));
}
