namespace LiveHeat.Engine.Workouts;

/// <summary>What the result of a team is that is not through at its cap, where the work is for time.</summary>
public enum Unfinished
{
    /// <summary>It ranks after those who are through, by worth done.</summary>
    ByWorth,

    /// <summary>It has a time too: its cap and one second for each unit of worth that is missing.</summary>
    CapPlusSeconds,
}

/// <summary>What makes a team's result in a workout. A closed family.</summary>
public abstract record ScoringRule
{
    private ScoringRule()
    {
    }

    /// <summary>What holds where a workout says nothing.</summary>
    public static ScoringRule Usual { get; } = new ForTime(Unfinished.ByWorth);

    /// <summary>The work has an end, and the time until it is the result.</summary>
    /// <param name="Unfinished">What becomes of teams that are not through at their cap.</param>
    public sealed record ForTime(Unfinished Unfinished) : ScoringRule;

    /// <summary>As many rounds and reps as possible: the rounds go on until the cap, nobody is through, and the worth done is the result.</summary>
    public sealed record MostWork : ScoringRule;
}
