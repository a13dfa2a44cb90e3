using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Standings;

/// <summary>
/// Two finishes closer than their joint uncertainty; or a last step closer to the cap than its own, or before it by the judge and after it by the timekeepers.
/// </summary>
/// <param name="Lanes">Two lanes in the order of their times, or one that is close to its cap.</param>
/// <param name="ApartMs">How far apart; for a cap negative when the step came before it.</param>
/// <param name="WithinMs">The uncertainty: of both clocks and both hands, or of one clock and one hand.</param>
/// <param name="Decided">Somebody has decided it.</param>
public sealed record NearTie(Items<LaneNumber> Lanes, long ApartMs, int WithinMs, bool Decided)
{
    /// <summary>The round by the clock, from 1, whose end it is about; null where it is about a finish or the cap.</summary>
    public int? Round { get; init; }

    /// <summary>It is about a cap, or the end of a round, and not about another team.</summary>
    public bool AtCap => Lanes.Count == 1;
}

/// <summary>Finds what was too close to measure. Flagged, never decided here.</summary>
public static class NearTies
{
    /// <summary>All near ties of a heat, decided ones too.</summary>
    public static Items<NearTie> Of(HeatState heat)
    {
        if (heat.Snapshot is not { } snapshot)
        {
            return [];
        }

        return AtFinish(heat, snapshot.HandTimingMs).Concat(AtCap(heat, snapshot.HandTimingMs)).Concat(AtRoundEnds(heat, snapshot.HandTimingMs)).ToItems();
    }

    private static IEnumerable<NearTie> AtFinish(HeatState heat, int handMs)
    {
        foreach (var group in heat.Lanes.Where(lane => lane.Finish is not null && !lane.Unranked).GroupBy(lane => (lane.Plan.Group, lane.RanksBelow)))
        {
            // All pairs: a bad clock two places away may be as close as a good one next to it.
            var finishers = group.OrderBy(lane => lane.MeasuredMs).ToList();
            for (var i = 0; i < finishers.Count; i++)
            {
                foreach (var second in finishers.Skip(i + 1))
                {
                    var (apartMs, withinMs) = Between(finishers[i], second, handMs);
                    if (apartMs <= withinMs)
                    {
                        yield return new NearTie([finishers[i].Lane, second.Lane], apartMs, withinMs, heat.DecisionOn(finishers[i].Lane, second.Lane) is not null);
                    }
                }
            }
        }
    }

    /// <summary>What was decided of two lanes that are too close to measure; null when nothing was, or when their times have come apart since.</summary>
    internal static HeatFact.NearTieDecided? DecisionOn(HeatState heat, LaneState one, LaneState other)
    {
        if (one.Finish is null || other.Finish is null || one.Plan.Group != other.Plan.Group || one.RanksBelow != other.RanksBelow || heat.DecisionOn(one.Lane, other.Lane) is not { } decided)
        {
            return null;
        }

        var (apartMs, withinMs) = Between(one, other, heat.Snapshot!.HandTimingMs);
        return apartMs <= withinMs ? decided : null;
    }

    private static (long ApartMs, int WithinMs) Between(LaneState one, LaneState other, int handMs) =>
        (Math.Abs(other.MeasuredMs!.Value - one.MeasuredMs!.Value), Uncertain(one.Finish!.Value, handMs) + Uncertain(other.Finish!.Value, handMs));

    private static IEnumerable<NearTie> AtCap(HeatState heat, int handMs)
    {
        foreach (var lane in heat.Lanes.Where(lane => !lane.Unranked))
        {
            if (lane.NearCap is { } near && Math.Abs(near.LaneMs) <= Uncertain(near, handMs))
            {
                yield return new NearTie([lane.Lane], near.LaneMs, Uncertain(near, handMs), lane.CapDecision is not null);
            }
            else if (lane.CapDecision is { } decided)
            {
                yield return new NearTie([lane.Lane], 0, decided.WithinMs, Decided: true);
            }
        }
    }

    private static IEnumerable<NearTie> AtRoundEnds(HeatState heat, int handMs)
    {
        foreach (var lane in heat.Lanes.Where(lane => lane.Plan.Windows.Count > 0 && !lane.Unranked))
        {
            for (var round = 1; round <= lane.Plan.Windows.Count; round++)
            {
                var near = lane.NearRoundEnds.Where(one => one.Round == round).Select(one => (Split?)one.FromEnd).FirstOrDefault();
                var decided = lane.RoundDecisions.LastOrDefault(decision => decision.Round == round);
                if (near is { } split && Math.Abs(split.LaneMs) <= Uncertain(split, handMs))
                {
                    yield return new NearTie([lane.Lane], split.LaneMs, Uncertain(split, handMs), decided is not null) { Round = round };
                }
                else if (decided is not null)
                {
                    yield return new NearTie([lane.Lane], 0, decided.WithinMs, Decided: true) { Round = round };
                }
            }
        }
    }

    /// <summary>A clock that claims to know nothing is no worse than a day: sums of two must not overflow.</summary>
    private static int Uncertain(Split split, int handMs) => Math.Min(split.UncertaintyMs, WorstMs) + handMs;

    private const int WorstMs = 24 * 60 * 60 * 1000;
}
