using LiveHeat.Contracts.Frames;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Live;

/// <summary>
/// A heat for other people's pages: what the stands may see, and nothing about people. No judge, athlete or captain is named; nothing of seats, calls, held taps,
/// disagreements or rulings. Times are of heat or lane and not official before the heat is certified.
/// </summary>
/// <param name="Heat">Its id.</param>
/// <param name="Competition">The competition's name.</param>
/// <param name="Title">The heat's title.</param>
/// <param name="Workout">The workout's name.</param>
/// <param name="Sequence">Grows with every fact.</param>
/// <param name="MadeAt">When this was made, on the server's timebase.</param>
/// <param name="Phase">Where the heat is.</param>
/// <param name="Official">Certified: what stands here is signed.</param>
/// <param name="GoAt">The instant of GO; null before one is set.</param>
/// <param name="HaltedAt">The clock stands since then; null while it runs.</param>
/// <param name="HaltedMs">How long it stood before.</param>
/// <param name="EndedAt">When the heat ended; null before.</param>
/// <param name="CapMs">The longest time cap.</param>
/// <param name="Lanes">In floor order.</param>
public sealed record LiveHeatFrame(
    HeatId Heat, string Competition, string Title, string Workout, long Sequence, Instant MadeAt, Phase Phase, bool Official, Instant? GoAt, Instant? HaltedAt,
    long HaltedMs, Instant? EndedAt, int CapMs, Items<LiveLane> Lanes);

/// <summary>One lane.</summary>
/// <param name="Lane">Its number.</param>
/// <param name="Team">The team's name.</param>
/// <param name="Division">The division's name.</param>
/// <param name="Status">What it is doing.</param>
/// <param name="Round">From 1; null before, after or without rounds. By the clock the one that began last, whatever was tapped.</param>
/// <param name="Doing">The open step: "18 wall balls"; null when all is done, and in a rest.</param>
/// <param name="Worth">Confirmed work.</param>
/// <param name="WorthOfAll">All there is; null where the work has no end.</param>
/// <param name="Place">In its division; null when it has none.</param>
/// <param name="Tied">It shares the place.</param>
/// <param name="GapMs">Behind the leader at the last confirmed point; null when unknown.</param>
/// <param name="ResultMs">The finish time, rounded as the result is; null without one.</param>
public sealed record LiveLane(
    LaneNumber Lane, string Team, string Division, LaneStatus Status, int? Round, string? Doing, int Worth, int? WorthOfAll, int? Place, bool Tied, long? GapMs, long? ResultMs)
{
    /// <summary>In rounds by the clock: nobody works until the next begins. Null where no clock divides the work, and for a team that stopped.</summary>
    public bool? Resting { get; init; }

    /// <summary>In rounds by the clock: when the round ends or, while resting, the next begins. Null when nothing more does, before a start is set, and while a clock stands.</summary>
    public Instant? TurnsAt { get; init; }
}
