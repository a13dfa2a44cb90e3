namespace LiveHeat.Engine.Workouts;

/// <summary>How a heat counts: so that no judge counts finer than another, it belongs to the workout.</summary>
public enum Counting
{
    /// <summary>Only whole sets are reported while the heat runs.</summary>
    Sets,

    /// <summary>Reps are reported at checkpoints within a set.</summary>
    Reps,
}

/// <summary>A last step that does not score.</summary>
public enum FinishKind
{
    /// <summary>The last set ends the work.</summary>
    None,

    /// <summary>Across a line.</summary>
    Line,

    /// <summary>All on a mat.</summary>
    Mat,
}

/// <summary>What is to be done: for each division a prescription; one relay order; one way of counting.</summary>
/// <param name="Id">Unique in the competition.</param>
/// <param name="Name">As announced.</param>
/// <param name="Order">Who does what.</param>
/// <param name="Counting">How it is counted while it runs.</param>
/// <param name="CheckpointEvery">With <see cref="Counting.Reps"/>: a report every so many units, from 1.</param>
/// <param name="Finish">A finish line or mat after the work.</param>
/// <param name="Movements">All that the prescriptions use.</param>
/// <param name="Prescriptions">One a division.</param>
public sealed record Workout(
    string Id, string Name, RelayOrder Order, Counting Counting, int CheckpointEvery, FinishKind Finish,
    Items<Movement> Movements, Items<Prescription> Prescriptions)
{
    /// <summary>What makes a result; null, as in all that was written before there was a choice, is <see cref="ScoringRule.Usual"/>.</summary>
    public ScoringRule? Scoring { get; init; }

    /// <summary>What becomes of teams of the same score; null, as before there was a choice: <see cref="Workouts.EqualWork.EarlierAhead"/>, and of loads, readings and rounds by the clock <see cref="Workouts.EqualWork.Shared"/>.</summary>
    public EqualWork? EqualWork { get; init; }

    /// <summary>What an offence costs; null: the head judge says each time.</summary>
    public PenaltyRule? Penalty { get; init; }

    /// <summary>What follows from departures; null, as before there was a choice: nothing, and who takes a variant has no place.</summary>
    public Consequences? Consequences { get; init; }
}

/// <summary>A division's amount of the work.</summary>
/// <param name="Division">The division's id.</param>
/// <param name="DivisionName">Its name.</param>
/// <param name="CapMs">Time cap in heat time, milliseconds, above 0.</param>
/// <param name="Rounds">How many rounds, from 0.</param>
/// <param name="Before">Sets before the rounds, by the first athlete.</param>
/// <param name="Round">The sets of one round.</param>
/// <param name="After">Sets after the rounds, by whoever did the last round.</param>
public sealed record Prescription(
    string Division, string DivisionName, int CapMs, int Rounds,
    Items<PrescribedSet> Before, Items<PrescribedSet> Round, Items<PrescribedSet> After)
{
    /// <summary>The set whose end decides between teams of the same worth; null where none does.</summary>
    public TiebreakSet? Tiebreak { get; init; }

    /// <summary>The rounds begin and end by the clock; null where one follows the other.</summary>
    public WorkClock? Clock { get; init; }

    /// <summary>Parts that are scored apart, in order; empty where the work is one.</summary>
    public Items<WorkoutPart>? Parts { get; init; }

    /// <summary>What is done in a round: all of its sets, and by the clock those that are not another round's.</summary>
    /// <param name="round">From 1.</param>
    public Items<PrescribedSet> SetsIn(int round) => Round.Where(set => set.InRound is null || set.InRound == round).ToItems();
}

/// <summary>A part of the work with places of its own. It begins where the part before ends.</summary>
/// <param name="Name">As announced: "first buy-in".</param>
/// <param name="Last">The set that it ends with, of rounds by the clock the last of a round; null for the last part, which goes to the end of the work.</param>
public sealed record WorkoutPart(string Name, TiebreakSet? Last);

/// <summary>A set named by its place: the time at its end is a tiebreak, or a part ends with it.</summary>
/// <param name="Round">From 1; 0 before the rounds; null after them.</param>
/// <param name="Set">Its number in the round, or in the work before or after, from 1.</param>
public sealed record TiebreakSet(int? Round, int Set);

/// <summary>One movement to be done through once.</summary>
/// <param name="Movement">Its id in the workout.</param>
/// <param name="Quantity">In the movement's unit, from 1.</param>
/// <param name="Worth">What the whole set adds to the score; null: its quantity. A 400 m run is not 400 reps.</param>
/// <param name="Increment">Only whole increments count before the set is done, from 1: a carry may count in fives.</param>
/// <param name="Load">As announced: "6 kg"; null when there is none.</param>
/// <param name="Reading">True when the step is completed by entering a machine's or a bar's value.</param>
public sealed record PrescribedSet(
    string Movement, int Quantity, int? Worth = null, int Increment = 1, string? Load = null, bool Reading = false)
{
    /// <summary>Synchronised: so many athletes do every rep at the same moment, from 2. Whose turn it is and the next in the team's order; null: one alone.</summary>
    public int? Together { get; init; }

    /// <summary>A pool that the team shares as it likes, each athlete at least so many units, from 0; null: the one whose turn it is does it all.</summary>
    public int? MinimumEach { get; init; }

    /// <summary>Of rounds by the clock: done in this one only, from 1; null: in every one.</summary>
    public int? InRound { get; init; }
}
