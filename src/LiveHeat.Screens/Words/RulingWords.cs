using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Rulings: as they stand in the list, and on the forms that make them.</summary>
public static class RulingWords
{
    private static readonly Wording Words = new(typeof(RulingWords));

    public static string Title => Words[nameof(Title)];
    public static string Certified => Words[nameof(Certified)];
    public static string AnswerCall => Words[nameof(AnswerCall)];
    public static string Calls => Words[nameof(Calls)];
    public static string HeldTaps => Words[nameof(HeldTaps)];
    public static string HeldHelp => Words[nameof(HeldHelp)];
    public static string Admit => Words[nameof(Admit)];
    public static string Void => Words[nameof(Void)];
    public static string VoidHelp => Words[nameof(VoidHelp)];
    public static string GiveReason => Words[nameof(GiveReason)];
    public static string SendBack => Words[nameof(SendBack)];
    public static string SendBackHelp => Words[nameof(SendBackHelp)];
    public static string SendBackTo => Words[nameof(SendBackTo)];
    public static string OweReps => Words[nameof(OweReps)];
    public static string OweHelp => Words[nameof(OweHelp)];
    public static string OweIn => Words[nameof(OweIn)];
    public static string OweHowMany => Words[nameof(OweHowMany)];
    public static string Hold => Words[nameof(Hold)];
    public static string HoldHelp => Words[nameof(HoldHelp)];
    public static string MovesCap => Words[nameof(MovesCap)];
    public static string Resume => Words[nameof(Resume)];
    public static string Adjust => Words[nameof(Adjust)];
    public static string AdjustHelp => Words[nameof(AdjustHelp)];
    public static string AdjustBy => Words[nameof(AdjustBy)];
    public static string Helps => Words[nameof(Helps)];
    public static string Hurts => Words[nameof(Hurts)];
    public static string Penalise => Words[nameof(Penalise)];
    public static string PenaliseHelp => Words[nameof(PenaliseHelp)];
    public static string CountsIn => Words[nameof(CountsIn)];
    public static string PartNow => Words[nameof(PartNow)];
    public static string OnlyWhole => Words[nameof(OnlyWhole)];
    public static string AddTime => Words[nameof(AddTime)];
    public static string TakeReps => Words[nameof(TakeReps)];
    public static string NotWarned => Words[nameof(NotWarned)];
    public static string WarnFirst => Words[nameof(WarnFirst)];
    public static string Warn => Words[nameof(Warn)];
    public static string WarnHelp => Words[nameof(WarnHelp)];
    public static string LineUp => Words[nameof(LineUp)];
    public static string LineUpHelp => Words[nameof(LineUpHelp)];
    public static string FromStep => Words[nameof(FromStep)];
    public static string Athletes => Words[nameof(Athletes)];
    public static string Variant => Words[nameof(Variant)];
    public static string VariantHelp => Words[nameof(VariantHelp)];
    public static string VariantOf => Words[nameof(VariantOf)];
    public static string Rerun => Words[nameof(Rerun)];
    public static string RerunHelp => Words[nameof(RerunHelp)];
    public static string RerunIn => Words[nameof(RerunIn)];
    public static string AddFact => Words[nameof(AddFact)];
    public static string AddHelp => Words[nameof(AddHelp)];
    public static string FoundOn => Words[nameof(FoundOn)];
    public static string WhatHappened => Words[nameof(WhatHappened)];
    public static string WhichStep => Words[nameof(WhichStep)];
    public static string NotYet => Words[nameof(NotYet)];
    public static string AtTime => Words[nameof(AtTime)];
    public static string TimeNotKnown => Words[nameof(TimeNotKnown)];
    public static string CountSoFar => Words[nameof(CountSoFar)];
    public static string Facts => Words[nameof(Facts)];
    public static string NoFacts => Words[nameof(NoFacts)];
    public static string WithoutPhones => Words[nameof(WithoutPhones)];
    public static string PickStep => Words[nameof(PickStep)];
    public static string BadTime => Words[nameof(BadTime)];
    public static string BadCount => Words[nameof(BadCount)];
    public static string NotNothing => Words[nameof(NotNothing)];
    public static string Voided => Words[nameof(Voided)];
    public static string Undone => Words[nameof(Undone)];
    public static string LetCount => Words[nameof(LetCount)];

