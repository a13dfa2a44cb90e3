using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Rules;

/// <summary>The answer to a command: a fact to append, or why not. A closed family.</summary>
public abstract record Verdict
{
    private Verdict()
    {
    }

    /// <summary>It becomes this fact.</summary>
    public sealed record Accepted(HeatFact Fact) : Verdict;

    /// <summary>It cannot be.</summary>
    /// <param name="Code">Stable, for programs.</param>
    /// <param name="Why">For the person who asked: what, and what to do.</param>
    public sealed record Refused(string Code, Telling Why) : Verdict;
}

/// <summary>Who asks, and what the caller knows that the facts do not.</summary>
/// <param name="By">Who asks.</param>
/// <param name="Lane">The asker's own lane, for a judge.</param>
/// <param name="Now">The server's instant.</param>
/// <param name="NewId">A fresh name for a start or a seat.</param>
/// <param name="Setup">The heat as set up now, for a call; null when the heat is unknown.</param>
/// <param name="Missing">Taps known to be on phones and not here; empty when none.</param>
public sealed record Asking(By By, LaneNumber? Lane, Instant Now, string NewId, HeatSnapshot? Setup, Items<MissingTaps> Missing)
{
    /// <summary>How far the clocks of the venue are ahead of UTC, minutes: for times of day in a refusal.</summary>
    public int VenueOffsetMinutes { get; init; }
}
