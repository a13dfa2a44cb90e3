using LiveHeat.Contracts.Setup;
using LiveHeat.Contracts.Standings;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Server.Standings;

/// <summary>Heats told as score sheets; teams t1, t2 ... stand on the lanes of their numbers.</summary>
public sealed class StandingsMakingTests
{
    private const string Certified = """
        end at 10:10
        freeze
        sign organiser
        sign head judge
        """;

    /// <summary>A heat of these teams, one a lane, in the workout of that id.</summary>
    private static HeatState Heat(string id, string workout, int[] teams, string score, string division = "open")
    {
        var snapshot = Some.Snapshot(teams.Length, Some.Workout() with { Id = workout, Name = workout.ToUpperInvariant() });
        snapshot = snapshot with { Lanes = teams.Select((team, i) => Some.Entry(i + 1, division) with { Team = $"t{team}", Name = $"Team {team}" }).ToItems() };
        return HeatScript.Play(score, snapshot) with { Heat = new HeatId(id) };
    }

    private static SetupAll Setup(PointsSetup points, params (string Id, int Number, string Workout, int[] Teams)[] heats) => new(
        new CompetitionSetup("Breakwater Relays"), [new DivisionSetup("open", "Open")],
        [.. heats.Select(heat => Some.Workout() with { Id = heat.Workout, Name = heat.Workout.ToUpperInvariant() }).DistinctBy(workout => workout.Id)],
        [.. heats.SelectMany(heat => heat.Teams).Distinct().Select(team => new TeamSetup($"t{team}", $"Team {team}", "open", ["Ann", "Bo", "Cy"]))],
        [.. heats.Select(heat => new HeatSetup(heat.Id, heat.Number, $"Heat {heat.Number}", heat.Workout, null, heat.Teams.Select((team, i) => new HeatSetupLane(new LaneNumber(i + 1), $"t{team}")).ToItems()))])
    {
        Points = points,
    };

    private static StandingsDivision Open(SetupAll setup, params HeatState[] called) => StandingsMaking.Of(setup, called, HeatScript.At("20:00")).Divisions.Single();

    private static string Order(StandingsDivision division) => string.Join(' ', division.Lines.Select(line => $"{line.Place?.ToString() ?? "-"}:{line.Team}={line.Total:0.##}"));

