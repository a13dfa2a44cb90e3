using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>What the clock of rounds brings: a round that ends, the rest, the next round, and who goes in for it. It rests on no tap, so nothing of it can be too early.</summary>
internal static class FromRounds
{
    /// <summary>The end of a round is told of so long before it, and no earlier than in its last third; milliseconds.</summary>
    private const long EndAhead = 30_000;

    /// <summary>A beginning is counted down for so long.</summary>
    private const long BeginAhead = 10_000;

    /// <summary>Who goes in next is told so long before it in a rest, and where rounds follow each other without one.</summary>
    private const long NextAhead = 60_000, NextAheadAtWork = 15_000;

    public static IEnumerable<Callout> Of(CalloutFloor floor)
    {
        var rounds = floor.Heat.Lanes.Select(lane => RoundNow.Of(lane, floor.Now)).OfType<RoundNow>().ToList();
        // Lanes that were held have a clock of their own, and divisions may have.
        var together = rounds.GroupBy(round => (round.Round, round.EndMs, round.NextMs, Last: round.Next is null)).Select(group => group.ToList());
        return together.SelectMany(lanes => new[] { Ends(floor, lanes), Rest(floor, lanes), Begins(floor, lanes) }).Concat(rounds.Select(round => GoesIn(floor, round))).OfType<Callout>();
    }

    private static Callout? Ends(CalloutFloor floor, List<RoundNow> lanes)
    {
        var first = lanes[0];
        var ahead = Math.Min(EndAhead, (first.Window.UntilMs - first.Window.FromMs) / 3);
        return !lanes.Any(lane => lane.AtWork) || Until(floor, first.EndMs, ahead) is not var (since, due) ? null
            : Make(floor, CalloutKind.RoundEnds, lanes, first.Round, $"{first.EndMs}", since, due);
    }

    private static Callout? Rest(CalloutFloor floor, List<RoundNow> lanes)
    {
        var first = lanes[0];
        return first.NextMs is not { } next || next - first.EndMs <= BeginAhead || Until(floor, next, next - first.EndMs) is not var (since, due) || due - floor.Now <= BeginAhead ? null
            : Make(floor, CalloutKind.RestBegins, lanes, first.Round, $"{first.EndMs}", since, due);
    }

    private static Callout? Begins(CalloutFloor floor, List<RoundNow> lanes)
    {
        var first = lanes[0];
        return first.NextMs is not { } next || Until(floor, next, Math.Min(BeginAhead, next - first.EndMs)) is not var (since, due) ? null
            : Make(floor, CalloutKind.RoundBegins, lanes, first.Round + 1, $"{next}", since, due);
    }

    /// <summary>Another athlete than those of the round that is on.</summary>
    private static Callout? GoesIn(CalloutFloor floor, RoundNow round)
    {
        if (round is not { Next: { } window, NextMs: { } next } || Who(round.Lane, window.First) is not { Count: > 0 } who || Who(round.Lane, round.Window.Last).SequenceEqual(who))
        {
            return null;
        }

        var restMs = next - round.EndMs;
        return Until(floor, next, restMs > 0 ? Math.Min(NextAhead, restMs) : Math.Min(NextAheadAtWork, (round.Window.UntilMs - round.Window.FromMs) / 3)) is not var (since, due) ? null
            : Make(floor, CalloutKind.GoesIn, [round], round.Round + 1, $"{round.Lane.Lane}.{window.First}", since, due, floor.PlaceOf(round.Lane.Lane)) is { } told
                ? told with { Step = window.First } : null;
    }

    private static List<int> Who(LaneState lane, int step) => [.. lane.Plan.Steps[step - 1].Workers()];

    /// <summary>Since when it is told of, and when it is due; null before the one and after the other. In a halt nothing grows old.</summary>
    private static (Instant Since, Instant Due)? Until(CalloutFloor floor, long heatMs, long aheadMs) =>
        heatMs - floor.Heat.Clock.HeatMs(floor.Now) is { } left and > 0 && left < aheadMs && floor.Heat.Clock.InstantOf(heatMs) is { } due ? (due + -aheadMs, due) : null;

    private static Callout? Make(CalloutFloor floor, CalloutKind kind, List<RoundNow> lanes, int round, string what, Instant since, Instant due, int? place = 1) => floor.Weight(kind, place, since) is { } weight
        ? new Callout($"{kind}.{floor.Heat.Clock.Start!.Id}.{round}.{what}".ToLowerInvariant(), kind, weight, since, CalloutGrounds.Clock, lanes.Select(lane => lane.Lane.Lane).ToItems()) { Round = round, Due = due }
        : null;
}
