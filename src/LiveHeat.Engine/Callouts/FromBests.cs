namespace LiveHeat.Engine.Callouts;

/// <summary>Sets and legs that nobody did faster.</summary>
internal static class FromBests
{
    /// <summary>In this heat so many others must have done the same before it means something.</summary>
    private const int Enough = 4;

    public static IEnumerable<Callout> Of(CalloutFloor floor, Bests earlier)
    {
        // Two hands at each end of both: what is closer than that is not faster.
        var margin = 2 * (floor.Heat.Snapshot?.HandTimingMs ?? 0);
        foreach (var same in floor.Lanes.SelectMany(DoneWork.Of).GroupBy(done => done.Key))
        {
            var ranked = same.OrderBy(done => done.Ms).Take(2).ToList();
            var best = ranked[0];
            var at = floor.At(best.End);
            var before = earlier.Ms.TryGetValue(same.Key, out var known);
            var inHeat = same.Count() > Enough && best.Ms + margin < ranked[1].Ms;
            var ofDay = before && best.Ms + margin < known && (ranked.Count == 1 || best.Ms + margin < ranked[1].Ms);
            var kind = best.Leg ? CalloutKind.FastestLeg : CalloutKind.FastestSet;
            // Of the day it weighs whole, of this heat alone three quarters.
            if ((inHeat || ofDay) && !floor.Doubts(best.Lane.Lane) && floor.Weight(kind, 1, at, ofDay ? 1 : 0.75) is { } weight)
            {
                yield return new Callout($"{kind}.{floor.Heat.Clock.Start!.Id}.{best.Lane.Lane}.{best.Step}".ToLowerInvariant(), kind, weight, at, CalloutGrounds.Confirmed, [best.Lane.Lane])
                {
                    Step = best.Step,
                    Ms = best.Ms,
                    OfDay = ofDay,
                };
            }
        }
    }
}
