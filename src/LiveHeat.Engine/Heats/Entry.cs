using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>A fact as it stands on a heat's ledger.</summary>
/// <param name="Sequence">Its place, from 1, without gaps.</param>
/// <param name="ReceivedAt">When the server had it; never decides anything but what arrived late.</param>
/// <param name="Sender">The device or sign-in it came from.</param>
/// <param name="Fact">What happened.</param>
public sealed record Entry(long Sequence, Instant ReceivedAt, string Sender, HeatFact Fact)
{
    /// <summary>Its place on the ledger, also where a heat is folded in another order: a freeze names it.</summary>
    public long Arrived { get; init; } = Sequence;
}

/// <summary>How a fact is kept that is not plain sailing. Told to the head judge, never a reason to drop it.</summary>
[Flags]
public enum FactFlags
{
    /// <summary>It counts as it is.</summary>
    None = 0,

    /// <summary>It does not count until the head judge admits it.</summary>
    Quarantined = 1,

    /// <summary>It arrived after the freeze.</summary>
    Late = 1 << 1,

    /// <summary>It happened before GO.</summary>
    Early = 1 << 2,

    /// <summary>Its instant lies after its arrival: the phone's clock was wrong.</summary>
    Future = 1 << 3,

    /// <summary>It was tapped on a start that was recalled.</summary>
    OldStart = 1 << 4,

    /// <summary>It was tapped on a plan that had been replaced.</summary>
    OldPlan = 1 << 5,

    /// <summary>The plan has no such step, or the step is of another kind.</summary>
    NoSuchStep = 1 << 6,

    /// <summary>It came from a seat that was not the lane's then.</summary>
    NoSeat = 1 << 7,

    /// <summary>Faster than anybody can be.</summary>
    Implausible = 1 << 8,

    /// <summary>The step was complete already.</summary>
    Repeat = 1 << 9,

    /// <summary>It happened after the lane's cap; a finish also by the official time, where timekeepers made one.</summary>
    AfterCap = 1 << 10,

    /// <summary>It happened after the team had stopped for good.</summary>
    AfterStop = 1 << 11,

    /// <summary>A witness and the judge disagree by more than their clocks can.</summary>
    Disagreement = 1 << 12,
}
