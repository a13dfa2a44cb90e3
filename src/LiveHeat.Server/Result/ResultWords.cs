using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Result;

/// <summary>What the result page says of a lane and of the rules in force.</summary>
internal static class ResultWords
{
    private static readonly Wording Words = new(typeof(ResultWords));

    public static string Place(ResultLane lane) => lane is { Pending: true, Place: not null } ? Pending(Place(lane.Place, lane.Tied)) : Place(lane.Place, lane.Tied);

    public static string Place(int? place, bool tied) => place is { } known ? Numbers.Place(known) + (tied ? " =" : "") : "–";

    public static string Score(ResultLane lane) => lane switch
    {
        { Outcome: Outcome.DidNotStart } => DidNotStart,
        { Outcome: Outcome.Disqualified } => Disqualified,
        { Outcome: Outcome.FinishedTimeUnknown } => TimeToBeSettled,
        { OfficialMs: { } ms } => Numbers.Time(ms),
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        { Score: not null } => ScoreWords.Of(lane.Worth, lane.Score),
        _ => RepsOf(lane.Worth, lane.WorthOfAll),
    };

    /// <summary>What a step came to beside its time: the load and whether it was a good lift, the reading, no-reps; empty where there is nothing to say.</summary>
    public static string InStep(ResultLane lane, ResultSplit split)
    {
        if (lane.Attempts?.FirstOrDefault(attempt => attempt.Step == split.Step) is not { } attempt)
        {
            return string.Join(", ", new[] { split.Value is { } value ? Numbers.Of(value) : "", split.NoReps == 0 ? "" : NoReps(split.NoReps) }.Where(part => part.Length > 0));
        }

        var load = ScoreWords.Load(attempt.Load, lane.Score);
        return attempt.Good ? GoodLift(load) : attempt.Fault is { } fault ? NoLiftFor(load, LibraryTelling.Tell(fault)) : NoLift(load);
    }

    public static string How(ResultLane lane) => lane.Outcome switch
    {
        Outcome.Capped when lane.OfficialMs is not null => CapMissing(lane.WorthOfAll - lane.Worth),
        Outcome.Capped => lane.RoundsAndReps is null && lane.Score is null ? TimeCap : "",
        Outcome.Stopped => Withdrew,     // Whether it was for health is nobody's business: one word for both.
        Outcome.Working => StillWorking,
        Outcome.Disqualified => lane.Disqualified ?? "",
        _ => "",
    };

    /// <summary>How teams rank that have no time of their own, for the foot of the page.</summary>
    public static string Order(ScoringRule rule) => rule switch
    {
        ScoringRule.HeaviestLoad { LoadSum: LoadSum.SumOfBest } => LoadsSummed,
        ScoringRule.HeaviestLoad => BestLoad,
        ScoringRule.MostReading => MostReading,
        ScoringRule.MostWork => MostWork,
        ScoringRule.ForTime { Unfinished: Unfinished.CapPlusSeconds } => CapPlusSeconds,
        _ => AfterFinishers,
    };

    /// <summary>What becomes of teams of the same score, where the order does not say so itself.</summary>
    public static string EqualScores(ResultTable table) => table.Scoring switch
    {
        ScoringRule.HeaviestLoad or ScoringRule.MostReading => "",
        ScoringRule.ForTime => $"{EqualTimes} {AtCap(table)}",
        _ => ByClock(table) ? SharedScore : AtCap(table),
    };

    private static string AtCap(ResultTable table) => table.EqualWork == EqualWork.Shared ? SharedAtCap : EarlierAhead;

    /// <summary>Work without an end that is told in no rounds and reps has its rounds by the clock.</summary>
    private static bool ByClock(ResultTable table) => table.Scoring is ScoringRule.MostWork && table.Lanes.All(lane => lane.RoundsAndReps is null);

    /// <summary>Which set parts teams of the same score; empty where none does.</summary>
    public static string Ties(ResultTable table) => table.Lanes.Select(lane => lane.Tiebreak).OfType<string>().Distinct().ToList() is { Count: > 0 } sets ? TiebreakDecides(Lists.Or(sets)) : "";

    public static string Status(ResultTable table) => table.Status switch
    {
        "certified" => Certified,
        "frozen" => Frozen,
        _ => Provisional,
    };

    public static string RoundingRule(Rounding rule) => rule switch
    {
        Rounding.UpTenth => UpTenth,
        Rounding.UpSecond => UpSecond,
        Rounding.UpHundredth => UpHundredth,
        _ => CutHundredth,
    };

    public static string TimekeeperRule(Engine.Timing.TimekeeperRule rule) => rule == Engine.Timing.TimekeeperRule.Athletics ? LongerOfTwo : AverageOfTwo;

    public static string Who(Role role) => role == Role.Organiser ? Organiser : HeadJudge;

