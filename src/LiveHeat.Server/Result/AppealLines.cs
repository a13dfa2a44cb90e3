using System.Globalization;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Server.Result;

/// <summary>Appeals as the result page tells them.</summary>
internal static class AppealLines
{
    /// <summary>"Appeal by Ann about two reps not counted: decided, −5 s: seen on video".</summary>
    /// <param name="appeal">The appeal.</param>
    /// <param name="score">What the score counts; null: reps.</param>
    public static string Of(ResultAppeal appeal, Engine.Workouts.ScoreUnit? score)
    {
        var filed = $"Appeal by {appeal.Member} about {appeal.Grounds}{(appeal.Late is { } why ? $" (after the time for appeals, let in: {why})" : "")}";
        return appeal.Outcome is { } outcome ? $"{filed}: decided, {Came(outcome, appeal, score)}: {appeal.Reason}" : $"{filed}: open, the place is not settled";
    }

    /// <summary>How long appeals may be filed; null while no result is posted.</summary>
    public static string? Window(Instant? until, Instant now, Func<Instant, DateTimeOffset> local) => until is { } end
        ? string.Create(CultureInfo.InvariantCulture, $"Appeals {(now > end ? "were possible" : "may be filed at the desk")} until {local(end):HH:mm}.")
        : null;

    /// <summary>The lanes that are not settled; null when all are.</summary>
    public static string? Pending(ResultTable table)
    {
        var lanes = table.Lanes.Where(lane => lane.Pending).Select(lane => lane.Lane).Order().ToList();
        return lanes.Count == 0 ? null : $"Pending: {(lanes.Count == 1 ? "lane" : "lanes")} {string.Join(", ", lanes)}. An appeal is open; a later revision settles {(lanes.Count == 1 ? "it" : "them")}.";
    }

    private static string Came(AppealOutcome outcome, ResultAppeal appeal, Engine.Workouts.ScoreUnit? score) => outcome switch
    {
        AppealOutcome.Seconds => $"{(appeal.AddMs < 0 ? "−" : "+")}{Seconds(Math.Abs((long)appeal.AddMs))}",
        AppealOutcome.Reps => $"{(appeal.Reps < 0 ? "+" : "−")}{ScoreWords.Of(Math.Abs(appeal.Reps) * (score?.Scale ?? 1), score)}",
        AppealOutcome.Rerun => $"done again in heat {appeal.InHeat}",
        _ => "the result stands",
    };

    private static string Seconds(long ms) => ms < 60_000 ? string.Create(CultureInfo.InvariantCulture, $"{ms / 1000m:0.###} s") : TimeText.Of(ms);
}
