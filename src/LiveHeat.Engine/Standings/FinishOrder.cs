using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Standings;

/// <summary>Puts lanes in order by a comparison, and then as people decided near ties.</summary>
public static class FinishOrder
{
    /// <summary>Lanes best first with their places; those who tie share one.</summary>
    public static (List<LaneState> Ranked, int[] Places) Of(HeatState heat, IEnumerable<LaneState> lanes, Comparison<LaneState> compare)
    {
        var ranked = lanes.OrderBy(lane => lane, Comparer<LaneState>.Create(compare)).ThenBy(lane => lane.Lane).ToList();
        for (var i = 1; i < ranked.Count; i++)
        {
            // Only neighbours are ever too close to measure.
            if (heat.DecisionOn(ranked[i - 1].Lane, ranked[i].Lane) is { Tie: false } decided && decided.Lanes[0] == ranked[i].Lane)
            {
                (ranked[i - 1], ranked[i]) = (ranked[i], ranked[i - 1]);
            }
        }

        return (ranked, Ranking.Places(ranked, (ahead, behind) => heat.DecisionOn(ahead.Lane, behind.Lane)?.Tie ?? compare(ahead, behind) == 0));
    }
}
