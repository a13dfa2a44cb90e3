using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Results;

/// <summary>Worth in words, in its unit: "327.5 kg", "1,284 m", "312 reps".</summary>
public static class ScoreWords
{
    private static readonly Wording Words = new(typeof(ScoreWords));

    /// <summary>The words; no more decimals than there are.</summary>
    /// <param name="worth">As the engine has it.</param>
    /// <param name="score">What it counts; null: reps.</param>
    public static string Of(int worth, ScoreUnit? score) => Amount(worth / (decimal)(score ?? ScoreUnit.Reps).Scale, score);

    /// <summary>A load as it was told: "102.5 kg".</summary>
    public static string Load(decimal load, ScoreUnit? score) => Amount(load, score);

    /// <summary>For where a unit is written only when something was lifted or read, as before there was such a score.</summary>
    public static ScoreUnit? UnlessWork(RelayPlan plan) => plan.Measured ? plan.Score : null;

    /// <summary>"12 reps".</summary>
    public static string Reps(decimal count) => Words.Say($"{nameof(Reps)}.{Numbers.Form((long)count)}", Numbers.Of(count));

    // The signs of units are the same in all languages.
    private static string Amount(decimal amount, ScoreUnit? score) => score?.Unit switch
    {
        Unit.Kg => $"{Numbers.Of(amount)} kg",
        Unit.Lb => $"{Numbers.Of(amount)} lb",
        Unit.M => $"{Numbers.Of(amount)} m",
        Unit.Cal => $"{Numbers.Of(amount)} cal",
        _ => Reps(amount),
    };
}
