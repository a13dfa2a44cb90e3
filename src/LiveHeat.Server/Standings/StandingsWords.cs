using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Standings;
using LiveHeat.Engine.Points;

namespace LiveHeat.Server.Standings;

/// <summary>The words of the standings page.</summary>
internal static class StandingsWords
{
    private static readonly Wording Words = new(typeof(StandingsWords));

    public static string Title => Words[nameof(Title)];

    public static string NoHeats => Words[nameof(NoHeats)];

    public static string PlaceHead => Words[nameof(PlaceHead)];

    public static string Team => Words[nameof(Team)];

    public static string PointsHead => Words[nameof(PointsHead)];

    public static string Mark => Words[nameof(Mark)];

    public static string Points(decimal points) => Numbers.Of(points);

    public static string Place(StandingsLine line) => line.Place is { } place ? Numbers.Whole(place) + (line.Tied ? " =" : "") : "–";

    public static string Status(StandingsDivision division) => division.Lines.All(line => line.Place is null) ? NothingCounts : division.Provisional ? Provisional : Certified;

    public static string Score(StandingsScore score) => score switch
    {
        // It stood on no lane of heats that are over and not signed yet: one for it may still come.
        { Taken: Taken.DidNotStart, Provisional: true, Heat.Value: null or "" } => NoResultYet,
        { Taken: Taken.DidNotStart } => DidNotStart,
        { Taken: Taken.Disqualified } => Disqualified,
        { Taken: Taken.ResultVoid } => ResultVoid,
        { OfficialMs: { } ms } => Numbers.Time(ms),
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        _ => ScoreWords.Of(score.Worth, score.Score),
    };

    public static string PlaceIn(StandingsScore score) => score.Place is { } place ? $"{place}." : "–";

    /// <summary>The points of a workout, and whether they are left out.</summary>
    public static string Given(StandingsScore score) => score.Excluded ? LeftOut(Points(score.Points)) : Won(Points(score.Points));

    public static string Rule(PointsSetup points) => points.Rule == PointsKind.High ? High : points.ExclusionsFrom.Count == 0 ? Low : $"{Low} {Excluded(points.ExclusionsFrom[0])}";

    public static string OpenWorkouts(IEnumerable<string> names) => Words.Say(nameof(OpenWorkouts), string.Join(", ", names));

    public static string Cut(StandingsWorkout workout) => Words.Say(nameof(Cut), workout.Name, workout.GoOn);

    public static string AsOf(DateTimeOffset at) => Words.Say(nameof(AsOf), Numbers.Moment(at));

    private static string NothingCounts => Words[nameof(NothingCounts)];

    private static string Provisional => Words[nameof(Provisional)];

    private static string Certified => Words[nameof(Certified)];

    private static string NoResultYet => Words[nameof(NoResultYet)];

    private static string DidNotStart => Words[nameof(DidNotStart)];

    private static string Disqualified => Words[nameof(Disqualified)];

    private static string ResultVoid => Words[nameof(ResultVoid)];

    private static string High => Words[nameof(High)];

    private static string Low => Words[nameof(Low)];

    private static string Won(string points) => Words.Say(nameof(Won), points);

    private static string LeftOut(string points) => Words.Say(nameof(LeftOut), points);

    private static string Excluded(int from) => Words.Say(nameof(Excluded), from);
}
