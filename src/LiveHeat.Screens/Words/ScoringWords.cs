using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The part of a workout's form that says what makes a result.</summary>
public static class ScoringWords
{
    private static readonly Wording Words = new(typeof(ScoringWords));

    public static string Label => Words[nameof(Label)];
    public static string Attempts => Words[nameof(Attempts)];
    public static string LoadSum => Words[nameof(LoadSum)];
    public static string EqualWork => Words[nameof(EqualWork)];
    public static string Tiebreak => Words[nameof(Tiebreak)];
    public static string NoTiebreak => Words[nameof(NoTiebreak)];
    public static string GoneSet => Words[nameof(GoneSet)];
    public static string TiebreakRound => Words[nameof(TiebreakRound)];

    public static string Of(ScoringKind kind) => Words[$"{nameof(Of)}.{kind}"];

    public static string Help(ScoringKind kind) => Words[$"{nameof(Help)}.{kind}"];

    public static string Of(LoadSum sum) => Words[$"{nameof(Of)}.{sum}"];

    public static string Of(EqualWork equal) => Words[$"{nameof(Of)}.{equal}"];

    public static string EndBefore(string set) => Words.Say(nameof(EndBefore), set);

    public static string EndRound(string set) => Words.Say(nameof(EndRound), set);

    public static string EndAfter(string set) => Words.Say(nameof(EndAfter), set);

    public static string EndAttempt(int attempt) => Words.Say(nameof(EndAttempt), attempt);
}
