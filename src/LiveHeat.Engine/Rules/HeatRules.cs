using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Rules;

/// <summary>Decides commands against a heat's state: a fact, or a refusal that says why.</summary>
public static class HeatRules
{
    /// <summary>The verdict. It changes nothing; whoever asks appends the fact after the state it was decided on.</summary>
    public static Verdict Decide(HeatState heat, HeatCommand command, Asking asking)
    {
        if (Permissions.Refuse(command, asking) is { } refusal)
        {
            return refusal;
        }

        if (heat.Snapshot is null && command is not HeatCommand.Call)
        {
            return new Verdict.Refused("wrong-phase", Refusals.NotCalledYet);
        }

        if (command is HeatCommand.OnLane { Lane: var lane } && heat.Find(lane) is null)
        {
            return new Verdict.Refused("no-such-lane", Refusals.NoSuchLane(lane));
        }

        return CallRules.Decide(heat, command, asking)
            ?? ClockRules.Decide(heat, command, asking)
            ?? RulingRules.Decide(heat, command, asking)
            ?? NearTieRules.Decide(heat, command, asking)
            ?? AppealRules.Decide(heat, command, asking)
            ?? EndRules.Decide(heat, command, asking)
            ?? throw new ArgumentOutOfRangeException(nameof(command), command, "No rule decides this command.");
    }

    internal static Verdict.Refused WrongPhase(Telling why) => new("wrong-phase", why);
}
