using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Server.Result;

/// <summary>Appeals as the result page tells them.</summary>
internal static class AppealLines
{
    private static readonly Wording Words = new(typeof(AppealLines));

    /// <summary>"Appeal by Ann about two reps not counted: decided, −5 s: seen on video".</summary>
    /// <param name="appeal">The appeal.</param>
    /// <param name="lane">Whose it is.</param>
    public static string Of(ResultAppeal appeal, ResultLane lane)
    {
        var filed = appeal.Late is { } why ? FiledLate(appeal, why) : Filed(appeal);
        return appeal.Outcome is { } outcome ? Decided(filed, PartWords.Of(Came(outcome, appeal, lane.Score), appeal.Part, lane.Parts.Select(part => part.Name).ToItems()), appeal.Reason) : Open(filed);
    }

    /// <summary>How long appeals may be filed; null while no result is posted.</summary>
    public static string? Window(Instant? until, Instant now, Func<Instant, DateTimeOffset> local) =>
        until is { } end ? now > end ? WindowOver(local(end)) : WindowOpen(local(end)) : null;

    /// <summary>The lanes that are not settled; null when all are.</summary>
    public static string? Pending(ResultTable table)
    {
        var lanes = table.Lanes.Where(lane => lane.Pending).Select(lane => lane.Lane).Order().ToList();
        return lanes.Count == 0 ? null : PendingLanes(lanes);
    }

    private static string Came(AppealOutcome outcome, ResultAppeal appeal, Engine.Workouts.ScoreUnit? score) => outcome switch
    {
        AppealOutcome.Seconds => $"{(appeal.AddMs < 0 ? "−" : "+")}{Seconds(Math.Abs((long)appeal.AddMs))}",
        AppealOutcome.Reps => $"{(appeal.Reps < 0 ? "+" : "−")}{ScoreWords.Of(Math.Abs(appeal.Reps) * (score?.Scale ?? 1), score)}",
        AppealOutcome.Rerun => Rerun(appeal.InHeat),
        _ => Stands,
    };

    private static string Seconds(long ms) => ms < 60_000 ? $"{(ms / 1000m).ToString("0.###", Numbers.Format)} s" : Numbers.Time(ms);

    private static string Stands => Words[nameof(Stands)];

    private static string Filed(ResultAppeal appeal) => Words.Say(nameof(Filed), appeal.Member, appeal.Grounds);

    private static string FiledLate(ResultAppeal appeal, string why) => Words.Say(nameof(FiledLate), appeal.Member, appeal.Grounds, why);

    private static string Open(string filed) => Words.Say(nameof(Open), filed);

    private static string Decided(string filed, string came, string reason) => Words.Say(nameof(Decided), filed, came, reason);

    private static string WindowOpen(DateTimeOffset until) => Words.Say(nameof(WindowOpen), Clock(until));

    private static string WindowOver(DateTimeOffset until) => Words.Say(nameof(WindowOver), Clock(until));

    private static string PendingLanes(List<LaneNumber> lanes) => Words.Count(nameof(PendingLanes), lanes.Count, string.Join(", ", lanes));

    private static string Rerun(HeatId? heat) => Words.Say(nameof(Rerun), heat);

    private static string Clock(DateTimeOffset at) => at.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
