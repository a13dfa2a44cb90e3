using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Words;

/// <summary>Setting up: the overview, divisions, teams and heats.</summary>
public static class SetupWords
{
    public const string Title = "Setup";
    public const string Save = "Save";
    public const string Saved = "Saved.";
    public const string Add = "Add";
    public const string Delete = "Delete";
    public const string Undo = "Undo";
    public const string Back = "Back to the setup";
    public const string Next = "next";
    public const string Name = "Name";

    public const string Competition = "Competition";
    public const string CompetitionName = "Name of the competition";
    public const string CompetitionHelp = "Every screen shows it.";
    public const string RoundingLabel = "Official times";

    public const string TimekeepersLabel = "Several timekeepers";
    public const string HandTiming = "A hand errs by (ms)";
    public const string HandTimingHelp = "Closer than this, people decide.";
    public const string AppealMinutes = "Appeals for (minutes)";
    public const string AppealMinutesHelp = "From the freeze, which posts the result.";
    public const string AppealMinutesWrong = "Write whole minutes, from 0.";
    public const string HandTimingWrong = "Write whole milliseconds, from 0.";

    public const string Divisions = "Divisions";
    public const string DivisionsHelp = "Each has its own amount of the work, and its own places.";
    public const string NewDivision = "New division";
    public const string DivisionsFirst = "Add the divisions first: workouts and teams belong to them.";

    public const string Workouts = "Workouts";
    public const string WorkoutsHelp = "What is to be done: movements, rounds, who tags when, the time cap.";
    public const string NewWorkout = "New workout";
    public const string NoWorkouts = "No workout yet.";

    public const string Teams = "Teams";
    public const string TeamsHelp = "With their athletes in relay order.";
    public const string NewTeam = "New team";
    public const string NoTeams = "No team yet.";
    public const string TeamName = "Team";
    public const string Division = "Division";
    public const string Athletes = "Athletes, one a line, in relay order";
    public const string Paste = "Paste many teams";
    public const string ForTheAnnouncer = "For the announcer";
    public const string SayTeam = "How to say the team's name";
    public const string SayAthletes = "How to say the athletes' names, one a line, in relay order (an empty line: it says itself)";
    public const string HomeOf = "Home gym or town";
    public const string Facts = "What to say of them, one a line (at most 5)";
    public const string PasteHelp = "One team a line: team, division, then the athletes in relay order, between semicolons or tabs. A copied table works too. A first line may name the columns: team, division, athlete, home, fact; and say, behind a team or an athlete, for how that name is said.";
    public const string PasteExample = "Harbour Anvils; Open; Joss; Ilka; Bram; Edda";
    public const string PasteButton = "Enter these teams";
    public const string EditTeams = "Enter teams";

    public const string Heats = "Heats";
    public const string HeatsHelp = "Which workout, which team on which lane, when.";
    public const string NewHeat = "New heat";
    public const string NoHeats = "No heat yet.";
    public const string HeatNumber = "Number";
    public const string HeatTitle = "Title";
    public const string Workout = "Workout";
    public const string PlannedAt = "Planned for";
    public const string LanesOnFloor = "Lanes on the floor";
    public const string Lane = "Lane";
    public const string EmptyLane = "empty";
    public const string Fill = "Fill empty lanes";
    public const string FillHelp = "With teams that have no heat of this workout yet, in their order.";
    public const string WorkoutAndTeamsFirst = "Make a workout and enter teams first.";
    public const string HeatWasCalled = "This heat was called already. What you change here counts only after \"Take the setup anew\" at its desk, before GO.";
    public const string GoToProgram = "To the program";
    public const string AllSet = "All is set. Make the join codes, then call the first heat from the program.";

    public static string RoundingOf(Rounding rounding) => rounding switch
    {
        Rounding.UpTenth => "up to 0.1 s, as hand timing does",
        Rounding.UpSecond => "up to whole seconds",
        Rounding.UpHundredth => "up to 0.01 s",
        _ => "third decimal dropped",
    };

    public static string TimekeepersOf(TimekeeperRule rule) => rule == TimekeeperRule.Athletics
        ? "middle of three, longer of two" : "middle of three, average of two";

    public static string Deleted(string name) => $"{name} is deleted.";

    public static string TeamCount(int count) => CommonWords.Count(count, "team", "teams");

    public static string WorkoutLine(Workout workout) => string.Join(", ", workout.Prescriptions.Select(prescription => $"{prescription.DivisionName} {TimeWords.Clock(prescription.CapMs)}"));

    public static string Heat(int number) => $"Heat {number}";

    public static string LineTooShort(int line) => $"Line {line}: write the team, its division and at least one athlete.";

    public static string NoSuchColumn(int line, int column, string name) => $"Line {line}, column {column}: nothing is known as \"{name}\". Columns are: team, division, athlete, say, home, fact.";

    public static string SayBehindNothing(int line, int column) => $"Line {line}, column {column}: \"say\" stands behind a team or an athlete, and tells how that name is said.";

    public static string ColumnTwice(int line, int column, string name) => $"Line {line}, column {column}: there is a \"{name}\" already.";

    public static string SayWithoutName(int line, int column) => $"Line {line}, column {column}: it tells how to say a name, and no name stands before it.";

    public static string NoSuchDivision(int line, int column, string name, IEnumerable<string> known) => $"Line {line}, column {column}: there is no division \"{name}\". There are: {string.Join(", ", known)}.";

    public static string TwiceInPaste(int line, string name) => $"Line {line}: {name} stands there twice.";

    public static string TooManyAthletes(int line, int count, int most) => $"Line {line}: {count} athletes; a team has at most {most}.";

    public static string WouldEnter(int teams) => $"{TeamCount(teams)} read.";
}
