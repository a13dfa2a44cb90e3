using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Commands;

/// <summary>Asks for something in the heat on the screen; null when it was accepted, and otherwise why not.</summary>
/// <param name="make">Makes the command with the id it is given. Called once, whatever has to be repeated.</param>
/// <param name="words">What is asked for, for the note: "GO in 10 s".</param>
public delegate Task<Problem?> AskHeat(Func<FactId, HeatCommand> make, string words);

/// <summary>How an asking went.</summary>
public enum NoteKind
{
    /// <summary>On its way.</summary>
    Sending,

    /// <summary>No answer; asked again.</summary>
    Again,

    /// <summary>It is on the ledger.</summary>
    Well,

    /// <summary>Refused with a reason.</summary>
    Refused,

    /// <summary>Nobody knows: no answer at all. It can be sent again as it is.</summary>
    Unknown,
}

/// <summary>What became of the last command.</summary>
/// <param name="Kind">How it went.</param>
/// <param name="Words">What was asked for.</param>
/// <param name="Problem">Why not; null when it went well.</param>
public sealed record CommandNote(NoteKind Kind, string Words, Problem? Problem);

/// <summary>Sends commands and keeps what became of the last one, so that every screen shows it alike.</summary>
public sealed class HeatCommands(HeatApi api)
{
    private (HeatId Heat, HeatCommand Command, string Words)? unknown;

    /// <summary>The note changed.</summary>
    public event Action? Changed;

    /// <summary>What became of the last command; null before the first, or when it was put away.</summary>
    public CommandNote? Note { get; private set; }

    /// <summary>Asks, and repeats it as it is when there is no answer.</summary>
    public Task<Problem?> Ask(HeatId heat, Func<FactId, HeatCommand> make, string words) => Send(heat, make(api.NextId()), words);

    /// <summary>Sends the command that got no answer again, with its own id: it cannot happen twice.</summary>
    public Task<Problem?> SendAgain() => unknown is var (heat, command, words) ? Send(heat, command, words) : Task.FromResult<Problem?>(null);

    /// <summary>Puts the note away.</summary>
    public void PutAway() => Tell(null);

    private async Task<Problem?> Send(HeatId heat, HeatCommand command, string words)
    {
        unknown = null;
        Tell(new CommandNote(NoteKind.Sending, words, null));
        var reply = await api.Ask(heat, command, () => Tell(new CommandNote(NoteKind.Again, words, null)));
        var kind = reply.Problem switch { null => NoteKind.Well, { Code: Problem.NoAnswer } => NoteKind.Unknown, _ => NoteKind.Refused };
        unknown = kind == NoteKind.Unknown ? (heat, command, words) : null;
        Tell(new CommandNote(kind, words, reply.Problem));
        return reply.Problem;
    }

    private void Tell(CommandNote? note)
    {
        Note = note;
        Changed?.Invoke();
    }
}
