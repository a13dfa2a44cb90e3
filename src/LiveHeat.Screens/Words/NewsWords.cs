using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>What happened, as an announcer may say it.</summary>
public static class NewsWords
{
    private static readonly Wording Words = new(typeof(NewsWords));

    /// <summary>One sentence.</summary>
    public static string Of(NewsItem item, IReadOnlyList<LaneView> lanes)
    {
        var (lane, other) = (lanes.FirstOrDefault(lane => lane.Lane == item.Lane), lanes.FirstOrDefault(lane => lane.Lane == item.Other));
        var (team, passed) = (lane?.Sheet.Name ?? CommonWords.Lane(item.Lane), other?.Sheet.Name ?? Other);
        return item.Kind switch
        {
            NewsKind.Lead or NewsKind.Overtake => Words.Say($"{nameof(Of)}.{item.Kind}", team, passed),
            NewsKind.Finish when lane?.State.FinishMs is { } ms => Words.Say($"{nameof(Of)}.FinishTimed", team, TimeWords.Exact(lane.State.OfficialMs ?? ms)),
            NewsKind.Finish or NewsKind.Stopped or NewsKind.Disqualified => Words.Say($"{nameof(Of)}.{item.Kind}", team),
            _ => Tag(item, lane, team),
        };
    }

    public static string Go => Words[nameof(Go)];

    /// <summary>What a phase means for those who listen; null when there is nothing to say.</summary>
    public static string? Of(Phase phase) => phase is Phase.Planned or Phase.Running ? null : Words[$"{nameof(Of)}.{phase}"];

    private static string Other => Words[nameof(Other)];

    private static string Tag(NewsItem item, LaneView? lane, string team) =>
        item.Step is { } number && lane?.Find(number) is { To: { } to } step && lane.NameOf(to) is { Length: > 0 } name
            ? lane.Find(number + 1)?.Round is { } round and > 0 && lane.Rounds > 1
                ? Words.Say($"{nameof(Tag)}.Round", team, name, round, lane.Rounds)
                : Words.Say($"{nameof(Tag)}.After", team, name, lane.NameOf(step.Athlete))
            : Words.Say($"{nameof(Tag)}.Nobody", team);
}
