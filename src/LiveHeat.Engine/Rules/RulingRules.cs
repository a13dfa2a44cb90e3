using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Rules;

/// <summary>What the head judge rules on a lane or a fact.</summary>
internal static class RulingRules
{
    /// <summary>An hour, in milliseconds: more is a slip of the finger, and sums of what stands must not overflow.</summary>
    internal const int MostMs = 3_600_000;

    internal const int MostReps = 10_000;

    public static Verdict? Decide(HeatState heat, HeatCommand command, Asking asking)
    {
        if (command is not (HeatCommand.SendBack or HeatCommand.OweReps or HeatCommand.HoldLane or HeatCommand.ResumeLane or HeatCommand.AdjustTime
            or HeatCommand.ChangeLineUp or HeatCommand.TakeVariant or HeatCommand.Void or HeatCommand.Admit or HeatCommand.GiveReason
            or HeatCommand.Add or HeatCommand.Warn or HeatCommand.Penalise or HeatCommand.AnswerCall))
        {
            return null;
        }

        if (heat.Told == Phase.Certified && command is not HeatCommand.GiveReason)
        {
            return HeatRules.WrongPhase(Refusals.Certified);
        }

        return command switch
        {
            HeatCommand.OnFact about => OnFact(heat, about, asking),
            HeatCommand.Add add => Add(heat, add, asking),
            HeatCommand.OnLane onLane => OnLane(heat.Find(onLane.Lane)!, heat, onLane, asking),
            _ => null,
        };
    }

    /// <summary>Why the lane's work has no part of that number; null where it has, or none is named.</summary>
    internal static Verdict.Refused? NoSuchPart(LaneState lane, int? part) =>
        part is { } number && (lane.Plan.Parts.Count == 0 || number < 0 || number > lane.Plan.Parts.Count)
            ? new Verdict.Refused("unreadable", lane.Plan.Parts.Count == 0 ? Refusals.NoParts : Refusals.NoSuchPart(lane.Plan.Parts.Count))
            : null;

    private static Verdict? OnLane(LaneState lane, HeatState heat, HeatCommand.OnLane command, Asking asking)
    {
        var (id, now, by, number, why) = (command.Id, asking.Now, asking.By, command.Lane, command.Reason);
        return command switch
        {
            HeatCommand.SendBack back => Step(lane, back.Step)
                ?? Accept(new HeatFact.SentBack { Id = id, Instant = now, By = by, Lane = number, Step = back.Step, Reason = why }),
            HeatCommand.OweReps { Reps: < 1 or > MostReps } => new Verdict.Refused("unreadable", Refusals.OwedFromTo(MostReps)),
            HeatCommand.OweReps owe => Step(lane, owe.Step)
                ?? Accept(new HeatFact.RepsOwed { Id = id, Instant = now, By = by, Lane = number, Step = owe.Step, Reps = owe.Reps, Reason = why }),
            HeatCommand.HoldLane when lane.HeldSince is not null => HeatRules.WrongPhase(Refusals.LaneHeldAlready(number)),
            HeatCommand.HoldLane when heat.PhaseAt(now) != Phase.Running => HeatRules.WrongPhase(Refusals.HeldWhileRunning),
            HeatCommand.HoldLane hold => Accept(new HeatFact.LaneHeld { Id = id, Instant = now, By = by, Lane = number, MovesCap = hold.MovesCap, Reason = why }),
            HeatCommand.ResumeLane when lane.HeldSince is null => HeatRules.WrongPhase(Refusals.LaneNotHeld(number)),
            HeatCommand.ResumeLane => Accept(new HeatFact.LaneResumed { Id = id, Instant = now, By = by, Lane = number, Reason = why }),
            HeatCommand.AdjustTime { AdjustMs: 0 or < -MostMs or > MostMs } => new Verdict.Refused("unreadable", Refusals.AdjustUpToAnHour),
            HeatCommand.AdjustTime adjust => Accept(new HeatFact.TimeAdjusted
            {
                Id = id,
                Instant = now,
                By = by,
                Lane = number,
                AdjustMs = adjust.AdjustMs,
                MovesCap = adjust.MovesCap,
                Reason = why,
            }),
            HeatCommand.ChangeLineUp change => Compiles(PlanSplice.LineUp(lane.Plan, change.FromStep, change.Athletes, heat.Snapshot!.Workout, lane.Entry.LineUp()))
                ?? Accept(new HeatFact.LineUpChanged { Id = id, Instant = now, By = by, Lane = number, FromStep = change.FromStep, Athletes = change.Athletes, Reason = why }),
            HeatCommand.TakeVariant take => Compiles(PlanSplice.Variant(lane.Plan, take.FromStep, take.Prescription, heat.Snapshot!.Workout, lane.Entry.LineUp()))
                ?? Accept(new HeatFact.VariantTaken { Id = id, Instant = now, By = by, Lane = number, FromStep = take.FromStep, Prescription = take.Prescription, Reason = why }),
            HeatCommand.Warn => Accept(new HeatFact.Warned { Id = id, Instant = now, By = by, Lane = number, Reason = why }),
            HeatCommand.Penalise { AddMs: <= 0, Reps: <= 0 } or HeatCommand.Penalise { AddMs: < 0 } or HeatCommand.Penalise { Reps: < 0 } =>
                new Verdict.Refused("unreadable", Refusals.PenaltyAboveZero),
            HeatCommand.Penalise { AddMs: > MostMs } or HeatCommand.Penalise { Reps: > MostReps } =>
                new Verdict.Refused("unreadable", Refusals.PenaltyAtMost(MostReps)),
            HeatCommand.Penalise penalise => NoSuchPart(lane, penalise.Part) ?? (Verdict)Accept(new HeatFact.Penalised
            {
                Id = id,
                Instant = now,
                By = by,
                Lane = number,
                AddMs = penalise.AddMs,
                Reps = penalise.Reps,
                Part = penalise.Part,
                Reason = why,
            }),
            HeatCommand.AnswerCall => Accept(new HeatFact.CallAnswered { Id = id, Instant = now, By = by, Lane = number, Reason = why }),
            _ => null,
        };
    }

