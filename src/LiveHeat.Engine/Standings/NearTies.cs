using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Standings;

/// <summary>Two finishes closer than their joint uncertainty, or a last step closer to the cap than its own.</summary>
/// <param name="Lanes">Two lanes in the order of their times, or one that is close to its cap.</param>
/// <param name="ApartMs">How far apart; for a cap negative when the step came before it.</param>
/// <param name="WithinMs">The uncertainty: of both clocks and both hands, or of one clock and one hand.</param>
/// <param name="Decided">Somebody has decided it.</param>
public sealed record NearTie(Items<LaneNumber> Lanes, long ApartMs, int WithinMs, bool Decided)
{
    /// <summary>It is about a cap and not about another team.</summary>
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

        return AtFinish(heat, snapshot.HandTimingMs).Concat(AtCap(heat, snapshot.HandTimingMs)).ToItems();
    }

    private static IEnumerable<NearTie> AtFinish(HeatState heat, int handMs)
    {
        foreach (var group in heat.Lanes.Where(lane => lane.Finish is not null).GroupBy(lane => lane.Plan.Group))
        {
            var finishers = group.OrderBy(lane => lane.MeasuredMs).ToList();
            foreach (var (first, second) in finishers.Zip(finishers.Skip(1)))
            {
                var withinMs = Uncertain(first.Finish!.Value, handMs) + Uncertain(second.Finish!.Value, handMs);
                var apartMs = second.MeasuredMs!.Value - first.MeasuredMs!.Value;
                if (apartMs <= withinMs)
                {
                    yield return new NearTie([first.Lane, second.Lane], apartMs, withinMs, heat.DecisionOn(first.Lane, second.Lane) is not null);
                }
            }
        }
    }

    private static IEnumerable<NearTie> AtCap(HeatState heat, int handMs)
    {
        foreach (var lane in heat.Lanes)
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

    private static int Uncertain(Split split, int handMs) => split.UncertaintyMs + handMs;
}
