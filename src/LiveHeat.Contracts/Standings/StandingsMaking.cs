using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Standings;

/// <summary>Makes the standings from what is set up and from the heats that have started.</summary>
public static class StandingsMaking
{
    /// <summary>Stands between a workout's id and the number of a part that gives points by itself.</summary>
    private const char PartMark = '#';

    private static readonly Wording Words = new(typeof(StandingsMaking));

    /// <summary>The standings as they are at the instant.</summary>
    public static StandingsTable Of(SetupAll setup, IReadOnlyList<HeatState> called, Instant now)
    {
        var heats = Heats(setup, called, now);
        var rule = setup.Points.ToRule();
        return new StandingsTable(setup.Competition.Name, setup.Points, setup.Divisions.Select(division => Division(division, setup, heats, rule)).Where(made => made.Lines.Count > 0).ToItems());
    }

    /// <summary>The id of the workout, also of a part that gives points by itself.</summary>
    internal static string WorkoutOf(StandingsWorkout scored) => scored.Workout.Split(PartMark)[0];

    private static StandingsDivision Division(DivisionSetup division, SetupAll setup, List<Floor> heats, PointsRule rule)
    {
        var teams = heats.SelectMany(heat => heat.Lanes).Where(lane => lane.Division == division.Id).DistinctBy(lane => lane.Team).ToList();
        var scored = heats.Where(heat => heat.Lanes.Any(lane => lane.Division == division.Id)).Select(heat => heat.Workout).DistinctBy(workout => workout.Id)
            .SelectMany(workout => ScoredOf(workout, division.Id, setup, heats.Where(heat => heat.Workout.Id == workout.Id).ToList(), teams)).ToList();
        var table = Overall.Of(rule, scored.Select(one => new WorkoutPlaces(one.Id, one.Places) { GoOn = one.GoOn }).ToItems(), teams.Select(lane => lane.Team).ToItems());
        var counts = table.Lines.Any(line => line.Scores.Any(score => score is { Counts: true }));
        var names = teams.ToDictionary(lane => lane.Team, lane => lane.Name);
        return new StandingsDivision(
            division.Id, division.Name,
            scored.Select(one => new StandingsWorkout(one.Id, one.Name, one.GoOn, table.Open.Contains(one.Id))).ToItems(),
            table.Lines.Select(line => new StandingsLine(
                counts ? line.Place : null, counts && line.Tied, line.Team, names[line.Team], line.Total,
                line.Scores.Select((score, i) => score is null ? null : Score(score, scored[i].Made.GetValueOrDefault(line.Team))).ToItems(),
                line.CutAfter, counts ? line.Ahead : null,
                counts && line.Ahead is { } why ? TieWords.Of(why, scored.FirstOrDefault(one => one.Id == why.Workout)?.Name) : null)).ToItems(),
            table.Provisional);
    }

    private static StandingsScore Score(Score score, Made? made) => new(
        made?.Heat ?? default, score.Place, score.Points, score.Taken, score.Excluded, score.Counts, score.Provisional, made?.OfficialMs, made?.Worth ?? 0)
    {
        Score = made?.Unit,
        RoundsAndReps = made?.RoundsAndReps,
    };