    private static Verdict? OnFact(HeatState heat, HeatCommand.OnFact command, Asking asking)
    {
        if (heat.Find(command.Target) is not { } target)
        {
            return new Verdict.Refused("no-such-fact", Refusals.NoSuchFact);
        }

        var rulesOnClock = target.Fact is HeatFact.Desk and not (HeatFact.LaneDesk or HeatFact.FactAdded or HeatFact.About or HeatFact.NearTieDecided or HeatFact.RerunOrdered);
        return command switch
        {
            HeatCommand.Void when rulesOnClock || target.Fact is HeatFact.SeatTaken or HeatFact.SeatGivenUp or HeatFact.LaneReady =>
                new Verdict.Refused("wrong-phase", Refusals.NotVoided),
            HeatCommand.Void when target.Fact is HeatFact.AppealFiled { Lane: var lane } && heat.Find(lane)?.Appeals.Any(appeal => appeal.Filed.Id == command.Target && !appeal.Open) == true =>
                new Verdict.Refused("wrong-phase", Refusals.VoidDecisionFirst),
            // A fact that was added is found by its tap's id too; what is voided is the adding.
            HeatCommand.Void => Accept(new HeatFact.Voided { Id = command.Id, Instant = asking.Now, By = asking.By, Target = target.Fact.Id, Reason = command.Reason }),
            HeatCommand.Admit when target.Fact is not HeatFact.Floor => new Verdict.Refused("no-such-fact", Refusals.OnlyTapsAreAdmitted),
            HeatCommand.Admit => Accept(new HeatFact.Admitted { Id = command.Id, Instant = asking.Now, By = asking.By, Target = command.Target, Reason = command.Reason }),
            HeatCommand.GiveReason { Reason: "" } => new Verdict.Refused("reason-needed", Refusals.WriteReason),
            HeatCommand.GiveReason => Accept(new HeatFact.ReasonGiven { Id = command.Id, Instant = asking.Now, By = asking.By, Target = command.Target, Reason = command.Reason }),
            _ => null,
        };
    }

    private static Verdict Add(HeatState heat, HeatCommand.Add command, Asking asking)
    {
        if (heat.Find(command.Tap.Lane) is not { } lane)
        {
            return new Verdict.Refused("no-such-lane", Refusals.NoSuchLane(command.Tap.Lane));
        }

        if (command.Tap is HeatFact.Undone)
        {
            return new Verdict.Refused("unreadable", Refusals.UndoIsNotAdded);
        }

        if (heat.Find(command.Tap.Id) is not null)
        {
            return new Verdict.Refused("conflict", Refusals.OnLedgerAlready);
        }

        if (heat.Clock.Start is null)
        {
            return HeatRules.WrongPhase(Refusals.NoStartInForce);
        }

        if (command.Tap.UncertaintyMs < 0)
        {
            return new Verdict.Refused("unreadable", Refusals.NeverBelowNothing);
        }

        if (command.Tap is HeatFact.AttemptJudged { Load: var load } && !Workouts.Attempts.CanBe(load))
        {
            return TapRules.Unliftable;
        }

        var tap = command.Tap with { Start = null, Plan = lane.PlanVersion };
        return tap is HeatFact.AtStep at && Step(lane, at.Step) is { } refused
            ? refused
            : Accept(new HeatFact.FactAdded { Id = command.Id, Instant = asking.Now, By = asking.By, Source = command.Source, Tap = tap, Reason = command.Reason });
    }

    private static Verdict? Step(LaneState lane, int step) => lane.Plan.Find(step) is null
        ? new Verdict.Refused("no-such-step", Refusals.NoSuchStep(lane.Lane, lane.Plan.LastStep, step))
        : null;

    private static Verdict? Compiles(Compiled compiled) => compiled is Compiled.Impossible impossible
        ? new Verdict.Refused("bad-setup", Telling.Several(impossible.Errors.Select(error => error.Why)))
        : null;

    private static Verdict.Accepted Accept(HeatFact fact) => new(fact);
}
