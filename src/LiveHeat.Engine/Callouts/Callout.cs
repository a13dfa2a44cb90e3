using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>What a callout is about.</summary>
public enum CalloutKind
{
    /// <summary>A team took the lead of its group.</summary>
    Lead,

    /// <summary>A team passed another.</summary>
    Overtake,

    /// <summary>A team may be past the one ahead soon.</summary>
    CatchToCome,

    /// <summary>A tag was made.</summary>
    Tag,

    /// <summary>A tag is about to be made.</summary>
    TagToCome,

    /// <summary>Nobody did this set faster.</summary>
    FastestSet,

    /// <summary>Nobody did this leg, from tag to tag, faster.</summary>
    FastestLeg,

    /// <summary>A team may or may not beat the cap.</summary>
    CapInDoubt,

    /// <summary>A team finished.</summary>
    Finish,

    /// <summary>The last minute before the cap.</summary>
    LastMinute,

    /// <summary>A team stopped for good.</summary>
    Stopped,

    /// <summary>Two teams may each get the same place.</summary>
    CloseRace,

    /// <summary>A round by the clock is about to end.</summary>
    RoundEnds,

    /// <summary>A round by the clock is over, and nobody works until the next.</summary>
    RestBegins,

    /// <summary>A round by the clock is about to begin.</summary>
    RoundBegins,

    /// <summary>Another athlete of a team goes in for the next round by the clock.</summary>
    GoesIn,

    /// <summary>A team leads after a round by the clock, or two share the lead.</summary>
    RoundLead,

    /// <summary>Nobody has done more in a round by the clock.</summary>
    BestRound,

    /// <summary>The result of an earlier heat of the same workout was posted or signed.</summary>
    HeatResult,

    /// <summary>Who leads the workout since that result came in.</summary>
    WorkoutLead,

    /// <summary>Who leads over the whole competition since a result was posted or signed.</summary>
    OverallLead,
}

/// <summary>What a callout rests on.</summary>
public enum CalloutGrounds
{
    /// <summary>Facts: it has happened.</summary>
    Confirmed,

    /// <summary>The pace of this heat and of earlier ones: an estimate.</summary>
    Pace,

    /// <summary>The clock alone.</summary>
    Clock,
}

/// <summary>Something worth saying.</summary>
/// <param name="Id">The same for the same thing, however often it is told: what was said once is not said again.</param>
/// <param name="Kind">What about.</param>
/// <param name="Weight">How much it is worth saying now, 0 to 100; see <see cref="CalloutWeight"/>.</param>
/// <param name="At">When the newest fact behind it happened.</param>
/// <param name="Grounds">What it rests on.</param>
/// <param name="Lanes">Whom it is about: first who acts, then whom it is done to.</param>
public sealed record Callout(string Id, CalloutKind Kind, int Weight, Instant At, CalloutGrounds Grounds, Items<LaneNumber> Lanes)
{
    /// <summary>The step done or to be done; null when there is none.</summary>
    public int? Step { get; init; }

    /// <summary>The place taken, or raced for; null where no place may be named.</summary>
    public int? Place { get; init; }

    /// <summary>A time of the past, milliseconds: of a finish, of a set or leg; null when there is none or it is unknown.</summary>
    public long? Ms { get; init; }

    /// <summary>When it is expected; null for what has happened.</summary>
    public Instant? Due { get; init; }

    /// <summary>How likely, 0 to 1; null for what has happened.</summary>
    public double? Chance { get; init; }

    /// <summary>The round by the clock, from 1; null when it is about none.</summary>
    public int? Round { get; init; }

    /// <summary>What was done, in the score of the workout; null when it is about none.</summary>
    public int? Worth { get; init; }

    /// <summary>How much more that is than the second lane has; null where nobody can tell.</summary>
    public int? Ahead { get; init; }

    /// <summary>What it is about where that is an earlier heat's result; null elsewhere. The lanes are empty then: they would be another heat's.</summary>
    public EarlierResult? Earlier { get; init; }

    /// <summary>Who leads over the whole competition where it is about that; null elsewhere. The lanes are empty then.</summary>
    public OverallLead? Overall { get; init; }

    /// <summary>Faster than in all earlier heats too.</summary>
    public bool OfDay { get; init; }

    /// <summary>Too old to be said, by the instant alone: a heat's own time stands still after its end and in a halt, and news grows old all the same.</summary>
    public bool IsStale(Instant now) => now - At > CalloutWeight.Of(Kind).LifeMs;
}

/// <summary>What is worth saying at one instant, and what must not be said.</summary>
/// <param name="Callouts">The next thing worth saying first.</param>
/// <param name="NotYet">What is still open.</param>
public sealed record CalloutSheet(Items<Callout> Callouts, Items<NotYet> NotYet)
{
    /// <summary>Nothing to say.</summary>
    public static CalloutSheet Empty { get; } = new([], []);
}
