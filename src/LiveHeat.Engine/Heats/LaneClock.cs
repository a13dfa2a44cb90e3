using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>Lane time: heat time less what the lane was held; and where that leaves the cap.</summary>
public sealed record LaneClock(HeatClock Heat, Items<Standstill> Holds, long CapMs, long CapMovedMs, bool CapOpen)
{
    /// <summary>Reads holds and adjustments that stand, in ledger order.</summary>
    /// <param name="heat">The heat's clock.</param>
    /// <param name="capMs">The plan's cap.</param>
    /// <param name="rulings">Those that stand.</param>
    /// <param name="rounds">How many rounds the plan has by the clock: the last ends at the cap.</param>
    public static LaneClock Read(HeatClock heat, int capMs, IEnumerable<HeatFact> rulings, int rounds = 0)
    {
        var holds = new List<Standstill>();
        var movedMs = 0L;
        HeatFact.LaneHeld? open = null;
        foreach (var ruling in rulings)
        {
            switch (ruling)
            {
                case HeatFact.LaneHeld held when open is null:
                    open = held;
                    break;
                case HeatFact.LaneResumed resumed when open is not null:
                    var hold = new Standstill(open.Instant, resumed.Instant);
                    holds.Add(hold);
                    movedMs += MovesCap(open, heat, capMs + movedMs) ? WorkingMs(heat, hold) : 0;
                    open = null;
                    break;
                case HeatFact.CapDecided decided when decided.Round is null || decided.Round == rounds:
                    // A step exactly at the cap counts: decided too late, it must lie beyond.
                    movedMs += MovedMs(decided);
                    break;
                case HeatFact.TimeAdjusted { MovesCap: true } adjusted:
                    movedMs -= adjusted.AdjustMs;
                    break;
            }
        }

        if (open is not null)
        {
            holds.Add(new Standstill(open.Instant, null));
        }

        return new LaneClock(heat, holds.ToItems(), capMs, movedMs, open is not null && MovesCap(open, heat, capMs + movedMs));
    }

    /// <summary>How far a decision moves the cap, or the end of a round.</summary>
    internal static int MovedMs(HeatFact.CapDecided decided) => decided.InTime ? decided.WithinMs : -decided.WithinMs - 1;

    /// <summary>A hold after the lane's cap gives nobody more time.</summary>
    private static bool MovesCap(HeatFact.LaneHeld held, HeatClock heat, long capMs) => held.MovesCap && heat.HeatMs(held.Instant) <= capMs;

    /// <summary>Lane time of an instant; null when no start is in force.</summary>
    public long? LaneMs(Instant instant) => Heat.HeatMs(instant) - HeldMs(instant);

    /// <summary>The heat time at which the lane time is reached, as far as the holds known now tell.</summary>
    public long HeatMsOf(long laneMs)
    {
        var heldMs = 0L;
        foreach (var hold in Holds)
        {
            if (Math.Max(0, Heat.HeatMs(hold.From) ?? 0) - heldMs >= laneMs)
            {
                break;
            }

            heldMs += hold.Until is null ? 0 : WorkingMs(Heat, hold);
        }

        return laneMs + heldMs;
    }

    /// <summary>Milliseconds of heat time that the holds took before the instant.</summary>
    public long HeldMs(Instant instant)
    {
        var heldMs = 0L;
        foreach (var hold in Holds)
        {
            var until = hold.Until is { } end && end < instant ? end : instant;
            heldMs += until > hold.From ? WorkingMs(Heat, new Standstill(hold.From, until)) : 0;
        }

        return heldMs;
    }

    /// <summary>The cap in heat time; null while it moves with an open hold.</summary>
    public long? CapHeatMs => CapOpen ? null : CapMs + CapMovedMs;

    /// <summary>Milliseconds from the lane's cap to the instant, negative before it; null while there is no cap to tell.</summary>
    public long? FromCapMs(Instant instant) => Heat.HeatMs(instant) - CapHeatMs;

    /// <summary>Whether the instant lies after the lane's cap. A finish exactly at the cap counts (common practice, no source).</summary>
    public bool AfterCap(Instant instant) => CapHeatMs is { } cap && Heat.HeatMs(instant) > cap;

    private static long WorkingMs(HeatClock heat, Standstill hold)
    {
        // Only time after GO and outside a halt of the whole heat is lost to a hold.
        var from = Math.Max(0, heat.HeatMs(hold.From) ?? 0);
        var until = Math.Max(0, heat.HeatMs(hold.Until!.Value) ?? 0);
        return Math.Max(0, until - from);
    }
}
