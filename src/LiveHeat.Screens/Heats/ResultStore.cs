using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Heats;

/// <summary>The result of the heat on the screen, as it stands.</summary>
public sealed class ResultStore
{
    /// <summary>It changed.</summary>
    public event Action? Changed;

    /// <summary>The table; null before the first answer, or when it is another heat's.</summary>
    public ResultTable? Table { get; private set; }

    /// <summary>Why it is missing; null when it is here.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>The table of a heat; null when it is not here.</summary>
    public ResultTable? Of(HeatId? heat) => Table is { } table && table.Heat == heat ? table : null;

    /// <summary>Takes an answer.</summary>
    public void Take(Reply<ResultTable> reply)
    {
        (Table, Problem) = (reply.Value ?? Table, reply.Problem);
        Changed?.Invoke();
    }
}
