using LiveHeat.Contracts.Results;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Frames;

/// <summary>Makes frames from states.</summary>
public static class FrameMaking
{
    /// <summary>The frame of a state.</summary>
    /// <param name="heat">The folded facts.</param>
    /// <param name="placings">The live order of the same state.</param>
    /// <param name="news">The newest news of the heat, newest last.</param>
    /// <param name="epoch">The ledger's id.</param>
    /// <param name="now">The instant it is made at; decides nothing but the phase and who is past the cap.</param>
    public static Frame Of(HeatState heat, Items<Placing> placings, Items<NewsItem> news, string epoch, Instant now)
    {
        var halts = heat.Clock.Halts;
        return new Frame(
            heat.Heat, epoch, heat.Head, heat.SignedHead, now, heat.SheetVersion, heat.Revision, heat.PhaseAt(now),
            heat.Snapshot?.Workout.Prescriptions.Select(prescription => prescription.CapMs).DefaultIfEmpty(0).Max() ?? 0,
            heat.Clock.Start is { } start ? new StartFrame(start.Id, start.GoAt, start.UncertaintyMs, start.Observed) : null,
            heat.Told == Phase.Halted ? halts[^1].From : null,
            halts.Where(halt => halt.Until is not null).Sum(halt => halt.Until!.Value - halt.From),
            heat.EndedAt,
            heat.Signatures.Select(signature => signature.By.Role).ToItems(),
            heat.Lanes.Sum(lane => lane.Quarantined),
            heat.Lanes.Where(lane => lane.Calling).Select(lane => lane.Lane).ToItems(),
            heat.Lanes.Select((lane, i) => Lane(heat, lane, placings[i], now)).ToItems(),
            news,
            NearTies.Of(heat))
        {
            Disagreements = heat.Lanes.SelectMany(lane => lane.Disagreements.Select(both => Both(heat, lane.Lane, both))).ToItems(),
            AppealsUntil = heat.AppealsUntil,
            Pending = heat.Pending,
        };
    }

    private static TwoTimes Both(HeatState heat, LaneNumber lane, Disagreement both) =>
        new(lane, both.Step, Told(heat, both.Judged), Told(heat, both.Seen), 2 * heat.Snapshot!.HandTimingMs);

    private static TimeTold Told(HeatState heat, Split split) => new(split.Fact, heat.Find(split.Fact)?.Fact switch
    {
        HeatFact.FactAdded added => added.By.Name,
        HeatFact.Floor tap => heat.Seats.LastOrDefault(seat => seat.Id == tap.Seat)?.Judge,
        _ => null,
    }, split.LaneMs, split.UncertaintyMs);

    private static LaneFrame Lane(HeatState heat, LaneState lane, Placing placing, Instant now)
    {
        var last = lane.LastSplit();
        var sinceMs = lane.DoneSteps == 0 ? 0L : last is var (step, split) && step == lane.DoneSteps ? split.LaneMs : (long?)null;
        return new LaneFrame(
            lane.Lane, Status(heat, lane, now), lane.DoneSteps + 1, lane.Count == 0 ? null : lane.Count, sinceMs, last?.Split.LaneMs, lane.Worth,
            placing.Place, placing.Tied, placing.GapMs, placing.AheadMs, placing.GapWorth, CapPace.AheadMs(lane),
            lane.Finish?.LaneMs, LiveOrder.OfficialMs(heat, lane),
            lane.Plan.Find(lane.DoneSteps + 1) is null ? 0 : lane.NoReps[lane.DoneSteps], lane.NoReps.Sum(), lane.Owed,
            lane.CapHeatMs, lane.HeldMs, lane.HeldSince,
            lane.Seat?.Judge, lane.Seat?.Id, lane.Ready, lane.ReadBack, lane.PenaltyMs, lane.PenaltyReps,
            lane.Flagged.Aggregate(FactFlags.None, (all, flagged) => all | flagged.Flags), heat.NewestAbout(lane.Lane))
        {
            Score = ScoreWords.UnlessWork(lane.Plan),
            RoundsAndReps = lane.Plan.Endless && lane.Plan.Windows.Count == 0 ? RoundsAndReps.Of(lane.Plan, lane.DoneSteps, LiveOrder.Worth(lane)) : null,
        };
    }

    private static LaneStatus Status(HeatState heat, LaneState lane, Instant now) => HeatResult.OutcomeOf(heat, lane, now) switch
    {
        Outcome.DidNotStart => LaneStatus.Withdrawn,
        Outcome.Disqualified => LaneStatus.Disqualified,
        Outcome.Finished or Outcome.FinishedTimeUnknown => LaneStatus.Finished,
        Outcome.Through => LaneStatus.Through,
        Outcome.Stopped => LaneStatus.Stopped,
        Outcome.Capped => LaneStatus.Capped,
        _ when lane.HeldSince is not null => LaneStatus.Held,
        _ when heat.PhaseAt(now) is Phase.Running or Phase.Halted => LaneStatus.Working,
        _ => lane.Ready ? LaneStatus.Ready : lane.Seat is null ? LaneStatus.Waiting : LaneStatus.Seated,
    };
}
