using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Join codes.</summary>
public static class CodeWords
{
    private static readonly Wording Words = new(typeof(CodeWords));

    public static string Title => Words[nameof(Title)];
    public static string Help => Words[nameof(Help)];
    public static string Validity => Words[nameof(Validity)];
    public static string AllLanes => Words[nameof(AllLanes)];
    public static string Lanes => Words[nameof(Lanes)];
    public static string ForHeadJudge => Words[nameof(ForHeadJudge)];
    public static string ForAnnouncer => Words[nameof(ForAnnouncer)];
    public static string OldGoes => Words[nameof(OldGoes)];
    public static string Print => Words[nameof(Print)];
    public static string Big => Words[nameof(Big)];
    public static string CloseBig => Words[nameof(CloseBig)];
    public static string Remake => Words[nameof(Remake)];
    public static string NothingYet => Words[nameof(NothingYet)];
    public static string LanesWrong => Words[nameof(LanesWrong)];
    public static string PaperHead => Words[nameof(PaperHead)];
    public static string ThisMachine => Words[nameof(ThisMachine)];

    public static string Hours(int hours) => hours < 48 ? Words.Count(nameof(Hours), hours) : Days(hours / 24);

    public static string For(Role role, LaneNumber? lane) => lane is null ? Words[$"{nameof(For)}.{role}"] : ForLane(lane.Value);

    public static string Until(long unixMs) => Words.Say(nameof(Until), TimeWords.DayAndTime(unixMs));

    private static string Days(int days) => Words.Count(nameof(Days), days);

    private static string ForLane(LaneNumber lane) => Words.Say(nameof(ForLane), lane);
}
