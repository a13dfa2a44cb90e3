using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The form for points over several workouts.</summary>
public static class PointsWords
{
    private static readonly Wording Words = new(typeof(PointsWords));

    public static string Title => Words[nameof(Title)];
    public static string Help => Words[nameof(Help)];
    public static string Exclusions => Words[nameof(Exclusions)];
    public static string ExclusionsHelp => Words[nameof(ExclusionsHelp)];
    public static string Table => Words[nameof(Table)];
    public static string TableHelp => Words[nameof(TableHelp)];
    public static string StartFrom => Words[nameof(StartFrom)];
    public static string Even => Words[nameof(Even)];
    public static string Front => Words[nameof(Front)];
    public static string Few => Words[nameof(Few)];
    public static string Cuts => Words[nameof(Cuts)];
    public static string CutsHelp => Words[nameof(CutsHelp)];
    public static string GoOn => Words[nameof(GoOn)];
    public static string CutWrong => Words[nameof(CutWrong)];

    public static string Kind(PointsKind kind) => Words[$"{nameof(Kind)}.{kind}"];

    public static string KindHelp(PointsKind kind) => Words[$"{nameof(KindHelp)}.{kind}"];

    public static string CutAfter(string workout) => Words.Say(nameof(CutAfter), workout);

    public static string ExclusionsWrong(string word) => Words.Say(nameof(ExclusionsWrong), word);

    public static string TableWrong(string word) => Words.Say(nameof(TableWrong), word);
}
