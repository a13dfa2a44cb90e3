using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Announcer;

/// <summary>Sentences about rounds by the clock.</summary>
internal static class RoundCalloutWords
{
    private static readonly Wording Words = new(typeof(Callouts));

    /// <summary>A round ends, rest begins, the next round begins; with whose it is, where other lanes are at work by another clock.</summary>
    public static string Turn(Callout callout, IReadOnlyList<LaneView> lanes, string inTime)
    {
        var (round, rounds) = (callout.Round ?? 0, lanes.FirstOrDefault(lane => lane.Lane == callout.Lanes[0])?.Sheet.Windows?.Count ?? 0);
        var sentence = callout.Kind switch
        {
            CalloutKind.RoundEnds => round == rounds ? Words.Say("round.ends.last", inTime) : Words.Say("round.ends", round, inTime),
            CalloutKind.RestBegins => round + 1 == rounds ? Words.Say("rest.last", round, inTime) : Words.Say("rest", round, round + 1, inTime),
            _ => round == rounds ? Words.Say("round.begins.last", inTime) : Words.Say("round.begins", round, rounds, inTime),
        };
        return Whose(callout, lanes) is { } whose ? Words.Say("of.some", whose, sentence) : sentence;
    }

    /// <summary>Who leads after a round, or who share the lead.</summary>
    public static string Lead(Callout callout, IReadOnlyList<LaneView> lanes)
    {
        var (team, worth) = (Team(lanes, callout.Lanes[0]), Score(callout, lanes, callout.Worth));
        var after = callout.Round == Find(lanes, callout.Lanes[0])?.Sheet.Windows?.Count ? Words["after.round.last"] : Words.Say("after.round", callout.Round);
        return (callout.Lanes.Count > 1 ? callout.Ahead : null) switch
        {
            null => Words.Say("round.lead.alone", after, team, worth),
            0 => Words.Say("round.lead.level", after, team, Team(lanes, callout.Lanes[1]), worth),
            var ahead => Words.Say("round.lead", after, team, worth, Score(callout, lanes, ahead), Team(lanes, callout.Lanes[1])),
        };
    }

    /// <summary>The best round so far, of an athlete where one did all of it.</summary>
    public static string Best(Callout callout, IReadOnlyList<LaneView> lanes)
    {
        var (team, worth, lane) = (Team(lanes, callout.Lanes[0]), Score(callout, lanes, callout.Worth), Find(lanes, callout.Lanes[0]));
        return callout.Step is { } number && lane?.Find(number) is { } step && lane.NameOf(step.Athlete) is { Length: > 0 } name
            ? Words.Say("best.round", team, name, worth, callout.Round) : Words.Say("best.round.team", team, worth, callout.Round);
    }

    /// <summary>A division where all of it and nobody else is meant, else the teams; null where it is everybody at work.</summary>
    private static string? Whose(Callout callout, IReadOnlyList<LaneView> lanes)
    {
        var meant = lanes.Where(lane => callout.Lanes.Contains(lane.Lane)).ToList();
        var others = lanes.Where(lane => lane.State.Status == LaneStatus.Working && !callout.Lanes.Contains(lane.Lane)).ToList();
        return others.Count == 0 ? null
            : meant.Select(lane => lane.Sheet.Division).Distinct().Count() == 1 && others.TrueForAll(lane => lane.Sheet.Division != meant[0].Sheet.Division) ? meant[0].Sheet.DivisionName
            : string.Join(", ", meant.Select(lane => lane.Sheet.Name));
    }

    private static string Score(Callout callout, IReadOnlyList<LaneView> lanes, int? worth) => ScoreWords.Of(worth ?? 0, Find(lanes, callout.Lanes[0])?.Sheet.Score);

    private static LaneView? Find(IReadOnlyList<LaneView> lanes, LaneNumber lane) => lanes.FirstOrDefault(one => one.Lane == lane);

    private static string Team(IReadOnlyList<LaneView> lanes, LaneNumber lane) => Find(lanes, lane)?.Sheet.Name ?? CommonWords.Lane(lane);
}
