using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Judging;

/// <summary>A set that was done, as it was judged.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Movement">The movement's name.</param>
/// <param name="DoneMs">Lane time of its end, milliseconds; of the last known split before it, where its own is not known.</param>
/// <param name="Reps">Reps that counted, above 0.</param>
/// <param name="NoReps">Reps that did not.</param>
public sealed record JudgedSet(LaneNumber Lane, string Movement, long DoneMs, int Reps, int NoReps)
{
    /// <summary>Every set of reps that is done in a heat, lane by lane in its order. Only what is counted rep by rep can be compared.</summary>
    public static Items<JudgedSet> Of(HeatState heat) => heat.Lanes.SelectMany(Of).ToItems();

    private static IEnumerable<JudgedSet> Of(LaneState lane)
    {
        var at = 0L;
        foreach (var step in lane.Plan.Steps.Take(lane.DoneSteps))
        {
            at = Math.Max(at, lane.Splits[step.Number - 1]?.LaneMs ?? at);
            if (step is { Kind: StepKind.Set, Unit: Unit.Reps })
            {
                yield return new JudgedSet(lane.Lane, step.Movement, at, step.Quantity, lane.NoReps[step.Number - 1]);
            }
        }
    }
}
