using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Words;

/// <summary>Words that more than one screen uses.</summary>
public static class CommonWords
{
    public const string Tied = "=";
    public const string NotYet = "–";
    public const string Cancel = "Not now";
    public const string Reason = "Reason";
    public const string ReasonLater = "Reason (may follow later)";
    public const string ReasonNeeded = "Say why. It stays with the result.";
    public const string ReasonMissing = "reason missing";
    public const string Loading = "Asking the server…";
    public const string Together = "whole team";
    public const string NotOfficial = "not official yet";

    public static string Lane(LaneNumber lane) => $"lane {lane}";

    public static string Lanes(IEnumerable<LaneNumber> lanes) => string.Join(", ", lanes) is var list && list.Contains(',', StringComparison.Ordinal) ? $"lanes {list}" : $"lane {list}";

    public static string Count(int count, string one, string many) => $"{count} {(Math.Abs(count) == 1 ? one : many)}";

    public static string Reps(int reps) => Count(reps, "rep", "reps");

    public static string Ordinal(int place) => (place % 100) switch
    {
        11 or 12 or 13 => $"{place}th",
        _ => (place % 10) switch { 1 => $"{place}st", 2 => $"{place}nd", 3 => $"{place}rd", _ => $"{place}th" },
    };

    public static string Place(int? place, bool tied) => place is { } number ? (tied ? Tied : "") + Ordinal(number) : NotYet;

    public static string Role(Role role) => role switch
    {
        Engine.Heats.Role.Organiser => "organiser",
        Engine.Heats.Role.HeadJudge => "head judge",
        Engine.Heats.Role.Judge => "lane judge",
        Engine.Heats.Role.Announcer => "announcer",
        _ => "viewer",
    };

    public static string Phase(Phase phase) => phase switch
    {
        Engine.Heats.Phase.Planned => "planned",
        Engine.Heats.Phase.Called => "called",
        Engine.Heats.Phase.Armed => "all lanes ready",
        Engine.Heats.Phase.CountingDown => "counting down",
        Engine.Heats.Phase.Running => "running",
        Engine.Heats.Phase.Halted => "halted",
        Engine.Heats.Phase.Ended => "ended",
        Engine.Heats.Phase.Frozen => "frozen",
        _ => "certified",
    };

    public static string Unit(Unit unit) => unit switch { Engine.Workouts.Unit.Reps => "reps", Engine.Workouts.Unit.Cal => "cal", Engine.Workouts.Unit.M => "m", Engine.Workouts.Unit.Lb => "lb", _ => "kg" };

    public static string Link(LinkState link) => link switch { LinkState.Online => "live", LinkState.Connecting => "connecting", _ => "no link" };

    public static string Clock(ClockQuality quality) => quality switch
    {
        ClockQuality.Good => "clock in step",
        ClockQuality.Fair => "clock fair",
        ClockQuality.Poor => "clock poor",
        _ => "clock not in step yet",
    };

    public static string Old(TimeSpan age) => $"{TimeWords.Age(age)} old";

    public static string NotLive(TimeSpan age) => $"Not live. Last news {TimeWords.Age(age)} ago.";
}
