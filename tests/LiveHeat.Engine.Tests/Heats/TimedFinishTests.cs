using LiveHeat.Engine.Timing;
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
}
