using LiveHeat.Contracts.Library;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Judging;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Judging;

/// <summary>Makes the judging watch's tables from states.</summary>
public static class JudgingMaking
{
    /// <summary>A heat as it is judged; null before the call.</summary>
    public static JudgingTable? Of(HeatState heat)
    {
        if (heat.Snapshot is not { } snapshot)
        {
            return null;
        }

        var sets = JudgedSet.Of(heat);
        var planned = heat.Lanes.Select(lane => lane.Plan.Steps.Where(step => step is { Kind: StepKind.Set, Unit: Unit.Reps }).Sum(step => step.Quantity)).DefaultIfEmpty().Max();
        return new JudgingTable(heat.Heat, snapshot.Title, JudgingWatch.Of(sets, planned).Select(watch => Lane(heat, watch, sets)).ToItems(), JudgingWatch.FalseAlarms);
    }

    /// <summary>A page for every judge of these heats, by name.</summary>
    public static Items<JudgePage> Judges(IEnumerable<HeatState> heats)
    {
        var judged = heats.SelectMany(heat => JudgedSet.Of(heat).Select(set => (heat.Heat, Judge: JudgeOf(heat, set), Set: set))).Where(one => one.Judge.Length > 0).ToList();
        var all = judged.Select(one => one.Set).ToList();
        return judged.GroupBy(one => one.Judge).OrderBy(group => group.Key, StringComparer.CurrentCulture)
            .Select(group => new JudgePage(group.Key, group.Select(one => one.Heat).Distinct().Count(), Movements(group.Select(one => one.Set).ToList(), all))).ToItems();
    }

    private static JudgingLane Lane(HeatState heat, LaneWatch watch, Items<JudgedSet> sets)
    {
        var lane = heat.Find(watch.Lane)!;
        return new JudgingLane(
            watch.Lane, lane.Entry.Name, lane.Seat?.Judge ?? "", watch.Reps, watch.NoReps, Math.Round(watch.Expected, 1), watch.Low, watch.High, watch.StandsOut, watch.SinceMs,
            JudgingRate.Of(watch.NoReps, watch.Reps), Movements(sets.Where(set => set.Lane == watch.Lane).ToList(), sets));
    }

    private static Items<JudgingMovement> Movements(List<JudgedSet> own, IReadOnlyList<JudgedSet> all) => own.GroupBy(set => set.Movement).Select(group =>
    {
        var (reps, noReps) = (group.Sum(set => set.Reps), group.Sum(set => set.NoReps));
        var floor = all.Where(set => set.Movement == group.Key).ToList();
        var (floorReps, floorNoReps) = (floor.Sum(set => set.Reps) - reps, floor.Sum(set => set.NoReps) - noReps);
        return new JudgingMovement(LibraryTelling.Tell(group.Key), reps, noReps, JudgingRate.Of(noReps, reps), floorReps, floorNoReps, JudgingRate.Of(floorNoReps, floorReps));
    }).ToItems();

    /// <summary>Who had the lane's primary seat when the set was done; empty when nobody had.</summary>
    private static string JudgeOf(HeatState heat, JudgedSet set)
    {
        var at = heat.Clock.Start is { } start ? start.GoAt + set.DoneMs : default;
        return heat.Seats.LastOrDefault(seat => seat.Lane == set.Lane && seat.Duty == Duty.Primary && seat.From <= at)?.Judge ?? "";
    }
}
