using LiveHeat.Contracts.Library;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Setup;

/// <summary>Everything set up by hand.</summary>
public sealed record SetupAll(
    CompetitionSetup Competition, IReadOnlyList<DivisionSetup> Divisions, IReadOnlyList<Workout> Workouts, IReadOnlyList<TeamSetup> Teams, IReadOnlyList<HeatSetup> Heats)
{
    /// <summary>The organiser's own movements: copies of the library's, and new ones.</summary>
    public IReadOnlyList<LibraryMovement> Movements { get; init; } = [];

    /// <summary>How the places of several workouts become one order.</summary>
    public PointsSetup Points { get; init; } = new();
}

/// <summary>The competition.</summary>
/// <param name="Name">As every screen shows it.</param>
/// <param name="Rounding">How measured times become official.</param>
/// <param name="Timekeepers">How the times of several timekeepers combine.</param>
/// <param name="HandTimingMs">How wrong a hand may be either way, 0 to 1000 milliseconds (see <see cref="HeatSnapshot"/>).</param>
/// <param name="AppealMinutes">How long after the provisional result is posted a team may appeal, 0 to 1440 minutes.</param>
public sealed record CompetitionSetup(
    string Name, Rounding Rounding = Rounding.UpTenth, TimekeeperRule Timekeepers = TimekeeperRule.Athletics, int HandTimingMs = HeatSnapshot.UsualHandTimingMs,
    int AppealMinutes = HeatSnapshot.UsualAppealMinutes)
{
    /// <summary>How large the board is and from how far it is read; null where nobody has measured it.</summary>
    public ScreenSize? Screen { get; init; }
}

/// <summary>A big screen and its hall.</summary>
/// <param name="WidthM">Of the picture, metres, 0.2 to 60.</param>
/// <param name="SeatM">From the screen to the farthest seat, metres, 0.5 to 300.</param>
public sealed record ScreenSize(decimal WidthM, decimal SeatM);

/// <summary>A division.</summary>
public sealed record DivisionSetup(string Id, string Name);

/// <summary>A team with its athletes in relay order.</summary>
public sealed record TeamSetup(string Id, string Name, string Division, Items<string> Athletes)
{
    /// <summary>How to say the team's name, for the announcer; null when it says itself.</summary>
    public string? Say { get; init; }

    /// <summary>How to say the athletes' names, in the order of <see cref="Athletes"/>; empty where a name says itself. Null when all do.</summary>
    public Items<string>? AthletesSay { get; init; }

    /// <summary>The home gym or town; null when not told.</summary>
    public string? Home { get; init; }

    /// <summary>What the announcer may say of them, a sentence each; null when nothing.</summary>
    public Items<string>? Facts { get; init; }
}

/// <summary>A heat: which workout, who on which lane, when; and which heat it repeats, if any.</summary>
public sealed record HeatSetup(string Id, int Number, string Title, string Workout, Instant? PlannedAt, Items<HeatSetupLane> Lanes, HeatId? RerunOf = null);

/// <summary>A team on a lane.</summary>
public sealed record HeatSetupLane(LaneNumber Lane, string Team);

/// <summary>Why a form was refused, field by field.</summary>
public sealed record SetupErrors(Items<FieldProblem> Errors);
