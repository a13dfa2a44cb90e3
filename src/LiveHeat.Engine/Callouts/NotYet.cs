using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Why something must not be said yet.</summary>
public enum NotYetWhy
{
    /// <summary>Two finishes are closer than can be measured, and nobody has decided.</summary>
    NearTie,

    /// <summary>A last step is too close to the cap to be measured, and nobody has decided.</summary>
    NearCap,

    /// <summary>A step is too close to the end of its round by the clock to be measured, and nobody has decided.</summary>
    NearRoundEnd,

    /// <summary>The head judge holds the lane.</summary>
    Held,

    /// <summary>The captain does not agree with the score.</summary>
    Disputed,

    /// <summary>Taps of the lane wait for the head judge.</summary>
    TapsWait,

    /// <summary>The judge and a witness have two times for the finish.</summary>
    TwoTimes,

    /// <summary>Through, and somebody still at work may have the better time: a held lane's clock stood, or a penalty was added.</summary>
    MayBeBeaten,
}

/// <summary>A place that nobody may name yet.</summary>
/// <param name="Why">The reason.</param>
/// <param name="Lanes">Whom it is about.</param>
public sealed record NotYet(NotYetWhy Why, Items<LaneNumber> Lanes)
{
    /// <summary>The round by the clock whose end it is about, from 1; null elsewhere.</summary>
    public int? Round { get; init; }
}

/// <summary>Finds what is open.</summary>
public static class OpenQuestions
{
    /// <summary>All that is open at an instant; nothing once the result is signed.</summary>
    public static Items<NotYet> Of(HeatState heat, Instant now)
    {
        if (heat.Told == Phase.Certified)
        {
            return [];
        }

        var ties = NearTies.Of(heat).Where(tie => !tie.Decided).Select(tie => new NotYet(Why(tie), tie.Lanes) { Round = tie.Round });
        return ties.Concat(heat.Lanes.Where(lane => !lane.Withdrawn).SelectMany(lane => About(lane).Select(why => new NotYet(why, [lane.Lane])))).Concat(MayBeBeaten(heat, now)).ToItems();
    }

    private static NotYetWhy Why(NearTie tie) => tie.Round is not null ? NotYetWhy.NearRoundEnd : tie.AtCap ? NotYetWhy.NearCap : NotYetWhy.NearTie;

    private static IEnumerable<NotYetWhy> About(LaneState lane)
    {
        if (lane.HeldSince is not null)
        {
            yield return NotYetWhy.Held;
        }

        if (lane.ReadBack is { Agreed: false })
        {
            yield return NotYetWhy.Disputed;
        }

        if (lane.Quarantined > 0)
        {
            yield return NotYetWhy.TapsWait;
        }

        if (lane.Finished && lane.Disagreements.Any(both => both.Step == lane.Plan.LastStep))
        {
            yield return NotYetWhy.TwoTimes;
        }
    }

    private static IEnumerable<NotYet> MayBeBeaten(HeatState heat, Instant now)
    {
        if (heat.EndedAt is not null || heat.Clock.HeatMs(now) is not { } at)
        {
            yield break;
        }

        foreach (var through in heat.Lanes.Where(lane => lane.Finished && lane.MeasuredMs is not null))
        {
            var others = heat.Lanes.Where(lane => lane.Plan.Group == through.Plan.Group && !lane.Finished && !lane.Withdrawn && lane.Stopped is null && MayBeat(lane, through, at))
                .Select(lane => lane.Lane).ToList();
            if (others.Count > 0)
            {
                yield return new NotYet(NotYetWhy.MayBeBeaten, [through.Lane, .. others]);
            }
        }
    }

    private static bool MayBeat(LaneState lane, LaneState through, long heatMs)
    {
        // A lane whose clock stands cannot be told from one that goes on from here: how long it was held is known when it goes on.
        if (lane.HeldSince is not null || lane.CapHeatMs <= heatMs)
        {
            return lane.HeldSince is not null;
        }

        return heatMs - lane.HeldMs + lane.AdjustMs + lane.PenaltyMs < through.MeasuredMs;
    }
}
