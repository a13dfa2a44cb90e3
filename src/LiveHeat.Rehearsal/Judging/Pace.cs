using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Rehearsal.Judging;

/// <summary>How long people take: log-normal around what is expected of them, slower as the relay goes on, and now and then a set goes wrong.</summary>
/// <remarks>Spreads are guesses from the floor: common practice, no source.</remarks>
public static class Pace
{
    private const double SetSpread = 0.13;
    private const double TagSpread = 0.25;
    private const double Stumbles = 0.03;
    private const double Stumble = 1.5;
    private const double Margin = 1.15;

    /// <summary>One step's duration in milliseconds, never near what nobody can do.</summary>
    /// <param name="step">What is done.</param>
    /// <param name="strength">Of team and athlete: 1 is as expected, more is slower.</param>
    /// <param name="tiring">What the last set takes longer than the first, as a share.</param>
    /// <param name="doneShare">How much of the relay is behind them, 0 to 1.</param>
    /// <param name="random">The chance of it.</param>
    public static double Ms(SheetStep step, double strength, double tiring, double doneShare, Random random)
    {
        if (step.Kind is StepKind.Tag or StepKind.Finish)
        {
            return Math.Max(step.EarliestMs * Margin, step.ExpectedMs * Math.Exp(TagSpread * random.NextNormal()));
        }

        var luck = Math.Exp(SetSpread * random.NextNormal()) * (random.Chance(Stumbles) ? Stumble : 1);
        return Math.Max(step.EarliestMs * Margin, step.ExpectedMs * strength * (1 + (tiring * doneShare * doneShare)) * luck);
    }

    /// <summary>A number of the standard normal distribution (Box and Muller).</summary>
    internal static double NextNormal(this Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>Evenly between two bounds.</summary>
    internal static double Between(this Random random, double least, double most) => least + ((most - least) * random.NextDouble());

    /// <summary>True with this probability.</summary>
    internal static bool Chance(this Random random, double probability) => random.NextDouble() < probability;
}
