namespace LiveHeat.Engine.Forecasts;

/// <summary>
/// What is believed of the pace of a workout's movements before a heat: factors on the expected durations, as natural logarithms (0: as expected; 0.1: about a tenth
/// slower). Without earlier heats nothing but the movement's own expected pace is known.
/// </summary>
/// <param name="Movements">By prescription and movement: the same movement is another thing where it is prescribed lighter.</param>
public sealed record PacePriors(IReadOnlyDictionary<PaceKey, PacePrior> Movements)
{
    /// <summary>No earlier heat.</summary>
    public static readonly PacePriors None = new(new Dictionary<PaceKey, PacePrior>());

    /// <summary>An expectation typed by a person may be a quarter off either way (assumed; heats correct it soon).</summary>
    private static readonly PacePrior Unknown = new(0, 0.25 * 0.25);

    /// <summary>From one heat to the next of the same workout a movement's factor changes by about this (assumed).</summary>
    private const double BetweenHeats = 0.05 * 0.05;

    /// <summary>From one prescription to another of the same workout it changes by about this (assumed).</summary>
    private const double BetweenPrescriptions = 0.15 * 0.15;

    private readonly Dictionary<string, PacePrior> elsewhere = Movements.GroupBy(pair => pair.Key.Movement)
        .ToDictionary(group => group.Key, group => Together(group.Select(pair => pair.Value), BetweenPrescriptions));

    /// <summary>What is believed of a movement: where its prescription was never done, what the others of the workout say, as far as that goes.</summary>
    public PacePrior Of(string group, string movement) =>
        Movements.TryGetValue(new PaceKey(group, movement), out var own) ? own : elsewhere.GetValueOrDefault(movement, Unknown);

    /// <summary>What earlier heats of the same workout say, each as uncertain as it was.</summary>
    public static PacePriors From(IEnumerable<IReadOnlyDictionary<PaceKey, PacePrior>> heats) => new(
        heats.SelectMany(heat => heat).GroupBy(pair => pair.Key).ToDictionary(group => group.Key, group => Together(group.Select(pair => pair.Value), BetweenHeats)));

    /// <summary>Several that say something of one more, from which each differs by so much by itself.</summary>
    private static PacePrior Together(IEnumerable<PacePrior> several, double apart)
    {
        var (weights, pull) = (1 / Unknown.Variance, 0.0);
        foreach (var one in several)
        {
            weights += 1 / (one.Variance + apart);
            pull += one.Mean / (one.Variance + apart);
        }

        return new PacePrior(pull / weights, (1 / weights) + apart);
    }
}

/// <summary>A movement as one prescription has it.</summary>
/// <param name="Group">Names the prescription, as in the plan.</param>
/// <param name="Movement">The movement; the empty name stands for tags and finish lines.</param>
public readonly record struct PaceKey(string Group, string Movement);

/// <summary>A logarithm of a factor, and how well it is known.</summary>
public readonly record struct PacePrior(double Mean, double Variance);
