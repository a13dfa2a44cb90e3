using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Callouts;

namespace LiveHeat.Screens.Announcer;

/// <summary>Sentences about results of earlier heats and what they make of the standings. What may still change says so itself: who reads it out must not have to look for it.</summary>
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
        return Told(sentence, result.Official);
    }

    /// <summary>Who leads over the whole competition, with how many points and how many more or fewer than the next.</summary>
    public static string Sentence(OverallLead lead)
    {
        var of = lead.Division is { } division ? Words.Count("overall.division", lead.Workouts, division) : Words.Count("overall.all", lead.Workouts);
        var points = Words.Say($"overall.points.{Numbers.Form(lead.Points)}", Numbers.Of(lead.Points));
        points = lead.Ahead is { } ahead ? Words.Say("overall.ahead", points, Numbers.Of(ahead), lead.Second!) : points;
        var led = lead.Kept switch { null => "now", true => "kept", false => "new" };
        return Told(Words.Say($"overall.{led}.{Numbers.Form(lead.Teams.Count)}", of, Lists.And(lead.Teams), points), lead.Official);
    }

    private static string Told(string sentence, bool official)
    {
        // A unit may be short for something and bring a full stop of its own.
        var told = sentence.EndsWith("..", StringComparison.Ordinal) ? sentence[..^1] : sentence;
        return official ? told : Words.Say("result.open", told);
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
