using LiveHeat.Testing;

namespace LiveHeat.Engine.Standings;

/// <summary>
/// The plan expects 20 s and 36 s for the two sets of a round, 2 s for a tag and 3 s for the finish: 56, 58 · 114, 116 · 172 and 175 s in all; the cap
/// is 600 s, so each expected second is due in 600/175 s.
/// </summary>
public class CapPaceTests
{
    private static long? Ahead(string score) => CapPace.AheadMs(HeatScript.Play(score).Lanes[0]);

    [Fact]
    public void A_step_is_due_in_its_share_of_the_cap()
    {
        var plan = HeatScript.Play("").Lanes[0].Plan;

        Assert.Equal(175_000, plan.ExpectedMs);
        Assert.Equal(0, CapPace.DueMs(plan, 0, plan.CapMs));
        Assert.Equal(68_571, CapPace.DueMs(plan, 1, plan.CapMs));
        Assert.Equal(600_000, CapPace.DueMs(plan, 9, plan.CapMs));
    }

    [Theory]
    [InlineData("1:08.571", 0)]
    [InlineData("1:00", 8_571)]
    [InlineData("1:20", -11_429)]
    public void Ahead_is_what_is_left_until_the_step_is_due(string done, int aheadMs) => Assert.Equal(aheadMs, Ahead($"""
        start
        lane 1 step 1 done at {done}
        """));

    [Fact]
    public void Nothing_is_told_before_there_is_enough_to_know()
    {
        Assert.Null(Ahead("start"));

        // A first set of 10 s in 400 says nothing yet.
        var longer = Some.Workout(prescriptions: Some.Prescription(rounds: 20, round: [new("wall-ball", 5), new("wall-ball", 5)]));
        Assert.Null(CapPace.AheadMs(HeatScript.Play("""
            start
            lane 1 step 1 done at 0:10
            """, Some.Snapshot(workout: longer)).Lanes[0]));
    }

    [Fact]
    public void A_finished_team_has_no_pace() => Assert.Null(Ahead("""
        start
        lane 1 step 9 done at 5:00
        """));

    [Fact]
    public void The_last_known_split_decides() => Assert.Equal(8_571, Ahead("""
        start
        lane 1 step 1 done at 1:00
        lane 1 step 2 done at 9:00 time unknown
        """));

    [Fact]
    public void A_hold_that_moves_the_cap_changes_no_pace_and_one_that_does_not_costs_time()
    {
        Assert.Equal(8_571, Ahead("""
            start
            hold lane 1 at 0:10
            resume lane 1 at 0:40
            lane 1 step 1 done at 1:30
            """));

        // Half a minute of 600 s is gone: the step is due at 570 s x 20/175 of lane time.
        Assert.Equal(65_142 - 60_000, Ahead("""
            start
            hold lane 1 cap stays at 0:10
            resume lane 1 at 0:40
            lane 1 step 1 done at 1:30
            """));
    }
}
