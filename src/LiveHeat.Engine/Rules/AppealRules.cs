using System.Globalization;
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
            HeatRules.WrongPhase("The result is certified. Reopen the heat, with a reason, to rule on it: what comes of it is signed as a new revision."),
        HeatCommand.Disqualify disqualify => Disqualify(heat.Find(disqualify.Lane)!, disqualify, asking),
        HeatCommand.FileAppeal file => File(heat, file, asking),
        HeatCommand.DecideAppeal decide => Decide(heat, decide, asking),
        _ => null,
    };

    private static Verdict Disqualify(LaneState lane, HeatCommand.Disqualify command, Asking asking)
    {
        if (string.IsNullOrWhiteSpace(command.Reason))
        {
            return new Verdict.Refused("reason-needed", "Say why the team is disqualified: the result will carry it.");
        }

        return lane.Disqualified is null
            ? new Verdict.Accepted(new HeatFact.Disqualified { Id = command.Id, Instant = asking.Now, By = asking.By, Lane = command.Lane, Reason = command.Reason })
            : HeatRules.WrongPhase($"Lane {command.Lane} is disqualified already. Void that ruling to take it back.");
    }

    private static Verdict File(HeatState heat, HeatCommand.FileAppeal command, Asking asking)
    {
        if (heat.Clock.Start is not { } start || start.GoAt > asking.Now)
        {
            return HeatRules.WrongPhase("The heat has not started: there is nothing to appeal against.");
        }

        if (string.IsNullOrWhiteSpace(command.Member) || command.Member.Length > LongestName)
        {
            return new Verdict.Refused("unreadable", "Write the name of the team member who appeals, in at most 100 letters.");
        }

        if (string.IsNullOrWhiteSpace(command.Grounds) || command.Grounds.Length > LongestText)
        {
            return new Verdict.Refused("unreadable", "Write what the appeal is about, in at most 2,000 letters.");
        }

        var late = heat.AppealsUntil is { } until && asking.Now > until;
        if (late && asking.By.Role != Role.HeadJudge)
        {
            return new Verdict.Refused("appeal-window-over", $"{Over(heat, asking)} Only the head judge can let a late one in, with a reason.");
        }

        if (late && string.IsNullOrWhiteSpace(command.Reason))
        {
            return new Verdict.Refused("appeal-window-over", $"{Over(heat, asking)} To let a late one in, say why.");
        }

        return new Verdict.Accepted(new HeatFact.AppealFiled
        {
            Id = command.Id, Instant = asking.Now, By = asking.By, Lane = command.Lane, Member = command.Member, Grounds = command.Grounds, Late = late, Reason = command.Reason,
        });
    }

    private static string Over(HeatState heat, Asking asking)
    {
        var minutes = heat.Snapshot!.AppealMinutes ?? HeatSnapshot.UsualAppealMinutes;
        var until = (heat.AppealsUntil!.Value.UnixMs / 60_000) + asking.VenueOffsetMinutes;
        return string.Create(CultureInfo.InvariantCulture,
            $"Appeals were possible until {Hours(until):00}:{Minutes(until):00}, {minutes} {(minutes == 1 ? "minute" : "minutes")} after the provisional result was posted.");
    }

    private static long Hours(long minutes) => minutes / 60 % 24;

    private static long Minutes(long minutes) => minutes % 60;

    private static Verdict Decide(HeatState heat, HeatCommand.DecideAppeal command, Asking asking)
    {
        if (heat.Find(command.Target)?.Fact is not HeatFact.AppealFiled filed || heat.Find(filed.Lane)?.Appeals.FirstOrDefault(one => one.Filed.Id == filed.Id) is not { } appeal)
        {
            return new Verdict.Refused("no-such-fact", "This heat has no such appeal, or it was taken back.");
        }

        if (!appeal.Open)
        {
            return HeatRules.WrongPhase("This appeal is decided already. Void that decision to decide again.");
        }

        if (string.IsNullOrWhiteSpace(command.Reason))
        {
            return new Verdict.Refused("reason-needed", "Say why it is decided so: the team will read it on the result.");
        }

        return Amount(heat, command) ?? (Verdict)new Verdict.Accepted(new HeatFact.AppealDecided
        {
            Id = command.Id, Instant = asking.Now, By = asking.By, Target = command.Target, Outcome = command.Outcome,
            AddMs = command.AddMs, Reps = command.Reps, InHeat = command.InHeat, Reason = command.Reason,
        });
    }

    /// <summary>Only what belongs to the outcome may be given with it.</summary>
    private static Verdict.Refused? Amount(HeatState heat, HeatCommand.DecideAppeal command) => command switch
    {
        { Outcome: AppealOutcome.Seconds, Reps: 0, InHeat: null, AddMs: not 0 and >= -RulingRules.MostMs and <= RulingRules.MostMs } => null,
        { Outcome: AppealOutcome.Seconds } => new("unreadable", "Give the seconds to add or to give back, up to an hour, and nothing else."),
        { Outcome: AppealOutcome.Reps, AddMs: 0, InHeat: null, Reps: not 0 and >= -RulingRules.MostReps and <= RulingRules.MostReps } => null,
        { Outcome: AppealOutcome.Reps } => new("unreadable", "Give the reps to take or to give back, up to 10,000, and nothing else."),
        { Outcome: AppealOutcome.Rerun, AddMs: 0, Reps: 0, InHeat: { } other } when other != heat.Heat => null,
        { Outcome: AppealOutcome.Rerun } => new("unreadable", "A rerun is another heat. Set one up, then name it, and give nothing else."),
        { AddMs: 0, Reps: 0, InHeat: null } => null,
        _ => new("unreadable", "If the result stands, there are no seconds, reps or rerun to give."),
    };
}
