using System.Globalization;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Standings;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Server.Standings;

/// <summary>The words of the standings page.</summary>
internal static class StandingsWords
{
    public static string Points(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);

    public static string Place(StandingsLine line) => line.Place is { } place ? place.ToString(CultureInfo.InvariantCulture) + (line.Tied ? " =" : "") : "–";

    public static string Score(StandingsScore score) => score switch
    {
        // It stood on no lane of heats that are over and not signed yet: one for it may still come.
        { Taken: Taken.DidNotStart, Provisional: true, Heat.Value: null or "" } => "no result yet",
        { Taken: Taken.DidNotStart } => "did not start",
        { Taken: Taken.Disqualified } => "disqualified",
        { Taken: Taken.ResultVoid } => "result void",
        { OfficialMs: { } ms } => TimeText.Of(ms),
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        _ => ScoreWords.Of(score.Worth, score.Score),
    };

    public static string PlaceIn(StandingsScore score) => score.Place is { } place ? $"{place}." : "–";

    public static string Rule(PointsSetup points) => points.Rule == PointsKind.High
        ? "Points by place from a table; the most win. Level totals: more first places, then more seconds, and so on."
        : "A place is its number in points; the fewest win. Teams that tie share the points of the places they cover; who did not start has one point more than there are teams. "
            + "Level totals: best places first, then the latest workout." + (points.ExclusionsFrom.Count == 0 ? "" : $" The worst is left out from {points.ExclusionsFrom[0]} workouts on.");

    public static string Open(IEnumerable<string> names) => $"Not counted yet, because some teams have still to do it: {string.Join(", ", names)}.";
}
