using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>What a judge's finger can record. Each is stamped and kept at once, network or not; the id can be undone.</summary>
public sealed partial class SimulatedPhone
{
    /// <summary>The open step or the one named is complete, with all before it.</summary>
    public FactId StepDone(int step, bool timeKnown = true) => Record(at => new HeatFact.StepDone { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, TimeKnown = timeKnown });

    public FactId TagMade(int step, bool timeKnown = true) => Record(at => new HeatFact.TagMade { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, TimeKnown = timeKnown });

    public FactId ValueEntered(int step, decimal value) => Record(at => new HeatFact.ValueEntered { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, Value = value });

    public FactId AttemptJudged(int step, decimal load, bool good, string? fault = null) => Record(at => new HeatFact.AttemptJudged
    {
        Id = at.Id,
        Instant = at.Instant,
        Lane = Lane,
        Step = step,
        Load = load,
        Good = good,
        Fault = fault,
    });

    /// <param name="step">The set.</param>
    /// <param name="count">Absolute within the set.</param>
    public FactId CountReached(int step, int count) => Record(at => new HeatFact.CountReached { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, Count = count });

    public FactId NoRep(int step, string? fault = null) => Record(at => new HeatFact.NoRep { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, Fault = fault });

    public FactId TagFault(int step, string? fault = null) => Record(at => new HeatFact.TagFault { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, Fault = fault });

    /// <param name="step">The step.</param>
    /// <param name="athlete">A number in the team, from 1.</param>
    public FactId AthleteWorking(int step, int athlete) => Record(at => new HeatFact.AthleteWorking { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, Athlete = athlete });

    public FactId RepsAtCap(int step, int count) => Record(at => new HeatFact.RepsAtCap { Id = at.Id, Instant = at.Instant, Lane = Lane, Step = step, Count = count });

    public FactId FinishTimed() => Record(at => new HeatFact.FinishTimed { Id = at.Id, Instant = at.Instant, Lane = Lane });

    public FactId LaneStopped(StopReason reason) => Record(at => new HeatFact.LaneStopped { Id = at.Id, Instant = at.Instant, Lane = Lane, Reason = reason });

    public FactId Undo(FactId target) => Record(at => new HeatFact.Undone { Id = at.Id, Instant = at.Instant, Lane = Lane, Target = target });

    public FactId CallHeadJudge(string? note = null) => Record(at => new HeatFact.HeadJudgeCalled { Id = at.Id, Instant = at.Instant, Lane = Lane, Note = note });

    public FactId ReadBack(bool agreed, string captain) => Record(at => new HeatFact.ScoreReadBack { Id = at.Id, Instant = at.Instant, Lane = Lane, Agreed = agreed, Name = captain });

    /// <summary>Keeps a tap as made, for one that no honest phone would send: another lane, step or seat, a wrong instant.</summary>
    /// <param name="make">Gets the id and the moment; what it leaves unset is filled in as for any tap.</param>
    /// <param name="change">The last word on the tap; null: none.</param>
    public FactId Record(Func<(FactId Id, Instant Instant), HeatFact.Floor> make, Func<HeatFact.Floor, HeatFact.Floor>? change = null)
    {
        var (instant, uncertaintyMs, readings) = Clock.Stamp();
        var heat = InHeat.Heat;
        var (start, plan) = (Frame?.Start?.Id, Line?.Plan ?? 1);
        var kept = Outbox.Add(heat, id =>
        {
            var tap = make((id, instant)) with { Seat = Seat ?? new SeatId(""), UncertaintyMs = uncertaintyMs, Start = start, Plan = plan, Phone = readings };
            return change is null ? tap : change(tap);
        });
        changed.Beat();
        return kept.Id;
    }
}
