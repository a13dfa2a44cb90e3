using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>The desk.</summary>
public static partial class DeskWords
{
    private static readonly Wording Words = new(typeof(DeskWords));

    public static string NoCompetition => Words[nameof(NoCompetition)];
    public static string Pages => Words[nameof(Pages)];
    public static string Program => Words[nameof(Program)];
    public static string Setup => Words[nameof(Setup)];
    public static string Codes => Words[nameof(Codes)];
    public static string Announcer => Words[nameof(Announcer)];
    public static string Board => Words[nameof(Board)];
    /// <summary>The link to a board of two heats, by their numbers.</summary>
    public static string BothOnOneBoard(int left, int right) => Words.Say(nameof(BothOnOneBoard), left, right);

    public static string Standings => Words[nameof(Standings)];
    public static string Ground => Words[nameof(Ground)];
    public static string GroundHelp => Words[nameof(GroundHelp)];

    // the program
    public static string Heats => Words[nameof(Heats)];
    public static string OnTheFloor => Words[nameof(OnTheFloor)];
    public static string UnderReview => Words[nameof(UnderReview)];
    public static string ToCome => Words[nameof(ToCome)];
    public static string Certified => Words[nameof(Certified)];
    public static string NothingSetUp => Words[nameof(NothingSetUp)];
    public static string NothingSetUpHelp => Words[nameof(NothingSetUpHelp)];
    public static string BeginSetup => Words[nameof(BeginSetup)];
    public static string NextHeatMayBeCalled => Words[nameof(NextHeatMayBeCalled)];

    /// <summary>What a heat needs next, as the button that goes there.</summary>
    public static string NextAction(Phase phase) => Words[$"{nameof(NextAction)}.{(phase == Phase.CountingDown ? Phase.Running : phase)}"];

    public static string Heat(int number, string title) => title.Contains($"{number}", StringComparison.Ordinal) ? title : $"{number}. {title}";

    public static string Planned(long unixMs) => Words.Say(nameof(Planned), TimeWords.TimeOfDay(unixMs));

    public static string Lanes(int count) => Words.Count(nameof(Lanes), count);
}
