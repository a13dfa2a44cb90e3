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
        HeatCommand.Reopen when heat.Told is not (Phase.Frozen or Phase.Certified) => HeatRules.WrongPhase("Only a frozen or certified heat is reopened."),
        HeatCommand.Reopen { Reason: "" } => new Verdict.Refused("reason-needed", "Say why the heat is reopened: the result will carry it."),
        HeatCommand.Reopen reopen => new Verdict.Accepted(new HeatFact.Reopened { Id = reopen.Id, Instant = asking.Now, By = asking.By, Reason = reopen.Reason }),
        _ => null,
    };

    private static Verdict Freeze(HeatState heat, HeatCommand.Freeze command, Asking asking)
    {
        if (heat.PhaseAt(asking.Now) is Phase.Running or Phase.Halted or Phase.CountingDown)
        {
            return new Verdict.Refused("heat-still-running", "The heat still runs. End it first.");
        }

        if (heat.Told != Phase.Ended)
        {
            return HeatRules.WrongPhase("Only an ended heat is frozen.");
        }

        if (command.Head != heat.Head)
        {
            return Moved(heat, command.Head);
        }

        if (asking.Missing.Count > 0 && string.IsNullOrWhiteSpace(command.Over))
        {
            return new Verdict.Refused("reason-needed", $"Not all has arrived: {string.Join("; ", asking.Missing)}. Wait for it, or freeze over it with a reason.");
        }

        var untold = heat.Lanes.Where(lane => lane.TiebreakMissing).Select(lane => $"lane {lane.Lane}").ToList();
        if (untold.Count > 0 && string.IsNullOrWhiteSpace(command.Over))
        {
            return new Verdict.Refused("tiebreak-missing", $"Nobody knows when the tiebreak set was done: {string.Join(", ", untold)}. Add the time from paper or video, or freeze without it and say why.");
        }

        var over = asking.Missing.Concat(untold.Select(lane => $"{lane}: no tiebreak time")).ToList();
        return new Verdict.Accepted(new HeatFact.Frozen
        {
            Id = command.Id, Instant = asking.Now, By = asking.By, Head = command.Head,
            Over = over.Count > 0 ? $"{command.Over} ({string.Join("; ", over)})" : null,
        });
    }

    private static Verdict Certify(HeatState heat, HeatCommand.Certify command, Asking asking)
    {
        if (heat.Told == Phase.Certified)
        {
            return new Verdict.Refused("already-signed", "This result is certified already.");
        }

        if (heat.Told != Phase.Frozen)
        {
            return new Verdict.Refused("not-frozen", "Freeze the heat first: what is signed must stand still.");
        }

        if (NearTies.Of(heat).FirstOrDefault(tie => !tie.Decided) is { } open)
        {
            return new Verdict.Refused("near-tie-open", open.Round is { } round
                ? $"On lane {open.Lanes[0]} something was done closer to the end of round {round} than can be measured. The head judge decides first."
                : open.AtCap
                ? $"Lane {open.Lanes[0]} was closer to the cap than can be measured, or judge and timekeepers disagree about it. The head judge decides first."
                : $"Lanes {open.Lanes[0]} and {open.Lanes[1]} finished closer than can be measured. The head judge decides their order first, or lets the tie stand.");
        }

        if (command.Head != heat.SignedHead)
        {
            return Moved(heat, command.Head);
        }

        var pending = heat.Pending;
        if (!pending.SequenceEqual((command.Pending ?? []).Order()))
        {
            return new Verdict.Refused("appeal-open", pending.Count == 0
                ? "No appeal is open any more. Look at the result again, then sign it."
                : $"An appeal is open on {(pending.Count == 1 ? "lane" : "lanes")} {string.Join(", ", pending)}. Decide it first, or sign with {(pending.Count == 1 ? "this lane" : "these lanes")} marked as pending: a later revision settles it.");
        }

        if (heat.Signatures.Any(signature => signature.By.Role == asking.By.Role && signature.Head == command.Head))
        {
            return new Verdict.Refused("already-signed", $"The {(asking.By.Role == Role.Organiser ? "organiser" : "head judge")} has signed already; the other signature is missing.");
        }

        if (heat.Signatures.Any(signature => signature.By.SignIn == asking.By.SignIn))
        {
            return new Verdict.Refused("already-signed", "The second signature must come from another sign-in.");
        }

        return new Verdict.Accepted(new HeatFact.Certified
        {
            Id = command.Id, Instant = asking.Now, By = asking.By, Head = command.Head, Pending = pending.Count == 0 ? null : pending,
        });
    }

    private static Verdict.Refused Moved(HeatState heat, long seen) => new(
        "head-moved",
        $"Something came in that you have not seen: {heat.Head - seen} new, up to number {heat.Head}. Look at it, then do it again.");
}
