using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Callouts;

namespace LiveHeat.Screens.Announcer;

/// <summary>Sentences about results of earlier heats. What may still change says so itself: who reads it out must not have to look for it.</summary>
internal static class ResultCalloutWords
{
    private static readonly Wording Words = new(typeof(Callouts));

    /// <summary>Who won the heat and by how much, or who leads the workout since.</summary>
    public static string Sentence(CalloutKind kind, EarlierResult result)
    {
        var (of, teams, score) = (result.Division is { } division ? Words.Say("result.of", result.Title, division) : result.Title, Lists.And(result.Teams), Score(result));
        var sentence = kind switch
        {
            CalloutKind.WorkoutLead => Words.Say($"workoutlead.{(result.Kept ? "kept" : "new")}.{Numbers.Form(result.Teams.Count)}", of, teams, score),
            _ when result.Teams.Count > 1 => Words.Say("result.shared", of, teams, score),
            _ when Ahead(result) is { } ahead => Words.Say("result.ahead", of, teams, score, ahead, result.Second!),
            _ => Words.Say("result", of, teams, score),
        };
        // A unit may be short for something and bring a full stop of its own.
        sentence = sentence.EndsWith("..", StringComparison.Ordinal) ? sentence[..^1] : sentence;
        return result.Official ? sentence : Words.Say("result.open", sentence);
    }

    private static string Score(EarlierResult result) => result switch
    {
        { Ms: { } ms } => CalloutWords.Time(ms),
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        _ => ScoreWords.Of(result.Worth, result.Score),
    };

    private static string? Ahead(EarlierResult result) => result switch
    {
        { AheadMs: { } ms } => CalloutWords.Time(ms),
        { AheadWorth: { } worth } => ScoreWords.Of(worth, result.Score),
        _ => null,
    };
}
