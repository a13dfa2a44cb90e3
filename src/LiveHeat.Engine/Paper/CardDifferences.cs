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

        var found = new List<CardDifference>();
        var (phone, paper) = (lane.DoneSteps, Math.Min(card.DoneSteps, lane.Plan.LastStep));
        if (phone != paper)
        {
            found.Add(new CardDifference(DifferenceKind.Reached, Math.Min(phone, paper) + 1, phone, paper));
        }

        foreach (var line in card.Lines.Where(line => lane.Plan.Find(line.Step) is not null))
        {
            found.AddRange(line.Step <= Math.Min(phone, paper) ? OfDone(heat, lane, line) : []);
            if (line.NoReps is { } noReps && lane.Plan.Find(line.Step)!.Kind == StepKind.Set && lane.NoReps[line.Step - 1] != noReps)
            {
                found.Add(new CardDifference(DifferenceKind.NoReps, line.Step, lane.NoReps[line.Step - 1], noReps));
            }
        }

        // How much of which set is only the same question where both have the same set open.
        if (card.AtCap is { } atCap && lane.Plan.Find(paper + 1) is { Kind: StepKind.Set } && (phone != paper || lane.Count != atCap))
        {
            found.Add(new CardDifference(DifferenceKind.AtCap, paper + 1, phone == paper ? lane.Count : null, atCap));
        }

        return found.OrderBy(one => one.Step).ThenBy(one => one.Kind).ToItems();
    }

    /// <summary>When the phone has a step done, as the floor's clock showed it; null when it does not know.</summary>
    public static long? PhoneMs(HeatState heat, LaneState lane, int step) =>
        step >= 1 && step <= lane.Splits.Count && lane.Splits[step - 1] is { } split ? heat.Clock.HeatMs(InstantOf(heat, split)) : null;

    /// <summary>What is on a lane's record that a phone or an earlier card told: false where all of it is to come from paper.</summary>
    public static bool HasTaps(HeatState heat, LaneNumber lane) => heat.StandingTaps(lane).Any(tap => tap is HeatFact.AtStep or HeatFact.LaneStopped);

    private static IEnumerable<CardDifference> OfDone(HeatState heat, LaneState lane, PaperLine line)
    {
        if (line.Time is { } time)
        {
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

        if (line.Value is { } value && lane.Plan.Find(line.Step)!.Kind == StepKind.Value && ValueOf(lane, line.Step) != value)
        {
            yield return new CardDifference(DifferenceKind.Value, line.Step, ValueOf(lane, line.Step), value);
        }
    }

    private static decimal? ValueOf(LaneState lane, int step)
    {
        foreach (var (number, value) in lane.Values)
        {
            if (number == step)
            {
                return value;
            }
        }

        return null;
    }

    private static Timing.Instant InstantOf(HeatState heat, Split split) => heat.Find(split.Fact)?.Fact switch
    {
        HeatFact.FactAdded added => added.Tap.Instant,
        HeatFact.Floor tap => tap.Instant,
        _ => heat.Clock.InstantOf(split.LaneMs)!.Value,
    };
}
