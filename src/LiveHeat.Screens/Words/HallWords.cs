namespace LiveHeat.Screens.Words;

/// <summary>The hall's measures in the competition's form.</summary>
public static class HallWords
{
    public const string Width = "Board, width of the picture (m)";
    public const string Seat = "Farthest seat (m)";
    public const string Help = "Both: no text on the board is smaller than can be read from there. Empty: not measured.";
    public const string Wrong = "Write both in metres, such as 4 and 25, or neither.";
}
