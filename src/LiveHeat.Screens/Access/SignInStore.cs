using LiveHeat.Contracts.Access;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Access;

/// <summary>Who is signed in on this browser.</summary>
public sealed class SignInStore
{
    /// <summary>It changed.</summary>
    public event Action? Changed;

    /// <summary>Who; null before the first answer.</summary>
    public Me? Me { get; private set; }

    /// <summary>Why we do not know; null when we do.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>Runs the floor.</summary>
    public bool IsOrganiser => Me?.Role == Role.Organiser;

    /// <summary>May rule: the head judge, and the organiser.</summary>
    public bool MayRule => Me?.Role is Role.Organiser or Role.HeadJudge;

    /// <summary>Takes an answer.</summary>
    public void Take(Reply<Me> reply)
    {
        (Me, Problem) = (reply.Value ?? Me, reply.Problem);
        Changed?.Invoke();
    }
}
