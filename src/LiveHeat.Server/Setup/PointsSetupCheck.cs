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
                yield return new($"exclusionsFrom[{i}]", SetupRefusals.ExclusionFrom(MostWorkouts, from));
            }
            else if (i > 0 && from <= points.ExclusionsFrom[i - 1])
            {
                yield return new($"exclusionsFrom[{i}]", SetupRefusals.ExclusionsRise(from, points.ExclusionsFrom[i - 1]));
            }
        }

        if (points.Rule == PointsKind.High && points.ExclusionsFrom.Count > 0)
        {
            yield return new("exclusionsFrom", SetupRefusals.ExclusionsAreForLow);
        }
    }

    private static IEnumerable<FieldError> Table(PointsSetup points)
    {
        if (points.Rule == PointsKind.High && points.Table.Count == 0)
        {
            yield return new("table", SetupRefusals.TableEmpty);
        }

        if (points.Table.Count > MostPlaces)
        {
            yield return new("table", SetupRefusals.TableTooLong(points.Table.Count, MostPlaces));
        }

        foreach (var (given, i) in points.Table.Select((given, i) => (given, i)))
        {
            if (given is < 0 or > MostPoints)
            {
                yield return new($"table[{i}]", SetupRefusals.PlaceGives(i + 1, given, MostPoints));
            }
            else if (i > 0 && given > points.Table[i - 1])
            {
                yield return new($"table[{i}]", SetupRefusals.PlaceGivesMore(i + 1, given));
            }
        }
    }

    private static IEnumerable<FieldError> Cuts(PointsSetup points, SetupAll all)
    {
        foreach (var (cut, i) in points.Cuts.Select((cut, i) => (cut, i)))
        {
            if (all.Workouts.All(workout => workout.Id != cut.Workout))
            {
                yield return new($"cuts[{i}].workout", SetupRefusals.CutAfterNothing(cut.Workout));
            }
            else if (points.Cuts.Take(i).Any(before => before.Workout == cut.Workout))
            {
                yield return new($"cuts[{i}].workout", SetupRefusals.CutTwice(cut.Workout));
            }

            if (cut.GoOn < 1)
            {
                yield return new($"cuts[{i}].goOn", SetupRefusals.SomebodyGoesOn);
            }
        }
    }
}
