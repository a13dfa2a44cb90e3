using System.Globalization;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Results;

/// <summary>Worth in words, in its unit: "327.5 kg", "1,284 m", "312 reps".</summary>
public static class ScoreWords
{
    /// <summary>The words; no more decimals than there are.</summary>
    /// <param name="worth">As the engine has it.</param>
    /// <param name="score">What it counts; null: reps.</param>
    public static string Of(int worth, ScoreUnit? score) =>
        string.Create(CultureInfo.InvariantCulture, $"{worth / (decimal)(score ?? ScoreUnit.Reps).Scale:#,0.##} {Unit(score, worth)}");

    /// <summary>A load as it was told: "102.5 kg".</summary>
    public static string Load(decimal load, ScoreUnit? score) => string.Create(CultureInfo.InvariantCulture, $"{load:#,0.##} {Unit(score, 0)}");

    /// <summary>For where a unit is written only when something was lifted or read, as before there was such a score.</summary>
    public static ScoreUnit? UnlessWork(RelayPlan plan) => plan.Measured ? plan.Score : null;

    private static string Unit(ScoreUnit? score, int worth) => score?.Unit switch
    {
        Engine.Workouts.Unit.Kg => "kg",
        Engine.Workouts.Unit.Lb => "lb",
        Engine.Workouts.Unit.M => "m",
        Engine.Workouts.Unit.Cal => "cal",
        _ => worth == 1 ? "rep" : "reps",
    };
}