    /// <summary>What gives points: the workout, or where parts of it are scored apart, each of them. The cut comes after the last.</summary>
    private static IEnumerable<Scored> ScoredOf((string Id, string Name) workout, string division, SetupAll setup, List<Floor> heats, List<OnLane> teams)
    {
        var results = CountingResults.Of(heats.Where(heat => heat.State is not null).Select(heat => (heat.State!, heat.Results)), division);
        var goOn = setup.Points.Cuts.FirstOrDefault(cut => cut.Workout == workout.Id)?.GoOn;
        var parts = heats.Select(heat => heat.Parts(division)).FirstOrDefault(names => names.Count > 0);
        if (parts.Count == 0)
        {
            yield return new Scored(
                workout.Id, workout.Name, goOn, WithAbsent(WorkoutOrder.Of(results), teams, heats),
                results.ToDictionary(result => result.Team, result => new Made(result.Heat, result.Line.OfficialMs, result.Line.Worth)
                {
                    Unit = ScoreWords.UnlessWork(result.Line.Lane.Plan),
                    RoundsAndReps = result.Line.Lane.Plan is { Endless: true, Windows.Count: 0 } plan ? RoundsAndReps.Of(plan, result.Line.Lane.DoneSteps, result.Line.Worth) : null,
                }));
        }

        var unit = results.Select(result => ScoreWords.UnlessWork(result.Line.Lane.Plan)).FirstOrDefault();
        var heatOf = results.ToDictionary(result => result.Team, result => result.Heat);
        for (var part = 0; part < parts.Count; part++)
        {
            var placed = PartOrder.Of(results, part, setup.Competition.Rounding);
            yield return new Scored(
                string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{workout.Id}{PartMark}{part + 1}"), PartOf(workout.Name, parts[part]), part == parts.Count - 1 ? goOn : null,
                WithAbsent(placed.Select(one => one.Place).ToItems(), teams, heats),
                placed.ToDictionary(one => one.Place.Team, one => new Made(heatOf[one.Place.Team], one.Score.OfficialMs, one.Score.Worth) { Unit = unit }));
        }
    }

    private static string PartOf(string workout, string part) => Words.Say(nameof(PartOf), workout, part);

    /// <summary>A team that stood on no lane of a workout whose heats are all over did not start in it; provisional until they are all certified.</summary>
    private static Items<TeamPlace> WithAbsent(Items<TeamPlace> placed, List<OnLane> teams, IEnumerable<Floor> heats) => heats.All(heat => heat.Over)
        ? placed.Concat(teams.Where(team => placed.All(place => place.Team != team.Team)).Select(team => new TeamPlace(team.Team, 0, Taken.DidNotStart, Provisional: heats.Any(heat => heat.State?.Told != Phase.Certified)))).ToItems()
        : placed;

    private static List<Floor> Heats(SetupAll setup, IReadOnlyList<HeatState> called, Instant now)
    {
        var states = called.ToDictionary(state => state.Heat.Value);
        var teams = setup.Teams.ToDictionary(team => team.Id);
        var heats = setup.Heats.Select(heat => states.Remove(heat.Id, out var state)
            ? Called(state, now)
            : new Floor((heat.Workout, setup.Workouts.FirstOrDefault(workout => workout.Id == heat.Workout)?.Name ?? ""), setup.Workouts.FirstOrDefault(workout => workout.Id == heat.Workout),
                heat.Lanes.Where(lane => teams.ContainsKey(lane.Team)).Select(lane => new OnLane(lane.Team, teams[lane.Team].Name, teams[lane.Team].Division)).ToList(), null, [], false)).ToList();
        return [.. heats, .. states.Values.OrderBy(state => state.CalledAt).Select(state => Called(state, now))];
    }

    private static Floor Called(HeatState state, Instant now)
    {
        var phase = state.PhaseAt(now);
        var started = phase is Phase.Running or Phase.Halted or Phase.Ended or Phase.Frozen or Phase.Certified;
        var snapshot = state.Snapshot!;
        return new Floor((snapshot.Workout.Id, snapshot.Workout.Name), snapshot.Workout, snapshot.Lanes.Select(lane => new OnLane(lane.Team, lane.Name, lane.Division)).ToList(),
            started ? state : null, started ? HeatResult.Of(state, now) : [], phase is Phase.Ended or Phase.Frozen or Phase.Certified);
    }

    private readonly record struct OnLane(string Team, string Name, string Division);

    private sealed record Floor((string Id, string Name) Workout, Workout? Written, List<OnLane> Lanes, HeatState? State, Items<ResultLine> Results, bool Over)
    {
        public Items<string> Parts(string division) =>
            (Written?.Prescriptions.FirstOrDefault(prescription => prescription.Division == division)?.Parts ?? []).Select(part => part.Name).ToItems();
    }

    /// <summary>What gives points once.</summary>
    /// <param name="Made">What each team made of it.</param>
    private sealed record Scored(string Id, string Name, int? GoOn, Items<TeamPlace> Places, Dictionary<string, Made> Made);

    private sealed record Made(HeatId Heat, long? OfficialMs, int Worth)
    {
        public ScoreUnit? Unit { get; init; }

        public RoundsAndReps? RoundsAndReps { get; init; }
    }
}
