using LiveHeat.Contracts.Setup;

namespace LiveHeat.Screens.Words;

/// <summary>The form for points over several workouts.</summary>
public static class PointsWords
{
    public const string Title = "Points over all workouts";
    public const string Help = "How the places of several workouts become one order. It can be changed at any time: the standings are made anew.";
    public const string Exclusions = "Leave out the worst score from so many workouts on";
    public const string ExclusionsHelp = "5 leaves out one worst score once five workouts count; 5 9 leaves out a second one from nine on. Empty: all count.";
    public const string Table = "Points of the first place, the second, and so on";
    public const string TableHelp = "With blanks between: 25 18 15 12. A place past the end gives none.";
    public const string StartFrom = "Start from:";
    public const string Even = "One point a place";
    public const string Front = "More between those in front";
    public const string Few = "Only the first half";
    public const string Cuts = "Cuts";
    public const string CutsHelp = "How many teams of each division go on after a workout. Empty: all do. Who ties for the last of these places goes on too.";
    public const string GoOn = "Teams that go on";
    public const string CutWrong = "Write a whole number of teams, from 1.";

    public static string Kind(PointsKind kind) => kind == PointsKind.Low ? "Fewest points win" : "Most points win";

    public static string KindHelp(PointsKind kind) => kind == PointsKind.Low
        ? "A place is its number in points: the first gets 1, the second 2."
        : "Each place gives the points of a table.";

    public static string CutAfter(string workout) => $"After {workout}";

    public static string ExclusionsWrong(string word) => $"\"{word}\" is no whole number of workouts.";

    public static string TableWrong(string word) => $"\"{word}\" is no number of points. Write 25 or 12.5, with blanks between.";
}
