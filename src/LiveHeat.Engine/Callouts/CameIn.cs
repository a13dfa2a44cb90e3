using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Results that came in: posted with the freeze, then signed.</summary>
public static class CameIn
{
    /// <summary>When a heat's result was signed, or posted; null while it is neither.</summary>
    public static Instant? At(HeatState heat) => heat.Told switch
    {
        Phase.Certified => heat.Entries.Last(entry => entry.Fact is HeatFact.Certified).Fact.Instant,
        Phase.Frozen => heat.Freeze?.Instant,
        _ => null,
    };

    /// <summary>Signed, and no lane pending: it will not change.</summary>
    public static bool IsFinal(HeatState heat) => heat.Told == Phase.Certified && heat.Pending.Count == 0;
}
