using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Paper;

/// <summary>In what a card and a phone differ.</summary>
public enum DifferenceKind
{
    /// <summary>How far the team came: the numbers are the last steps done.</summary>
    Reached,

    /// <summary>When a step was done: milliseconds of heat time, further apart than hands and clocks explain.</summary>
    Time,

    /// <summary>Both have the step done and only the card knows when.</summary>
    TimeMissing,

    /// <summary>A reading.</summary>
    Value,

    /// <summary>How many no-reps a set had.</summary>
    NoReps,

    /// <summary>How much of the open set was done at the cap, or when a round by the clock was over.</summary>
    AtCap,

    /// <summary>The load of an attempt.</summary>
    Load,

    /// <summary>Whether an attempt was a good lift: 1, or no lift: 0.</summary>
    Lift,

    /// <summary>Who did how much of a set that the team shares; the numbers are all that was told.</summary>
    Shares,
}

/// <summary>One thing of which a card and a phone say something else.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Step">The step; with <see cref="DifferenceKind.Reached"/> the first that only one of them has.</param>
/// <param name="Phone">What the phone said; null when it said nothing.</param>
/// <param name="Paper">What the card says.</param>
/// <param name="WithinMs">For times: how far apart they could be and still mean the same.</param>
public sealed record CardDifference(DifferenceKind Kind, int Step, decimal? Phone, decimal Paper, long WithinMs = 0)
{
    /// <summary>With <see cref="DifferenceKind.Shares"/>: what the phone said of each athlete.</summary>
    public Items<Share> PhoneShares { get; init; }

    /// <summary>With <see cref="DifferenceKind.Shares"/>: what the card says of each athlete.</summary>
    public Items<Share> PaperShares { get; init; }
}
