using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Scoring;

/// <summary>What a team made of a workout, in whichever heat it did it.</summary>
/// <param name="Team">The team.</param>
/// <param name="Heat">The heat that counts for it.</param>
/// <param name="Line">Its line of that heat's result.</param>
/// <param name="Certified">Both have signed.</param>
public sealed record TeamResult(string Team, HeatId Heat, ResultLine Line, bool Certified);

/// <summary>One order of the teams of a division that did a workout in several heats.</summary>
/// <remarks>Finishers above all others, the rest by reps, then by who got there first unless the workout shares the place: common practice, no source. The same order as within a heat.</remarks>
public static class WorkoutOrder
{
    /// <summary>Every team's place. Who did other work than the division ranks below those who did it, side by side with others who did.</summary>
    public static Items<TeamPlace> Of(IEnumerable<TeamResult> results)
    {
        var all = results.ToList();
        var ranked = all.Where(result => !result.Line.Lane.Unranked).OrderBy(result => result, Comparer<TeamResult>.Create(Compare)).ToList();
        for (var i = 1; i < ranked.Count; i++)
        {
            // Within a heat its own result stands: people may have decided a near tie.
            for (var j = i; j > 0 && AheadInHeat(ranked[j], ranked[j - 1]); j--)
            {
                (ranked[j - 1], ranked[j]) = (ranked[j], ranked[j - 1]);
            }
        }

        var places = Ranking.Places(ranked, Tie);
        return ranked.Select((result, i) => new TeamPlace(result.Team, places[i], Provisional: !result.Certified))
            .Concat(all.Where(result => result.Line.Lane.Unranked).Select(result => new TeamPlace(result.Team, 0, WhyUnranked(result.Line), !result.Certified))).ToItems();
    }

    private static bool AheadInHeat(TeamResult left, TeamResult right) => left.Heat == right.Heat && left.Line.Place is { } own && right.Line.Place is { } other && own < other;

    private static bool Tie(TeamResult ahead, TeamResult behind) => ahead.Heat == behind.Heat && ahead.Line.Place is { } own && behind.Line.Place is { } other
        ? own == other
        : Compare(ahead, behind) == 0;

    /// <summary>Why a team that has no place has none.</summary>
    internal static Taken WhyUnranked(ResultLine line) => line.Outcome switch
    {
        Outcome.Disqualified => Taken.Disqualified,
        Outcome.DidNotStart => Taken.DidNotStart,
        _ => Taken.ResultVoid,
    };

    private static int Compare(TeamResult left, TeamResult right)
    {
        var byRank = Rank(left.Line).CompareTo(Rank(right.Line));
        if (byRank != 0)
        {
            return byRank;
        }

        var byClass = Class(left.Line).CompareTo(Class(right.Line));
        if (byClass != 0)
        {
            return byClass;
        }

        if (Class(left.Line) is Finishers or OtherWork)
        {
            var byTime = Class(left.Line) == OtherWork ? 0 : Ms(left.Line).CompareTo(Ms(right.Line));
            if (byTime != 0 || Class(left.Line) == OtherWork || (IsThrough(left.Line) && IsThrough(right.Line)))
            {
                return byTime;
            }

            if (IsThrough(left.Line) || IsThrough(right.Line))
            {
                return IsThrough(left.Line) ? -1 : 1;
            }
        }

        var byWorth = right.Line.Worth.CompareTo(left.Line.Worth);
        if (byWorth != 0)
        {
            return byWorth;
        }

        var byTiebreak = (left.Line.TiebreakMs ?? long.MaxValue).CompareTo(right.Line.TiebreakMs ?? long.MaxValue);
        if (byTiebreak != 0)
        {
            return byTiebreak;
        }

        if (left.Line.Lane.Plan.NobodyFirst)
        {
            return 0;
        }

        if (left.Line.Lane.Plan.EqualWork == EqualWork.Shared && (!IsWorking(left.Line) || !IsWorking(right.Line)))
        {
            // Who still works has the time to do more: it stands ahead until it is over too.
            return IsWorking(right.Line).CompareTo(IsWorking(left.Line));
        }

        var bySteps = right.Line.Lane.DoneSteps.CompareTo(left.Line.Lane.DoneSteps);
        return bySteps != 0 ? bySteps : left.Line.Lane.ReachedMs.CompareTo(right.Line.Lane.ReachedMs);
    }

    private static bool IsWorking(ResultLine line) => line.Outcome == Outcome.Working;

    private static bool IsThrough(ResultLine line) => line.Outcome is Outcome.Finished or Outcome.FinishedTimeUnknown;

    private static long Ms(ResultLine line) => line.OfficialMs ?? CapPlus.LatestMs(line.Lane);

    /// <summary>Teams with a time: those who are through, and where the cap makes a time too, those whom it stopped.</summary>
    private const int Finishers = 0;
    private const int OtherWork = 3;

    /// <summary>First who did as prescribed, then whom a consequence ranks below them, then who did other work and has no place.</summary>
    private static int Rank(ResultLine line) => line.Place is null ? 2 : line.Lane.RanksBelow ? 1 : 0;

    private static int Class(ResultLine line) => line switch
    {
        { Place: null } => OtherWork,
        { Outcome: Outcome.Capped, OfficialMs: not null } => Finishers,
        _ when IsThrough(line) => Finishers,
        { Outcome: Outcome.Stopped } => 2,
        _ => 1,
    };
}
