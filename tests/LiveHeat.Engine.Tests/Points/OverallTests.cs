namespace LiveHeat.Engine.Points;

public class OverallTests
{
    private static readonly PointsRule.Low AllCount = new([]);

    /// <summary>Teams' places by workout: "A 1 2 -" is first, second, and has yet to do the third; "x" did not start, "d" was put out.</summary>
    private static OverallTable Play(PointsRule rule, params string[] teams) => Play(rule, null, teams);

    private static OverallTable Play(PointsRule rule, (int After, int GoOn)? cut, params string[] teams)
    {
        var told = teams.Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
        var workouts = Enumerable.Range(1, told.Max(line => line.Length) - 1).Select(w => new WorkoutPlaces($"w{w}", told
            .Where(line => line.Length > w && line[w] != "-").Select(line => Place(line[0], line[w])).ToItems())
        { GoOn = cut is { } here && here.After == w ? here.GoOn : null });
        return Overall.Of(rule, workouts.ToItems(), told.Select(line => line[0]).ToItems());
    }

    private static TeamPlace Place(string team, string told) => told switch
    {
        "x" => new TeamPlace(team, 0, Taken.DidNotStart),
        "d" => new TeamPlace(team, 0, Taken.Disqualified),
        _ => new TeamPlace(team, int.Parse(told.TrimEnd('?'), System.Globalization.CultureInfo.InvariantCulture), Provisional: told.EndsWith('?')),
    };

    private static string Order(OverallTable table) => string.Join(' ', table.Lines.Select(line => $"{line.Place}{line.Team}"));

    private static OverallLine Line(OverallTable table, string team) => table.Lines.Single(line => line.Team == team);

    /// <summary>
    /// World Sailing, Racing Rules of Sailing, Appendix A8, worked: six races, the worst left out, A 3 4 1 6 2 (7), B 4 3 2 1 (6) 6, C 1 2 7 3 3 (14),
    /// all 16 points: C by A8.1 (its fourth best is 3, theirs 4), then B before A by the last race (6, 7).
    /// </summary>
    [Fact]
    public void Equal_totals_are_parted_by_the_best_scores_and_then_by_the_latest_workout()
    {
        var races = new (int A, int B, int C)[] { (3, 4, 1), (4, 3, 2), (1, 2, 7), (6, 1, 3), (2, 6, 3), (7, 6, 14) };
        string Told(string team, Func<(int A, int B, int C), int> of) => $"{team} {string.Join(' ', races.Select(of))}";
        var rule = new PointsRule.Low([6]);
        var table = Play(rule, Told("A", race => race.A), Told("B", race => race.B), Told("C", race => race.C));

        Assert.Equal([16m, 16m, 16m], table.Lines.Select(line => Math.Round(line.Total)));
        Assert.Equal("1C 2B 3A", Order(table));
        Assert.Equal(new TieBreak(TieRule.BestScores, "B", 4, null, 3, 4), Line(table, "C").Ahead);
        Assert.Equal(new TieBreak(TieRule.LatestWorkout, "A", 0, "w6", 6, 7), Line(table, "B").Ahead);
        Assert.Null(Line(table, "A").Ahead);
    }

    /// <summary>The same appendix, A8.2: three of four count, X 1 1 3 (25), Y 1 1 3 (4): tied on A8.1, and the last race, left out or not, puts Y ahead.</summary>
    [Fact]
    public void A_score_that_was_left_out_still_parts_a_tie_in_the_latest_workout()
    {
        var table = Play(new PointsRule.Low([4]), "X 1 1 3 25", "Y 1 1 3 4");

        Assert.Equal("1Y 2X", Order(table));
        Assert.Equal(new TieBreak(TieRule.LatestWorkout, "X", 0, "w4", 4, 25), Line(table, "Y").Ahead);
    }

    /// <summary>Appendix A7: who ties shares the points of the places they cover.</summary>
    [Fact]
    public void Those_who_tie_share_the_points_of_the_places_they_cover()
    {
        var table = Play(AllCount, "A 1", "B 2", "C 2", "D 4");

        Assert.Equal([1m, 2.5m, 2.5m, 4m], table.Lines.Select(line => line.Total));
        Assert.Equal("1A 2B 2C 4D", Order(table));
        Assert.Equal(TieRule.Shared, Line(table, "B").Ahead!.Rule);
    }

    /// <summary>Shared points of tables: 25-18-15 with two tied first gives 21.5 each; 125+100+90, three tied second, 105 each (recomputed).</summary>
    [Fact]
    public void A_tables_points_are_shared_likewise()
    {
        Assert.Equal([21.5m, 21.5m, 15m], Play(new PointsRule.High([25, 18, 15]), "A 1", "B 1", "C 3").Lines.Select(line => line.Total));
        Assert.Equal([150m, 105m, 105m, 105m, 80m], Play(new PointsRule.High([150, 125, 100, 90, 80]), "A 1", "B 2", "C 2", "D 2", "E 5").Lines.Select(line => line.Total));
    }

