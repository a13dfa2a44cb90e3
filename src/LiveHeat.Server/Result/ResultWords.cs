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
    public static string Place(ResultLane lane) => Place(lane.Place, lane.Tied);

    public static string Place(int? place, bool tied) => place is { } known ? Ordinal(known) + (tied ? " =" : "") : "–";

    public static string Reps(int worth) => string.Create(CultureInfo.InvariantCulture, $"{worth} rep{(worth == 1 ? "" : "s")}");

    public static string Score(ResultLane lane) => lane switch
    {
        { Outcome: Outcome.DidNotStart } => "did not start",
        { Outcome: Outcome.FinishedTimeUnknown } => "finished, time to be settled",
        { OfficialMs: { } ms } => TimeText.Of(ms),
        { RoundsAndReps: { } done } => RoundWords.Of(done),
        _ => string.Create(CultureInfo.InvariantCulture, $"{lane.Worth} of {lane.WorthOfAll} reps"),
    };

    public static string How(ResultLane lane) => lane.Outcome switch
    {
        Outcome.Capped when lane.OfficialMs is not null => string.Create(CultureInfo.InvariantCulture, $"time cap, {Missing(lane.WorthOfAll - lane.Worth)}"),
        Outcome.Capped => lane.RoundsAndReps is null ? "time cap" : "",
        Outcome.Stopped => "stopped",
        Outcome.Working => "still working",
        _ => "",
    };

    /// <summary>How teams rank that have no time of their own, for the foot of the page.</summary>
    public static string Order(ScoringRule rule) => rule switch
    {
        ScoringRule.MostWork => "As many rounds and reps as possible: the most work first, then who got there first.",
        ScoringRule.ForTime { Unfinished: Unfinished.CapPlusSeconds } =>
            "A team that its cap stopped has its cap and one second for each rep that is missing; a finish ranks ahead of the same time, then who got there first.",
        _ => "Unfinished teams rank after finishers, by reps, then by who got there first.",
    };

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
            penalty.Reps > 0 ? string.Create(CultureInfo.InvariantCulture, $"−{penalty.Reps} reps") : "",
            penalty.Reason.Length > 0 ? $"({penalty.Reason})" : "(reason to follow)",
        }.Where(part => part.Length > 0))).ToList();
        if (lane.AdjustMs != 0)
        {
            parts.Add($"time adjusted {(lane.AdjustMs > 0 ? "+" : "")}{TimeText.Of(lane.AdjustMs)}");
        }

        if (lane.Tiebreak is { } set && lane.Outcome is Outcome.Capped or Outcome.Stopped or Outcome.Working)
        {
            parts.Add($"tiebreak {(lane.TiebreakMs is { } ms ? TimeText.Of(ms) : "–")} at {set}");
        }

        if (lane.NotRanked is { } apart)
        {
            parts.Add(apart);
        }

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
