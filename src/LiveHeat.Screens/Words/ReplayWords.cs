using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Replays;

namespace LiveHeat.Screens.Words;

/// <summary>Playing a heat again.</summary>
public static class ReplayWords
{
    private static readonly Wording Words = new(typeof(ReplayWords));

    public static string Title => Words[nameof(Title)];
    public static string Mark => Words[nameof(Mark)];
    public static string NotLive => Words[nameof(NotLive)];
    public static string Open => Words[nameof(Open)];
    public static string OpenHere => Words[nameof(OpenHere)];
    public static string WhichHeat => Words[nameof(WhichHeat)];
    public static string PickHeat => Words[nameof(PickHeat)];
    public static string NothingToPlay => Words[nameof(NothingToPlay)];
    public static string Reading => Words[nameof(Reading)];
    public static string Order => Words[nameof(Order)];
    public static string Play => Words[nameof(Play)];
    public static string Pause => Words[nameof(Pause)];
    public const string Back = "−10 s";
    public const string On = "+10 s";
    public static string PreviousShort => Words[nameof(PreviousShort)];
    public static string NextShort => Words[nameof(NextShort)];
    public static string PreviousFact => Words[nameof(PreviousFact)];
    public static string NextFact => Words[nameof(NextFact)];
    public static string Speed => Words[nameof(Speed)];
    public static string GoTo => Words[nameof(GoTo)];
    public static string GoToHelp => Words[nameof(GoToHelp)];
    public static string Where => Words[nameof(Where)];
    public static string Keys => Words[nameof(Keys)];
    public static string FactsOf => Words[nameof(FactsOf)];
    public static string AllLanes => Words[nameof(AllLanes)];
    public static string LaneFacts => Words[nameof(LaneFacts)];
    public static string NoFacts => Words[nameof(NoFacts)];
    public static string PauseToRule => Words[nameof(PauseToRule)];
    public static string PickLane => Words[nameof(PickLane)];
    public static string Certified => Words[nameof(Certified)];
    public static string GoReopen => Words[nameof(GoReopen)];
    public static string NoStart => Words[nameof(NoStart)];
    public static string BackToHeat => Words[nameof(BackToHeat)];
    public static string BackToLanes => Words[nameof(BackToLanes)];
    public static string GoLive => Words[nameof(GoLive)];
    public static string NobodyHere => Words[nameof(NobodyHere)];
    public static string BeforeGo => Words[nameof(BeforeGo)];
    public static string Choose => Words[nameof(Choose)];
    public static string Close => Words[nameof(Close)];

    /// <summary>How far around the moment facts are listed.</summary>
    public static string Around(long fromMs, long untilMs) => Words.Say(nameof(Around), Time(fromMs), Time(untilMs));

    public static string By(ReplayBy by) => Words[$"{nameof(By)}.{by}"];

    public static string ByHelp(ReplayBy by) => Words[$"{nameof(ByHelp)}.{by}"];

    public static string Times(double speed) => $"{speed.ToString("0.#", Numbers.Format)}×";

    /// <summary>A heat time, also before GO: "4:32.4", "−0:03.0".</summary>
    public static string Time(long ms) => (ms < 0 ? "−" : "") + TimeWords.Clock(Math.Abs(ms), 1);

    public static string LiveNow(string heat, Phase phase) => Words.Say(nameof(LiveNow), heat, CommonWords.Phase(phase));

    // who and how

    public static string Duty(Duty duty) => Words[$"{nameof(Duty)}.{duty}"];

    /// <summary>A phone, told from another of the same person: the first letters of its sign-in.</summary>
    public static string Phone(string sender) => Words.Say(nameof(Phone), sender[..Math.Min(4, sender.Length)]);

    public static string Within(int ms) => $"±{ms} ms";

    public static string CameLater(long ms) => Words.Say(nameof(CameLater), TimeWords.Gap(ms));

    public static string VoidedBy(string name, Role role) => Words.Say(nameof(VoidedBy), name, CommonWords.Role(role));

    public static string AdmittedBy(string name, Role role) => Words.Say(nameof(AdmittedBy), name, CommonWords.Role(role));

    public static string Because(string reason) => Words.Say(nameof(Because), reason);
}
