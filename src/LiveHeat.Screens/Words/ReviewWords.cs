using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Scoring;

namespace LiveHeat.Screens.Words;

/// <summary>The review.</summary>
public static class ReviewWords
{
    public const string NotReadBack = "score not read back yet";
    public const string TimeUnknown = "time unknown";

    public static string Unsent(int count) => $"{CommonWords.Count(count, "tap", "taps")} still on the phone";

    /// <summary>The place; in brackets while an appeal is open.</summary>
    public static string Place(ResultLane lane) => CommonWords.Place(lane.Place, lane.Tied) is { Length: > 0 } place && lane.Pending ? $"({place})" : CommonWords.Place(lane.Place, lane.Tied);

    public static string Score(ResultLane lane) => lane.Outcome switch
    {
        Outcome.DidNotStart => "did not start",
        Outcome.Disqualified => $"disqualified ({lane.Disqualified})",
        Outcome.Finished => TimeWords.Exact(lane.OfficialMs ?? 0),
        Outcome.FinishedTimeUnknown => TimeUnknown,
        _ when lane.RoundsAndReps is { } done => $"{(lane.Outcome == Outcome.Stopped ? "stopped, " : "")}{RoundWords.Of(done)}",
        _ when lane.Score is not null => $"{(lane.Outcome == Outcome.Stopped ? "stopped, " : "")}{ScoreWords.Of(lane.Worth, lane.Score)}",
        Outcome.Stopped => $"stopped, {lane.Worth} of {CommonWords.Reps(lane.WorthOfAll)}",
        Outcome.Capped when lane.OfficialMs is { } ms => $"{TimeWords.Exact(ms)} ({lane.Worth} of {CommonWords.Reps(lane.WorthOfAll)})",
        _ => $"{lane.Worth} of {CommonWords.Reps(lane.WorthOfAll)}",
    };

    /// <summary>Rulings that moved the result, in words.</summary>
    public static string Rulings(ResultLane lane) => string.Join("; ", lane.Penalties.Select(penalty => $"{RulingWords.Penalty(penalty.AddMs, penalty.Reps)}{(penalty.Reason.Length > 0 ? $" ({penalty.Reason})" : "")}")
        .Concat(lane.Consequences)
        .Concat(lane.NotRanked is { } apart ? [apart] : [])
        .Concat(lane.Appeals.Select(appeal => $"appeal by {appeal.Member}: {(appeal.Outcome is { } outcome ? AppealWords.Outcome(outcome, appeal.AddMs, appeal.Reps, appeal.InHeat) : AppealWords.Open)}"))
        .Concat(lane.AdjustMs != 0 ? [RulingWords.Adjusted(lane.AdjustMs)] : [])
        .Concat(lane.HeldMs > 0 ? [$"held {TimeWords.Exact(lane.HeldMs)}"] : [])
        .Concat(lane.TagFaults > 0 ? [CommonWords.Count(lane.TagFaults, "tag missed", "tags missed")] : []));

    public static string ReadBack(ResultLane lane) => lane.ReadBack switch
    {
        null => lane.Outcome is Outcome.DidNotStart or Outcome.Disqualified ? "" : HeatDeskWords.NotReadBack,
        { Agreed: true, Name: var name } => $"{HeatDeskWords.Agreed} ({name})",
        { Name: var name } => $"{HeatDeskWords.Disputed} ({name})",
    };
}
