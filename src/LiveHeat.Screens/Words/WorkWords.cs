using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Heats;

namespace LiveHeat.Screens.Words;

/// <summary>Where a lane is in its work.</summary>
public static class WorkWords
{
    private static readonly Wording Words = new(typeof(WorkWords));

    /// <summary>Who works: a name, or the whole team; between two rounds by the clock, that nobody does.</summary>
    public static string Worker(LaneView lane) => lane.RestsUntilMs is not null ? Words["Worker.Rest"] : lane.OpenStep is { Athlete: 0 } ? CommonWords.Together : lane.Worker;

    /// <summary>At what: "12 burpees", "tag Ilka"; in a rest until when and what then: "until 3:00, then Theo: 10 wall balls"; empty when all is done.</summary>
    public static string Work(LaneView lane) => lane.OpenStep is not { } step ? ""
        : lane.RestsUntilMs is not { } until ? step.Label
        : lane.Next.Length > 0 ? Words.Say("Work.Until", TimeWords.Clock(until), lane.Next, step.Label) : Words.Say("Work.UntilWork", TimeWords.Clock(until), step.Label);

    /// <summary>"round 5 of 8", "first work", "last work"; empty when there are no rounds.</summary>
    public static string Round(LaneView lane) => lane.OpenStep switch
    {
        null => "",
        { Round: > 0 } step when lane.Sheet.ExpectedSteps is not null => Words.Say("Round.Alone", step.Round),
        { Round: > 0 } step => lane.Rounds > 1 ? Words.Say("Round.Of", step.Round, lane.Rounds) : "",
        { Round: 0 } => lane.Rounds > 0 ? Words["Round.Before"] : "",
        _ => lane.Rounds > 0 ? Words["Round.After"] : "",
    };

    /// <summary>"Round 3", over what belongs to it.</summary>
    public static string RoundNumber(int round) => Words.Say(nameof(RoundNumber), round);

    /// <summary>"in round 5 of 8, on 12 burpees", or how it ended.</summary>
    public static string Distance(LaneView lane)
    {
        if (Ended(lane) is { Length: > 0 } ended)
        {
            return ended;
        }

        if (lane.RestsUntilMs is not null)
        {
            return Work(lane);
        }

        return Round(lane) is { Length: > 0 } round ? Words.Say(lane.OpenStep?.Round > 0 ? "Distance.InRound" : "Distance.Part", round, On(lane)) : On(lane);
    }

    /// <summary>How the lane ended; empty while it works.</summary>
    public static string Ended(LaneView lane) => lane.State.Status switch
    {
        LaneStatus.Finished or LaneStatus.Through => Words["Ended.Finished"],
        LaneStatus.Capped or LaneStatus.Stopped or LaneStatus.Withdrawn or LaneStatus.Disqualified => Words[$"{nameof(Ended)}.{lane.State.Status}"],
        _ => "",
    };

    /// <summary>A lane's status for the desk.</summary>
    public static string Status(LaneStatus status) => Words[$"{nameof(Status)}.{status}"];

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
            return Words[state.Tied ? "Gap.Level" : state.Status == LaneStatus.Finished ? "Gap.First" : "Gap.Leads"];
        }

        var reps = state.Status != LaneStatus.Finished && state.GapWorth > 0 ? ScoreWords.Of(state.GapWorth, state.Score) : null;
        return (state.GapMs, reps) switch
        {
            ({ } ms, null) => Words.Say("Gap.Behind", TimeWords.Gap(ms)),
            ({ } ms, _) => Words.Say("Gap.BehindTwo", TimeWords.Gap(ms), reps),
            (null, not null) => Words.Say("Gap.Behind", reps),
            _ => "",
        };
    }

    /// <summary>The place; before anybody has shown anything all share the first, which says nothing.</summary>
    public static string Place(LaneView lane) => HasShown(lane) ? CommonWords.Place(lane.State.Place, lane.State.Tied) : "";

    /// <summary>Whether the place means something yet.</summary>
    public static bool HasShown(LaneView lane) => lane.State is { Worth: > 0 } or { Open: > 1 } or { Place: > 1 };

    /// <summary>What a finisher or a capped team has to show: a time, or reps.</summary>
    public static string Score(LaneView lane) => lane.State switch
    {
        { Status: LaneStatus.Withdrawn or LaneStatus.Disqualified } => "",
        { Status: LaneStatus.Finished, FinishMs: null } => Words["Score.TimeUnknown"],
        { Status: LaneStatus.Finished } state => TimeWords.Exact(state.OfficialMs ?? state.FinishMs!.Value),
        { Score: { } unit } state => ScoreWords.Of(Math.Max(0, state.Worth - (state.PenaltyReps * unit.Scale)), unit),
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        { } state when lane.Sheet.ExpectedSteps is not null => CommonWords.Reps(Math.Max(0, state.Worth - state.PenaltyReps)),
        { } state => Words.Say("Score.Share", state.Worth - state.PenaltyReps, CommonWords.Reps(lane.WorthOfAll)),
    };

    private static string On(LaneView lane) => lane switch
    {
        { OpenStep.Kind: StepKind.Tag } => Words["On.Tag"],
        { OpenStep: { Kind: StepKind.Set } set, State.Count: { } count } when lane.Place.Open == lane.State.Open => Words.Say("On.Counted", Work(lane), count, set.Quantity),
        _ => Words.Say("On.Work", Work(lane)),
    };
}
