using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Callouts;

/// <summary>Who leads after a round by the clock, and whose round was the best so far.</summary>
internal static class FromRoundScores
{
    /// <summary>So many other rounds of the same work must have been done before the best of them means something.</summary>
    private const int Enough = 4;

    public static IEnumerable<Callout> Of(CalloutFloor floor) =>
        RoundScores.Of(floor).SelectMany(scores => new[] { Leads(floor, scores), Best(floor, scores) }).OfType<Callout>();

    private static Callout? Leads(CalloutFloor floor, RoundScores scores)
    {
        // Whoever gave up stands behind all others, whatever was done before.
        var order = scores.Lanes.Where(lane => !lane.GaveUp).OrderByDescending(scores.Total).ThenBy(lane => lane.Lane).ToList();
        if (order.Count < 2 || scores.InDoubt(order[0]))
        {
            return null;
        }

        var (leader, second, worth) = (order[0], order[1], scores.Total(order[0]));
        var level = scores.Total(second) == worth && !scores.InDoubt(second);
        var sure = order.Skip(level ? 2 : 1).All(lane => scores.Most(lane) < worth);
        // By how much is known only where nothing of the second is open.
        Items<LaneNumber> lanes = !scores.InDoubt(second) ? [leader.Lane, second.Lane] : [leader.Lane];
        return !sure || worth == 0 || Make(floor, CalloutKind.RoundLead, scores, $"{string.Join('.', level ? lanes : [leader.Lane])}", lanes) is not { } told ? null
            : told with { Worth = worth, Ahead = lanes.Count > 1 ? worth - scores.Total(second) : null };
    }

    private static Callout? Best(CalloutFloor floor, RoundScores scores)
    {
        // After the first round the best is who leads.
        if (scores.Round < 2)
        {
            return null;
        }

        var (best, worth) = scores.Lanes.Select(lane => (lane, Worth: RoundScores.Worth(lane, scores.Round))).MaxBy(one => one.Worth);
        var others = (from lane in scores.Lanes
                      from round in Enumerable.Range(1, scores.Round)
                      where (lane, round) != (best, scores.Round)
                      select Same(best, scores.Round, lane, round) ? scores.Most(lane, round) : int.MaxValue).ToList();
        return others.Count < Enough || scores.Near.Contains((best.Lane, scores.Round)) || others.Max() >= worth || Make(floor, CalloutKind.BestRound, scores, $"{best.Lane}", [best.Lane]) is not { } told ? null
            : told with { Worth = worth, Step = Alone(best, scores.Round) };
    }

    /// <summary>Rounds of other work cannot be compared.</summary>
    private static bool Same(LaneState one, int round, LaneState other, int another) => Work(one, round).SequenceEqual(Work(other, another));

    private static IEnumerable<(string, int)> Work(LaneState lane, int round) =>
        lane.Plan.Steps.Skip(lane.Plan.Windows[round - 1].First - 1).Take(lane.Plan.Windows[round - 1].Last - lane.Plan.Windows[round - 1].First + 1).Select(step => (step.Label, step.Worth));

    /// <summary>The step by which one athlete can be named who did all of the round; null where several did, or somebody who was not planned.</summary>
    private static int? Alone(LaneState lane, int round)
    {
        var (first, last) = (lane.Plan.Windows[round - 1].First, lane.Plan.Windows[round - 1].Last);
        return lane.Plan.Steps.Skip(first - 1).Take(last - first + 1).Select(step => step.Athlete).Distinct().Count() == 1
            && lane.Plan.Steps[first - 1].With.Count == 0 && !lane.Substitutes.Any(other => other.Step >= first && other.Step <= last) ? first : null;
    }

    private static Callout? Make(CalloutFloor floor, CalloutKind kind, RoundScores scores, string who, Items<LaneNumber> lanes) => floor.Weight(kind, 1, scores.EndedAt) is { } weight
        ? new Callout($"{kind}.{floor.Heat.Clock.Start!.Id}.{scores.Round}.{who}".ToLowerInvariant(), kind, weight, scores.EndedAt, CalloutGrounds.Confirmed, lanes) { Round = scores.Round }
        : null;
}
