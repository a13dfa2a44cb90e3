namespace LiveHeat.Engine.Workouts;

/// <summary>What a worth counts: whole numbers, so that scores compare exactly.</summary>
/// <param name="Unit">The unit that people read.</param>
/// <param name="Scale">How many of the worth make one of it, from 1: 1000 for loads, which are told to a hundredth.</param>
public sealed record ScoreUnit(Unit Unit, int Scale)
{
    private const int LoadScale = 1000;

    /// <summary>One amount is worth no more: whatever was typed, a sum of them stays a number.</summary>
    private const int Most = 1_000_000;

    /// <summary>Points of work: as many as reps, unless a set says otherwise.</summary>
    public static ScoreUnit Reps { get; } = new(Unit.Reps, 1);

    /// <summary>The unit with its scale.</summary>
    public static ScoreUnit Of(Unit unit) => unit switch
    {
        Unit.Reps => Reps,
        Unit.Kg or Unit.Lb => new ScoreUnit(unit, LoadScale),
        _ => new ScoreUnit(unit, 1),
    };

    /// <summary>An amount as worth, not negative; what is finer than the scale is cut.</summary>
    public int WorthOf(decimal amount) => (int)(Math.Clamp(amount, 0, Most / Scale) * Scale);
}
