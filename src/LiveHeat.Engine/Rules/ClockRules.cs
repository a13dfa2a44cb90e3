using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

/// <summary>GO, recall, halt, resume, end.</summary>
internal static class ClockRules
{
    private const int ShortestCountDownMs = 3_000;
    private const int LongestCountDownMs = 120_000;
    private const int LongestAgoMs = 30 * 60_000;

    public static Verdict? Decide(HeatState heat, HeatCommand command, Asking asking)
    {
        var phase = heat.PhaseAt(asking.Now);
        return command switch
        {
            HeatCommand.ScheduleStart schedule => Schedule(heat, phase, schedule, asking),
            HeatCommand.ObserveStart observe => Observe(heat, phase, observe, asking),
            HeatCommand.RecallStart when phase is not (Phase.CountingDown or Phase.Running) => HeatRules.WrongPhase(Refusals.NoStartToRecall),
            HeatCommand.RecallStart recall => Accept(new HeatFact.StartRecalled
            {
                Id = recall.Id,
                Instant = asking.Now,
                By = asking.By,
                Start = heat.Clock.Start!.Id,
                Reason = recall.Reason,
            }),
            HeatCommand.Halt when phase != Phase.Running => HeatRules.WrongPhase(Refusals.OnlyRunningIsHalted),
            HeatCommand.Halt halt => Accept(new HeatFact.HeatHalted { Id = halt.Id, Instant = asking.Now, By = asking.By, Reason = halt.Reason }),
            HeatCommand.Resume or HeatCommand.ReturnToCall when phase != Phase.Halted => HeatRules.WrongPhase(Refusals.NotHalted),
            HeatCommand.Resume resume => Accept(new HeatFact.HeatResumed { Id = resume.Id, Instant = asking.Now, By = asking.By, Reason = resume.Reason }),
            HeatCommand.ReturnToCall back => Accept(new HeatFact.CallReturned { Id = back.Id, Instant = asking.Now, By = asking.By, Reason = back.Reason }),
            HeatCommand.End when phase is not (Phase.Running or Phase.Halted) => HeatRules.WrongPhase(Refusals.OnlyRunningIsEnded),
            HeatCommand.End end => Accept(new HeatFact.HeatEnded { Id = end.Id, Instant = asking.Now, By = asking.By, Reason = end.Reason }),
            _ => null,
        };
    }

    private static Verdict Schedule(HeatState heat, Phase phase, HeatCommand.ScheduleStart command, Asking asking)
    {
        if (phase is Phase.CountingDown or Phase.Running)
        {
            return new Verdict.Refused("already-started", Refusals.GoSetAlready);
        }

        if (phase == Phase.Called)
        {
            var missing = heat.Lanes.Where(lane => !lane.Ready && !lane.Out).Select(lane => lane.Lane).ToItems();
            return new Verdict.Refused("lanes-not-ready", Refusals.LanesNotReady(missing));
        }

        if (phase != Phase.Armed)
        {
            return HeatRules.WrongPhase(Refusals.CannotStartNow);
        }

        return command.InMs is >= ShortestCountDownMs and <= LongestCountDownMs
            ? Accept(new HeatFact.StartScheduled { Id = command.Id, Instant = asking.Now, By = asking.By, Start = asking.NewId, GoAt = asking.Now + command.InMs })
            : new Verdict.Refused("unreadable", Refusals.CountDownLength(ShortestCountDownMs / 1000, LongestCountDownMs / 1000));
    }

    private static Verdict Observe(HeatState heat, Phase phase, HeatCommand.ObserveStart command, Asking asking)
    {
        var goAt = command.GoAt ?? asking.Now + -command.AgoMs;
        // What is put right may lie as far back as the heat is long; half an hour around what it was is enough for any mistake.
        var around = command.Start is not null && heat.Clock.Start is { } known ? known.GoAt : asking.Now;
        if (goAt > asking.Now || Math.Abs(around - goAt) > LongestAgoMs)
        {
            return new Verdict.Refused("unreadable", command.Start is null
                ? Refusals.HornOfNow
                : Refusals.HornOfThen);
        }

        if (command.Start is { } start)
        {
            if (heat.Clock.Start?.Id != start)
            {
                return new Verdict.Refused("already-started", Refusals.StartNotInForce);
            }

            if (phase is Phase.Frozen or Phase.Certified)
            {
                return HeatRules.WrongPhase(Refusals.ClosedForStart);
            }

            return command.Reason.Length == 0
                ? new Verdict.Refused("reason-needed", Refusals.WhyStartIsPutRight)
                : Accept(Observed(command, asking, start, goAt));
        }

        return phase switch
        {
            Phase.Called or Phase.Armed => Accept(Observed(command, asking, asking.NewId, goAt)),
            Phase.CountingDown or Phase.Running => new Verdict.Refused("already-started", Refusals.StartInForce),
            _ => HeatRules.WrongPhase(Refusals.CannotStartNow),
        };
    }

    private static HeatFact.StartObserved Observed(HeatCommand.ObserveStart command, Asking asking, string start, Timing.Instant goAt) => new()
    {
        Id = command.Id,
        Instant = asking.Now,
        By = asking.By,
        Start = start,
        GoAt = goAt,
        UncertaintyMs = Math.Max(0, command.UncertaintyMs),
        Reason = command.Reason,
    };

    private static Verdict.Accepted Accept(HeatFact fact) => new(fact);
}
