namespace LiveHeat.Engine.Workouts;

/// <summary>What a quantity counts.</summary>
public enum Unit
{
    /// <summary>Repetitions.</summary>
    Reps,

    /// <summary>Calories as a machine shows them.</summary>
    Cal,

    /// <summary>Metres.</summary>
    M,

    /// <summary>Kilograms, for a value that is entered.</summary>
    Kg,

    /// <summary>Pounds, for a value that is entered.</summary>
    Lb,
}

/// <summary>An exercise with its unit, its standard and the named reasons for a no-rep.</summary>
/// <param name="Id">Unique in its workout.</param>
/// <param name="Name">As said on the floor, plural where reps are counted: "wall balls".</param>
/// <param name="Unit">What a quantity of it counts.</param>
/// <param name="SecondsPerUnit">Expected pace, seconds a unit, above 0. A prior for widths and forecasts, never a judgement.</param>
/// <param name="FastestSecondsPerUnit">Nobody is faster: a tap earlier than this allows must be held.</param>
/// <param name="Standard">What a good rep is.</param>
/// <param name="Faults">Named reasons for a no-rep, most common first.</param>
public sealed record Movement(
    string Id, string Name, Unit Unit, double SecondsPerUnit, double FastestSecondsPerUnit, string Standard, Items<string> Faults)
{
    /// <summary>The movement that stands for the hand-over: a workout that has one of this id says by it what a good tag is.</summary>
    public const string TagId = "tag";

    /// <summary>The standard part by part; null where only <see cref="Standard"/> tells it, as in all that was written before there were parts.</summary>
    public Standard? FullStandard { get; init; }
}
