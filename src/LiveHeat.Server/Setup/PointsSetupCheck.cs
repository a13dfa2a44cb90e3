using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in a points rule.</summary>
internal static class PointsSetupCheck
{
    private const int MostPlaces = 500;
    private const int MostWorkouts = 100;
    private const decimal MostPoints = 100_000;

    public static IEnumerable<FieldError> Errors(PointsSetup points, SetupAll all) => Exclusions(points).Concat(Table(points)).Concat(Cuts(points, all));

    private static IEnumerable<FieldError> Exclusions(PointsSetup points)
    {
        foreach (var (from, i) in points.ExclusionsFrom.Select((from, i) => (from, i)))
        {
            if (from is < 2 or > MostWorkouts)
            {
                yield return new($"exclusionsFrom[{i}]", $"A worst score can be left out from 2 to {MostWorkouts} workouts on, not from {from}.");
            }
            else if (i > 0 && from <= points.ExclusionsFrom[i - 1])
            {
                yield return new($"exclusionsFrom[{i}]", $"One more is left out from {from} workouts on, and before it from {points.ExclusionsFrom[i - 1]}. Give the numbers in rising order.");
            }
        }

        if (points.Rule == PointsKind.High && points.ExclusionsFrom.Count > 0)
        {
            yield return new("exclusionsFrom", "Worst scores are left out with low points only. Leave this empty, or choose low points.");
        }
    }

    private static IEnumerable<FieldError> Table(PointsSetup points)
    {
        if (points.Rule == PointsKind.High && points.Table.Count == 0)
        {
            yield return new("table", "The table is empty. Give the points of the first place, the second, and so on.");
        }

        if (points.Table.Count > MostPlaces)
        {
            yield return new("table", $"The table has {points.Table.Count} places. Give at most {MostPlaces}.");
        }

        foreach (var (given, i) in points.Table.Select((given, i) => (given, i)))
        {
            if (given is < 0 or > MostPoints)
            {
                yield return new($"table[{i}]", $"Place {i + 1} gives {given} points. Give 0 to {MostPoints}.");
            }
            else if (i > 0 && given > points.Table[i - 1])
            {
                yield return new($"table[{i}]", $"Place {i + 1} gives {given} points, more than the place before it. A worse place cannot give more.");
            }
        }
    }

    private static IEnumerable<FieldError> Cuts(PointsSetup points, SetupAll all)
    {
        foreach (var (cut, i) in points.Cuts.Select((cut, i) => (cut, i)))
        {
            if (all.Workouts.All(workout => workout.Id != cut.Workout))
            {
                yield return new($"cuts[{i}].workout", $"There is no workout {SetupText.Quoted(cut.Workout)}. Choose one of the competition's workouts.");
            }
            else if (points.Cuts.Take(i).Any(before => before.Workout == cut.Workout))
            {
                yield return new($"cuts[{i}].workout", $"There is a cut after {SetupText.Quoted(cut.Workout)} already. Give one.");
            }

            if (cut.GoOn < 1)
            {
                yield return new($"cuts[{i}].goOn", "At least one team must go on.");
            }
        }
    }
}
