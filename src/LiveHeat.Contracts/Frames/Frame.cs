using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Frames;

/// <summary>Where everybody is: a whole state, a pure function of the facts up to its sequence. See docs/wire.md, section 4.</summary>
public sealed record Frame(
    HeatId Heat, string Epoch, long Sequence, long SignedHead, Instant MadeAt, int Sheet, int Revision, Phase Phase, int CapMs,
    StartFrame? Start, Instant? HaltedAt, long HaltedMs, Instant? EndedAt, Items<Role> Signed, int Held, Items<LaneNumber> Calls,
    Items<LaneFrame> Lanes, Items<NewsItem> News, Items<NearTie> NearTies)
{
    /// <summary>Steps for which the lane's judge and a witness have two times.</summary>
    public Items<TwoTimes> Disagreements { get; init; }

    /// <summary>Until when an appeal may be filed; null while no result is posted: until then it may be.</summary>
    public Instant? AppealsUntil { get; init; }

    /// <summary>Lanes with an open appeal: signatures name them.</summary>
    public Items<LaneNumber> Pending { get; init; }
}

/// <summary>The start in force.</summary>
public sealed record StartFrame(string Id, Instant GoAt, int UncertaintyMs, bool Observed);

/// <summary>A step that a witness saw done at another time than the lane's judge, beyond what both clocks and both hands can be wrong.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Step">The step.</param>
/// <param name="Judge">The judge's time, which counts.</param>
/// <param name="Witness">The witness's time.</param>
/// <param name="HandsMs">How far two hands on one step may be apart, clocks aside.</param>
public sealed record TwoTimes(LaneNumber Lane, int Step, TimeTold Judge, TimeTold Witness, int HandsMs);

/// <summary>A time, and whose phone told it.</summary>
/// <param name="Fact">The tap.</param>
/// <param name="By">The name given on the phone; null when no seat tells it. For what was added, who added it.</param>
/// <param name="Ms">Lane time.</param>
/// <param name="UncertaintyMs">Half-width of the phone's clock error.</param>
public sealed record TimeTold(FactId Fact, string? By, long Ms, int UncertaintyMs);

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

    /// <summary>All done in time, and what was lifted or read is the score: there is no time.</summary>
    Through,

    /// <summary>Put out of the workout.</summary>
    Disqualified,
}

/// <summary>One lane of a frame. Times are lane time.</summary>
public sealed record LaneFrame(
    LaneNumber Lane, LaneStatus Status, int Open, int? Count, long? SinceMs, long? SplitMs, int Worth,
    int? Place, bool Tied, long? GapMs, long? AheadMs, int GapWorth, long? PaceMs,
    long? FinishMs, long? OfficialMs, int NoRepsOpen, int NoReps, int Owed, long? CapMs, long CreditMs, Instant? HeldAt,
    string? Judge, SeatId? Seat, bool Ready, ReadBack? ReadBack, int PenaltyMs, int PenaltyReps, FactFlags Flags, long FactSequence)
{
    /// <summary>What worth and gaps count; null where it is work, in reps.</summary>
    public Engine.Workouts.ScoreUnit? Score { get; init; }

    /// <summary>Its worth, less the reps of penalties, as it is said where the work has no end; null elsewhere.</summary>
    public Engine.Scoring.RoundsAndReps? RoundsAndReps { get; init; }
}
