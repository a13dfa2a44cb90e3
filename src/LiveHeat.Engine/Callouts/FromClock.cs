using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Callouts;

/// <summary>What only the clock brings.</summary>
internal static class FromClock
{
    /// <summary>The last minute, milliseconds.</summary>
    private const long Minute = 60_000;

    /// <summary>The last minute before each cap that somebody still works against.</summary>
    public static IEnumerable<Callout> Of(CalloutFloor floor)
    {
        var clock = floor.Heat.Clock;
        foreach (var cap in floor.Lanes.Where(lane => !lane.Finished && lane.Stopped is null && lane.CapHeatMs is not null && IsAtWork(lane)).GroupBy(lane => lane.CapHeatMs!.Value))
        {
            var left = cap.Key - clock.HeatMs(floor.Now);
            if (left is > 0 and <= Minute && clock.InstantOf(cap.Key - Minute) is { } since && floor.Weight(CalloutKind.LastMinute, 1, since) is { } weight)
            {
                yield return new Callout($"lastminute.{clock.Start!.Id}.{cap.Key}", CalloutKind.LastMinute, weight, since, CalloutGrounds.Clock, cap.Select(lane => lane.Lane).ToItems())
                {
                    Due = clock.InstantOf(cap.Key),
                };
            }
        }
    }

    /// <summary>In rounds by the clock the last one may be shorter than the minute, and who is through it rests.</summary>
    private static bool IsAtWork(LaneState lane) =>
        lane.Plan.Windows is not { Count: > 0 } windows || (windows[^1].UntilMs - windows[^1].FromMs >= Minute && lane.Rounds[^1].Done < windows[^1].Last);
}
