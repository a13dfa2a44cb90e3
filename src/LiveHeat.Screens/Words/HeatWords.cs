using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>The form of a heat.</summary>
public static class HeatWords
{
    private static readonly Wording Words = new(typeof(HeatWords));

    public static string NumberWrong => Words[nameof(NumberWrong)];
    public static string RerunOf => Words[nameof(RerunOf)];
    public static string NoRerun => Words[nameof(NoRerun)];
    public static string PlannedAtWrong => Words[nameof(PlannedAtWrong)];
}
