using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Heats;

/// <summary>The list of heats, as last heard.</summary>
public sealed class ProgramStore
{
    /// <summary>Anything here changed.</summary>
    public event Action? Changed;

    /// <summary>The list; null before the first answer.</summary>
    public ProgramList? List { get; private set; }

    /// <summary>Why the newest list is missing; null when it is here.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>Takes an answer; after a problem the last good list stays.</summary>
    public void Take(Reply<ProgramList> reply)
    {
        (List, Problem) = (reply.Value ?? List, reply.Problem);
        Changed?.Invoke();
    }

    /// <summary>One heat of the list; null when it is not there.</summary>
    public ProgramHeat? Find(HeatId heat) => List?.Heats.FirstOrDefault(one => one.Heat == heat);

    /// <summary>The heat after this one that has not been called yet; null when there is none.</summary>
    public ProgramHeat? NextToCall(HeatId? after = null) => List?.Heats
        .Where(heat => heat.Phase == Phase.Planned && heat.Heat != after)
        .OrderBy(heat => heat.Number).FirstOrDefault();
}
