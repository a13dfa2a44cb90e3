using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Replays;

/// <summary>A heat to be played again, at any speed, forwards and back.</summary>
/// <param name="Heat">The heat.</param>
/// <param name="By"><c>happened</c> or <c>known</c>.</param>
/// <param name="Sheets">Every version of what was to be done, by its number.</param>
/// <param name="Moments">Frames in order of their instants.</param>
/// <param name="Start">The start that counts in the end; null while there is none. With the halts it tells the instant of a heat time.</param>
public sealed record HeatReplay(
    HeatId Heat, string By, Items<Sheet> Sheets, Items<ReplayMoment> Moments, StartFrame? Start = null)
{
    /// <summary>When the clock stood still in that start; the last without an end while it still stands.</summary>
    public Items<Standstill> Halts { get; init; }
}

/// <summary>A frame and when it became so.</summary>
/// <param name="At">The instant.</param>
/// <param name="Sequence">The ledger's number of the fact behind it; once more where only time changed what is shown: at GO and at a cap.</param>
/// <param name="Frame">The heat from then on.</param>
public sealed record ReplayMoment(Instant At, long Sequence, Frame Frame);
