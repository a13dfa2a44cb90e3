using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>A fact, in words.</summary>
public static class FactWords
{
    private static readonly Wording Words = new(typeof(FactWords));

    /// <summary>What happened.</summary>
    /// <param name="fact">The fact.</param>
    /// <param name="lane">The lane it is about, for the names of its steps; null when unknown.</param>
    /// <param name="book">To name the facts it rules on.</param>
    public static string Of(HeatFact fact, LaneView? lane, FactBook book) => fact switch
    {
        HeatFact.Floor floor => Floor(floor, lane, book),
        HeatFact.About about => About(about, lane, book),
        HeatFact.LaneDesk desk => RulingWords.Of(desk, lane),
        HeatFact.FactAdded added => Words.Say($"{nameof(Of)}.Added", Source(added.Source), Floor(added.Tap, lane, book)),
        HeatFact.LanesOverridden over => Words.Say($"{nameof(Of)}.Overridden", CommonWords.Lanes(over.Lanes)),
        HeatFact.NearTieDecided { Tie: true } tie => Words.Say($"{nameof(Of)}.NearTie", CommonWords.Lanes(tie.Lanes)),
        HeatFact.NearTieDecided tie => Words.Say($"{nameof(Of)}.NearTieFirst", CommonWords.Lanes(tie.Lanes), tie.Lanes[0]),
        HeatFact.RerunOrdered rerun => Words.Count($"{nameof(Of)}.Rerun", rerun.Lanes.Count, CommonWords.Lanes(rerun.Lanes)),
        HeatFact.Frozen { Over: { Length: > 0 } over, Missing: null, NoTiebreak: null } => Words.Say($"{nameof(Of)}.FrozenOver", over),
        HeatFact.Frozen { Over: { Length: > 0 } over } frozen => Words.Say($"{nameof(Of)}.FrozenWithout", over, string.Join("; ", Without(frozen))),
        HeatFact.HeatCalled or HeatFact.CallReplaced or HeatFact.StartScheduled or HeatFact.StartObserved or HeatFact.StartRecalled or HeatFact.HeatHalted or HeatFact.HeatResumed
            or HeatFact.CallReturned or HeatFact.HeatEnded or HeatFact.Frozen or HeatFact.Certified or HeatFact.Reopened => Words[$"{nameof(Of)}.{fact.GetType().Name}"],
        _ => fact.GetType().Name,
    };

    private static IEnumerable<string> Without(HeatFact.Frozen frozen)
    {
        foreach (var taps in frozen.Missing ?? [])
        {
            var offset = DateTimeOffset.FromUnixTimeMilliseconds(taps.LastSeen.UnixMs).ToLocalTime().Offset;
            yield return Refusals.TapsOnPhone(taps.Taps, taps.Lane, new Part.TimeOfDay(taps.LastSeen, (int)offset.TotalMinutes, Seconds: true)).Sentence();
        }

        if (frozen.NoTiebreak is { Count: > 0 } lanes)
        {
            yield return Words.Say($"{nameof(Of)}.NoTiebreak", CommonWords.Lanes(lanes));
        }
    }

    /// <summary>Who did it: the desk's names, or the lane's judge.</summary>
    public static string By(HeatFact fact) => fact is HeatFact.Desk desk ? Words.Say(nameof(By), desk.By.Name, CommonWords.Role(desk.By.Role)) : ByPhone;

    /// <summary>Where an added fact was found.</summary>
    public static string Source(Source source) => Words[$"{nameof(Source)}.{source}"];

    private static string ByPhone => Words[nameof(ByPhone)];

    private static string Earlier => Words[nameof(Earlier)];

    private static string Floor(HeatFact.Floor fact, LaneView? lane, FactBook book) => fact switch
    {
        HeatFact.ValueEntered value => Words.Say($"{nameof(Floor)}.Value", Step(lane, value.Step), value.Value),
        HeatFact.AttemptJudged { Good: true } attempt => Words.Say($"{nameof(Floor)}.GoodLift", Step(lane, attempt.Step), Load(lane, attempt)),
        HeatFact.AttemptJudged attempt => With($"{nameof(Floor)}.NoLift", attempt.Fault, Step(lane, attempt.Step), Load(lane, attempt)),
        HeatFact.TagMade tag => Words.Say($"{nameof(Floor)}.Tag{Timeless(tag)}", Step(lane, tag.Step)),
        HeatFact.Done done => Words.Say($"{nameof(Floor)}.Done{Timeless(done)}", Step(lane, done.Step)),
        HeatFact.CountReached count => Words.Say($"{nameof(Floor)}.Count", count.Count, Step(lane, count.Step)),
        HeatFact.NoRep noRep => With($"{nameof(Floor)}.NoRep", noRep.Fault, Step(lane, noRep.Step)),
        HeatFact.TagFault fault => With($"{nameof(Floor)}.TagFault", fault.Fault, Step(lane, fault.Step)),
        HeatFact.AthleteWorking working => Words.Say($"{nameof(Floor)}.Working", lane?.NameOf(working.Athlete) ?? Athlete(working.Athlete), Step(lane, working.Step)),
        HeatFact.RepsAtCap cap => Words.Say($"{nameof(Floor)}.AtCap", cap.Count, Step(lane, cap.Step)),
        HeatFact.FinishTimed => Words[$"{nameof(Floor)}.Finish"],
        HeatFact.LaneStopped stopped => Words[$"{nameof(Floor)}.{stopped.Reason}"],
        HeatFact.Undone undone => Words.Say($"{nameof(Floor)}.Undone", Target(undone.Target, lane, book)),
        HeatFact.HeadJudgeCalled { Note: { Length: > 0 } note } => Words.Say($"{nameof(Floor)}.CalledNote", note),
        HeatFact.HeadJudgeCalled => Words[$"{nameof(Floor)}.Called"],
        HeatFact.ScoreReadBack read => Words.Say(read.Agreed ? $"{nameof(Floor)}.Agreed" : $"{nameof(Floor)}.Disputed", read.Name),
        _ => fact.GetType().Name,
    };

    private static string About(HeatFact.About fact, LaneView? lane, FactBook book)
    {
        var target = Target(fact.Target, lane, book);
        return fact switch
        {
            HeatFact.Voided or HeatFact.Admitted => Words.Say($"{nameof(About)}.{fact.GetType().Name}", target),
            HeatFact.AppealDecided decided => Words.Say($"{nameof(About)}.Decided", PartWords.Of(AppealWords.Outcome(decided.Outcome, decided.AddMs, decided.Reps, decided.InHeat, lane?.Sheet.Score), decided.Part, lane?.Sheet.Parts ?? []), target),
            _ => Words.Say($"{nameof(About)}.Reason", target),
        };
    }

    private static string Target(FactId id, LaneView? lane, FactBook book) =>
        book.Find(id) is { Fact: var fact } && fact is not HeatFact.About ? Of(fact, lane, book) : Earlier;

    private static string Step(LaneView? lane, int step) => lane?.Find(step) is { } found ? found.Label : StepWords.Number(step);

    private static string Load(LaneView? lane, HeatFact.AttemptJudged attempt) => ScoreWords.Load(attempt.Load, lane?.Sheet.Score);

    private static string Athlete(int number) => Words.Say(nameof(Athlete), number);

    private static string Timeless(HeatFact.Done done) => done.TimeKnown ? "" : "Timeless";

    /// <summary>With its fault behind it, where one was named.</summary>
    private static string With(string key, string? fault, params object?[] places) => fault is { Length: > 0 } ? Words.Say($"{key}Fault", [.. places, LibraryTelling.Tell(fault)]) : Words.Say(key, places);
}
