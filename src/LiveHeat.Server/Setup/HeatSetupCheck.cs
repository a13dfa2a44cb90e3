using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in a heat: unknown workouts and teams, two on one lane, a team twice, and plans that do not compile.</summary>
internal static class HeatSetupCheck
{
    private const int MostNumber = 9999;

    /// <param name="heat">Tidy: lanes in order.</param>
    /// <param name="all">All else.</param>
    public static IEnumerable<FieldError> Errors(HeatSetup heat, SetupAll all)
    {
        var workout = all.Workouts.FirstOrDefault(workout => workout.Id == heat.Workout);
        return Itself(heat, workout).Concat(heat.Lanes.SelectMany((lane, i) => Lane(heat, lane, i, workout, all)));
    }

    private static IEnumerable<FieldError> Itself(HeatSetup heat, Workout? workout)
    {
        foreach (var error in SetupText.Name("title", "The heat's title", heat.Title))
        {
            yield return error;
        }

        if (heat.Number is < 1 or > MostNumber)
        {
            yield return new("number", $"{heat.Number} is no heat's number. Give 1 to {MostNumber}.");
        }

        if (workout is null)
        {
            yield return new("workout", $"There is no workout {SetupText.Quoted(heat.Workout)}. Choose one of the competition's workouts, or make it first.");
        }
    }

    private static IEnumerable<FieldError> Lane(HeatSetup heat, HeatSetupLane lane, int i, Workout? workout, SetupAll all)
    {
        if (lane.Lane.Value == 0)
        {
            yield return new($"lanes[{i}].lane", "It does not say which lane. Give a number from 1.");
        }
        else if (heat.Lanes.Take(i).Any(other => other.Lane == lane.Lane))
        {
            yield return new($"lanes[{i}].lane", $"Lane {lane.Lane} is given twice. Put one team on each lane.");
        }

        if (all.Teams.FirstOrDefault(team => team.Id == lane.Team) is not { } team)
        {
            yield return new($"lanes[{i}].team", $"Lane {lane.Lane}: there is no team {SetupText.Quoted(lane.Team)}. Choose one of the competition's teams, or make it first.");
            yield break;
        }

        if (heat.Lanes.Take(i).FirstOrDefault(other => other.Team == lane.Team) is { } before)
        {
            yield return new($"lanes[{i}].team", $"{team.Name} stands on lane {before.Lane} and on lane {lane.Lane}. A team has one lane in a heat.");
        }

        if (workout is not null && PlanCompiler.Compile(workout, team.LineUp()) is Compiled.Impossible(var errors))
        {
            foreach (var error in errors)
            {
                yield return new($"lanes[{i}].team", $"Lane {lane.Lane}: {error.Message}");
            }
        }
    }
}
