using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>The message that the organiser writes for the boards.</summary>
public static class BoardMessageWords
{
    private static readonly Wording Words = new(typeof(BoardMessageWords));

    public static string Label => Words[nameof(Label)];
    public static string Help => Words[nameof(Help)];
    public static string Show => Words[nameof(Show)];
    public static string TakeAway => Words[nameof(TakeAway)];
    public static string Shown => Words[nameof(Shown)];
    public static string Needed => Words[nameof(Needed)];
}
