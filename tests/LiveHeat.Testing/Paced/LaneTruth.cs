using LiveHeat.Engine.Heats;

namespace LiveHeat.Testing.Paced;

/// <summary>What became of a lane.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="FinishMs">Lane time of its finish; null when the cap came first and nobody knows what it would have been.</param>
/// <param name="CapMs">Its cap in lane time.</param>
/// <param name="Won">It was first of its prescription.</param>
public sealed record LaneTruth(LaneNumber Lane, long? FinishMs, long CapMs, bool Won)
{
    public bool BeatCap => FinishMs <= CapMs;

    /// <summary>Whether the finish lies between two times; who was stopped by the cap would have come after it, so that an interval that reaches beyond it is not wrong.</summary>
    public bool Within(long earlyMs, long lateMs) => FinishMs is { } finish ? finish >= earlyMs && finish <= lateMs : lateMs > CapMs;
}
