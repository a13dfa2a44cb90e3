namespace LiveHeat.Engine.Workouts;

/// <summary>What the result of a team is that is not through at its cap, where the work is for time.</summary>
public enum Unfinished
{
    /// <summary>It ranks after those who are through, by worth done.</summary>
    ByWorth,

    /// <summary>It has a time too: its cap and one second for each unit of worth that is missing.</summary>
    CapPlusSeconds,
}

/// <summary>What a team's score is, where the heaviest load counts.</summary>
public enum LoadSum
{
    /// <summary>The best good load of each athlete, added up.</summary>
    SumOfBest,

    /// <summary>The best good load of any athlete.</summary>
    BestSingle,
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

    /// <summary>The heaviest load: each athlete has so many attempts at it, and the good ones count. Equal loads share the place: common practice, no source.</summary>
    /// <param name="Attempts">Of each athlete, 1 to 10.</param>
    /// <param name="LoadSum">What is made of the athletes' loads.</param>
    public sealed record HeaviestLoad(int Attempts, LoadSum LoadSum) : ScoringRule;

    /// <summary>The most on the machines: the readings that are entered, added up. Their fractions are cut; a set without a reading is worth nothing, unless it says what.</summary>
    public sealed record MostReading : ScoringRule;
}
