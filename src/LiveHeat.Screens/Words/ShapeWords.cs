using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Words;

/// <summary>The form of work that is synchronised, shared, driven by the clock or scored in parts.</summary>
public static class ShapeWords
{
    public const string Together = "At once";
    public const string MinimumEach = "Least each";
    public const string SharedHelp = "At once: so many athletes do every rep at the same moment. Least each: the team shares the set as it likes, everybody at least so many. Empty: one athlete alone.";
    public const string ByClock = "Rounds begin by the clock";
    public const string ClockWork = "Work (m:ss)";
    public const string ClockRest = "Rest (m:ss)";
    public const string ClockRepeat = "again and again until the round is over";
    public const string ClockHelp = "A new round begins at its time, whatever was done of the one before. The time cap follows from it.";
    public const string Parts = "Parts scored apart";
    public const string PartsHelp = "Each part has places and points of its own. The last goes to the end of the work.";
    public const string PartName = "Name of the part";
    public const string PartEnds = "Ends with";
    public const string ToTheEnd = "the end of the work";
    public const string AddPart = "Score a part apart";

    /// <summary>A set by its place and what it is.</summary>
    public static string Place(TiebreakSet place, string set) => place.Round switch
    {
        0 => $"before the rounds: {set}",
        null => $"after the rounds: {set}",
        var round => $"round {round}: {set}",
    };

    public static string LengthOf(string cap) => $"All rounds together: {cap}";
}
