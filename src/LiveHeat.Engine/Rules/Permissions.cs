using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

/// <summary>Who may ask for what.</summary>
public static class Permissions
{
    /// <summary>Null when the asker may; otherwise the refusal.</summary>
    public static Verdict.Refused? Refuse(HeatCommand command, Asking asking)
    {
        var role = asking.By.Role;
        var may = command switch
        {
            HeatCommand.TakeSeat or HeatCommand.GiveUpSeat or HeatCommand.Ready => role is Role.Judge or Role.HeadJudge or Role.Organiser,
            HeatCommand.Call or HeatCommand.ReplaceCall or HeatCommand.ScheduleStart or HeatCommand.ObserveStart or HeatCommand.RecallStart
                or HeatCommand.Resume or HeatCommand.ReturnToCall or HeatCommand.End or HeatCommand.Freeze or HeatCommand.Reopen => role is Role.Organiser,
            HeatCommand.DecideAppeal => role is Role.HeadJudge,
            _ => role is Role.HeadJudge or Role.Organiser,
        };
        if (!may && command is HeatCommand.DecideAppeal)
        {
            return new Verdict.Refused("not-yours", Refusals.OnlyHeadJudgeDecides);
        }

        if (!may)
        {
            return new Verdict.Refused("not-yours", command is HeatCommand.OnLane ? Refusals.CannotAskHeadJudge(role) : Refusals.CannotAskOrganiser(role));
        }

        return role == Role.Judge && command is HeatCommand.OnLane { Lane: var lane } && lane != asking.Lane
            ? new Verdict.Refused("not-your-lane", Refusals.JudgesOtherLane(asking.Lane?.Value ?? 0, lane))
            : null;
    }
}
