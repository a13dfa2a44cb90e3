namespace LiveHeat.Screens.Words;

/// <summary>The message that the organiser writes for the boards.</summary>
public static class BoardMessageWords
{
    public const string Label = "Message on the boards";
    public const string Help = "Boards show it between heats; while a heat runs it stands in one line above the lanes.";
    public const string Show = "Show";
    public const string TakeAway = "Take away";
    public const string Shown = "Shown now:";
    public const string Needed = "Write what the boards are to show.";
}