    [Fact]
    public void Teams_of_several_heats_are_ranked_together_in_each_workout()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]), ("h2", 2, "w1", [3, 4]));
        var first = Heat("h1", "w1", [1, 2], $"""
            start
            lane 1 step 9 done at 9:00
            lane 2 step 5 done at 6:00
            {Certified}
            """);
        var second = Heat("h2", "w1", [3, 4], $"""
            start
            lane 1 step 9 done at 8:59
            lane 2 step 7 done at 9:50
            {Certified}
            """);

        var open = Open(setup, first, second);

        Assert.Equal("1:t3=1 2:t1=2 3:t4=3 4:t2=4", Order(open));
        Assert.False(open.Provisional);
        Assert.Equal((new HeatId("h2"), 539_000), (open.Lines[0].Scores[0]!.Heat, open.Lines[0].Scores[0]!.OfficialMs));
    }

    [Fact]
    public void Until_all_have_done_a_workout_it_is_shown_and_does_not_count()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]), ("h2", 2, "w1", [3]));
        var open = Open(setup, Heat("h1", "w1", [1, 2], "start\nlane 2 step 1 done at 1:00"));

        Assert.Equal("-:t1=0 -:t2=0 -:t3=0", Order(open));
        Assert.True(open.Workouts.Single().Open);
        Assert.Equal((1, false), (open.Lines.Single(line => line.Team == "t2").Scores[0]!.Place, open.Lines[0].Scores[0]!.Counts));
    }

    [Fact]
    public void A_heat_that_runs_counts_provisionally_as_it_stands()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]));
        var running = Heat("h1", "w1", [1, 2], "start\nlane 2 step 1 done at 1:00");
        var open = StandingsMaking.Of(setup, [running], HeatScript.At("2:00")).Divisions.Single();

        Assert.Equal("1:t2=1 2:t1=2", Order(open));
        Assert.True(open.Provisional);
        Assert.All(open.Lines, line => Assert.True(line.Scores[0]!.Provisional));
    }

    [Fact]
    public void Before_GO_nobody_has_a_place()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]));
        var open = Open(setup, Heat("h1", "w1", [1, 2], "lane 1 calls at -0:10"));

        Assert.Equal("-:t1=0 -:t2=0", Order(open));
        Assert.All(open.Lines, line => Assert.Null(line.Scores[0]));
    }

    [Fact]
    public void For_a_team_whose_rerun_was_ordered_only_the_rerun_counts()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]), ("h1b", 2, "w1", [1]));
        var first = Heat("h1", "w1", [1, 2], """
            start
            lane 1 step 5 done at 6:00
            lane 2 step 9 done at 9:00
            end at 10:10
            rerun lane 1 in h1b
            """);
        Assert.True(Open(setup, first).Workouts.Single().Open);         // its rerun is still to come

        var again = Heat("h1b", "w1", [1], "start\nlane 1 step 9 done at 8:00\nend at 10:10");

        Assert.Equal("1:t1=1 2:t2=2", Order(Open(setup, first, again)));
    }

    [Fact]
    public void Who_did_other_work_than_the_division_ranks_below_those_who_did_it()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2, 3]));
        var heat = Heat("h1", "w1", [1, 2, 3], """
            start
            lane 1 variant scaled from step 2 at 1:00
            lane 1 step 9 done at 7:00
            lane 2 step 1 done at 2:00
            end at 10:10
            """);

        Assert.Equal("1:t2=1 2:t3=2 3:t1=3", Order(Open(setup, heat)));
    }

    [Fact]
    public void A_team_that_stood_on_no_lane_of_a_workout_did_not_start_in_it()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]), ("h2", 2, "w2", [1]));
        const string Score = "start\nlane 1 step 9 done at 9:00\nend at 10:10";
        var open = Open(setup, Heat("h1", "w1", [1, 2], Score), Heat("h2", "w2", [1], Score));

        Assert.Equal("1:t1=2 2:t2=5", Order(open));                     // 2 + (2 teams + 1)
        Assert.Equal((Taken.DidNotStart, true), (open.Lines[1].Scores[1]!.Taken, open.Lines[1].Scores[1]!.Provisional));
        Assert.Equal("no result yet", StandingsWords.Score(open.Lines[1].Scores[1]!));
    }

    [Fact]
    public void Only_when_all_heats_of_the_workout_are_certified_is_it_told_that_such_a_team_did_not_start()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]), ("h2", 2, "w2", [1]));
        const string Score = "start\nlane 1 step 9 done at 9:00\nend at 10:10\nfreeze";
        string Told(string signed) => StandingsWords.Score(Open(setup, Heat("h1", "w1", [1, 2], Score), Heat("h2", "w2", [1], $"{Score}\n{signed}")).Lines[1].Scores[1]!);

        Assert.Equal("no result yet", Told("sign organiser"));
        Assert.Equal("did not start", Told("sign organiser\nsign head judge"));
    }

    [Fact]
    public void A_team_that_was_called_and_withdrawn_did_not_start_whatever_is_signed()
    {
        var setup = Setup(new PointsSetup(), ("h1", 1, "w1", [1, 2]));
        var open = Open(setup, Heat("h1", "w1", [1, 2], "withdraw lane 2\nstart\nlane 1 step 9 done at 9:00\nend at 10:10"));

        Assert.Equal("did not start", StandingsWords.Score(open.Lines[1].Scores[0]!));
    }

    [Fact]
    public void A_tie_is_explained_in_words_and_a_cut_is_named()
    {
        var setup = Setup(new PointsSetup { Cuts = [new CutSetup("w2", 2)] }, ("h1", 1, "w1", [1, 2, 3]), ("h2", 2, "w2", [1, 2, 3]));
        var first = Heat("h1", "w1", [1, 2, 3], "start\nlane 1 step 9 done at 8:00\nlane 2 step 9 done at 9:00\nend at 10:10");
        var second = Heat("h2", "w2", [1, 2, 3], "start\nlane 2 step 9 done at 8:00\nlane 1 step 9 done at 9:00\nend at 10:10");
        var open = Open(setup, first, second);

        Assert.Equal("1:t2=3 2:t1=3 3:t3=6", Order(open));
        Assert.Equal("ahead in W2: 1 against 2", open.Lines[0].AheadWords);
        Assert.Equal([null, null, "w2"], open.Lines.Select(line => line.CutAfter));
        Assert.Equal(2, open.Workouts[1].GoOn);
    }

    [Theory]
    [InlineData(TieRule.BestScores, 1, "ahead on best place: 1 against 2")]
    [InlineData(TieRule.BestScores, 2, "ahead on 2nd best place: 1 against 2")]
    [InlineData(TieRule.CountBack, 3, "ahead on 3rd places: 1 against 2")]
    [InlineData(TieRule.Shared, 0, "level: nothing parts them")]
    public void Every_rule_has_its_words(TieRule rule, int rank, string words) => Assert.Equal(words, TieWords.Of(new TieBreak(rule, "t2", rank, null, 1, 2), null));

    [Fact]
    public void Parts_that_are_scored_apart_give_points_of_their_own_and_the_cut_comes_after_the_last()
    {
        var parted = Some.Workout() with { Prescriptions = [Some.Prescription() with { Parts = (Items<WorkoutPart>)[new("Opening", new TiebreakSet(1, 2)), new("Long end", null)] }] };
        var snapshot = Some.Snapshot(2, parted);
        var heat = HeatScript.Play($"""
            start
            lane 1 step 2 done at 1:00
            lane 2 step 2 done at 0:50
            lane 1 step 9 done at 7:00
            lane 2 step 9 done at 7:30
            {Certified}
            """, snapshot) with { Heat = new HeatId("h1") };
        var setup = Setup(new PointsSetup { Cuts = [new CutSetup("w1", 1)] }, ("h1", 1, "w1", [1, 2])) with { Workouts = [parted] };

        var open = Open(setup, heat);

        Assert.Equal([("w1#1", "Low Tide: Opening", null), ("w1#2", "Low Tide: Long end", 1)], open.Workouts.Select(workout => (workout.Workout, workout.Name, workout.GoOn)));
        Assert.Equal([60_000L, 360_000], open.Lines.Single(line => line.Team == "t1").Scores.Select(score => score!.OfficialMs!.Value));
        Assert.Equal([2, 1], open.Lines.Single(line => line.Team == "t1").Scores.Select(score => score!.Place!.Value));
    }
}
