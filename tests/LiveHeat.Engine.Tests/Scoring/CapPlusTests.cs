using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Points;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>For time, and who is not through has the cap and one second for each rep that is missing. Three rounds of 10 wall balls and 12 cal: 66 in all.</summary>
public class CapPlusTests
{
    private static HeatSnapshot Heat(int lanes = 3, int capMs = 720_000) => Some.Snapshot(lanes, Some.Workout(prescriptions: Some.Prescription(capMs: capMs)) with
    {
        Scoring = new ScoringRule.ForTime(Unfinished.CapPlusSeconds),
    });

    private static string Lines(HeatState heat, string now = "20:00") => string.Join(" | ", HeatResult.Of(heat, HeatScript.At(now))
        .Select(line => $"{line.Place?.ToString() ?? "-"} lane {line.Lane.Lane} {line.Outcome} {(line.OfficialMs is { } ms ? TimeText.Of(ms) : line.Worth.ToString())}{(line.Tied ? " tied" : "")}"));

    [Fact]
    public void At_a_cap_of_12_00_seven_missing_reps_make_12_07_and_a_finish_exactly_at_the_cap_ranks_ahead() =>
        // Cap 12:00, 7 missing -> 12:07; a finish exactly at the cap ranks ahead: common practice, no source.
        Assert.Equal("1 lane 2 Finished 12:00.0 | 2 lane 1 Capped 12:07.0 | 3 lane 3 Capped 12:22.0", Lines(HeatScript.Play("""
            start
            lane 1 step 7 done at 11:00
            lane 1 5 reps at cap in step 8 at 12:05
            lane 2 step 9 done at 12:00
            lane 3 step 6 done at 8:00
            end at 12:10
            """, Heat())));

    [Fact]
    public void A_team_with_all_its_reps_that_did_not_cross_the_line_has_the_cap_and_ranks_behind_a_finish_at_it() =>
        Assert.Equal("1 lane 2 Finished 12:00.0 | 2 lane 1 Capped 12:00.0", Lines(HeatScript.Play("""
            start
            lane 1 step 8 done at 11:30
            lane 2 step 9 done at 12:00
            end at 12:10
            """, Heat(2))));

    [Fact]
    public void A_finish_with_penalties_ranks_behind_a_team_whose_cap_and_missing_reps_are_less() =>
        Assert.Equal("1 lane 2 Capped 12:07.0 | 2 lane 1 Finished 12:20.0", Lines(HeatScript.Play("""
            start
            penalise lane 1 by 30000 ms
            lane 1 step 9 done at 11:50
            lane 2 step 7 done at 11:00
            lane 2 5 reps at cap in step 8 at 12:05
            end at 12:10
            """, Heat(2))));

    [Fact]
    public void Seconds_and_reps_of_penalties_count_for_a_team_that_is_not_through()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 7 done at 11:00
            lane 1 5 reps at cap in step 8 at 12:05
            penalise lane 1 by 30000 ms
            penalise lane 1 by 4 reps
            end at 12:10
            """, Heat(1));

        Assert.Equal("1 lane 1 Capped 12:41.0", Lines(heat));
    }

    [Fact]
    public void Time_given_back_with_the_cap_moved_is_not_given_twice_and_without_it_makes_the_time_less()
    {
        string Adjusted(string how) => Lines(HeatScript.Play($"""
            start
            adjust lane 1 by -10000 ms{how}
            lane 1 step 7 done at 11:00
            lane 1 5 reps at cap in step 8 at 12:15
            end at 12:20
            """, Heat(1)));

        Assert.Equal("1 lane 1 Capped 11:57.0", Adjusted(""));
        Assert.Equal("1 lane 1 Capped 12:07.0", Adjusted(" moving the cap"));
    }

    [Fact]
    public void A_lane_that_was_held_has_the_same_cap_in_its_time() =>
        Assert.Equal("1 lane 1 Capped 12:07.0", Lines(HeatScript.Play("""
            start
            hold lane 1 at 1:00
            resume lane 1 at 1:30
            lane 1 step 7 done at 11:00
            lane 1 5 reps at cap in step 8 at 12:35
            end at 12:40
            """, Heat(1))));

    [Fact]
    public void Who_stopped_has_no_time_and_comes_last() =>
        Assert.Equal("1 lane 2 Capped 13:06.0 | 2 lane 1 Stopped 44", Lines(HeatScript.Play("""
            start
            lane 1 step 5 done at 2:00
            lane 1 stopped medical at 3:00
            end at 12:10
            """, Heat(2))));

    [Fact]
    public void A_finish_without_a_time_counts_as_no_later_than_the_cap() =>
        Assert.Equal("1 lane 2 Finished 11:00.0 | 2 lane 1 FinishedTimeUnknown 66 | 3 lane 3 Capped 12:01.0", Lines(HeatScript.Play("""
            start
            lane 1 step 9 done at 5:00 time unknown
            lane 2 step 9 done at 11:00
            lane 3 step 7 done at 11:00
            lane 3 11 reps at cap in step 8 at 12:05
            end at 12:10
            """, Heat())));

    [Fact]
    public void While_the_heat_runs_who_works_has_no_time_yet_and_stands_where_a_cap_now_would_put_them()
    {
        var heat = HeatScript.Play("""
            start
            penalise lane 1 by 100000 ms
            lane 1 step 9 done at 11:00
            lane 2 step 7 done at 11:30
            lane 3 step 1 done at 11:40
            """, Heat());

        Assert.Equal("2 1 3", HeatScript.Board(heat));
        Assert.Equal("1 lane 2 Working 54 | 2 lane 1 Finished 12:40.0 | 3 lane 3 Working 10", Lines(heat, "11:50"));
    }

    [Fact]
    public void Over_several_heats_teams_rank_by_the_same_times()
    {
        var (first, second) = (
            HeatScript.Play("""
                start
                penalise lane 1 by 30000 ms
                lane 1 step 9 done at 11:50
                lane 2 step 8 done at 11:00
                end at 12:10
                """, Heat(2)),
            HeatScript.Play("""
                start
                lane 1 step 9 done at 12:00
                lane 2 step 7 done at 11:00
                lane 2 5 reps at cap in step 8 at 12:05
                end at 12:10
                """, Heat(2)));
        var results = new[] { (Name: "a", Heat: first), (Name: "b", Heat: second) }.SelectMany(one => HeatResult.Of(one.Heat, HeatScript.At("20:00"))
            .Select(line => new TeamResult($"{one.Name}{line.Lane.Lane}", new HeatId(one.Name), line, Certified: true)));

        // b1 through at 12:00, a2 all reps but not through: 12:00; b2 12:07; a1 through at 11:50 and 30 s.
        Assert.Equal("1 b1, 2 a2, 3 b2, 4 a1", string.Join(", ", WorkoutOrder.Of(results).Select(place => $"{place.Place} {place.Team}")));
    }
}
