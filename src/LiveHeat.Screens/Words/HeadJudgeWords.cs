using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>The head judge's screen.</summary>
public static class HeadJudgeWords
{
    private static readonly Wording Words = new(typeof(HeadJudgeWords));

    public static string Title => Words[nameof(Title)];
    public static string NoHeat => Words[nameof(NoHeat)];
    public static string Lanes => Words[nameof(Lanes)];
    public static string Back => Words[nameof(Back)];
    public static string DeskFreezes => Words[nameof(DeskFreezes)];
    public static string Heats => Words[nameof(Heats)];

    /// <summary>A heat to switch to, with what it wants: "Heat 1: sign".</summary>
    public static string HeatTab(string title, Phase phase) => Words.Say(nameof(HeatTab), title, Tab(phase));

    private static string Tab(Phase phase) => phase is Phase.Frozen or Phase.Ended ? Words[$"{nameof(Tab)}.{phase}"] : CommonWords.Phase(phase);
}
