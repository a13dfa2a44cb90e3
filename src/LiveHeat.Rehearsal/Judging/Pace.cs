using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>How long people take: log-normal around what is expected of them, slower as the relay goes on.</summary>
/// <remarks>Spread and tiring are guesses from the floor: common practice, no source.</remarks>
public static class Pace
{
    /// <summary>What the last set takes longer than the first, as a share.</summary>
    public const double Tiring = 0.12;

    private const double SetSpread = 0.08;
    private const double TagSpread = 0.25;
    private const double Margin = 1.15;

    /// <summary>What tiring adds on average over a relay.</summary>
    public static double MeanTiring => 1 + (Tiring / 3);

    /// <summary>One step's duration in milliseconds, never near what nobody can do.</summary>
    /// <param name="step">What is done.</param>
    /// <param name="strength">Of team and athlete: 1 is as expected, more is slower.</param>
    /// <param name="doneShare">How much of the relay is behind them, 0 to 1.</param>
    /// <param name="random">The chance of it.</param>
    public static double Ms(SheetStep step, double strength, double doneShare, Random random)
    {
        var human = step.Kind is StepKind.Tag or StepKind.Finish ? 1 : strength * (1 + (Tiring * doneShare * doneShare));
        var spread = step.Kind is StepKind.Tag or StepKind.Finish ? TagSpread : SetSpread;
        return Math.Max(step.EarliestMs * Margin, step.ExpectedMs * human * Math.Exp(spread * random.NextNormal()));
    }

    /// <summary>A number of the standard normal distribution (Box and Muller).</summary>
    internal static double NextNormal(this Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>Evenly between two bounds.</summary>
    internal static double Between(this Random random, double least, double most) => least + ((most - least) * random.NextDouble());

    /// <summary>True with this probability.</summary>
    internal static bool Chance(this Random random, double probability) => random.NextDouble() < probability;
}
