using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;

namespace LiveHeat.Engine.Rules;

/// <summary>What people decide of what could not be measured, and reruns.</summary>
internal static class NearTieRules
{
    public static Verdict? Decide(HeatState heat, HeatCommand command, Asking asking)
    {
        if (command is not (HeatCommand.DecideNearTie or HeatCommand.DecideCap or HeatCommand.OrderRerun))
        {
            return null;
        }

        if (heat.Told == Phase.Certified)
        {
            return HeatRules.WrongPhase(Refusals.Certified);
        }

        return command switch
        {
            HeatCommand.DecideNearTie decide => OnFinish(heat, decide, asking),
            HeatCommand.DecideCap decide => OnCap(heat, decide, asking),
            HeatCommand.OrderRerun order => Rerun(heat, order, asking),
            _ => null,
        };
    }

    private static Verdict OnFinish(HeatState heat, HeatCommand.DecideNearTie command, Asking asking)
    {
        var near = NearTies.Of(heat).FirstOrDefault(tie => !tie.AtCap && tie.Lanes.All(lane => command.Lanes.Contains(lane)));
        return near is null || command.Lanes.Count != 2
            ? new Verdict.Refused("no-near-tie", Refusals.TimesStand)
            : new Verdict.Accepted(new HeatFact.NearTieDecided
            {
                Id = command.Id,
                Instant = asking.Now,
                By = asking.By,
                Lanes = command.Lanes,
                Tie = command.Tie,
                Reason = command.Reason,
            });
    }

    private static Verdict OnCap(HeatState heat, HeatCommand.DecideCap command, Asking asking)
    {
        var near = NearTies.Of(heat).FirstOrDefault(tie => tie.AtCap && tie.Lanes[0] == command.Lane && tie.Round == command.Round);
        return near is null
            ? new Verdict.Refused("no-near-tie", command.Round is { } round ? Refusals.NothingAtRound(command.Lane, round) : Refusals.NothingAtCap(command.Lane))
            : near.Decided
                ? new Verdict.Refused("no-near-tie", Refusals.CapDecided(command.Lane))
                : new Verdict.Accepted(new HeatFact.CapDecided
                {
                    Id = command.Id,
                    Instant = asking.Now,
                    By = asking.By,
                    Lane = command.Lane,
                    InTime = command.InTime,
                    WithinMs = near.WithinMs,
                    Round = command.Round,
                    Reason = command.Reason,
                });
    }

    private static Verdict Rerun(HeatState heat, HeatCommand.OrderRerun command, Asking asking)
    {
        if (command.Lanes.Count == 0 || command.Lanes.Any(lane => heat.Find(lane) is null))
        {
            return new Verdict.Refused("no-such-lane", Refusals.RerunNamesLanes);
        }

        if (command.InHeat == heat.Heat)
        {
            return new Verdict.Refused("unreadable", Refusals.RerunIsAnotherHeat);
        }

        return command.Reason.Length == 0
            ? new Verdict.Refused("reason-needed", Refusals.WhyRerun)
            : new Verdict.Accepted(new HeatFact.RerunOrdered
            {
                Id = command.Id,
                Instant = asking.Now,
                By = asking.By,
                Lanes = command.Lanes,
                InHeat = command.InHeat,
                Reason = command.Reason,
            });
    }
}
