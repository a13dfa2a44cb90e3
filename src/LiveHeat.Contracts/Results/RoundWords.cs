using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Scoring;

namespace LiveHeat.Contracts.Results;

/// <summary>Rounds and reps in words: "5 rounds + 12 reps".</summary>
public static class RoundWords
{
    private static readonly Wording Words = new(typeof(RoundWords));

    /// <summary>The words; reps alone before the first whole round, and no reps where there are none.</summary>
    public static string Of(RoundsAndReps done) => done switch
    {
        { Rounds: 0 } => Reps(done.Reps),
        { Reps: 0 } => Rounds(done.Rounds),
        _ => Both(Rounds(done.Rounds), Reps(done.Reps)),
    };

    private static string Rounds(int count) => Words.Count(nameof(Rounds), count);

    private static string Reps(int count) => Words.Count(nameof(Reps), count);

    private static string Both(string rounds, string reps) => Words.Say(nameof(Both), rounds, reps);
}
