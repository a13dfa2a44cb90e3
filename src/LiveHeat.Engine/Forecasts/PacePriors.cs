namespace LiveHeat.Engine.Forecasts;

/// <summary>
/// What is believed of the pace of a workout's movements before a heat: factors on the expected durations, as natural logarithms (0: as expected; 0.1: about a tenth
/// slower). Without earlier heats nothing but the movement's own expected pace is known.
/// </summary>
/// <param name="Movements">By movement; the empty name stands for tags and finish lines.</param>
public sealed record PacePriors(IReadOnlyDictionary<string, PacePrior> Movements)
{
    /// <summary>No earlier heat.</summary>
    public static readonly PacePriors None = new(new Dictionary<string, PacePrior>());

    /// <summary>An expectation typed by a person may be a quarter off either way (assumed; heats correct it soon).</summary>
    private static readonly PacePrior Unknown = new(0, 0.25 * 0.25);

    /// <summary>From one heat to the next of the same workout a movement's factor changes by about this (assumed).</summary>
    private const double BetweenHeats = 0.05 * 0.05;

    /// <summary>What is believed of a movement.</summary>
    public PacePrior Of(string movement) => Movements.GetValueOrDefault(movement, Unknown);

    /// <summary>What earlier heats of the same workout say, each as uncertain as it was.</summary>
    public static PacePriors From(IEnumerable<IReadOnlyDictionary<string, PacePrior>> heats) => new(heats.SelectMany(heat => heat).GroupBy(pair => pair.Key).ToDictionary(
        group => group.Key,
        group =>
        {
            var weights = group.Sum(pair => 1 / (pair.Value.Variance + BetweenHeats)) + (1 / Unknown.Variance);
            return new PacePrior(group.Sum(pair => pair.Value.Mean / (pair.Value.Variance + BetweenHeats)) / weights, (1 / weights) + BetweenHeats);
        }));
}

/// <summary>A logarithm of a factor, and how well it is known.</summary>
public readonly record struct PacePrior(double Mean, double Variance);
