using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>Who may judge a lane, from when to when.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Lane">The lane.</param>
/// <param name="Duty">What for.</param>
/// <param name="SignIn">The sign-in that holds it: taps under this seat from anybody else do not count.</param>
/// <param name="Judge">The judge's name.</param>
/// <param name="From">When it was taken.</param>
/// <param name="Until">When it ended; null while it lasts.</param>
public sealed record Seat(SeatId Id, LaneNumber Lane, Duty Duty, string SignIn, string Judge, Instant From, Instant? Until)
{
    /// <summary>Whether the seat was held at the instant, give or take the uncertainty.</summary>
    public bool Covers(Instant instant, int uncertaintyMs) =>
        instant + uncertaintyMs >= From && (Until is not { } end || instant + -uncertaintyMs <= end);
}
