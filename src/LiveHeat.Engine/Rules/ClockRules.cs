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
            HeatCommand.RecallStart when phase is not (Phase.CountingDown or Phase.Running) => HeatRules.WrongPhase("There is no start to recall."),
            HeatCommand.RecallStart recall => Accept(new HeatFact.StartRecalled
            {
                Id = recall.Id, Instant = asking.Now, By = asking.By, Start = heat.Clock.Start!.Id, Reason = recall.Reason,
            }),
            HeatCommand.Halt when phase != Phase.Running => HeatRules.WrongPhase("Only a running heat can be halted."),
            HeatCommand.Halt halt => Accept(new HeatFact.HeatHalted { Id = halt.Id, Instant = asking.Now, By = asking.By, Reason = halt.Reason }),
            HeatCommand.Resume or HeatCommand.ReturnToCall when phase != Phase.Halted => HeatRules.WrongPhase("The heat is not halted."),
            HeatCommand.Resume resume => Accept(new HeatFact.HeatResumed { Id = resume.Id, Instant = asking.Now, By = asking.By, Reason = resume.Reason }),
            HeatCommand.ReturnToCall back => Accept(new HeatFact.CallReturned { Id = back.Id, Instant = asking.Now, By = asking.By, Reason = back.Reason }),
            HeatCommand.End when phase is not (Phase.Running or Phase.Halted) => HeatRules.WrongPhase("Only a running or halted heat can be ended."),
            HeatCommand.End end => Accept(new HeatFact.HeatEnded { Id = end.Id, Instant = asking.Now, By = asking.By, Reason = end.Reason }),
            _ => null,
        };
    }

    private static Verdict Schedule(HeatState heat, Phase phase, HeatCommand.ScheduleStart command, Asking asking)
    {
        if (phase is Phase.CountingDown or Phase.Running)
        {
            return new Verdict.Refused("already-started", "GO is set already. Recall it first if it was wrong.");
        }

        if (phase == Phase.Called)
        {
            var missing = heat.Lanes.Where(lane => !lane.Ready && !lane.Out).Select(lane => lane.Lane.ToString());
            return new Verdict.Refused("lanes-not-ready", $"Not ready yet: lane {string.Join(", ", missing)}. Wait for their judges, or count them as ready by name.");
        }

        if (phase != Phase.Armed)
        {
            return HeatRules.WrongPhase("This heat cannot be started now.");
        }

        return command.InMs is >= ShortestCountDownMs and <= LongestCountDownMs
            ? Accept(new HeatFact.StartScheduled { Id = command.Id, Instant = asking.Now, By = asking.By, Start = asking.NewId, GoAt = asking.Now + command.InMs })
            : new Verdict.Refused("unreadable", "A count-down lasts 3 to 120 seconds.");
    }

    private static Verdict Observe(HeatState heat, Phase phase, HeatCommand.ObserveStart command, Asking asking)
    {
        var goAt = command.GoAt ?? asking.Now + -command.AgoMs;
        // What is put right may lie as far back as the heat is long; half an hour around what it was is enough for any mistake.
        var around = command.Start is not null && heat.Clock.Start is { } known ? known.GoAt : asking.Now;
        if (goAt > asking.Now || Math.Abs(around - goAt) > LongestAgoMs)
        {
            return new Verdict.Refused("unreadable", command.Start is null
                ? "The horn must have gone by now, and no more than half an hour ago."
                : "The horn must have gone by now, and within half an hour of the start that is put right.");
        }

        if (command.Start is { } start)
        {
            if (heat.Clock.Start?.Id != start)
            {
                return new Verdict.Refused("already-started", "That start is no longer the one in force.");
            }

            if (phase is Phase.Frozen or Phase.Certified)
            {
                return HeatRules.WrongPhase("The heat is closed for review. Reopen it to put the start right.");
            }

            return command.Reason.Length == 0
                ? new Verdict.Refused("reason-needed", "Say why the start is put right: it moves everybody's time.")
                : Accept(Observed(command, asking, start, goAt));
        }

        return phase switch
        {
            Phase.Called or Phase.Armed => Accept(Observed(command, asking, asking.NewId, goAt)),
            Phase.CountingDown or Phase.Running => new Verdict.Refused("already-started", "A start is in force already. Recall it, or put its instant right."),
            _ => HeatRules.WrongPhase("This heat cannot be started now."),
        };
    }

    private static HeatFact.StartObserved Observed(HeatCommand.ObserveStart command, Asking asking, string start, Timing.Instant goAt) => new()
    {
        Id = command.Id, Instant = asking.Now, By = asking.By, Start = start, GoAt = goAt,
        UncertaintyMs = Math.Max(0, command.UncertaintyMs), Reason = command.Reason,
    };

    private static Verdict.Accepted Accept(HeatFact fact) => new(fact);
}
