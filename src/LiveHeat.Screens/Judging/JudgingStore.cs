using LiveHeat.Contracts.Judging;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Judging;

/// <summary>How the heat on the screen is judged, as last read, and which questions this screen has put aside.</summary>
public sealed class JudgingStore
{
    private readonly HashSet<(HeatId Heat, LaneNumber Lane)> aside = [];

    /// <summary>Anything here changed.</summary>
    public event Action? Changed;

    /// <summary>The table; null before the first answer.</summary>
    public JudgingTable? Table { get; private set; }

    /// <summary>Why the newest is missing; null when it is here.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>Takes an answer; after a problem the last good table stays.</summary>
    public void Take(Reply<JudgingTable> reply)
    {
        (Table, Problem) = (reply.Value ?? Table, reply.Problem);
        Changed?.Invoke();
    }

    /// <summary>The table of a heat; null when it is not here.</summary>
    public JudgingTable? Of(HeatId? heat) => Table is { } table && table.Heat == heat ? table : null;

    /// <summary>Lanes of a heat that stand out and were not put aside, in floor order.</summary>
    public IReadOnlyList<JudgingLane> Questions(HeatId heat) => [.. (Of(heat)?.Lanes ?? []).Where(lane => lane.StandsOut && !IsAside(heat, lane.Lane))];

    /// <summary>Whether the question about a lane was put aside.</summary>
    public bool IsAside(HeatId heat, LaneNumber lane) => aside.Contains((heat, lane));

    /// <summary>Asks no more about a lane in this heat, on this screen; it is told to nobody.</summary>
    public void PutAside(HeatId heat, LaneNumber lane)
    {
        aside.Add((heat, lane));
        Changed?.Invoke();
    }

    /// <summary>Asks again.</summary>
    public void TakeUp(HeatId heat, LaneNumber lane)
    {
        aside.Remove((heat, lane));
        Changed?.Invoke();
    }
}
