using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Replays;

namespace LiveHeat.Screens.Words;

/// <summary>Playing a heat again.</summary>
public static class ReplayWords
{
    public const string Title = "Replay";
    public const string Mark = "REPLAY";
    public const string NotLive = "not live";
    public const string Open = "Replay";
    public const string OpenHere = "Replay of this moment";
    public const string WhichHeat = "Heat";
    public const string PickHeat = "Choose a heat.";
    public const string NothingToPlay = "No heat has been called yet, so there is nothing to play again.";
    public const string Reading = "Reading the record…";
    public const string Order = "In which order";
    public const string Play = "Play";
    public const string Pause = "Pause";
    public const string Back = "−10 s";
    public const string On = "+10 s";
    public const string PreviousShort = "‹ Fact";
    public const string NextShort = "Fact ›";
    public const string PreviousFact = "Fact before";
    public const string NextFact = "Next fact";
    public const string Speed = "Speed";
    public const string GoTo = "Go to (m:ss)";
    public const string GoToHelp = "Write a heat time, such as 4:32.";
    public const string Where = "Where in the heat";
    public const string Keys = "Keys: space plays and pauses, ← → to the fact before and the next, with shift 10 s.";
    public const string FactsOf = "Facts of";
    public const string AllLanes = "All lanes";
    public const string LaneFacts = "Facts";
    public const string NoFacts = "Nothing was recorded around this moment.";
    public const string PauseToRule = "Pause to void, let count or add.";
    public const string PickLane = "Choose a lane to add a fact to it.";
    public const string Certified = "The result is certified, so nothing is ruled on here. To change it, the desk reopens the heat first, with a reason.";
    public const string GoReopen = "Go and reopen it";
    public const string NoStart = "No start is in force, so nothing can be added in time.";
    public const string BackToHeat = "Back to the heat";
    public const string BackToLanes = "Back to the lanes";
    public const string GoLive = "Back to live";
    public const string NobodyHere = "The replay is for the desk and the head judge.";
    public const string BeforeGo = "before GO";
    public const string Choose = "Play a heat again";
    public const string Close = "Close";

    /// <summary>How far around the moment facts are listed.</summary>
    public static string Around(long fromMs, long untilMs) => $"{Time(fromMs)} to {Time(untilMs)}";

    public static string By(ReplayBy by) => by == ReplayBy.Known ? "as it was known" : "as it happened";

    public static string ByHelp(ReplayBy by) => by == ReplayBy.Known
        ? "Every fact at the moment at which it reached us: what could be known then."
        : "Every fact at the moment at which it happened, also when it came in later or was added. A ruling stands from when it was made.";

    public static string Times(double speed) => $"{speed:0.#}×";

    /// <summary>A heat time, also before GO: "4:32.4", "−0:03.0".</summary>
    public static string Time(long ms) => (ms < 0 ? "−" : "") + TimeWords.Clock(Math.Abs(ms), 1);

    public static string LiveNow(string heat, Phase phase) => $"Live now: {heat}, {CommonWords.Phase(phase)}";

    // who and how

    public static string Duty(Duty duty) => duty switch
    {
        Engine.Heats.Duty.Primary => "lane judge",
        Engine.Heats.Duty.Witness => "witness",
        _ => "timekeeper",
    };

    /// <summary>A phone, told from another of the same person: the first letters of its sign-in.</summary>
    public static string Phone(string sender) => $"phone {sender[..Math.Min(4, sender.Length)]}";

    public static string Within(int ms) => $"±{ms} ms";

    public static string CameLater(long ms) => $"came in {TimeWords.Gap(ms)} later";

    public static string VoidedBy(string name, Role role) => $"voided by {name}, {CommonWords.Role(role)}";

    public static string AdmittedBy(string name, Role role) => $"let count by {name}, {CommonWords.Role(role)}";

    public static string Because(string reason) => $" (“{reason}”)";
}
