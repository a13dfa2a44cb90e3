namespace LiveHeat.Engine.Workouts;

/// <summary>What a step asks for.</summary>
public enum StepKind
{
    /// <summary>One movement done through once.</summary>
    Set,

    /// <summary>The hand-over to the next athlete.</summary>
    Tag,

    /// <summary>A value to be entered.</summary>
    Value,

    /// <summary>A line or mat; does not score.</summary>
    Finish,

    /// <summary>One attempt at a load: a good lift or no lift, either ends it.</summary>
    Attempt,
}

/// <summary>What a pad plays, one after another.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Kind">What it asks for.</param>
/// <param name="Round">From 1; 0 before the rounds; null after them.</param>
/// <param name="Leg">From 1; what happens between two tags.</param>
/// <param name="Athlete">Who works: a number in the plan's athletes, from 1; 0 when the team works as one.</param>
/// <param name="To">With a tag: who works next; otherwise 0.</param>
/// <param name="Movement">The movement's name; empty for a tag or finish.</param>
/// <param name="Quantity">In <paramref name="Unit"/>; 0 for a tag, a finish or an attempt.</param>
/// <param name="Unit">What the quantity counts.</param>
/// <param name="Worth">What it adds to the score when done.</param>
/// <param name="Increment">Only whole increments count before it is done.</param>
/// <param name="ExpectedMs">Expected duration, above 0; also the width on the strip.</param>
/// <param name="EarliestMs">Nobody is faster.</param>
/// <param name="Label">As the pad says it: "18 wall balls".</param>
/// <param name="Faults">Named reasons for a no-rep.</param>
public sealed record Step(
    int Number, StepKind Kind, int? Round, int Leg, int Athlete, int To, string Movement, int Quantity, Unit Unit,
    int Worth, int Increment, int ExpectedMs, int EarliestMs, string Label, Items<string> Faults)
{
    /// <summary>The movement's id in the workout: whose standard holds; null where the workout has none.</summary>
    public string? MovementId { get; init; }

    /// <summary>Athletes who do every rep at the same moment as <see cref="Athlete"/>; empty for one alone.</summary>
    public Items<int> With { get; init; }

    /// <summary>The set is a pool that the team shares, each athlete at least so many units; null where it is not.</summary>
    public int? MinimumEach { get; init; }

    /// <summary>Which attempt of this athlete it is, from 1; 0 where it is none.</summary>
    public int Attempt { get; init; }

    /// <summary>All who work at the step: numbers in the plan's athletes; empty when the team works as one.</summary>
    public IEnumerable<int> Workers() => Athlete == 0 ? [] : With.Prepend(Athlete);
}

/// <summary>Steps that are scored apart.</summary>
/// <param name="Name">As announced.</param>
/// <param name="First">Its first step.</param>
/// <param name="Last">Its last step.</param>
public sealed record PlanPart(string Name, int First, int Last)
{
    /// <summary>The step is one of the part's.</summary>
    public bool Has(int step) => step >= First && step <= Last;
}

/// <summary>Ordered steps that one judge follows.</summary>
public sealed record Track(Items<Step> Steps);

/// <summary>A workout, a division and a line-up, compiled for one lane.</summary>
/// <param name="Group">Names the prescription: only lanes of one group are compared.</param>
/// <param name="Division">The division the team is placed in.</param>
/// <param name="DivisionName">Its name.</param>
/// <param name="CapMs">Time cap, milliseconds.</param>
/// <param name="Athletes">Names; steps refer to them by number, from 1.</param>
/// <param name="Tracks">One now; several for waterfall starts and partners at once.</param>
public sealed record RelayPlan(
    string Group, string Division, string DivisionName, int CapMs, Items<string> Athletes, Items<Track> Tracks)
{
    /// <summary>Names in the relay order in force: the line-up as it stood, or as it was changed last.</summary>
    public Items<string> TeamOrder { get; init; } = Athletes;

    /// <summary>The division whose prescription is in force: its own, or the variant taken last.</summary>
    public string PrescribedBy { get; init; } = Division;

    /// <summary>The first step of a variant taken; null when the plan is the division's own. From there on it is compared only with lanes that did the same.</summary>
    public int? VariantFrom { get; init; }

    /// <summary>What makes the lane's result.</summary>
    public ScoringRule Scoring { get; init; } = ScoringRule.Usual;

    /// <summary>What becomes of teams of the same worth.</summary>
    public EqualWork EqualWork { get; init; }

    /// <summary>The step whose end is the tiebreak; null where there is none.</summary>
    public int? TiebreakStep { get; init; }

    /// <summary>Parts that are scored apart; empty where the work is one.</summary>
    public Items<PlanPart> Parts { get; init; }

    /// <summary>The rounds that begin and end by the clock, all steps in one of them; empty where one follows the other.</summary>
    public Items<Window> Windows { get; init; }

    /// <summary>The time until the work's end is the result: a team can finish.</summary>
    public bool Timed => Scoring is ScoringRule.ForTime;

    /// <summary>The work has no end: nobody is through, whatever was laid out.</summary>
    public bool Endless => Scoring is ScoringRule.MostWork;

    /// <summary>The result is what was lifted or read, however fast: teams of the same score share their place.</summary>
    public bool Measured => Scoring is ScoringRule.HeaviestLoad or ScoringRule.MostReading;

    /// <summary>Nobody gets anywhere first, even while the heat goes on: by the clock everybody has the same time, and a load or a reading is no way.</summary>
    public bool NobodyFirst => Measured || Windows.Count > 0;

    /// <summary>What its worth counts.</summary>
    public ScoreUnit Score => Measured && Steps.FirstOrDefault(step => step.Kind is StepKind.Attempt or StepKind.Value) is { } step ? ScoreUnit.Of(step.Unit) : ScoreUnit.Reps;

    /// <summary>The lane's steps: those of its only track.</summary>
    public Items<Step> Steps => Tracks[0].Steps;

    /// <summary>Number of the last step.</summary>
    public int LastStep => Steps.Count;

    /// <summary>The whole relay's expected duration, milliseconds.</summary>
    public long ExpectedMs { get; } = Tracks[0].Steps.Sum(step => (long)step.ExpectedMs);

    /// <summary>Expected time from GO to the end of a step; 0 for step 0.</summary>
    public long ExpectedMsThrough(int step) => throughMs[step];

    /// <summary>The score when all steps up to this one are done; 0 for step 0.</summary>
    public int WorthThrough(int step) => worthThrough[step];

    /// <summary>The step of that number, or null when the plan has none.</summary>
    public Step? Find(int number) => number >= 1 && number <= LastStep ? Steps[number - 1] : null;

    private readonly Items<long> throughMs = Running(Tracks[0].Steps, step => (long)step.ExpectedMs);
    private readonly Items<int> worthThrough = Running(Tracks[0].Steps, step => step.Worth);

    private static Items<T> Running<T>(Items<Step> steps, Func<Step, T> amount)
        where T : System.Numerics.INumber<T>
    {
        var sums = new T[steps.Count + 1];
        for (var i = 0; i < steps.Count; i++)
        {
            sums[i + 1] = sums[i] + amount(steps[i]);
        }

        return sums.ToItems();
    }
}
