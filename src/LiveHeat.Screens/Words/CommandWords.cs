using LiveHeat.Contracts.Language;
using LiveHeat.Screens.Commands;

namespace LiveHeat.Screens.Words;

/// <summary>What became of a command.</summary>
public static class CommandWords
{
    private static readonly Wording Words = new(typeof(CommandWords));

    public static string SendAgain => Words[nameof(SendAgain)];
    public static string SendAgainHelp => Words[nameof(SendAgainHelp)];
    public static string PutAway => Words[nameof(PutAway)];

    public static string Of(CommandNote note) => Words.Say($"{nameof(Of)}.{note.Kind}", note.Words, note.Problem?.Detail);
}
