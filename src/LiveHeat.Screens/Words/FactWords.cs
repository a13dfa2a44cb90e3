using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>A fact, in words.</summary>
public static class FactWords
{
    /// <summary>What happened.</summary>
    /// <param name="fact">The fact.</param>
    /// <param name="lane">The lane it is about, for the names of its steps; null when unknown.</param>
    /// <param name="book">To name the facts it rules on.</param>
    public static string Of(HeatFact fact, LaneView? lane, FactBook book) => fact switch
    {
        HeatFact.Floor floor => Floor(floor, lane, book),
        HeatFact.About about => About(about, lane, book),
        HeatFact.LaneDesk desk => RulingWords.Of(desk, lane),
        HeatFact.FactAdded added => $"added from {Source(added.Source)}: {Floor(added.Tap, lane, book)}",
        HeatFact.LanesOverridden over => $"{CommonWords.Lanes(over.Lanes)} counted as ready",
        HeatFact.NearTieDecided tie => $"{CommonWords.Lanes(tie.Lanes)} {(tie.Tie ? "decided as a tie" : $"decided: lane {tie.Lanes[0]} first")}",
        HeatFact.RerunOrdered rerun => $"{CommonWords.Lanes(rerun.Lanes)} {(rerun.Lanes.Count == 1 ? "does" : "do")} the work again in another heat",
        HeatFact.HeatCalled => "heat called",
        HeatFact.CallReplaced => "call replaced",
        HeatFact.StartScheduled => "GO given",
        HeatFact.StartObserved => "start noted: the horn went without us",
        HeatFact.StartRecalled => "start recalled",
        HeatFact.HeatHalted => "heat halted",
        HeatFact.HeatResumed => "heat resumed",
        HeatFact.CallReturned => "heat back to called, with a new start to come",
        HeatFact.HeatEnded => "heat ended",
        HeatFact.Frozen frozen => frozen.Over is { Length: > 0 } over ? $"frozen over missing taps: {over}" : "frozen",
        HeatFact.Certified => "signed",
        HeatFact.Reopened => "reopened",
        _ => fact.GetType().Name,
    };

    /// <summary>Who did it: the desk's names, or the lane's judge.</summary>
    public static string By(HeatFact fact) => fact is HeatFact.Desk desk
        ? $"{desk.By.Name}, {CommonWords.Role(desk.By.Role)}" : "phone";

    /// <summary>Where an added fact was found.</summary>
    public static string Source(Source source) => source == Engine.Heats.Source.Paper ? "paper" : "video";

    private static string Floor(HeatFact.Floor fact, LaneView? lane, FactBook book) => fact switch
    {
        HeatFact.ValueEntered value => $"{Step(lane, value.Step)}: {value.Value}",
        HeatFact.AttemptJudged { Good: true } attempt => $"{Step(lane, attempt.Step)}: {Load(lane, attempt)}, good lift",
        HeatFact.AttemptJudged attempt => $"{Step(lane, attempt.Step)}: {Load(lane, attempt)}, no lift{Fault(attempt.Fault)}",
        HeatFact.TagMade tag => $"{Step(lane, tag.Step)} made{TimeUnknown(tag)}",
        HeatFact.Done done => $"{Step(lane, done.Step)} done{TimeUnknown(done)}",
        HeatFact.CountReached count => $"{count.Count} of {Step(lane, count.Step)}",
        HeatFact.NoRep noRep => $"no-rep in {Step(lane, noRep.Step)}{Fault(noRep.Fault)}",
        HeatFact.TagFault fault => $"tag missed: {Step(lane, fault.Step)}{Fault(fault.Fault)}",
        HeatFact.AthleteWorking working => $"{lane?.NameOf(working.Athlete) ?? $"athlete {working.Athlete}"} works, from {Step(lane, working.Step)}",
        HeatFact.RepsAtCap cap => $"{cap.Count} of {Step(lane, cap.Step)} at the time cap",
        HeatFact.FinishTimed => "finish, by the timekeeper",
        HeatFact.LaneStopped stopped => stopped.Reason == StopReason.Medical ? "stopped for health" : "team withdrew",
        HeatFact.Undone undone => $"took back: {Target(undone.Target, lane, book)}",
        HeatFact.HeadJudgeCalled called => called.Note is { Length: > 0 } note ? $"called the head judge: {note}" : "called the head judge",
        HeatFact.ScoreReadBack read => $"score read back: {(read.Agreed ? "agreed" : "disputed")} by {read.Name}",
        _ => fact.GetType().Name,
    };

    private static string About(HeatFact.About fact, LaneView? lane, FactBook book)
    {
        var target = Target(fact.Target, lane, book);
        return fact switch
        {
            HeatFact.Voided => $"voided: {target}",
            HeatFact.Admitted => $"let count: {target}",
            HeatFact.AppealDecided decided => $"decided, {AppealWords.Outcome(decided.Outcome, decided.AddMs, decided.Reps, decided.InHeat)}: {target}",
            _ => $"reason given for: {target}",
        };
    }

    private static string Target(FactId id, LaneView? lane, FactBook book) =>
        book.Find(id) is { Fact: var fact } && fact is not HeatFact.About ? Of(fact, lane, book) : "an earlier ruling";

    private static string Step(LaneView? lane, int step) => lane?.Find(step)?.Label ?? $"step {step}";

    private static string Load(LaneView? lane, HeatFact.AttemptJudged attempt) => ScoreWords.Load(attempt.Load, lane?.Sheet.Score);

    private static string TimeUnknown(HeatFact.Done done) => done.TimeKnown ? "" : ", time unknown";

    private static string Fault(string? fault) => fault is { Length: > 0 } ? $": {fault}" : "";
}
