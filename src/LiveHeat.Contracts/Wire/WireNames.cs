using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Wire;

/// <summary>The one table that turns facts, commands, relay orders and scoring rules into names. Permanent: a case may be renamed in C#, never here.</summary>
public static class WireNames
{
    /// <summary>Facts, by the name in their field <c>fact</c>.</summary>
    public static readonly IReadOnlyList<(Type Type, string Name)> Facts =
    [
        (typeof(HeatFact.StepDone), "step-done"),
        (typeof(HeatFact.TagMade), "tag-made"),
        (typeof(HeatFact.ValueEntered), "value-entered"),
        (typeof(HeatFact.AttemptJudged), "attempt-judged"),
        (typeof(HeatFact.CountReached), "count-reached"),
        (typeof(HeatFact.NoRep), "no-rep"),
        (typeof(HeatFact.TagFault), "tag-fault"),
        (typeof(HeatFact.AthleteWorking), "athlete-working"),
        (typeof(HeatFact.RepsAtCap), "reps-at-cap"),
        (typeof(HeatFact.FinishTimed), "finish-timed"),
        (typeof(HeatFact.LaneStopped), "lane-stopped"),
        (typeof(HeatFact.Undone), "undone"),
        (typeof(HeatFact.HeadJudgeCalled), "head-judge-called"),
        (typeof(HeatFact.ScoreReadBack), "score-read-back"),
        (typeof(HeatFact.HeatCalled), "heat-called"),
        (typeof(HeatFact.CallReplaced), "call-replaced"),
        (typeof(HeatFact.SeatTaken), "seat-taken"),
        (typeof(HeatFact.SeatGivenUp), "seat-given-up"),
        (typeof(HeatFact.LaneReady), "lane-ready"),
        (typeof(HeatFact.LanesOverridden), "lanes-overridden"),
        (typeof(HeatFact.LaneWithdrawn), "lane-withdrawn"),
        (typeof(HeatFact.StartScheduled), "start-scheduled"),
        (typeof(HeatFact.StartObserved), "start-observed"),
        (typeof(HeatFact.StartRecalled), "start-recalled"),
        (typeof(HeatFact.HeatHalted), "heat-halted"),
        (typeof(HeatFact.HeatResumed), "heat-resumed"),
        (typeof(HeatFact.CallReturned), "call-returned"),
        (typeof(HeatFact.HeatEnded), "heat-ended"),
        (typeof(HeatFact.SentBack), "sent-back"),
        (typeof(HeatFact.RepsOwed), "reps-owed"),
        (typeof(HeatFact.LaneHeld), "lane-held"),
        (typeof(HeatFact.LaneResumed), "lane-resumed"),
        (typeof(HeatFact.TimeAdjusted), "time-adjusted"),
        (typeof(HeatFact.LineUpChanged), "line-up-changed"),
        (typeof(HeatFact.VariantTaken), "variant-taken"),
        (typeof(HeatFact.Voided), "voided"),
        (typeof(HeatFact.Admitted), "admitted"),
        (typeof(HeatFact.ReasonGiven), "reason-given"),
        (typeof(HeatFact.FactAdded), "fact-added"),
        (typeof(HeatFact.Warned), "warned"),
        (typeof(HeatFact.Penalised), "penalised"),
        (typeof(HeatFact.NearTieDecided), "near-tie-decided"),
        (typeof(HeatFact.CapDecided), "cap-decided"),
        (typeof(HeatFact.RerunOrdered), "rerun-ordered"),
        (typeof(HeatFact.CallAnswered), "call-answered"),
        (typeof(HeatFact.Disqualified), "disqualified"),
        (typeof(HeatFact.AppealFiled), "appeal-filed"),
        (typeof(HeatFact.AppealDecided), "appeal-decided"),
        (typeof(HeatFact.Frozen), "frozen"),
        (typeof(HeatFact.Certified), "certified"),
        (typeof(HeatFact.Reopened), "reopened"),
    ];

    /// <summary>Commands, by the name in their field <c>command</c>.</summary>
    public static readonly IReadOnlyList<(Type Type, string Name)> Commands =
    [
        (typeof(HeatCommand.Call), "call"),
        (typeof(HeatCommand.ReplaceCall), "replace-call"),
        (typeof(HeatCommand.TakeSeat), "take-seat"),
        (typeof(HeatCommand.GiveUpSeat), "give-up-seat"),
        (typeof(HeatCommand.Ready), "ready"),
        (typeof(HeatCommand.OverrideReady), "override-ready"),
        (typeof(HeatCommand.WithdrawLane), "withdraw-lane"),
        (typeof(HeatCommand.ScheduleStart), "schedule-start"),
        (typeof(HeatCommand.ObserveStart), "observe-start"),
        (typeof(HeatCommand.RecallStart), "recall-start"),
        (typeof(HeatCommand.Halt), "halt"),
        (typeof(HeatCommand.Resume), "resume"),
        (typeof(HeatCommand.ReturnToCall), "return-to-call"),
        (typeof(HeatCommand.End), "end"),
        (typeof(HeatCommand.SendBack), "send-back"),
        (typeof(HeatCommand.OweReps), "owe-reps"),
        (typeof(HeatCommand.HoldLane), "hold-lane"),
        (typeof(HeatCommand.ResumeLane), "resume-lane"),
        (typeof(HeatCommand.AdjustTime), "adjust-time"),
        (typeof(HeatCommand.ChangeLineUp), "change-line-up"),
        (typeof(HeatCommand.TakeVariant), "take-variant"),
        (typeof(HeatCommand.Void), "void"),
        (typeof(HeatCommand.Admit), "admit"),
        (typeof(HeatCommand.GiveReason), "give-reason"),
        (typeof(HeatCommand.Add), "add"),
        (typeof(HeatCommand.Warn), "warn"),
        (typeof(HeatCommand.Penalise), "penalise"),
        (typeof(HeatCommand.DecideNearTie), "decide-near-tie"),
        (typeof(HeatCommand.DecideCap), "decide-cap"),
        (typeof(HeatCommand.OrderRerun), "order-rerun"),
        (typeof(HeatCommand.AnswerCall), "answer-call"),
        (typeof(HeatCommand.Disqualify), "disqualify"),
        (typeof(HeatCommand.FileAppeal), "file-appeal"),
        (typeof(HeatCommand.DecideAppeal), "decide-appeal"),
        (typeof(HeatCommand.Freeze), "freeze"),
        (typeof(HeatCommand.Certify), "certify"),
        (typeof(HeatCommand.Reopen), "reopen"),
    ];

    /// <summary>Relay orders, by the name in their field <c>kind</c>.</summary>
    public static readonly IReadOnlyList<(Type Type, string Name)> Orders =
    [
        (typeof(RelayOrder.InTurn), "in-turn"),
        (typeof(RelayOrder.Blocks), "blocks"),
        (typeof(RelayOrder.EachMovement), "each-movement"),
        (typeof(RelayOrder.Listed), "listed"),
        (typeof(RelayOrder.Together), "together"),
    ];

    /// <summary>What makes a result, by the name in the rule's field <c>kind</c>.</summary>
    public static readonly IReadOnlyList<(Type Type, string Name)> Scorings =
    [
        (typeof(ScoringRule.ForTime), "for-time"),
        (typeof(ScoringRule.MostWork), "most-work"),
        (typeof(ScoringRule.HeaviestLoad), "heaviest-load"),
        (typeof(ScoringRule.MostReading), "most-reading"),
    ];
}
