using LiveHeat.Engine.Timing;

namespace LiveHeat.Screens.Clock;

/// <summary>The time by which a heat is drawn: the server's while it is live, the player's while it is played again.</summary>
public interface ISceneClock
{
    /// <summary>The instant that is shown.</summary>
    Instant Now { get; }

    /// <summary>Milliseconds of <see cref="Now"/> a real one; 0 while it stands.</summary>
    double Rate { get; }

    /// <summary>Another number whenever the clock jumped or goes at another speed.</summary>
    int Turn { get; }

    /// <summary>How long ago that is, for somebody who sees it now.</summary>
    TimeSpan Since(Instant at);
}
