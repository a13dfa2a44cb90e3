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
        foreach (var error in SetupText.Name("title", SetupRefusals.HeatTitle, heat.Title))
        {
            yield return error;
        }

        if (heat.Number is < 1 or > MostNumber)
        {
            yield return new("number", SetupRefusals.HeatNumber(heat.Number, MostNumber));
        }

        if (workout is null)
        {
            yield return new("workout", SetupRefusals.NoSuchWorkout(heat.Workout));
        }
    }

    private static IEnumerable<FieldError> Lane(HeatSetup heat, HeatSetupLane lane, int i, Workout? workout, SetupAll all)
    {
        if (lane.Lane.Value == 0)
        {
            yield return new($"lanes[{i}].lane", SetupRefusals.WhichLane);
        }
        else if (heat.Lanes.Take(i).Any(other => other.Lane == lane.Lane))
        {
            yield return new($"lanes[{i}].lane", SetupRefusals.LaneTwice(lane.Lane));
        }

        if (all.Teams.FirstOrDefault(team => team.Id == lane.Team) is not { } team)
        {
            yield return new($"lanes[{i}].team", SetupRefusals.NoSuchTeam(lane.Lane, lane.Team));
            yield break;
        }

        if (heat.Lanes.Take(i).FirstOrDefault(other => other.Team == lane.Team) is { } before)
        {
            yield return new($"lanes[{i}].team", SetupRefusals.TeamTwice(team.Name, before.Lane, lane.Lane));
        }

        if (workout is not null && PlanCompiler.Compile(workout, team.LineUp()) is Compiled.Impossible(var errors))
        {
            foreach (var error in errors)
            {
                yield return new($"lanes[{i}].team", SetupRefusals.OnLane(lane.Lane, error.Why));
            }
        }
    }
}
