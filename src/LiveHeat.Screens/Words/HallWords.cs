using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>The hall's measures in the competition's form.</summary>
public static class HallWords
{
    private static readonly Wording Words = new(typeof(HallWords));

    public static string Width => Words[nameof(Width)];
    public static string Seat => Words[nameof(Seat)];
    public static string Help => Words[nameof(Help)];
    public static string Wrong => Words[nameof(Wrong)];
}