    public static string Penalties(ResultLane lane)
    {
        var named = lane.Parts.Select(part => part.Name).ToItems();
        var parts = lane.Penalties.Select(penalty => string.Join(" ", new[]
        {
            PartWords.Of(string.Join(" ", new[]
            {
                penalty.AddMs > 0 ? $"+{Numbers.Time(penalty.AddMs)}" : "",
                penalty.Reps > 0 ? $"−{ScoreWords.Of(penalty.Reps * (lane.Score?.Scale ?? 1), lane.Score)}" : "",
            }.Where(cost => cost.Length > 0)), penalty.Part, named),
            penalty.Reason.Length > 0 ? $"({penalty.Reason})" : ReasonToFollow,
        }.Where(part => part.Length > 0))).ToList();
        if (lane.AdjustMs != 0)
        {
            parts.Add(Adjusted($"{(lane.AdjustMs > 0 ? "+" : "")}{Numbers.Time(lane.AdjustMs)}"));
        }

        if (lane.Tiebreak is { } set && lane.Outcome is Outcome.Capped or Outcome.Stopped or Outcome.Working or Outcome.Through)
        {
            parts.Add(TiebreakAt(lane.TiebreakMs is { } ms ? Numbers.Time(ms) : "–", set));
        }

        if (lane.NotRanked is { } apart)
        {
            parts.Add(apart);
        }

        parts.AddRange(lane.Consequences);
        if (lane.NearTie is { } near)
        {
            parts.Add(near);
        }

        if (lane.TimekeeperMs.Count > 0)
        {
            parts.Add(Timekeepers(string.Join(", ", lane.TimekeeperMs.Select(ms => Numbers.Time(ms)))));
        }

        if (lane.CountsInHeat is { } rerun)
        {
            parts.Add(Rerun(rerun));
        }

        if (lane.HeldMs > 0)
        {
            parts.Add(Held(Numbers.Time(TimeText.Tenths(lane.HeldMs))));
        }

        return string.Join("; ", parts);
    }

    public static string ReadBack(ReadBack? read) => read is null ? "" : read.Agreed ? AgreedBy(read.Name) : DisputedBy(read.Name);

    private static string DidNotStart => Words[nameof(DidNotStart)];

    private static string Disqualified => Words[nameof(Disqualified)];

    private static string TimeToBeSettled => Words[nameof(TimeToBeSettled)];

    private static string TimeCap => Words[nameof(TimeCap)];


    private static string Withdrew => Words[nameof(Withdrew)];

    private static string StillWorking => Words[nameof(StillWorking)];

    private static string LoadsSummed => Words[nameof(LoadsSummed)];

    private static string BestLoad => Words[nameof(BestLoad)];

    private static string MostReading => Words[nameof(MostReading)];

    private static string MostWork => Words[nameof(MostWork)];

    private static string CapPlusSeconds => Words[nameof(CapPlusSeconds)];

    private static string AfterFinishers => Words[nameof(AfterFinishers)];

    private static string EarlierAhead => Words[nameof(EarlierAhead)];

    private static string EqualTimes => Words[nameof(EqualTimes)];

    private static string SharedAtCap => Words[nameof(SharedAtCap)];

    private static string SharedScore => Words[nameof(SharedScore)];

    private static string Certified => Words[nameof(Certified)];

    private static string Frozen => Words[nameof(Frozen)];

    private static string Provisional => Words[nameof(Provisional)];

    private static string UpTenth => Words[nameof(UpTenth)];

    private static string UpSecond => Words[nameof(UpSecond)];

    private static string UpHundredth => Words[nameof(UpHundredth)];

    private static string CutHundredth => Words[nameof(CutHundredth)];

    private static string LongerOfTwo => Words[nameof(LongerOfTwo)];

    private static string AverageOfTwo => Words[nameof(AverageOfTwo)];

    private static string Organiser => Words[nameof(Organiser)];

    private static string HeadJudge => Words[nameof(HeadJudge)];

    private static string ReasonToFollow => Words[nameof(ReasonToFollow)];

    private static string Pending(string place) => Words.Say(nameof(Pending), place);

    private static string RepsOf(int done, int all) => Words.Say(nameof(RepsOf), done, all);

    private static string NoReps(int count) => Words.Count(nameof(NoReps), count);

    private static string GoodLift(string load) => Words.Say(nameof(GoodLift), load);

    private static string NoLift(string load) => Words.Say(nameof(NoLift), load);

    private static string NoLiftFor(string load, string fault) => Words.Say(nameof(NoLiftFor), load, fault);

    private static string CapMissing(int reps) => Words.Count(nameof(CapMissing), reps);

    private static string TiebreakDecides(string sets) => Words.Say(nameof(TiebreakDecides), sets);

    private static string Adjusted(string time) => Words.Say(nameof(Adjusted), time);

    private static string TiebreakAt(string time, string set) => Words.Say(nameof(TiebreakAt), time, set);

    private static string Timekeepers(string times) => Words.Say(nameof(Timekeepers), times);

    private static string Rerun(HeatId heat) => Words.Say(nameof(Rerun), heat);

    private static string Held(string time) => Words.Say(nameof(Held), time);

    private static string AgreedBy(string name) => Words.Say(nameof(AgreedBy), name);

    private static string DisputedBy(string name) => Words.Say(nameof(DisputedBy), name);
}
