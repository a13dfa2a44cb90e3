using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Setup;

/// <summary>Finds what cannot be in a team, by itself and in the heats it stands in.</summary>
internal static class TeamSetupCheck
{
    /// <summary>More nobody reads while a heat runs.</summary>
    private const int MostFacts = 5;

    /// <param name="team">Tidy.</param>
    /// <param name="all">All else; without the heats that a change no longer touches.</param>
    public static IEnumerable<FieldError> Errors(TeamSetup team, SetupAll all)
    {
        var known = all.Divisions.Any(division => division.Id == team.Division);
        var alone = SetupText.Name("name", SetupRefusals.TeamName, team.Name)
            .Concat(known ? [] : [new("division", SetupRefusals.NoSuchDivision(team.Division))])
            .Concat(team.Athletes.SelectMany((athlete, i) =>
                string.IsNullOrWhiteSpace(athlete) ? [] : SetupText.Name($"athletes[{i}]", SetupRefusals.AthleteName(i + 1), athlete)))
            .Concat(Told(team))
            .Concat(LineUpCheck.Errors(team.LineUp(), AsksNothing(team)))
            .ToList();
        return alone.Count > 0 ? alone : InHeats(team, all);
    }

    /// <summary>What the announcer is told of the team.</summary>
    private static IEnumerable<FieldError> Told(TeamSetup team)
    {
        var texts = new[] { ("say", SetupRefusals.SayTeam, team.Say), ("home", SetupRefusals.Home, team.Home) }
            .Concat((team.AthletesSay ?? []).Select((say, i) => ($"athletesSay[{i}]", SetupRefusals.SayAthlete(i + 1), say.Length > 0 ? say : null)))
            .Where(one => one.Item3 is not null).SelectMany(one => SetupText.Name(one.Item1, one.Item2, one.Item3));
        var facts = (team.Facts ?? []).SelectMany((fact, i) => SetupText.Text($"facts[{i}]", SetupRefusals.Fact(i + 1), fact));
        return texts.Concat(facts)
            .Concat((team.AthletesSay?.Count ?? 0) > team.Athletes.Count ? [new FieldError("athletesSay", SetupRefusals.MoreSaysThanAthletes)] : [])
            .Concat((team.Facts?.Count ?? 0) > MostFacts ? [new FieldError("facts", SetupRefusals.TooManyFacts(team.Facts!.Value.Count, MostFacts))] : []);
    }

    public static LineUp LineUp(this TeamSetup team) => new(team.Id, team.Name, team.Division, team.Athletes);

    private static IEnumerable<FieldError> InHeats(TeamSetup team, SetupAll all) =>
        from heat in all.Heats
        from lane in heat.Lanes
        where lane.Team == team.Id
        from workout in all.Workouts.Where(workout => workout.Id == heat.Workout)
        from error in LineUpCheck.Errors(team.LineUp(), workout)
        select error with { Why = SetupRefusals.InHeat(heat.Title, lane.Lane, error.Why) };

    /// <summary>A workout that any team of this division could do, to check the team alone.</summary>
    private static Workout AsksNothing(TeamSetup team) =>
        new("", "", new RelayOrder.Together(), Counting.Sets, 1, FinishKind.None, [], [new Prescription(team.Division, "", 1, 0, [], [], [])]);
}
