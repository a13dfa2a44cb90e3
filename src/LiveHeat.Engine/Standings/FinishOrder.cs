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
            // Each moves up past whomever it was decided to have beaten.
            for (var j = i; j > 0 && NearTies.DecisionOn(heat, ranked[j - 1], ranked[j]) is { Tie: false } decided && decided.Lanes[0] == ranked[j].Lane; j--)
            {
                (ranked[j - 1], ranked[j]) = (ranked[j], ranked[j - 1]);
            }
        }

        return (ranked, Ranking.Places(ranked, (ahead, behind) => NearTies.DecisionOn(heat, ahead, behind)?.Tie ?? compare(ahead, behind) == 0));
    }
}
