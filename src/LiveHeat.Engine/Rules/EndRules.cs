using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;

namespace LiveHeat.Engine.Rules;

/// <summary>Freeze, certify, reopen.</summary>
internal static class EndRules
{
    public static Verdict? Decide(HeatState heat, HeatCommand command, Asking asking) => command switch
    {
        HeatCommand.Freeze freeze => Freeze(heat, freeze, asking),
        HeatCommand.Certify certify => Certify(heat, certify, asking),
        HeatCommand.Reopen when heat.Told is not (Phase.Frozen or Phase.Certified) => HeatRules.WrongPhase(Refusals.OnlyClosedIsReopened),
        HeatCommand.Reopen { Reason: "" } => new Verdict.Refused("reason-needed", Refusals.WhyReopened),
        HeatCommand.Reopen reopen => new Verdict.Accepted(new HeatFact.Reopened { Id = reopen.Id, Instant = asking.Now, By = asking.By, Reason = reopen.Reason }),
        _ => null,
    };

    private static Verdict Freeze(HeatState heat, HeatCommand.Freeze command, Asking asking)
    {
        if (heat.PhaseAt(asking.Now) is Phase.Running or Phase.Halted or Phase.CountingDown)
        {
            return new Verdict.Refused("heat-still-running", Refusals.StillRuns);
        }

        if (heat.Told != Phase.Ended)
        {
            return HeatRules.WrongPhase(Refusals.OnlyEndedIsFrozen);
        }

        if (command.Head != heat.Head)
        {
            return Moved(heat, command.Head);
        }

        if (asking.Missing.Count > 0 && string.IsNullOrWhiteSpace(command.Over))
        {
            return new Verdict.Refused("reason-needed", Refusals.NotAllArrived(asking.Missing.Select(taps => Told(taps, asking)).ToItems()));
        }

        var untold = heat.Lanes.Where(lane => lane.TiebreakMissing).Select(lane => lane.Lane).ToItems();
        if (untold.Count > 0 && string.IsNullOrWhiteSpace(command.Over))
        {
            return new Verdict.Refused("tiebreak-missing", Refusals.TiebreakMissing(untold));
        }

        return new Verdict.Accepted(new HeatFact.Frozen
        {
            Id = command.Id,
            Instant = asking.Now,
            By = asking.By,
            Head = command.Head,
            Over = asking.Missing.Count > 0 || untold.Count > 0 ? command.Over : null,
            Missing = asking.Missing.Count > 0 ? asking.Missing : null,
            NoTiebreak = untold.Count > 0 ? untold : null,
        });
    }

    private static Verdict Certify(HeatState heat, HeatCommand.Certify command, Asking asking)
    {
        if (heat.Told == Phase.Certified)
        {
            return new Verdict.Refused("already-signed", Refusals.CertifiedAlready);
        }

        if (heat.Told != Phase.Frozen)
        {
            return new Verdict.Refused("not-frozen", Refusals.FreezeFirst);
        }

        if (NearTies.Of(heat).FirstOrDefault(tie => !tie.Decided) is { } open)
        {
            return new Verdict.Refused("near-tie-open", open.Round is { } round ? Refusals.RoundTooClose(open.Lanes[0], round)
                : open.AtCap ? Refusals.CapTooClose(open.Lanes[0]) : Refusals.FinishTooClose(open.Lanes[0], open.Lanes[1]));
        }

        if (command.Head != heat.SignedHead)
        {
            return Moved(heat, command.Head);
        }

        var pending = heat.Pending;
        if (!pending.SequenceEqual((command.Pending ?? []).Order()))
        {
            return new Verdict.Refused("appeal-open", pending.Count == 0
                ? Refusals.NoAppealOpen
                : Refusals.AppealOpen(pending));
        }

        if (heat.Signatures.Any(signature => signature.By.Role == asking.By.Role && signature.Head == command.Head))
        {
            return new Verdict.Refused("already-signed", asking.By.Role == Role.Organiser ? Refusals.OrganiserSigned : Refusals.HeadJudgeSigned);
        }

        if (heat.Signatures.Any(signature => signature.By.SignIn == asking.By.SignIn))
        {
            return new Verdict.Refused("already-signed", Refusals.OtherSignIn);
        }

        return new Verdict.Accepted(new HeatFact.Certified
        {
            Id = command.Id,
            Instant = asking.Now,
            By = asking.By,
            Head = command.Head,
            Pending = pending.Count == 0 ? null : pending,
        });
    }

    private static Verdict.Refused Moved(HeatState heat, long seen) => new("head-moved", Refusals.HeadMoved(heat.Head - seen, heat.Head));

    private static Telling Told(MissingTaps missing, Asking asking) =>
        Refusals.TapsOnPhone(missing.Taps, missing.Lane, new Part.TimeOfDay(missing.LastSeen, asking.VenueOffsetMinutes, Seconds: true));
}
