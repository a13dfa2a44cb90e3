using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Paper;

/// <summary>Compares a lane's paper card with what its phone said. Pure; decides nothing.</summary>
public static class CardDifferences
{
    /// <summary>All differences, by step. A card with nothing on it differs in nothing.</summary>
    public static Items<CardDifference> Of(HeatState heat, LaneNumber number, PaperCard card)
    {
        if (card.IsEmpty || heat.Find(number) is not { } lane)
        {
            return [];
        }

        return CardStretch.Of(lane, card).SelectMany(stretch => Of(heat, lane, card, stretch)).OrderBy(one => one.Step).ThenBy(one => one.Kind).ToItems();
    }

    /// <summary>When the phone has a step done, as the floor's clock showed it; null when it does not know.</summary>
    public static long? PhoneMs(HeatState heat, LaneState lane, int step) =>
        step >= 1 && step <= lane.Splits.Count && lane.Splits[step - 1] is { } split ? heat.Clock.HeatMs(InstantOf(heat, split)) : null;

    /// <summary>What the floor's clock shows, milliseconds of heat time, when the lane has worked so long.</summary>
    public static long HeatMsOf(LaneState lane, long laneMs) => lane.Clock?.HeatMsOf(laneMs) ?? laneMs;

    /// <summary>What is on a lane's record that a phone or an earlier card told: false where all of it is to come from paper.</summary>
    public static bool HasTaps(HeatState heat, LaneNumber lane) => heat.StandingTaps(lane).Any(tap => tap is HeatFact.AtStep or HeatFact.LaneStopped);

    private static IEnumerable<CardDifference> Of(HeatState heat, LaneState lane, PaperCard card, CardStretch stretch)
    {
        var (phone, paper) = (stretch.Phone, stretch.Paper);
        if (phone != paper)
        {
            yield return new CardDifference(DifferenceKind.Reached, Math.Min(phone, paper) + 1, phone, paper);
        }

        foreach (var line in card.Lines.Where(line => stretch.Has(line.Step)))
        {
            var step = lane.Plan.Find(line.Step)!;
            foreach (var difference in line.Step <= Math.Min(phone, paper) ? OfTime(heat, lane, line).Concat(OfEntered(lane, line, step)) : [])
            {
                yield return difference;
            }

            if (line.NoReps is { } noReps && step.Kind == StepKind.Set && lane.NoReps[line.Step - 1] != noReps)
            {
                yield return new CardDifference(DifferenceKind.NoReps, line.Step, lane.NoReps[line.Step - 1], noReps);
            }

            if (line.Shares.Count > 0 && step.MinimumEach is not null && SharesOf(lane, line.Step) is var shares && shares != Told(line.Shares))
            {
                yield return new CardDifference(DifferenceKind.Shares, line.Step, shares.Count == 0 ? null : shares.Sum(share => share.Units), line.Shares.Sum(share => share.Units))
                {
                    PhoneShares = shares,
                    PaperShares = Told(line.Shares),
                };
            }
        }

        // How much of which set is only the same question where both have the same set open.
        if (stretch.PaperCount is { } count && stretch.Has(paper + 1) && lane.Plan.Find(paper + 1) is { Kind: StepKind.Set } && (phone != paper || stretch.PhoneCount != count))
        {
            yield return new CardDifference(DifferenceKind.AtCap, paper + 1, phone == paper ? stretch.PhoneCount : null, count);
        }
    }

    private static IEnumerable<CardDifference> OfTime(HeatState heat, LaneState lane, PaperLine line)
    {
        if (line.Time is not { } time)
        {
            yield break;
        }

        var split = lane.Splits[line.Step - 1];
        var within = time.WithinMs + (split?.UncertaintyMs ?? 0) + (2 * (long)heat.Snapshot!.HandTimingMs);
        if (PhoneMs(heat, lane, line.Step) is not { } phoneMs)
        {
            yield return new CardDifference(DifferenceKind.TimeMissing, line.Step, null, time.HeatMs);
        }
        else if (Math.Abs(phoneMs - time.HeatMs) > within)
        {
            yield return new CardDifference(DifferenceKind.Time, line.Step, phoneMs, time.HeatMs, within);
        }
    }

    /// <summary>Readings and attempts.</summary>
    private static IEnumerable<CardDifference> OfEntered(LaneState lane, PaperLine line, Step step)
    {
        if (line.Value is { } value && step.Kind == StepKind.Value && ValueOf(lane, line.Step) != value)
        {
            yield return new CardDifference(DifferenceKind.Value, line.Step, ValueOf(lane, line.Step), value);
        }

        if (line is not { Load: { } load, Good: { } good } || step.Kind != StepKind.Attempt)
        {
            yield break;
        }

        var tried = AttemptOf(lane, line.Step);
        if (tried?.Load != load)
        {
            yield return new CardDifference(DifferenceKind.Load, line.Step, tried?.Load, load);
        }

        if (tried?.Good != good)
        {
            yield return new CardDifference(DifferenceKind.Lift, line.Step, tried is { } phone ? Number(phone.Good) : null, Number(good));
        }
    }

    private static decimal Number(bool good) => good ? 1 : 0;

    /// <summary>Those who did something, by number.</summary>
    private static Items<Share> Told(IEnumerable<Share> shares) => shares.Where(share => share.Units != 0).OrderBy(share => share.Athlete).ToItems();

    /// <summary>What the phone said of each athlete; where nobody had said who worked, it said nothing of them.</summary>
    private static Items<Share> SharesOf(LaneState lane, int step) => Told(lane.Shares.Where(share => share.Step == step && share.Athlete > 0));

    /// <summary>What the phone said of an attempt; null when nothing.</summary>
    internal static JudgedAttempt? AttemptOf(LaneState lane, int step) => lane.Attempts.Where(attempt => attempt.Step == step).Select(attempt => (JudgedAttempt?)attempt).FirstOrDefault();

    /// <summary>What the phone said of a reading; null when nothing.</summary>
    private static decimal? ValueOf(LaneState lane, int step) => lane.Values.Where(value => value.Step == step).Select(value => (decimal?)value.Value).FirstOrDefault();

    private static Timing.Instant InstantOf(HeatState heat, Split split) => heat.Find(split.Fact)?.Fact switch
    {
        HeatFact.FactAdded added => added.Tap.Instant,
        HeatFact.Floor tap => tap.Instant,
        _ => heat.Clock.InstantOf(split.LaneMs)!.Value,
    };
}
