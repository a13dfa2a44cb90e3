using LiveHeat.Engine.Scoring;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class TimedFinishTests
{
    private const string Seated = """
        lane 1 seat k-1 taken as timekeeper at -0:30
        lane 1 seat k-2 taken as timekeeper at -0:30
        lane 1 seat k-3 taken as timekeeper at -0:30
        start
        lane 1 step 9 done at 5:00.2

        """;

    private static LaneState Lane1(string score, TimekeeperRule rule = TimekeeperRule.Athletics) =>
        HeatScript.Play(Seated + score, Some.Snapshot() with { Timekeepers = rule }).Lanes[0];

    [Fact]
    public void Without_timekeepers_the_judges_tap_is_the_time() => Assert.Equal(300_200, Lane1("").Finish!.Value.LaneMs);

    [Fact]
    public void Of_three_timekeepers_the_middle_one_is_the_time() =>
        // World Athletics TR 19 / IAAF rule 165; World Aquatics SW 11.3.1-2 says the same of three.
        Assert.Equal(300_400, Lane1("""
            lane 1 finish timed at 5:00.5 from seat k-1
            lane 1 finish timed at 5:00.4 from seat k-2
            lane 1 finish timed at 5:00.1 from seat k-3
            """).Finish!.Value.LaneMs);

    [Fact]
    public void Of_two_the_rule_named_by_the_heat_decides()
    {
        const string Two = """
            lane 1 finish timed at 5:00.5 from seat k-1
            lane 1 finish timed at 5:00.4 from seat k-2
            """;

        Assert.Equal(300_500, Lane1(Two).Finish!.Value.LaneMs);                            // the longer: TR 19 / IAAF rule 165
        Assert.Equal(300_450, Lane1(Two, TimekeeperRule.Swimming).Finish!.Value.LaneMs);   // the average: World Aquatics SW 11.3.3
    }

    [Fact]
    public void The_last_tap_of_each_timekeeper_that_stands_counts() => Assert.Equal(300_400, Lane1("""
        lane 1 finish timed at 4:59.0 from seat k-1
        lane 1 finish timed at 5:00.4 from seat k-1
        lane 1 finish timed at 5:00.9 from seat k-1 [slip]
        lane 1 undo slip from seat k-1
        """).Finish!.Value.LaneMs);

    [Fact]
    public void Only_the_judge_says_that_all_is_done() => Assert.Null(HeatScript.Play("""
        lane 1 seat k-1 taken as timekeeper at -0:30
        start
        lane 1 step 8 done at 4:55
        lane 1 finish timed at 5:00.4 from seat k-1
        """).Lanes[0].Finish);

    [Fact]
    public void A_team_that_is_sent_back_is_timed_anew()
    {
        var lane = Lane1("""
            lane 1 finish timed at 5:00.4 from seat k-1
            lane 1 sent back to 8 at 5:05
            lane 1 step 9 done at 5:40.0
            """);

        Assert.Equal(340_000, lane.Finish!.Value.LaneMs);
        Assert.Empty(lane.TimedFinishes);
    }

    /// <summary>Lane 1 at its cap of 10:00, as judge and timekeepers have it: how it ended, and what people are asked.</summary>
    private static string AtCap(HeatState heat)
    {
        var near = NearTies.Of(heat).SingleOrDefault();
        var line = HeatResult.Of(heat, HeatScript.At("11:00"))[0];
        return $"{line.Outcome} {line.OfficialMs?.ToString() ?? line.Worth.ToString()} {(near is null ? "" : $"{near.ApartMs}/{near.WithinMs}{(near.Decided ? "!" : "?")}")}".TrimEnd();
    }

    private static HeatScript Timed(string judge, string timekeeper, FinishKind finish = FinishKind.Line, string before = "calls at 9:01") => new HeatScript(Some.Snapshot(1, Some.Workout(finish: finish))).Then($"""
        lane 1 seat k-1 taken as timekeeper at -0:30
        start
        lane 1 step {(finish == FinishKind.Line ? 8 : 7)} done at 9:00
        lane 1 {before}
        lane 1 step {(finish == FinishKind.Line ? 9 : 8)} done at {judge}
        lane 1 finish timed at {timekeeper} from seat k-1
        """);

    [Theory]
    [InlineData("9:58", "9:59.1", "Finished 599100")]
    [InlineData("9:59.7", "10:00.4", "Capped 66 400/495?")]       // the official time decides, and the head judge is asked
    [InlineData("10:00.4", "9:59.7", "Finished 599700 -300/495?")]
    [InlineData("10:01", "10:02", "Capped 66")]
    [InlineData("9:59", "10:00.05", "Capped 66 50/1095?")]
    [InlineData("9:59", "9:59.95", "Finished 600000 -50/107?")]    // rounded up to the next tenth, and measured in time
    [InlineData("10:00", "10:00", "Finished 600000 0/107?")]
    public void The_timekeepers_decide_whether_it_was_in_time_and_a_disagreement_about_the_cap_is_put_to_the_head_judge(string judge, string timekeeper, string ended) =>
        Assert.Equal(ended, AtCap(Timed(judge, timekeeper).State));

    [Fact]
    public void Whatever_lies_after_the_cap_by_its_own_instant_or_by_the_official_time_says_so()
    {
        string Flagged(HeatScript heat) => string.Join(", ", heat.State.Lanes[0].Flagged.Select(flagged => $"{heat.State.Find(flagged.Fact)!.Fact.GetType().Name} {flagged.Flags}"));

        Assert.Equal("FinishTimed AfterCap, StepDone AfterCap", Flagged(Timed("9:59.7", "10:00.4")));
        Assert.Equal("StepDone AfterCap", Flagged(Timed("10:00.4", "9:59.7")));
        Assert.Equal("", Flagged(Timed("9:58", "9:59.1")));
    }

    [Fact]
    public void What_the_head_judge_decides_of_such_a_finish_stands()
    {
        Assert.Equal("Finished 600400 -95/107!", AtCap(Timed("9:59.7", "10:00.4").Then("decide lane 1 in time by 495 ms").State));
        Assert.Equal("Capped 66 0/495!", AtCap(Timed("10:00.4", "9:59.7").Then("decide lane 1 too late by 495 ms").State));
        Assert.Equal("Capped 66 400/495?", AtCap(Timed("9:59.7", "10:00.4").Then("decide lane 1 in time by 495 ms [yes]\nvoid yes").State));
    }

    [Fact]
    public void A_set_that_the_official_time_puts_after_the_cap_counts_as_far_as_it_was_counted_in_time()
    {
        Assert.Equal("Capped 54 400/495?", AtCap(Timed("9:59.7", "10:00.4", FinishKind.None).State));
        Assert.Equal("Capped 63 400/495?", AtCap(Timed("9:59.7", "10:00.4", FinishKind.None, "count 9 of step 8 at 9:55").State));
    }

    [Fact]
    public void Time_that_the_lane_was_held_moves_the_official_time_away_from_the_cap() => Assert.Equal("Finished 599000", AtCap(HeatScript.Play("""
        lane 1 seat k-1 taken as timekeeper at -0:30
        start
        hold lane 1 at 1:00
        resume lane 1 at 1:30
        lane 1 step 9 done at 10:28
        lane 1 finish timed at 10:29 from seat k-1
        """, Some.Snapshot(1))));

    [Fact]
    public void A_team_that_had_stopped_is_not_finished_by_its_timekeepers() => Assert.Equal("Stopped 0", AtCap(HeatScript.Play("""
        lane 1 seat k-1 taken as timekeeper at -0:30
        start
        lane 1 stopped medical at 5:00
        lane 1 step 9 done at 5:10
        lane 1 finish timed at 5:10 from seat k-1
        """, Some.Snapshot(1))));
}
