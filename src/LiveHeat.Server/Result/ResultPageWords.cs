using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Server.Result;

/// <summary>What stands around the figures of the result page.</summary>
internal static class ResultPageWords
{
    private static readonly Wording Words = new(typeof(ResultPageWords));

    public static string NoResult => Words[nameof(NoResult)];

    public static string NotCalled => Words[nameof(NotCalled)];

    public static string ToBriefing => Words[nameof(ToBriefing)];

    public static string Place => Words[nameof(Place)];

    public static string Lane => Words[nameof(Lane)];

    public static string Team => Words[nameof(Team)];

    public static string Result => Words[nameof(Result)];

    public static string NoReps => Words[nameof(NoReps)];

    public static string Rulings => Words[nameof(Rulings)];

    public static string ReadBack => Words[nameof(ReadBack)];

    public static string Appeals => Words[nameof(Appeals)];

    public static string NobodySigned => Words[nameof(NobodySigned)];

    public static string Signed => Words[nameof(Signed)];

    public static string SigningKey => Words[nameof(SigningKey)];

    public static string Caution => Words[nameof(Caution)];

    public static string Splits => Words[nameof(Splits)];

    public static string SharedSets => Words[nameof(SharedSets)];

    public static string NobodyNamed => Words[nameof(NobodyNamed)];

    public static string ScoredApart => Words[nameof(ScoredApart)];

    public static string HowFar => Words[nameof(HowFar)];

    public static string Strip => Words[nameof(Strip)];

    public static string StripByTheClock => Words[nameof(StripByTheClock)];

    public static string Title(string heat) => Words.Say(nameof(Title), heat);

    public static string RerunOf(HeatId heat) => Words.Say(nameof(RerunOf), heat);

    public static string Revision(int number) => Words.Say(nameof(Revision), number);

    public static string LaneOf(LaneNumber lane) => Words.Say(nameof(LaneOf), lane);

    public static string Times(string rounding, string timekeepers, int handMs) => Words.Say(nameof(Times), rounding, timekeepers, handMs);

    public static string Ledger(long entries) => Words.Count(nameof(Ledger), entries);

    public static string AsOf(DateTimeOffset at) => Words.Say(nameof(AsOf), Numbers.Moment(at));

    /// <summary>A step of which a part is done.</summary>
    public static string Counted(string step, int done) => Words.Say(nameof(Counted), step, done);

    public static string ShortOf(int units) => Words.Say(nameof(ShortOf), units);
}
