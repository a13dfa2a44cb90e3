using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>What happened, as an announcer may say it.</summary>
public static class NewsWords
{
    /// <summary>One sentence.</summary>
    public static string Of(NewsItem item, IReadOnlyList<LaneView> lanes)
    {
        var (lane, other) = (lanes.FirstOrDefault(lane => lane.Lane == item.Lane), lanes.FirstOrDefault(lane => lane.Lane == item.Other));
        var (team, passed) = (lane?.Sheet.Name ?? CommonWords.Lane(item.Lane), other?.Sheet.Name ?? "another team");
        return item.Kind switch
        {
            NewsKind.Lead => $"{team} take the lead from {passed}.",
            NewsKind.Overtake => $"{team} go past {passed}.",
            NewsKind.Finish => lane?.State.FinishMs is { } ms ? $"{team} are through: {TimeWords.Exact(lane.State.OfficialMs ?? ms)}, {CommonWords.NotOfficial}." : $"{team} are through.",
            NewsKind.Stopped => $"{team} have stopped.",
            NewsKind.Disqualified => $"{team} are disqualified.",
            _ => Tag(item, lane, team),
        };
    }

    public const string Go = "GO! The heat is on.";

    /// <summary>What a phase means for those who listen; null when there is nothing to say.</summary>
    public static string? Of(Phase phase) => phase switch
    {
        Phase.Called => "Teams are called to their lanes.",
        Phase.Armed => "All lanes are ready.",
        Phase.CountingDown => "The count-down runs.",
        Phase.Halted => "The heat is halted. The clock stands.",
        Phase.Ended => "The heat is over. Times are not official yet.",
        Phase.Frozen => "The result is being checked.",
        Phase.Certified => "The result is official.",
        _ => null,
    };

    private static string Tag(NewsItem item, LaneView? lane, string team) =>
        item.Step is { } number && lane?.Find(number) is { To: { } to } step && lane.NameOf(to) is { Length: > 0 } name
            ? lane.Find(number + 1)?.Round is { } round and > 0 && lane.Rounds > 1
                ? $"{team}: {name} is tagged in, round {round} of {lane.Rounds}."
                : $"{team}: {name} is tagged in after {lane.NameOf(step.Athlete)}."
            : $"{team} make a tag.";
}
