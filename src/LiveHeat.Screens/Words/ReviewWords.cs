using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine;
using LiveHeat.Engine.Scoring;

namespace LiveHeat.Screens.Words;

/// <summary>The review.</summary>
public static class ReviewWords
{
    private static readonly Wording Words = new(typeof(ReviewWords));

    public static string NotReadBack => Words[nameof(NotReadBack)];
    public static string TimeUnknown => Words[nameof(TimeUnknown)];

    public static string Unsent(int count) => Words.Count(nameof(Unsent), count);

    /// <summary>The place; in brackets while an appeal is open.</summary>
    public static string Place(ResultLane lane) => CommonWords.Place(lane.Place, lane.Tied) is { Length: > 0 } place && lane.Pending ? $"({place})" : CommonWords.Place(lane.Place, lane.Tied);

    public static string Score(ResultLane lane) => lane.Outcome switch
    {
        Outcome.DidNotStart => Words[$"{nameof(Score)}.DidNotStart"],
        Outcome.Disqualified => Words.Say($"{nameof(Score)}.Disqualified", lane.Disqualified),
        Outcome.Finished => TimeWords.Exact(lane.OfficialMs ?? 0),
        Outcome.FinishedTimeUnknown => TimeUnknown,
        Outcome.Stopped => Words.Say($"{nameof(Score)}.Stopped", Work(lane)),
        Outcome.Capped when lane is { RoundsAndReps: null, Score: null, OfficialMs: { } ms } => $"{TimeWords.Exact(ms)} ({Work(lane)})",
        _ => Work(lane),
    };

    /// <summary>Rulings that moved the result, in words.</summary>
    public static string Rulings(ResultLane lane) => string.Join("; ", lane.Penalties.Select(penalty => $"{PartWords.Of(RulingWords.Penalty(penalty.AddMs, penalty.Reps, lane.Score), penalty.Part, Parts(lane))}{(penalty.Reason.Length > 0 ? $" ({penalty.Reason})" : "")}")
        .Concat(lane.Consequences)
        .Concat(lane.NotRanked is { } apart ? [apart] : [])
        .Concat(lane.Appeals.Select(appeal => Appeal(appeal.Member, appeal.Outcome is { } outcome ? PartWords.Of(AppealWords.Outcome(outcome, appeal.AddMs, appeal.Reps, appeal.InHeat, lane.Score), appeal.Part, Parts(lane)) : AppealWords.Open)))
        .Concat(lane.AdjustMs != 0 ? [RulingWords.Adjusted(lane.AdjustMs)] : [])
        .Concat(lane.HeldMs > 0 ? [Held(lane.HeldMs)] : [])
        .Concat(lane.TagFaults > 0 ? [TagsMissed(lane.TagFaults)] : []));

    public static string ReadBack(ResultLane lane) => lane.ReadBack switch
    {
        null => lane.Outcome is Outcome.DidNotStart or Outcome.Disqualified ? "" : HeatDeskWords.NotReadBack,
        { Agreed: true, Name: var name } => $"{HeatDeskWords.Agreed} ({name})",
        { Name: var name } => $"{HeatDeskWords.Disputed} ({name})",
    };

    private static Items<string> Parts(ResultLane lane) => lane.Parts.Select(part => part.Name).ToItems();

    private static string Work(ResultLane lane) => lane switch
    {
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        { Score: { } score } => ScoreWords.Of(lane.Worth, score),
        _ => Share(lane.Worth, lane.WorthOfAll),
    };

    private static string Share(int worth, int all) => Words.Say(nameof(Share), worth, CommonWords.Reps(all));

    private static string Appeal(string member, string outcome) => Words.Say(nameof(Appeal), member, outcome);

    private static string Held(long ms) => Words.Say(nameof(Held), TimeWords.Exact(ms));

    private static string TagsMissed(int count) => Words.Count(nameof(TagsMissed), count);
}
