using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Words;

/// <summary>Setting up: the overview, divisions, teams and heats.</summary>
public static class SetupWords
{
    private static readonly Wording Words = new(typeof(SetupWords));

    public static string Title => Words[nameof(Title)];
    public static string Save => Words[nameof(Save)];
    public static string Saved => Words[nameof(Saved)];
    public static string Add => Words[nameof(Add)];
    public static string Delete => Words[nameof(Delete)];
    public static string Undo => Words[nameof(Undo)];
    public static string Back => Words[nameof(Back)];
    public static string Name => Words[nameof(Name)];

    public static string Competition => Words[nameof(Competition)];
    public static string CompetitionName => Words[nameof(CompetitionName)];
    public static string CompetitionHelp => Words[nameof(CompetitionHelp)];
    public static string RoundingLabel => Words[nameof(RoundingLabel)];

    public static string TimekeepersLabel => Words[nameof(TimekeepersLabel)];
    public static string HandTiming => Words[nameof(HandTiming)];
    public static string HandTimingHelp => Words[nameof(HandTimingHelp)];
    public static string AppealMinutes => Words[nameof(AppealMinutes)];
    public static string AppealMinutesHelp => Words[nameof(AppealMinutesHelp)];
    public static string AppealMinutesWrong => Words[nameof(AppealMinutesWrong)];
    public static string HandTimingWrong => Words[nameof(HandTimingWrong)];

    public static string Divisions => Words[nameof(Divisions)];
    public static string DivisionsHelp => Words[nameof(DivisionsHelp)];
    public static string NewDivision => Words[nameof(NewDivision)];
    public static string DivisionsFirst => Words[nameof(DivisionsFirst)];

    public static string Workouts => Words[nameof(Workouts)];
    public static string WorkoutsHelp => Words[nameof(WorkoutsHelp)];
    public static string NewWorkout => Words[nameof(NewWorkout)];
    public static string NoWorkouts => Words[nameof(NoWorkouts)];

    public static string Teams => Words[nameof(Teams)];
    public static string TeamsHelp => Words[nameof(TeamsHelp)];
    public static string NewTeam => Words[nameof(NewTeam)];
    public static string NoTeams => Words[nameof(NoTeams)];
    public static string TeamName => Words[nameof(TeamName)];
    public static string Division => Words[nameof(Division)];
    public static string Athletes => Words[nameof(Athletes)];
    public static string AthletesHelp => Words[nameof(AthletesHelp)];
    public static string Paste => Words[nameof(Paste)];
    public static string ForTheAnnouncer => Words[nameof(ForTheAnnouncer)];
    public static string SayTeam => Words[nameof(SayTeam)];
    public static string SayAthletes => Words[nameof(SayAthletes)];
    public static string SayAthletesHelp => Words[nameof(SayAthletesHelp)];
    public static string HomeOf => Words[nameof(HomeOf)];
    public static string Facts => Words[nameof(Facts)];
    public static string FactsHelp => Words[nameof(FactsHelp)];
    public static string EditTeams => Words[nameof(EditTeams)];

    public static string Heats => Words[nameof(Heats)];
    public static string HeatsHelp => Words[nameof(HeatsHelp)];
    public static string NewHeat => Words[nameof(NewHeat)];
    public static string NoHeats => Words[nameof(NoHeats)];
    public static string HeatNumber => Words[nameof(HeatNumber)];
    public static string HeatTitle => Words[nameof(HeatTitle)];
    public static string Workout => Words[nameof(Workout)];
    public static string PlannedAt => Words[nameof(PlannedAt)];
    public static string LanesOnFloor => Words[nameof(LanesOnFloor)];
    public static string EmptyLane => Words[nameof(EmptyLane)];
    public static string Fill => Words[nameof(Fill)];
    public static string FillHelp => Words[nameof(FillHelp)];
    public static string WorkoutAndTeamsFirst => Words[nameof(WorkoutAndTeamsFirst)];
    public static string HeatWasCalled => Words[nameof(HeatWasCalled)];
    public static string GoToProgram => Words[nameof(GoToProgram)];
    public static string AllSet => Words[nameof(AllSet)];

    public static string RoundingOf(Rounding rounding) => Words[$"{nameof(RoundingOf)}.{rounding}"];

    public static string TimekeepersOf(TimekeeperRule rule) => Words[$"{nameof(TimekeepersOf)}.{rule}"];

    public static string Deleted(string name) => Words.Say(nameof(Deleted), name);

    public static string TeamCount(int count) => Words.Count(nameof(TeamCount), count);

    /// <summary>How many teams, and their names.</summary>
    public static string TeamList(int count, IEnumerable<string> names) => Words.Count(nameof(TeamList), count, string.Join(", ", names));

    public static string WorkoutLine(Workout workout) => string.Join(", ", workout.Prescriptions.Select(prescription => $"{prescription.DivisionName} {TimeWords.Clock(prescription.CapMs)}"));

    public static string Heat(int number) => Words.Say(nameof(Heat), number);
}
