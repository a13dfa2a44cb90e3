using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Rulings: as they stand in the list, and on the forms that make them.</summary>
public static class RulingWords
{
    public const string Title = "Rulings";
    public const string Certified = "The result is certified. To rule on it, the desk reopens the heat with a reason.";
    public const string AnswerCall = "I am at the lane";
    public const string Calls = "calls the head judge";
    public const string HeldTaps = "Held taps";
    public const string HeldHelp = "They do not count until you let them.";
    public const string Admit = "Let it count";
    public const string Void = "Void";
    public const string VoidHelp = "It will not count. It stays on the record, marked as void.";
    public const string GiveReason = "Give the reason";
    public const string SendBack = "Send back";
    public const string SendBackHelp = "The team does this step and all after it again. What was done of them no longer counts.";
    public const string SendBackTo = "Open again from";
    public const string OweReps = "Reps owed";
    public const string OweHelp = "The team makes these reps up before the set that is open may count.";
    public const string OweIn = "In which set";
    public const string OweHowMany = "How many reps";
    public const string Hold = "Hold the lane";
    public const string HoldHelp = "The lane's own clock stands still. Use it when the team may not work through no fault of its own.";
    public const string MovesCap = "The time cap moves by as much";
    public const string Resume = "Let the lane go on";
    public const string Adjust = "Adjust time";
    public const string AdjustHelp = "Give time back to the team, or take it. It stands on the result.";
    public const string AdjustBy = "How much (m:ss.t)";
    public const string Helps = "Give back (less time)";
    public const string Hurts = "Take (more time)";
    public const string Penalise = "Penalty";
    public const string PenaliseHelp = "Seconds onto the result, or reps off it.";
    public const string AddTime = "Time to add (m:ss.t)";
    public const string TakeReps = "Reps to take off";
    public const string NotWarned = "Not warned yet: warn first, or go on.";
    public const string WarnFirst = "Warn first";
    public const string Warn = "Warn";
    public const string WarnHelp = "The next one may cost. It stands on the record.";
    public const string LineUp = "Change line-up";
    public const string LineUpHelp = "Other athletes, or another order, from this step on.";
    public const string FromStep = "From";
    public const string Athletes = "Athletes in relay order, one a line";
    public const string Variant = "Other version";
    public const string VariantHelp = "The team goes on with another division's work. It then counts in that division's comparison.";
    public const string VariantOf = "Version of";
    public const string Rerun = "Do it again";
    public const string RerunHelp = "The team does the work again in another heat, set up for it. The result of that heat counts for this team, and both results say so.";
    public const string RerunIn = "In heat";
    public const string AddFact = "Add from paper or video";
    public const string AddHelp = "Something that no phone recorded. It counts as the lane judge's own.";
    public const string FoundOn = "Found on";
    public const string WhatHappened = "What happened";
    public const string WhichStep = "Which step";
    public const string NotYet = "The clock has not come to that time yet.";
    public const string AtTime = "Heat time (m:ss.t)";
    public const string TimeNotKnown = "Done by then, exact time unknown";
    public const string CountSoFar = "Count in the set";
    public const string Facts = "Record";
    public const string NoFacts = "Nothing is recorded for this lane yet.";
    public const string WithoutPhones = "Nothing on this lane was tapped on a phone.";
    public const string PickStep = "Choose a step.";
    public const string BadTime = "Write minutes and seconds, such as 7:02.4.";
    public const string BadCount = "Write a number from 1.";
    public const string NotNothing = "Write seconds or reps above 0.";
    public const string Voided = "void";
    public const string Undone = "taken back by the judge";
    public const string LetCount = "let count";

    /// <summary>A ruling on a lane, as it stands in the list.</summary>
    public static string Of(HeatFact.LaneDesk fact, LaneView? lane) => fact switch
    {
        HeatFact.SeatTaken taken => $"{taken.By.Name} judges the lane{(taken.Duty == Duty.Primary ? "" : taken.Duty == Duty.Witness ? ", as witness" : ", as timekeeper")}",
        HeatFact.SeatGivenUp => "seat given up",
        HeatFact.LaneReady => "lane ready",
        HeatFact.LaneWithdrawn => "withdrawn",
        HeatFact.SentBack back => $"sent back to {Step(lane, back.Step)}",
        HeatFact.RepsOwed owed => $"{CommonWords.Reps(owed.Reps)} owed in {Step(lane, owed.Step)}",
        HeatFact.LaneHeld held => $"lane held, time cap {(held.MovesCap ? "moves" : "stays")}",
        HeatFact.LaneResumed => "lane goes on",
        HeatFact.TimeAdjusted adjusted => $"{Adjusted(adjusted.AdjustMs)}, time cap {(adjusted.MovesCap ? "moves" : "stays")}",
        HeatFact.LineUpChanged change => $"line-up from {Step(lane, change.FromStep)}: {string.Join(", ", change.Athletes)}",
        HeatFact.VariantTaken variant => $"from {Step(lane, variant.FromStep)} the work of {variant.Prescription}",
        HeatFact.CapDecided decided => $"last step decided as {(decided.InTime ? "in time" : "after the cap")}",
        HeatFact.Warned => "warned",
        HeatFact.Penalised penalty => $"penalty: {Penalty(penalty.AddMs, penalty.Reps)}",
        HeatFact.CallAnswered => "head judge came",
        HeatFact.Disqualified => "disqualified",
        HeatFact.AppealFiled appeal => $"{(appeal.Late ? "late " : "")}appeal by {appeal.Member}: {appeal.Grounds}",
        _ => fact.GetType().Name,
    };

    /// <summary>What the workout says an offence costs.</summary>
    public static string PenaltyOfWorkout(Engine.Workouts.PenaltyRule rule) => $"This workout: {Penalty(rule.AddMs, rule.Reps)} for each offence{(rule.WarnFirst ? " after a warning" : "")}.";

    /// <summary>"4 s given back", "1:30 taken".</summary>
    public static string Adjusted(int ms) => $"{Length(Math.Abs((long)ms))} {(ms < 0 ? "given back" : "taken")}";

    /// <summary>"+10 s, 5 reps off".</summary>
    public static string Penalty(int addMs, int reps) => string.Join(", ", new[] { addMs > 0 ? $"+{Length(addMs)}" : "", reps > 0 ? $"{CommonWords.Reps(reps)} off" : "" }.Where(part => part.Length > 0));

    /// <summary>A step to choose: "round 3: 12 burpees (Ilka)".</summary>
    public static string StepChoice(LaneView lane, int number) => lane.Find(number) switch
    {
        null => $"step {number}",
        var step => $"{(step.Round is > 0 and var round ? $"round {round}: " : "")}{step.Label}{(lane.NameOf(step.Athlete) is { Length: > 0 } name && step.To is null ? $" ({name})" : "")}",
    };

    private static string Step(LaneView? lane, int step) => lane is null ? $"step {step}" : StepChoice(lane, step);

    private static string Length(long ms) => ms < 60_000 ? $"{ms / 1000m:0.###} s" : TimeWords.Exact(ms);
}
