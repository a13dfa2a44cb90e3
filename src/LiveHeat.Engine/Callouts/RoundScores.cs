using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>What lanes of one prescription have done in their rounds by the clock, up to the last one that all of them have behind them and of which their judges have told all.</summary>
/// <param name="Lanes">Those that are ranked.</param>
/// <param name="Round">From 1.</param>
/// <param name="EndedAt">When the last of them was through it.</param>
/// <param name="Near">Steps too close to the ends of rounds, of which nobody has decided: lane and round.</param>
internal sealed record RoundScores(IReadOnlyList<LaneState> Lanes, int Round, Instant EndedAt, IReadOnlySet<(LaneNumber, int)> Near)
{
    /// <summary>One for each prescription of which something can be said: nothing is while a ruling on one of its lanes is open.</summary>
    public static IEnumerable<RoundScores> Of(CalloutFloor floor)
    {
        if (!floor.Heat.Lanes.Any(lane => lane.Plan.Windows.Count > 0))
        {
            yield break;
        }

        var near = NearTies.Of(floor.Heat).Where(tie => tie is { Decided: false, Round: not null }).Select(tie => (tie.Lanes[0], tie.Round!.Value)).ToHashSet();
        foreach (var group in floor.Heat.Lanes.Where(lane => lane.Plan.Windows.Count > 0 && lane is { Unranked: false, Apart: false, RanksBelow: false }).GroupBy(lane => lane.Plan.Group))
        {
            var lanes = group.ToList();
            if (!floor.RulingIsOpen(group.Key) && Over(floor, lanes) is var (round, ended) && lanes.TrueForAll(lane => lane.Stopped is not null || Enumerable.Range(1, round).All(one => Settled(lane, one))))
            {
                yield return new RoundScores(lanes, round, ended, near);
            }
        }
    }

    /// <summary>What a lane has done in a round.</summary>
    public static int Worth(LaneState lane, int round) => lane.RoundWorths[round - 1] + (!lane.Plan.Measured ? 0
        : lane.Values.Where(value => value.Step >= lane.Plan.Windows[round - 1].First && value.Step <= lane.Plan.Windows[round - 1].Last).Sum(value => lane.Plan.Score.WorthOf(value.Value)));

    /// <summary>What it has done in all of them, less penalties.</summary>
    public int Total(LaneState lane) => Math.Max(0, Enumerable.Range(1, Round).Sum(round => Worth(lane, round)) - lane.PenaltyWorth);

    /// <summary>Something done in one of them is too close to its end: what the lane has may become more or less.</summary>
    public bool InDoubt(LaneState lane) => Enumerable.Range(1, Round).Any(round => Near.Contains((lane.Lane, round)));

    /// <summary>The most that a round may be worth when people have decided about its end: all steps that were ever done in it, and the set after them.</summary>
    public int Most(LaneState lane, int round)
    {
        var window = lane.Plan.Windows[round - 1];
        return Near.Contains((lane.Lane, round)) ? lane.Plan.WorthThrough(Math.Min(lane.Open, window.Last)) - lane.Plan.WorthThrough(window.First - 1) : Worth(lane, round);
    }

    /// <summary>The most that all of them may be worth.</summary>
    public int Most(LaneState lane) => Total(lane) + Enumerable.Range(1, Round).Sum(round => Most(lane, round) - Worth(lane, round));

    /// <summary>The last round that every lane at work has behind it, and since when; null before the first.</summary>
    private static (int Round, Instant Ended)? Over(CalloutFloor floor, List<LaneState> lanes)
    {
        var now = floor.Heat.EndedAt is { } ended && ended < floor.Now ? ended : floor.Now;
        var working = lanes.Where(lane => lane.Stopped is null).ToList();
        var round = working.Select(lane => lane.Plan.Windows.Count(window => window.UntilMs < lane.Clock?.LaneMs(now))).DefaultIfEmpty(0).Min();
        return round == 0 ? null : (round, working.Max(lane => floor.Heat.Clock.InstantOf(lane.Clock!.HeatMsOf(lane.Plan.Windows[round - 1].UntilMs)))!.Value);
    }

    /// <summary>All is done, or the judge has told how much of the open set was, or has gone on: a phone sends in order, so nothing of the round is still on its way.</summary>
    private static bool Settled(LaneState lane, int round) =>
        lane.Rounds[round - 1] is { Told: true } || lane.Rounds[round - 1].Done == lane.Plan.Windows[round - 1].Last
        || lane.Rounds.Skip(round).Select((later, i) => (later, lane.Plan.Windows[round + i].First)).Any(one => one.later.Count > 0 || one.later.Done >= one.First);
}
