using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Scoring;

/// <summary>The order of a division's teams in one part of a workout, over all heats in which it was done.</summary>
/// <remarks>As the whole is ranked: who is through by time, the rest by worth (common practice, no source). Equal scores share a place.</remarks>
public static class PartOrder
{
    /// <summary>Every team's place and score in the part, best first; who did not start or was put out comes last, without a place.</summary>
    /// <param name="results">What the teams made of the whole workout.</param>
    /// <param name="part">Which part, from 0.</param>
    /// <param name="rounding">How measured times become official.</param>
    public static Items<(TeamPlace Place, PartScore Score)> Of(IEnumerable<TeamResult> results, int part, Rounding rounding)
    {
        var all = results.Where(result => result.Line.Lane.Plan.Parts.Count > part)
            .Select(result => (Result: result, Score: PartScore.Of(result.Line.Lane, result.Line.Lane.Plan.Parts[part], rounding), Class: Class(result.Line, part))).ToList();
        var ranked = all.Where(one => one.Class < NoPlace).OrderBy(one => one.Class).ThenBy(one => one.Score, Comparer<PartScore>.Create(Compare)).ToList();
        var places = Ranking.Places(ranked, (ahead, behind) => ahead.Class == behind.Class && Compare(ahead.Score, behind.Score) == 0);
        return ranked.Select((one, i) => (new TeamPlace(one.Result.Team, places[i], Provisional: !one.Result.Certified), one.Score))
            .Concat(all.Where(one => one.Class == NoPlace).Select(one => (new TeamPlace(one.Result.Team, 0, WorkoutOrder.WhyUnranked(one.Result.Line), !one.Result.Certified), one.Score))).ToItems();
    }

    /// <summary>Who did other work than the division ranks below those who did its own.</summary>
    private const int OtherWork = 2;
    private const int NoPlace = 3;

    private static int Class(ResultLine line, int part) => line switch
    {
        { Lane.Unranked: true } => NoPlace,
        { Lane.RanksBelow: true } => OtherWork,
        _ when line.Lane.Plan.VariantFrom <= line.Lane.Plan.Parts[part].Last => OtherWork,
        { Outcome: Outcome.Stopped } when !PartScore.IsPast(line.Lane, line.Lane.Plan.Parts[part], line.Lane.StoppedMs) => 1,
        _ => 0,
    };

    private static int Compare(PartScore left, PartScore right)
    {
        if (left.Through != right.Through)
        {
            return left.Through ? -1 : 1;
        }

        return left.Through
            ? (left.OfficialMs ?? long.MaxValue).CompareTo(right.OfficialMs ?? long.MaxValue)
            : right.Worth.CompareTo(left.Worth);
    }
}
