using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Frames;

/// <summary>Where everybody is: a whole state, a pure function of the facts up to its sequence. See docs/wire.md, section 4.</summary>
public sealed record Frame(
    HeatId Heat, string Epoch, long Sequence, long SignedHead, Instant MadeAt, int Sheet, int Revision, Phase Phase, int CapMs,
    StartFrame? Start, Instant? HaltedAt, long HaltedMs, Instant? EndedAt, Items<Role> Signed, int Held, Items<LaneNumber> Calls,
    Items<LaneFrame> Lanes, Items<NewsItem> News, Items<NearTie> NearTies);

/// <summary>The start in force.</summary>
public sealed record StartFrame(string Id, Instant GoAt, int UncertaintyMs, bool Observed);

/// <summary>What a lane is doing.</summary>
public enum LaneStatus
{
    /// <summary>Nobody judges it yet.</summary>
    Waiting,

    /// <summary>A judge has the seat.</summary>
    Seated,

    /// <summary>Judge, phone and team are ready.</summary>
    Ready,

    /// <summary>At work.</summary>
    Working,

    /// <summary>Held by the head judge.</summary>
    Held,

    /// <summary>All done in time.</summary>
    Finished,

    /// <summary>The cap came first.</summary>
    Capped,

    /// <summary>Stopped for good.</summary>
    Stopped,

    /// <summary>Did not start.</summary>
    Withdrawn,
}

/// <summary>One lane of a frame. Times are lane time.</summary>
public sealed record LaneFrame(
    LaneNumber Lane, LaneStatus Status, int Open, int? Count, long? SinceMs, long? SplitMs, int Worth,
    int? Place, bool Tied, long? GapMs, long? AheadMs, int GapWorth, long? PaceMs,
    long? FinishMs, long? OfficialMs, int NoRepsOpen, int NoReps, int Owed, long? CapMs, long CreditMs, Instant? HeldAt,
    string? Judge, SeatId? Seat, bool Ready, ReadBack? ReadBack, int PenaltyMs, int PenaltyReps, FactFlags Flags, long FactSequence);
