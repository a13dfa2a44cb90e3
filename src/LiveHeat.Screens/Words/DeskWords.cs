using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>The desk.</summary>
public static partial class DeskWords
{
    public const string NoCompetition = "New competition";
    public const string Pages = "Pages of the desk";
    public const string Program = "Program";
    public const string Setup = "Setup";
    public const string Codes = "Join codes";
    public const string Announcer = "Announcer";
    public const string Board = "Board";
    public const string Standings = "Standings";
    public const string Ground = "Light or dark";
    public const string GroundHelp = "Light for daylight and paper, dark for the hall";

    // the program
    public const string Heats = "Heats";
    public const string OnTheFloor = "On the floor";
    public const string UnderReview = "Under review";
    public const string ToCome = "To come";
    public const string Certified = "Certified";
    public const string NothingSetUp = "Nothing is set up yet";
    public const string NothingSetUpHelp = "Name the competition, write the workout, enter the teams, put them on lanes. Then the heats stand here, and each says what to do next.";
    public const string BeginSetup = "Begin the setup";
    public const string NextHeatMayBeCalled = "The next heat need not wait for the review of the last.";

    /// <summary>What a heat needs next, as the button that goes there.</summary>
    public static string NextAction(Phase phase) => phase switch
    {
        Phase.Planned => "Open to call",
        Phase.Called => "Get lanes ready",
        Phase.Armed => "Give GO",
        Phase.CountingDown or Phase.Running => "Watch",
        Phase.Halted => "Resume or restart",
        Phase.Ended => "Review and freeze",
        Phase.Frozen => "Sign",
        _ => "See result",
    };

    public static string Heat(int number, string title) => title.Contains($"{number}", StringComparison.Ordinal) ? title : $"{number}. {title}";

    public static string Planned(long unixMs) => $"planned {TimeWords.TimeOfDay(unixMs)}";

    public static string Lanes(int count) => CommonWords.Count(count, "lane", "lanes");
}
