using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Where a lane is in its work.</summary>
public static class WorkWords
{
    /// <summary>Who works: a name, or the whole team.</summary>
    public static string Worker(LaneView lane) => lane.OpenStep is { Athlete: 0 } ? CommonWords.Together : lane.Worker;

    /// <summary>At what: "12 burpees", "tag Ilka"; empty when all is done.</summary>
    public static string Work(LaneView lane) => lane.OpenStep?.Label ?? "";

    /// <summary>"round 5 of 8", "first work", "last work"; empty when there are no rounds.</summary>
    public static string Round(LaneView lane) => lane.OpenStep switch
    {
        null => "",
        { Round: > 0 } step when lane.Sheet.ExpectedSteps is not null => $"round {step.Round}",
        { Round: > 0 } step => lane.Rounds > 1 ? $"round {step.Round} of {lane.Rounds}" : "",
        { Round: 0 } => lane.Rounds > 0 ? "first work" : "",
        _ => lane.Rounds > 0 ? "last work" : "",
    };

    /// <summary>"Round 3", over what belongs to it.</summary>
    public static string RoundNumber(int round) => $"Round {round}";

    /// <summary>"in round 5 of 8, on 12 burpees", or how it ended.</summary>
    public static string Distance(LaneView lane)
    {
        if (Ended(lane) is { Length: > 0 } ended)
        {
            return ended;
        }

        var counted = lane.State.Count is { } count && lane.OpenStep is { Kind: StepKind.Set } set ? $" ({count} of {set.Quantity})" : "";
        var on = lane.OpenStep?.Kind == StepKind.Tag ? "at the tag" : $"on {Work(lane)}{counted}";
        return Round(lane) is { Length: > 0 } round ? $"{(lane.OpenStep?.Round > 0 ? "in " : "")}{round}, {on}" : on;
    }

    /// <summary>How the lane ended; empty while it works.</summary>
    public static string Ended(LaneView lane) => lane.State.Status switch
    {
        LaneStatus.Finished or LaneStatus.Through => "all done",
        LaneStatus.Capped => "not through in time",
        LaneStatus.Stopped => "has stopped",
        LaneStatus.Withdrawn => "did not start",
        LaneStatus.Disqualified => "disqualified",
        _ => "",
    };

    /// <summary>A lane's status for the desk.</summary>
    public static string Status(LaneStatus status) => status switch
    {
        LaneStatus.Waiting => "no judge",
        LaneStatus.Seated => "judge seated",
        LaneStatus.Ready => "ready",
        LaneStatus.Working => "working",
        LaneStatus.Held => "held",
        LaneStatus.Finished => "finished",
        LaneStatus.Through => "all done",
        LaneStatus.Capped => "time cap",
        LaneStatus.Stopped => "stopped",
        LaneStatus.Disqualified => "disqualified",
        _ => "withdrawn",
    };

    /// <summary>Behind the leader, in seconds and in what is counted: "8 s behind, 14 reps"; "leads" for the first; empty when there is nothing to say.</summary>
    public static string Gap(LaneView lane)
    {
        var state = lane.State;
        if (state.Place is null || !HasShown(lane))
        {
            return "";
        }

        if (state.Place == 1)
        {
            return state.Tied ? "level at the front" : state.Status == LaneStatus.Finished ? "first through" : "leads";
        }

        var time = state.GapMs is { } ms ? $"{TimeWords.Gap(ms)} behind" : "";
        var reps = state.Status != LaneStatus.Finished && state.GapWorth > 0 ? ScoreWords.Of(state.GapWorth, state.Score) + (time.Length == 0 ? " behind" : "") : "";
        return string.Join(", ", new[] { time, reps }.Where(part => part.Length > 0));
    }

    /// <summary>The place; before anybody has shown anything all share the first, which says nothing.</summary>
    public static string Place(LaneView lane) => HasShown(lane) ? CommonWords.Place(lane.State.Place, lane.State.Tied) : "";

    /// <summary>Whether the place means something yet.</summary>
    public static bool HasShown(LaneView lane) => lane.State is { Worth: > 0 } or { Open: > 1 } or { Place: > 1 };

    /// <summary>What a finisher or a capped team has to show: a time, or reps.</summary>
    public static string Score(LaneView lane) => lane.State switch
    {
        { Status: LaneStatus.Withdrawn or LaneStatus.Disqualified } => "",
        { Status: LaneStatus.Finished, FinishMs: null } => "time unknown",
        { Status: LaneStatus.Finished } state => TimeWords.Exact(state.OfficialMs ?? state.FinishMs!.Value),
        { Score: { } unit } state => ScoreWords.Of(Math.Max(0, state.Worth - (state.PenaltyReps * unit.Scale)), unit),
        { } state when lane.Sheet.ExpectedSteps is not null => CommonWords.Reps(Math.Max(0, state.Worth - state.PenaltyReps)),
        { } state => $"{state.Worth - state.PenaltyReps} of {CommonWords.Reps(lane.WorthOfAll)}",
    };
}
