using System.Globalization;
using LiveHeat.Contracts.Programme;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Appeals;

/// <summary>What may come of an appeal, as a form offers it: the sign is a choice, not a minus to be typed.</summary>
public enum DecisionKind
{
    /// <summary>The result stands.</summary>
    NoChange,

    /// <summary>Time given back.</summary>
    GiveTime,

    /// <summary>Time taken.</summary>
    AddTime,

    /// <summary>Reps given back.</summary>
    GiveReps,

    /// <summary>Reps taken.</summary>
    TakeReps,

    /// <summary>Again in another heat.</summary>
    Rerun,
}

/// <summary>A decision while it is written.</summary>
public sealed class AppealDecision
{
    public DecisionKind Kind { get; set; }

    /// <summary>As typed: a time with time, a number with reps.</summary>
    public string Amount { get; set; } = "";

    /// <summary>With a rerun: the heat's id.</summary>
    public string? InHeat { get; set; }

    /// <summary>With time or reps, where parts are scored apart: the part, from 1; 0: only the whole; null: by when it is decided.</summary>
    public int? Part { get; set; }

    /// <summary>The command, or what is wrong with the amount or the heat.</summary>
    public (Func<FactId, string, HeatCommand>? Make, string? Wrong) Make(FactId target, IReadOnlyList<ProgramHeat> heats) => Kind switch
    {
        DecisionKind.NoChange => (Of(target, AppealOutcome.NoChange), null),
        DecisionKind.GiveTime or DecisionKind.AddTime => TimeWords.Parse(Amount) is > 0 and var ms
            ? (Of(target, AppealOutcome.Seconds, addMs: Kind == DecisionKind.GiveTime ? -ms : ms), null)
            : (null, RulingWords.BadTime),
        DecisionKind.GiveReps or DecisionKind.TakeReps => int.TryParse(Amount.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var reps) && reps > 0
            ? (Of(target, AppealOutcome.Reps, reps: Kind == DecisionKind.GiveReps ? -reps : reps), null)
            : (null, RulingWords.BadCount),
        _ => (heats.FirstOrDefault(heat => heat.Heat.Value == InHeat) ?? (heats.Count > 0 ? heats[0] : null)) is { } heat
            ? (Of(target, AppealOutcome.Rerun, inHeat: heat.Heat), null)
            : (null, AppealWords.PickHeat),
    };

    private Func<FactId, string, HeatCommand> Of(FactId target, AppealOutcome outcome, int addMs = 0, int reps = 0, HeatId? inHeat = null) =>
        (id, reason) => new HeatCommand.DecideAppeal { Id = id, Target = target, Outcome = outcome, AddMs = addMs, Reps = reps, InHeat = inHeat, Part = outcome is AppealOutcome.Seconds or AppealOutcome.Reps ? Part : null, Reason = reason };
}
