using LiveHeat.Screens.Commands;

namespace LiveHeat.Screens.Words;

/// <summary>What became of a command.</summary>
public static class CommandWords
{
    public const string SendAgain = "Send it again";
    public const string SendAgainHelp = "It may have arrived. Sending it again cannot make it happen twice.";
    public const string PutAway = "Close";

    public static string Of(CommandNote note) => note.Kind switch
    {
        NoteKind.Sending => $"{note.Words}: sending…",
        NoteKind.Again => $"{note.Words}: no answer yet, trying again…",
        NoteKind.Well => $"{note.Words}: done.",
        NoteKind.Refused => $"{note.Words}: not done. {note.Problem!.Detail}",
        _ => $"{note.Words}: no answer from the server. {SendAgainHelp}",
    };
}
