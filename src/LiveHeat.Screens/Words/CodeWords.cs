using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Join codes.</summary>
public static class CodeWords
{
    public const string Title = "Join codes";
    public const string Help = "A code lets a phone in: a lane's judge, the head judge, the announcer. It works until it expires or a new one is made. It is shown here once and kept nowhere, so print it or have it read at once.";
    public const string Validity = "Works for";
    public const string AllLanes = "Make codes for lanes";
    public const string Lanes = "Lanes";
    public const string ForHeadJudge = "Code for the head judge";
    public const string ForAnnouncer = "Code for the announcer";
    public const string OldGoes = "The codes made before for the same lanes stop working. Phones that are in already stay in.";
    public const string Print = "Print";
    public const string Big = "Show big";
    public const string CloseBig = "Close";
    public const string Remake = "Make a new one";
    public const string NothingYet = "No code made on this page yet.";
    public const string LanesWrong = "Write lanes such as 1-8, or 1, 2, 5.";
    public const string PaperHead = "Read the picture with the phone's camera, or open the address and type the code.";
    public const string PhonePad = "Judge of lane";
    public const string ThisMachine = "This address works on this machine only. Open the desk under the server's name or number in the venue's network, then make the codes there.";

    public static string Hours(int hours) => hours < 48 ? CommonWords.Count(hours, "hour", "hours") : CommonWords.Count(hours / 24, "day", "days");

    public static string For(Role role, LaneNumber? lane) => role == Role.Judge ? $"Lane {lane}" : role == Role.HeadJudge ? "Head judge" : "Announcer";

    public static string Until(long unixMs) => $"works until {TimeWords.DayAndTime(unixMs)}";
}
