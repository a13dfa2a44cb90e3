using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>The announcer's screen.</summary>
public static class AnnouncerWords
{
    private static readonly Wording Words = new(typeof(AnnouncerWords));

    public static string Title => Words[nameof(Title)];
    public static string JustNow => Words[nameof(JustNow)];
    public static string Nothing => Words[nameof(Nothing)];
    public static string NoHeat => Words[nameof(NoHeat)];
    public static string NextHeats => Words[nameof(NextHeats)];
    public static string NoNextHeats => Words[nameof(NoNextHeats)];
    public static string Official => Words[nameof(Official)];
    public static string Athletes => Words[nameof(Athletes)];
    public static string Ready => Words[nameof(Ready)];
    public static string NotReady => Words[nameof(NotReady)];
    public static string Home => Words[nameof(Home)];

    public static string Heats => Words[nameof(Heats)];
    public static string Stays => Words[nameof(Stays)];
    public static string FollowFloor => Words[nameof(FollowFloor)];

    /// <summary>A heat to turn to: "Heat 13: called".</summary>
    public static string HeatTab(string title, Phase phase) => Words.Say(nameof(HeatTab), title, CommonWords.Phase(phase));

    public static string ThenNext(string name) => Words.Say(nameof(ThenNext), name);

    public static string Ago(TimeSpan age) => Words.Say(nameof(Ago), TimeWords.Age(age));

    public static string Lanes(int count) => Words.Count(nameof(Lanes), count);
}
