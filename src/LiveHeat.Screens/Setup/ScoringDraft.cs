using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

/// <summary>The ways to score, as a form offers them.</summary>
public enum ScoringKind
{
    /// <summary>For time; who is not through ranks after those who are, by work done.</summary>
    ForTime,

    /// <summary>For time; who is not through has the cap and a second for each rep that is missing.</summary>
    CapPlus,

    /// <summary>As many rounds and reps as possible.</summary>
    MostWork,

    /// <summary>The heaviest load by attempts.</summary>
    HeaviestLoad,

    /// <summary>The most on the machines.</summary>
    MostReading,
}

/// <summary>How a workout is scored, while it is written. What one choice hides is kept for when the mind changes.</summary>
public sealed class ScoringDraft
{
    private bool saidUsual;
    private bool saidEarlier;

    public ScoringKind Kind { get; set; }

    /// <summary>Of each athlete, as typed.</summary>
    public string Attempts { get; set; } = "3";

    public LoadSum LoadSum { get; set; }

    /// <summary>What becomes of teams of the same score.</summary>
    public EqualWork EqualWork { get; set; }

    /// <summary>Somebody can have got there first. By the clock nobody has, whatever is counted.</summary>
    public bool HasEqualWork => Kind is not (ScoringKind.HeaviestLoad or ScoringKind.MostReading);

    /// <summary>There is a number of rounds.</summary>
    public bool HasRounds => Kind is not (ScoringKind.MostWork or ScoringKind.HeaviestLoad);

    /// <summary>There may be work before the rounds.</summary>
    public bool HasBefore => Kind != ScoringKind.HeaviestLoad;

    /// <summary>There may be work after the rounds.</summary>
    public bool HasAfter => HasRounds;

    /// <summary>The rounds may begin and end by the clock.</summary>
    public bool MayFollowClock => Kind is ScoringKind.MostWork or ScoringKind.MostReading;

    /// <summary>There may be a line or a mat at the end.</summary>
    public bool HasFinish => Kind is ScoringKind.ForTime or ScoringKind.CapPlus;

    /// <summary>Reps may be counted.</summary>
    public bool HasCounting => Kind != ScoringKind.HeaviestLoad;

    /// <summary>One that is there.</summary>
    public static ScoringDraft Of(Workout workout)
    {
        var draft = Of(workout.Scoring);
        draft.EqualWork = workout.EqualWork ?? EqualWork.EarlierAhead;
        draft.saidEarlier = workout.EqualWork == EqualWork.EarlierAhead;
        return draft;
    }

    private static ScoringDraft Of(ScoringRule? rule) => rule switch
    {
        ScoringRule.ForTime { Unfinished: Unfinished.CapPlusSeconds } => new() { Kind = ScoringKind.CapPlus },
        ScoringRule.MostWork => new() { Kind = ScoringKind.MostWork },
        ScoringRule.HeaviestLoad load => new() { Kind = ScoringKind.HeaviestLoad, Attempts = WorkoutDraft.Text(load.Attempts), LoadSum = load.LoadSum },
        ScoringRule.MostReading => new() { Kind = ScoringKind.MostReading },
        _ => new() { saidUsual = rule is not null },
    };

    /// <summary>The rule as typed; null where it is the usual one and nobody wrote so.</summary>
    internal ScoringRule? Make(WorkoutDraft workout) => Kind switch
    {
        ScoringKind.CapPlus => new ScoringRule.ForTime(Unfinished.CapPlusSeconds),
        ScoringKind.MostWork => new ScoringRule.MostWork(),
        ScoringKind.HeaviestLoad => new ScoringRule.HeaviestLoad(workout.Number(Attempts, "scoring.attempts"), LoadSum),
        ScoringKind.MostReading => new ScoringRule.MostReading(),
        _ => saidUsual ? ScoringRule.Usual : null,
    };

    /// <summary>What is said of equal work; null where there is no choice, or nobody made one.</summary>
    internal EqualWork? MakeEqualWork(bool byClock) =>
        !HasEqualWork || byClock || (EqualWork == EqualWork.EarlierAhead && !saidEarlier) ? null : EqualWork;
}
