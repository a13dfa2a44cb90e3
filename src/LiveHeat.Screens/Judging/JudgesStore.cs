using LiveHeat.Contracts.Judging;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Judging;

/// <summary>Every judge's page, as last read.</summary>
public sealed class JudgesStore
{
    /// <summary>It changed.</summary>
    public event Action? Changed;

    /// <summary>By name; null before the first answer.</summary>
    public IReadOnlyList<JudgePage>? Pages { get; private set; }

    /// <summary>Why the newest is missing; null when it is here.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>Takes an answer; after a problem the last good pages stay. A judge who saw no set of reps to its end has nothing to be shown.</summary>
    public void Take(Reply<JudgePage[]> reply)
    {
        (Pages, Problem) = (reply.Value is { } pages ? [.. pages.Where(page => page.Movements.Count > 0)] : Pages, reply.Problem);
        Changed?.Invoke();
    }
}