    /// <summary>Appendix A5.2: did not start, or was disqualified: one point more than there are entries.</summary>
    [Fact]
    public void Without_a_place_there_is_one_point_more_than_there_are_teams()
    {
        var table = Play(AllCount, "A 1", "B x", "C d", "D 2");

        Assert.Equal([1m, 2m, 5m, 5m], table.Lines.Select(line => line.Total));
        Assert.Equal(0, Line(Play(new PointsRule.High([25, 18]), "A 1", "B x"), "B").Total);
    }

    /// <summary>Appendix A2.1: when two scores are the worst alike, the earlier one is left out.</summary>
    [Fact]
    public void Of_equal_worst_scores_the_earliest_is_left_out()
    {
        var table = Play(new PointsRule.Low([3]), "A 2 1 2", "B 1 2 1");

        Assert.Equal([true, false, false], Line(table, "A").Scores.Select(score => score!.Excluded));
        Assert.Equal([3m, 2m], [Line(table, "A").Total, Line(table, "B").Total]);
    }

    [Theory]
    [InlineData(2, 0)]
    [InlineData(3, 1)]
    [InlineData(5, 1)]
    [InlineData(6, 2)]
    public void As_many_are_left_out_as_the_rule_says_for_so_many_workouts(int workouts, int left)
    {
        var places = string.Join(' ', Enumerable.Range(1, workouts));

        Assert.Equal(left, Line(Play(new PointsRule.Low([3, 6]), $"A {places}"), "A").Scores.Count(score => score!.Excluded));
    }

    [Fact]
    public void The_only_score_is_never_left_out() =>
        Assert.Equal(1, Line(Play(new PointsRule.Low([1]), "A 1", "B 2"), "A").Total);

    /// <summary>Motor sport's published practice with 25-18-15-12-10-8-6-4-2-1: equal points, more firsts is ahead; else more seconds.</summary>
    [Fact]
    public void With_a_table_more_of_the_best_places_is_ahead()
    {
        var table = new PointsRule.High([25, 18, 15, 12, 10, 8, 6, 4, 2, 1]);
        var firsts = Play(table, "A 1 6 8", "B 3 5 4");                             // 25+8+4 = 15+10+12 = 37

        Assert.Equal("1A 2B", Order(firsts));
        Assert.Equal(new TieBreak(TieRule.CountBack, "B", 1, null, 1, 0), Line(firsts, "A").Ahead);

        var seconds = Play(table, "C 2 9", "D 5 5");                                // 18+2 = 10+10
        Assert.Equal(new TieBreak(TieRule.CountBack, "D", 2, null, 1, 0), Line(seconds, "C").Ahead);
        Assert.Equal("1A 1B", Order(Play(table, "A 1 2", "B 2 1")));
    }

    [Fact]
    public void A_workout_that_some_team_has_yet_to_do_is_shown_and_does_not_count()
    {
        var table = Play(AllCount, "A 1 2?", "B 2 1?", "C 3 -");

        Assert.Equal(["w2"], table.Open);
        Assert.Equal([1m, 2m, 3m], table.Lines.Select(line => line.Total));
        Assert.False(table.Provisional);                                            // what counts is certified
        Assert.Equal((2, false), (Line(table, "A").Scores[1]!.Place, Line(table, "A").Scores[1]!.Counts));
        Assert.Null(Line(table, "C").Scores[1]);
        Assert.True(Play(AllCount, "A 1?", "B 2").Provisional);
    }

    [Fact]
    public void After_a_cut_who_went_on_stays_ahead_of_who_did_not_whatever_the_points()
    {
        var table = Play(AllCount, (After: 1, GoOn: 2), "A 1 2", "B 2 1", "C 3", "D 4");

        Assert.Equal("1B 2A 3C 4D", Order(table));                                   // equal totals: the latest workout
        Assert.Equal([null, null, "w1", "w1"], table.Lines.Select(line => line.CutAfter));
        Assert.Empty(table.Open);                                                   // C and D have nothing more to do
    }

    [Fact]
    public void Who_ties_for_the_last_place_that_goes_on_goes_on_too()
    {
        var table = Play(AllCount, (After: 1, GoOn: 2), "A 1 1", "B 2 3", "C 2 2", "D 4");

        Assert.Equal([null, null, null, "w1"], table.Lines.Select(line => line.CutAfter));
        Assert.Equal("1A 2C 3B 4D", Order(table));
    }
}
