using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

/// <summary>Disqualification and appeals.</summary>
internal static class AppealRules
{
    private const int LongestName = 100;
    private const int LongestText = 2_000;

    public static Verdict? Decide(HeatState heat, HeatCommand command, Asking asking) => command switch
    {
        HeatCommand.Disqualify or HeatCommand.DecideAppeal when heat.Told == Phase.Certified =>
            HeatRules.WrongPhase(Refusals.CertifiedNewRevision),
        HeatCommand.Disqualify disqualify => Disqualify(heat.Find(disqualify.Lane)!, disqualify, asking),
        HeatCommand.FileAppeal file => File(heat, file, asking),
        HeatCommand.DecideAppeal decide => Decide(heat, decide, asking),
        _ => null,
    };

    private static Verdict Disqualify(LaneState lane, HeatCommand.Disqualify command, Asking asking)
    {
        if (string.IsNullOrWhiteSpace(command.Reason))
        {
            return new Verdict.Refused("reason-needed", Refusals.WhyDisqualified);
        }

        return lane.Disqualified is null
            ? new Verdict.Accepted(new HeatFact.Disqualified { Id = command.Id, Instant = asking.Now, By = asking.By, Lane = command.Lane, Reason = command.Reason })
            : HeatRules.WrongPhase(Refusals.DisqualifiedAlready(command.Lane));
    }

    private static Verdict File(HeatState heat, HeatCommand.FileAppeal command, Asking asking)
    {
        if (heat.Clock.Start is not { } start || start.GoAt > asking.Now)
        {
            return HeatRules.WrongPhase(Refusals.NothingToAppeal);
        }

        if (string.IsNullOrWhiteSpace(command.Member) || command.Member.Length > LongestName)
        {
            return new Verdict.Refused("unreadable", Refusals.AppealNeedsName(LongestName));
        }

        if (string.IsNullOrWhiteSpace(command.Grounds) || command.Grounds.Length > LongestText)
        {
            return new Verdict.Refused("unreadable", Refusals.AppealNeedsGrounds(LongestText));
        }

        var late = heat.AppealsUntil is { } until && asking.Now > until;
        if (late && asking.By.Role != Role.HeadJudge)
        {
            return new Verdict.Refused("appeal-window-over", Refusals.AppealsOver(Minutes(heat), Until(heat, asking)));
        }

        if (late && string.IsNullOrWhiteSpace(command.Reason))
        {
            return new Verdict.Refused("appeal-window-over", Refusals.LateAppealNeedsReason(Minutes(heat), Until(heat, asking)));
        }

        return new Verdict.Accepted(new HeatFact.AppealFiled
        {
            Id = command.Id,
            Instant = asking.Now,
            By = asking.By,
            Lane = command.Lane,
            Member = command.Member,
            Grounds = command.Grounds,
            Late = late,
            Reason = command.Reason,
        });
    }

    private static int Minutes(HeatState heat) => heat.Snapshot!.AppealMinutes ?? HeatSnapshot.UsualAppealMinutes;

    private static Part.TimeOfDay Until(HeatState heat, Asking asking) => new(heat.AppealsUntil!.Value, asking.VenueOffsetMinutes);

    private static Verdict Decide(HeatState heat, HeatCommand.DecideAppeal command, Asking asking)
    {
        if (heat.Find(command.Target)?.Fact is not HeatFact.AppealFiled filed || heat.Find(filed.Lane)?.Appeals.FirstOrDefault(one => one.Filed.Id == filed.Id) is not { } appeal)
        {
            return new Verdict.Refused("no-such-fact", Refusals.NoSuchAppeal);
        }

        if (!appeal.Open)
        {
            return HeatRules.WrongPhase(Refusals.AppealDecided);
        }

        if (string.IsNullOrWhiteSpace(command.Reason))
        {
            return new Verdict.Refused("reason-needed", Refusals.WhyDecidedSo);
        }

        return Amount(heat, command) ?? Part(heat.Find(filed.Lane)!, command) ?? (Verdict)new Verdict.Accepted(new HeatFact.AppealDecided
        {
            Id = command.Id,
            Instant = asking.Now,
            By = asking.By,
            Target = command.Target,
            Outcome = command.Outcome,
            AddMs = command.AddMs,
            Reps = command.Reps,
            InHeat = command.InHeat,
            Part = command.Part,
            Reason = command.Reason,
        });
    }

    /// <summary>A part is named only where something counts in it.</summary>
    private static Verdict.Refused? Part(LaneState lane, HeatCommand.DecideAppeal command) => command is { Part: not null, Outcome: not (AppealOutcome.Seconds or AppealOutcome.Reps) }
        ? new("unreadable", Refusals.AppealGivesNothing)
        : RulingRules.NoSuchPart(lane, command.Part);

    /// <summary>Only what belongs to the outcome may be given with it.</summary>
    private static Verdict.Refused? Amount(HeatState heat, HeatCommand.DecideAppeal command) => command switch
    {
        { Outcome: AppealOutcome.Seconds, Reps: 0, InHeat: null, AddMs: not 0 and >= -RulingRules.MostMs and <= RulingRules.MostMs } => null,
        { Outcome: AppealOutcome.Seconds } => new("unreadable", Refusals.AppealGivesSeconds),
        { Outcome: AppealOutcome.Reps, AddMs: 0, InHeat: null, Reps: not 0 and >= -RulingRules.MostReps and <= RulingRules.MostReps } => null,
        { Outcome: AppealOutcome.Reps } => new("unreadable", Refusals.AppealGivesReps(RulingRules.MostReps)),
        { Outcome: AppealOutcome.Rerun, AddMs: 0, Reps: 0, InHeat: { } other } when other != heat.Heat => null,
        { Outcome: AppealOutcome.Rerun } => new("unreadable", Refusals.AppealGivesRerun),
        { AddMs: 0, Reps: 0, InHeat: null } => null,
        _ => new("unreadable", Refusals.AppealGivesNothing),
    };
}
