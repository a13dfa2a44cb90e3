using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>The words of paper scorecards for attempts, readings, shared pools and rounds by the clock.</summary>
internal static class CardKindWords
{
    private static readonly Wording Words = new(typeof(CardKindWords));

    public static string MarkAttempts => Words[nameof(MarkAttempts)];
    public static string MarkReadings => Words[nameof(MarkReadings)];
    public static string MarkShares => Words[nameof(MarkShares)];
    public static string MarkClock => Words[nameof(MarkClock)];
    public static string Attempts => Words[nameof(Attempts)];
    public static string GoodLift => Words[nameof(GoodLift)];
    public static string NoLift => Words[nameof(NoLift)];
    public static string RoundsDone => Words[nameof(RoundsDone)];
    public static string AllReps => Words[nameof(AllReps)];

    public static string Least(int units) => Words.Say(nameof(Least), units);

    /// <summary>From when to when, as the clock shows it.</summary>
    public static string Times(string from, string until) => Words.Say(nameof(Times), from, until);

    public static string OpenAtEnd(string until) => Words.Say(nameof(OpenAtEnd), until);

    public static string RestUntil(string time) => Words.Say(nameof(RestUntil), time);

    public static string AllReadings(Unit unit) => Words.Say(nameof(AllReadings), CardWords.Of(unit));

    public static string Load(Unit unit) => Words.Say(nameof(Load), CardWords.Of(unit));
}
