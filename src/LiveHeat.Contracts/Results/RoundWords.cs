using System.Globalization;
using LiveHeat.Engine.Scoring;

namespace LiveHeat.Contracts.Results;

/// <summary>Rounds and reps in words: "5 rounds + 12 reps".</summary>
public static class RoundWords
{
    /// <summary>The words; reps alone before the first whole round, and no reps where there are none.</summary>
    public static string Of(RoundsAndReps done) => done switch
    {
        { Rounds: 0 } => Count(done.Reps, "rep"),
        { Reps: 0 } => Count(done.Rounds, "round"),
        _ => $"{Count(done.Rounds, "round")} + {Count(done.Reps, "rep")}",
    };

    private static string Count(int count, string one) => string.Create(CultureInfo.InvariantCulture, $"{count} {one}{(count == 1 ? "" : "s")}");
}
