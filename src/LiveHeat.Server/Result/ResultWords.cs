using System.Globalization;
using LiveHeat.Contracts.Results;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Result;

/// <summary>The words of the result page.</summary>
internal static class ResultWords
{
    public static string Place(ResultLane lane) => lane is { Pending: true, Place: not null } ? $"({Place(lane.Place, lane.Tied)}) pending" : Place(lane.Place, lane.Tied);

    public static string Place(int? place, bool tied) => place is { } known ? Ordinal(known) + (tied ? " =" : "") : "–";

    public static string Reps(int worth) => string.Create(CultureInfo.InvariantCulture, $"{worth} rep{(worth == 1 ? "" : "s")}");

    public static string Score(ResultLane lane) => lane switch
    {
        { Outcome: Outcome.DidNotStart } => "did not start",
        { Outcome: Outcome.Disqualified } => "disqualified",
        { Outcome: Outcome.FinishedTimeUnknown } => "finished, time to be settled",
        { OfficialMs: { } ms } => TimeText.Of(ms),
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        { Score: not null } => ScoreWords.Of(lane.Worth, lane.Score),
        _ => string.Create(CultureInfo.InvariantCulture, $"{lane.Worth} of {lane.WorthOfAll} reps"),
    };

    /// <summary>What a step came to beside its time: the load and whether it was a good lift, the reading, no-reps; empty where there is nothing to say.</summary>
    public static string InStep(ResultLane lane, ResultSplit split)
    {
        if (lane.Attempts?.FirstOrDefault(attempt => attempt.Step == split.Step) is not { } attempt)
        {
            var noReps = split.NoReps == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{split.NoReps} no-rep{(split.NoReps == 1 ? "" : "s")}");
            return string.Join(", ", new[] { split.Value?.ToString("#,0.##", CultureInfo.InvariantCulture), noReps }.Where(part => part?.Length > 0));
        }

        var load = ScoreWords.Load(attempt.Load, lane.Score);
        return attempt.Good ? $"{load}, good lift" : attempt.Fault is { } fault ? $"{load}, no lift: {fault}" : $"{load}, no lift";
    }

    public static string How(ResultLane lane) => lane.Outcome switch
    {
        Outcome.Capped when lane.OfficialMs is not null => string.Create(CultureInfo.InvariantCulture, $"time cap, {Missing(lane.WorthOfAll - lane.Worth)}"),
        Outcome.Capped => lane.RoundsAndReps is null && lane.Score is null ? "time cap" : "",
        Outcome.Stopped => lane.Withdrew is true ? "withdrew" : "stopped",
        Outcome.Working => "still working",
        Outcome.Disqualified => lane.Disqualified ?? "",
        _ => "",
    };

    /// <summary>How teams rank that have no time of their own, for the foot of the page.</summary>
    public static string Order(ScoringRule rule) => rule switch
    {
        ScoringRule.HeaviestLoad { LoadSum: LoadSum.SumOfBest } => "The heaviest load first: the best good lift of each athlete, added up. Equal loads share the place.",
        ScoringRule.HeaviestLoad => "The heaviest load first: the best good lift of any athlete. Equal loads share the place.",
        ScoringRule.MostReading => "The most on the machines first: the readings added up, their fractions cut. Equal scores share the place.",
        ScoringRule.MostWork => "As many rounds and reps as possible: the most work first, then who got there first.",
        ScoringRule.ForTime { Unfinished: Unfinished.CapPlusSeconds } =>
            "A team that its cap stopped has its cap and one second for each rep that is missing; a finish ranks ahead of the same time, then who got there first.",
        _ => "Unfinished teams rank after finishers, by reps, then by who got there first.",
    };

    /// <summary>Which set parts teams of the same score; empty where none does.</summary>
    public static string Ties(ResultTable table) => table.Lanes.Select(lane => lane.Tiebreak).OfType<string>().Distinct().ToList() is { Count: > 0 } sets
        ? $"Before that the tiebreak decides: who was done first with {string.Join(", or ", sets)}."
        : "";

    public static string Status(ResultTable table) => table.Status switch
    {
        "certified" => "Certified",
        "frozen" => "Frozen: under review",
        _ => "Provisional: not official",
    };

    public static string RoundingRule(Rounding rule) => rule switch
    {
        Rounding.UpTenth => "hand times, rounded up to the next 0.1 s",
        Rounding.UpSecond => "rounded up to the next second",
        Rounding.UpHundredth => "rounded up to the next 0.01 s",
        _ => "cut to 0.01 s",
    };

    public static string TimekeeperRule(Engine.Timing.TimekeeperRule rule) => rule == Engine.Timing.TimekeeperRule.Athletics
        ? "several timekeepers: two that agree, else the middle; the longer of two"
        : "several timekeepers: two that agree, else the middle; the average of two";

    public static string Who(Role role) => role == Role.Organiser ? "organiser" : "head judge";

    public static string Penalties(ResultLane lane)
    {
        var parts = lane.Penalties.Select(penalty => string.Join(" ", new[]
        {
            penalty.AddMs > 0 ? $"+{TimeText.Of(penalty.AddMs)}" : "",
            penalty.Reps > 0 ? $"−{ScoreWords.Of(penalty.Reps * (lane.Score?.Scale ?? 1), lane.Score)}" : "",
            penalty.Reason.Length > 0 ? $"({penalty.Reason})" : "(reason to follow)",
        }.Where(part => part.Length > 0))).ToList();
        if (lane.AdjustMs != 0)
        {
            parts.Add($"time adjusted {(lane.AdjustMs > 0 ? "+" : "")}{TimeText.Of(lane.AdjustMs)}");
        }

        if (lane.Tiebreak is { } set && lane.Outcome is Outcome.Capped or Outcome.Stopped or Outcome.Working or Outcome.Through)
        {
            parts.Add($"tiebreak {(lane.TiebreakMs is { } ms ? TimeText.Of(ms) : "–")} at {set}");
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
            parts.Add($"timekeepers {string.Join(", ", lane.TimekeeperMs.Select(TimeText.Of))}");
        }

        if (lane.CountsInHeat is { } rerun)
        {
            parts.Add($"rerun: heat {rerun} counts");
        }

        if (lane.HeldMs > 0)
        {
            parts.Add($"held {TimeText.Tenths(lane.HeldMs)}");
        }

        return string.Join("; ", parts);
    }

    public static string ReadBack(ReadBack? read) => read is null ? "" : $"{(read.Agreed ? "agreed" : "disputed")} by {read.Name}";

    private static string Missing(int reps) => reps == 1 ? "1 rep missing" : string.Create(CultureInfo.InvariantCulture, $"{reps} reps missing");

    private static string Ordinal(int place) => place.ToString(CultureInfo.InvariantCulture) + (place % 100 is 11 or 12 or 13 ? "th" : (place % 10) switch
    {
        1 => "st", 2 => "nd", 3 => "rd", _ => "th",
    });
}
