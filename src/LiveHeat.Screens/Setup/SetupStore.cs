using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Setup;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Setup;

/// <summary>Something deleted that can be brought back as it was.</summary>
/// <param name="Name">For a sentence.</param>
/// <param name="Document">The division, workout, team, heat or movement.</param>
public sealed record Deleted(string Name, object Document);

/// <summary>Everything set up, as last read.</summary>
public sealed class SetupStore
{
    /// <summary>Anything here changed.</summary>
    public event Action? Changed;

    /// <summary>Everything; null before the first answer.</summary>
    public SetupAll? All { get; private set; }

    /// <summary>The movements that come with the program; null before the first answer.</summary>
    public MovementLibrary? Library { get; private set; }

    /// <summary>All movements that can be chosen: the organiser's own, then the library's.</summary>
    public IReadOnlyList<MovementChoice> Choices =>
        [.. (All?.Movements ?? []).Select(movement => new MovementChoice(movement, true)), .. (Library?.Movements ?? []).Select(movement => new MovementChoice(movement, false))];

    /// <summary>Why the newest is missing; null when it is here.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>The last deletion; null when there is none, or it was undone.</summary>
    public Deleted? Deleted { get; private set; }

    /// <summary>Takes an answer; after a problem the last good one stays.</summary>
    public void Take(Reply<SetupAll> reply)
    {
        (All, Problem) = (reply.Value ?? All, reply.Problem);
        Changed?.Invoke();
    }

    /// <summary>Takes the library; after a problem nothing changes.</summary>
    public void Take(Reply<MovementLibrary> reply)
    {
        Library = reply.Value ?? Library;
        Changed?.Invoke();
    }

    /// <summary>Takes a deletion, or that it was undone.</summary>
    public void Take(Deleted? deleted)
    {
        Deleted = deleted;
        Changed?.Invoke();
    }
}
