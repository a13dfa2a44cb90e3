using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Results;

/// <summary>A heat's result as anybody may read it.</summary>
/// <param name="Heat">The heat.</param>
/// <param name="Competition">The competition's name.</param>
/// <param name="Title">The heat's title.</param>
/// <param name="Workout">The workout's name.</param>
/// <param name="Status">provisional, frozen or certified.</param>
/// <param name="Revision">From 1.</param>
/// <param name="Head">The last sequence that is not a signature.</param>
/// <param name="HeadHash">The ledger's hash at its last entry, hex.</param>
/// <param name="Rounding">The rounding rule in force.</param>
/// <param name="Timekeepers">How the times of several timekeepers combine.</param>
/// <param name="HandTimingMs">How wrong a hand may be either way.</param>
/// <param name="RerunOf">The heat that this one repeats; its result counts for these teams.</param>
/// <param name="Signatures">Who signed.</param>
/// <param name="Lanes">By division and place.</param>
public sealed record ResultTable(
    HeatId Heat, string Competition, string Title, string Workout, string Status, int Revision, long Head, string HeadHash, Rounding Rounding,
    Items<ResultSignature> Signatures, Items<ResultLane> Lanes,
    TimekeeperRule Timekeepers = TimekeeperRule.Athletics, int HandTimingMs = HeatSnapshot.UsualHandTimingMs, HeatId? RerunOf = null)
{
    /// <summary>What makes the result.</summary>
    public Engine.Workouts.ScoringRule Scoring { get; init; } = Engine.Workouts.ScoringRule.Usual;

    /// <summary>What became of teams of the same score, where the workout says.</summary>
    public Engine.Workouts.EqualWork? EqualWork { get; init; }
}

/// <summary>A signature.</summary>
public sealed record ResultSignature(string Name, Role Role);

/// <summary>One team's line.</summary>
public sealed record ResultLane(
    LaneNumber Lane, string Name, string Division, string DivisionName, Items<string> Athletes, int? Place, bool Tied, Outcome Outcome,
    long? OfficialMs, int Worth, int WorthOfAll, Items<ResultSplit> Splits, int NoReps, int TagFaults, Items<ResultPenalty> Penalties, int AdjustMs, long HeldMs, ReadBack? ReadBack,
    Items<long> TimekeeperMs = default, string? NearTie = null, HeatId? CountsInHeat = null, string? NotRanked = null)
{
    /// <summary>The worth as rounds and reps; null where the work has an end.</summary>
    public RoundsAndReps? RoundsAndReps { get; init; }

    /// <summary>What the worth counts; null where it is work, in reps.</summary>
    public Engine.Workouts.ScoreUnit? Score { get; init; }

    /// <summary>Attempts at a load, in their order; null where the score is something else.</summary>
    public IReadOnlyList<ResultAttempt>? Attempts { get; init; }

    /// <summary>Why the team is disqualified; null when it is not.</summary>
    public string? Disqualified { get; init; }

    /// <summary>What the workout's consequences came to, a sentence each; those that are a penalty stand among the penalties.</summary>
    public Items<string> Consequences { get; init; }

    /// <summary>Appeals, in the order filed.</summary>
    public Items<ResultAppeal> Appeals { get; init; }

    /// <summary>An appeal is open: the place is not settled, a later revision settles it.</summary>
    public bool Pending => Appeals.Any(appeal => appeal.Outcome is null);

    /// <summary>What the tiebreak is, where there is one: "10 wall balls (round 2)".</summary>
    public string? Tiebreak { get; init; }

    /// <summary>Its official time; null when it is not done or nobody knows.</summary>
    public long? TiebreakMs { get; init; }

    /// <summary>Parts that are scored apart, each with its own place; empty where the work is one.</summary>
    public Items<ResultPart> Parts { get; init; }

    /// <summary>Who did how much of sets that the team shares.</summary>
    public Items<ResultShare> Shares { get; init; }
}

/// <summary>A team's part.</summary>
/// <param name="Name">As announced.</param>
/// <param name="Place">Within the division and this heat; null without one.</param>
/// <param name="Tied">Somebody shares it.</param>
/// <param name="OfficialMs">Null when not through or not known.</param>
/// <param name="Worth">Done within the part.</param>
public sealed record ResultPart(string Name, int? Place, bool Tied, long? OfficialMs, int Worth)
{
    /// <summary>What the worth counts; null: reps.</summary>
    public ScoreUnit? Score { get; init; }
}

/// <summary>An athlete's share of a set.</summary>
/// <param name="Step">The set.</param>
/// <param name="Label">As the pad says it.</param>
/// <param name="Athlete">The name; empty for what was counted before anybody said who worked.</param>
/// <param name="Units">What was counted.</param>
/// <param name="Missing">What is missing to the least that everybody does, once the set is done; else 0.</param>
public sealed record ResultShare(int Step, string Label, string Athlete, int Units, int Missing);

/// <summary>One step's split.</summary>
/// <param name="Step">The step's number.</param>
/// <param name="Label">As the pad says it.</param>
/// <param name="Athlete">Who did it; empty when the team works as one.</param>
/// <param name="Kind">Set, tag, value or finish.</param>
/// <param name="Ms">Lane time; null when not done or unknown.</param>
/// <param name="NoReps">No-reps in it.</param>
public sealed record ResultSplit(int Step, string Label, string Athlete, Engine.Workouts.StepKind Kind, int? Round, long? Ms, int NoReps)
{
    /// <summary>The reading entered; null where none was.</summary>
    public decimal? Value { get; init; }
}

/// <summary>An attempt at a load.</summary>
/// <param name="Step">The step's number.</param>
/// <param name="Athlete">Who tried; empty when the team lifts as one.</param>
/// <param name="Load">In the unit of the score.</param>
/// <param name="Good">A good lift.</param>
/// <param name="Fault">Why it was none; null when nobody said.</param>
public sealed record ResultAttempt(int Step, string Athlete, decimal Load, bool Good, string? Fault);

/// <summary>An appeal and what came of it.</summary>
/// <param name="Fact">The appeal's id.</param>
/// <param name="Member">Who appealed.</param>
/// <param name="Grounds">What about.</param>
/// <param name="FiledAt">When.</param>
/// <param name="Late">Why it was let in after the window; null when it was in time.</param>
/// <param name="Outcome">What came of it; null while it is open.</param>
/// <param name="AddMs">Onto the time; negative helps the team.</param>
/// <param name="Reps">Off the worth; negative helps the team.</param>
/// <param name="InHeat">With a rerun: the heat that counts.</param>
/// <param name="Reason">Why it was decided so; empty while it is open.</param>
public sealed record ResultAppeal(
    FactId Fact, string Member, string Grounds, Instant FiledAt, string? Late, AppealOutcome? Outcome, int AddMs, int Reps, HeatId? InHeat, string Reason)
{
    /// <summary>Of parts that are scored apart the one that was named for it, from 1; 0: only the whole; null where none was.</summary>
    public int? Part { get; init; }
}

/// <summary>A penalty that stands.</summary>
public sealed record ResultPenalty(int AddMs, int Reps, string Reason)
{
    /// <summary>As in <see cref="ResultAppeal.Part"/>.</summary>
    public int? Part { get; init; }
}
