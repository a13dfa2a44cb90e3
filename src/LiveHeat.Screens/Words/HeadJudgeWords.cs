using LiveHeat.Engine.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>The head judge's screen.</summary>
public static class HeadJudgeWords
{
    public const string Title = "Head judge";
    public const string NoHeat = "No heat is called. When the desk calls one, its lanes stand here.";
    public const string Lanes = "Lanes";
    public const string Back = "All lanes";
    public const string DeskFreezes = "The heat is over. Rule on what is still open; the desk then freezes the result, and you sign it here.";
    public const string Heats = "Heats";

    /// <summary>A heat to switch to, with what it wants: "Heat 1: sign".</summary>
    public static string HeatTab(string title, Phase phase) => $"{title}: {(phase switch
    {
        Phase.Frozen => "sign",
        Phase.Ended => "review",
        _ => CommonWords.Phase(phase),
    })}";
}