    /// <summary>A ruling on a lane, as it stands in the list.</summary>
    public static string Of(HeatFact.LaneDesk fact, LaneView? lane) => fact switch
    {
        HeatFact.SeatTaken taken => Words.Say($"{nameof(Of)}.Seat.{taken.Duty}", taken.By.Name),
        HeatFact.SeatGivenUp => Words[$"{nameof(Of)}.SeatGivenUp"],
        HeatFact.LaneReady => Words[$"{nameof(Of)}.LaneReady"],
        HeatFact.LaneWithdrawn => Words[$"{nameof(Of)}.LaneWithdrawn"],
        HeatFact.SentBack back => Words.Say($"{nameof(Of)}.SentBack", Step(lane, back.Step)),
        HeatFact.RepsOwed owed => Words.Count($"{nameof(Of)}.Owed", owed.Reps, Step(lane, owed.Step)),
        HeatFact.LaneHeld held => Words[$"{nameof(Of)}.Held{Cap(held.MovesCap)}"],
        HeatFact.LaneResumed => Words[$"{nameof(Of)}.LaneResumed"],
        HeatFact.TimeAdjusted adjusted => Words.Say($"{nameof(Of)}.Adjusted{Cap(adjusted.MovesCap)}", Adjusted(adjusted.AdjustMs)),
        HeatFact.LineUpChanged change => Words.Say($"{nameof(Of)}.LineUp", Step(lane, change.FromStep), string.Join(", ", change.Athletes)),
        HeatFact.VariantTaken variant => Words.Say($"{nameof(Of)}.Variant", Step(lane, variant.FromStep), variant.Prescription),
        HeatFact.CapDecided decided => Words[decided.InTime ? $"{nameof(Of)}.CapInTime" : $"{nameof(Of)}.CapTooLate"],
        HeatFact.Warned => Words[$"{nameof(Of)}.Warned"],
        HeatFact.Penalised penalty => Words.Say($"{nameof(Of)}.Penalised", PartWords.Of(Penalty(penalty.AddMs, penalty.Reps, lane?.Sheet.Score), penalty.Part, lane?.Sheet.Parts ?? [])),
        HeatFact.CallAnswered => Words[$"{nameof(Of)}.CallAnswered"],
        HeatFact.Disqualified => Words[$"{nameof(Of)}.Disqualified"],
        HeatFact.AppealFiled appeal => Words.Say(appeal.Late ? $"{nameof(Of)}.LateAppeal" : $"{nameof(Of)}.Appeal", appeal.Member, appeal.Grounds),
        _ => fact.GetType().Name,
    };

    /// <summary>What the workout says an offence costs.</summary>
    public static string PenaltyOfWorkout(PenaltyRule rule, ScoreUnit? score) =>
        Words.Say(rule.WarnFirst ? $"{nameof(PenaltyOfWorkout)}.AfterWarning" : $"{nameof(PenaltyOfWorkout)}.Each", Penalty(rule.AddMs, rule.Reps, score));

    /// <summary>"4 s given back", "1:30.0 taken".</summary>
    public static string Adjusted(int ms) => Words.Say(ms < 0 ? $"{nameof(Adjusted)}.Given" : $"{nameof(Adjusted)}.Taken", SecondsText.Length(Math.Abs((long)ms)));

    /// <summary>"+10 s, 5 reps off".</summary>
    /// <param name="addMs">Onto the time.</param>
    /// <param name="reps">Off the score, in its unit.</param>
    /// <param name="score">What the score counts; null: reps.</param>
    public static string Penalty(int addMs, int reps, ScoreUnit? score = null) => string.Join(", ", new[] { addMs > 0 ? $"+{SecondsText.Length(addMs)}" : "", reps > 0 ? Off(reps, score) : "" }.Where(part => part.Length > 0));

    /// <summary>Over the field of what is taken off the score, in its unit.</summary>
    public static string TakeOff(ScoreUnit? score) => score is { Unit: not Unit.Reps } unit ? Words.Say(nameof(TakeOff), CommonWords.Unit(unit.Unit)) : TakeReps;

    private static string Off(int amount, ScoreUnit? score) => score is { Unit: not Unit.Reps } unit ? Words.Say(nameof(Off), ScoreWords.Of(amount * unit.Scale, unit)) : RepsOff(amount);

    /// <summary>A step to choose: "round 3: 12 burpees (Ilka)".</summary>
    public static string StepChoice(LaneView lane, int number)
    {
        if (lane.Find(number) is not { } step)
        {
            return StepWords.Number(number);
        }

        var work = lane.NameOf(step.Athlete) is { Length: > 0 } name && step.To is null ? $"{step.Label} ({name})" : step.Label;
        return step.Round is > 0 and var round ? Words.Say(nameof(StepChoice), round, work) : work;
    }

    private static string RepsOff(int reps) => Words.Count(nameof(RepsOff), reps);

    private static string Step(LaneView? lane, int step) => lane is null ? StepWords.Number(step) : StepChoice(lane, step);

    private static string Cap(bool moves) => moves ? "Moves" : "Stays";
}
