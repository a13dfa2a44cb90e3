using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Connection;

namespace LiveHeat.Screens.Words;

/// <summary>Words that more than one screen uses.</summary>
public static class CommonWords
{
    private static readonly Wording Words = new(typeof(CommonWords));

    public const string Tied = "=";
    public const string NotYet = "–";
    public static string Cancel => Words[nameof(Cancel)];
    public static string Reason => Words[nameof(Reason)];
    public static string ReasonLater => Words[nameof(ReasonLater)];
    public static string ReasonNeeded => Words[nameof(ReasonNeeded)];
    public static string ReasonMissing => Words[nameof(ReasonMissing)];
    public static string Loading => Words[nameof(Loading)];
    public static string Together => Words[nameof(Together)];
    public static string NotOfficial => Words[nameof(NotOfficial)];

    public static string Lane(LaneNumber lane) => Words.Say(nameof(Lane), lane);

    public static string Lanes(IEnumerable<LaneNumber> lanes) => lanes.ToList() is var all && all.Count == 1 ? Lane(all[0]) : Words.Say(nameof(Lanes), string.Join(", ", all));

    public static string Reps(int reps) => Words.Count(nameof(Reps), reps);

    public static string Place(int? place, bool tied) => place is { } number ? (tied ? Tied : "") + Numbers.Place(number) : NotYet;

    public static string Role(Role role) => Words[$"{nameof(Role)}.{role}"];

    public static string Phase(Phase phase) => Words[$"{nameof(Phase)}.{phase}"];

    public static string Unit(Unit unit) => unit switch { Engine.Workouts.Unit.Reps => Words[$"{nameof(Unit)}.{unit}"], Engine.Workouts.Unit.Cal => "cal", Engine.Workouts.Unit.M => "m", Engine.Workouts.Unit.Lb => "lb", _ => "kg" };

    public static string Link(LinkState link) => Words[$"{nameof(Link)}.{link}"];

    public static string Clock(ClockQuality quality) => Words[$"{nameof(Clock)}.{quality}"];

    public static string Old(TimeSpan age) => Words.Say(nameof(Old), TimeWords.Age(age));

    public static string NotLive(TimeSpan age) => Words.Say(nameof(NotLive), TimeWords.Age(age));
}
