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
            return new Verdict.Refused("not-yours", "Only the head judge decides an appeal.");
        }

        if (!may)
        {
            return new Verdict.Refused("not-yours", $"A {Words(role)} cannot do this. Ask the {(command is HeatCommand.OnLane ? "head judge" : "organiser")}.");
        }

        return role == Role.Judge && command is HeatCommand.OnLane { Lane: var lane } && lane != asking.Lane
            ? new Verdict.Refused("not-your-lane", $"This phone judges lane {asking.Lane?.Value ?? 0}, not lane {lane}. Join with the code of lane {lane} to judge it.")
            : null;
    }

    private static string Words(Role role) => role switch
    {
        Role.Judge => "lane judge",
        Role.HeadJudge => "head judge",
        Role.Announcer => "announcer",
        Role.Viewer => "viewer",
        _ => "organiser",
    };
}
