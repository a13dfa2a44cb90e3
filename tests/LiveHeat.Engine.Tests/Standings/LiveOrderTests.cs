using CsCheck;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Heats.Laws;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Standings;

public class LiveOrderTests
{
    private static string Board(string score, HeatSnapshot? heat = null) => HeatScript.Board(HeatScript.Play(score, heat));

    [Fact]
    public void Before_anything_is_done_all_share_the_first_place() => Assert.Equal("1=2=3", Board("start"));

    [Fact]
    public void More_work_beats_an_earlier_split() => Assert.Equal("2 1 3", Board("""
        start
        lane 1 step 1 done at 0:40.0
        lane 2 step 1 done at 0:41.2
        lane 2 step 2 done at 1:05.9
        """));

    [Fact]
    public void The_same_work_earlier_is_ahead() => Assert.Equal("2 1 3", Board("""
        start
        lane 1 step 1 done at 0:41.2
        lane 2 step 1 done at 0:41.1
        """));

    [Fact]
    public void The_same_work_at_the_same_moment_shares_the_place()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:41
            lane 2 step 1 done at 0:45
            lane 3 step 1 done at 0:41
            """);

        Assert.Equal("1=3 2", HeatScript.Board(heat));
        Assert.Equal([1, 3, 1], LiveOrder.Of(heat).Select(placing => placing.Place!.Value));
        Assert.Equal([true, false, true], LiveOrder.Of(heat).Select(placing => placing.Tied));
    }

    [Fact]
    public void Reps_of_the_open_set_count() => Assert.Equal("2 1 3", Board("""
        start
        lane 1 step 1 done at 0:30
        lane 2 step 1 done at 0:40
        lane 2 count 1 of step 2 at 0:44
        """));

    [Fact]
    public void The_team_whose_tag_is_made_is_ahead_of_the_one_with_the_same_score() => Assert.Equal("2 1 3", Board("""
        start
        lane 1 step 2 done at 1:00
        lane 2 step 2 done at 1:01
        lane 2 tag 3 at 1:03
        """));

    [Fact]
    public void Finished_teams_rank_first_and_by_official_time() => Assert.Equal("2=3 1", Board("""
        start
        lane 1 step 8 done at 5:00
        lane 2 step 9 done at 9:00.31
        lane 3 step 9 done at 9:00.39
        """));    // 9:00.4 both: rounded up to the tenth, they tie

    [Fact]
    public void A_finish_at_an_unknown_time_ranks_after_the_known_ones() => Assert.Equal("2 1 3", Board("""
        start
        lane 1 step 9 done at 5:00 time unknown
        lane 2 step 9 done at 9:00
        lane 3 step 8 done at 5:00
        """));

    [Fact]
    public void Penalties_cost_seconds_of_the_finished_and_reps_of_the_others()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 9 done at 5:00
            lane 2 step 9 done at 5:10
            penalise lane 1 by 30000 ms
            """);
        Assert.Equal("2 1 3", HeatScript.Board(heat));
        Assert.Equal([330_000, 310_000, null], heat.Lanes.Select(lane => LiveOrder.OfficialMs(heat, lane)));

        var behind = HeatScript.Play("""
            start
            lane 1 step 2 done at 1:00
            lane 2 step 1 done at 1:00
            penalise lane 1 by 13 reps
            """);
        Assert.Equal("2 1 3", HeatScript.Board(behind));
        Assert.Equal([1, 0, 10], LiveOrder.Of(behind).Select(placing => placing.GapWorth));    // 9, 10 and 0 to compare
    }

    [Fact]
    public void Given_time_helps_and_taken_time_costs() => Assert.Equal("2 1 3", Board("""
        start
        lane 1 step 9 done at 5:00
        lane 2 step 9 done at 5:05
        adjust lane 2 by -6000 ms
        """));

    [Fact]
    public void A_team_that_stopped_ranks_after_all_others_live_as_in_the_result() => Assert.Equal("2 3 1", Board("""
        start
        lane 1 step 5 done at 2:00
        lane 2 step 1 done at 0:50
        lane 1 stopped withdrew at 3:00
        """));

    [Fact]
    public void A_team_that_did_not_start_has_no_place()
    {
        var heat = HeatScript.Play("""
            withdraw lane 2
            start
            lane 3 step 1 done at 0:40
            """);

        Assert.Equal("3 1", HeatScript.Board(heat));
        Assert.Equal(new Placing(Some.Lane(2), "open", null, false, null, null, 0), LiveOrder.Of(heat)[1]);
    }

    [Fact]
    public void Each_prescription_has_its_own_places()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:40
            lane 2 step 2 done at 0:50
            lane 4 step 1 done at 0:30
            """, Some.Snapshot(4, divisions: ["open", "scaled"]));

        Assert.Equal([(1, "open"), (1, "scaled"), (2, "open"), (2, "scaled")], LiveOrder.Of(heat).Select(placing => (placing.Place!.Value, placing.Group)));
        Assert.Equal([0, 0, null, null], LiveOrder.Of(heat).Select(placing => placing.GapMs));    // nobody knows when lane 2 passed step 1
    }

    [Fact]
    public void A_variant_is_compared_only_with_who_took_it_too_and_has_no_place_in_its_division()
    {
        var heat = HeatScript.Play("""
            start
            lane 2 variant scaled from step 2 at 0:30
            lane 4 variant scaled from step 2 at 0:30
            lane 1 step 1 done at 0:40
            lane 2 step 1 done at 0:34
            lane 4 step 1 done at 0:37
            """, Some.Snapshot(4));

        Assert.Equal(["open", "open+scaled@2", "open", "open+scaled@2"], LiveOrder.Of(heat).Select(placing => placing.Group));
        Assert.Equal([1, null, 2, null], LiveOrder.Of(heat).Select(placing => placing.Place));
        Assert.Equal([0, 0, null, 3_000], LiveOrder.Of(heat).Select(placing => placing.GapMs));
    }

    [Fact]
    public void What_other_prescriptions_do_changes_no_place_and_no_gap() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                var all = GeneratedHeat.Fold(heat.Facts);
                var others = all.Lanes.Where(lane => lane.Plan.Group != "open").Select(lane => lane.Lane).ToHashSet();
                var alone = GeneratedHeat.Fold(heat.Facts.Where(arrival => arrival.Fact is not (HeatFact.Floor or HeatFact.FactAdded) || !others.Contains(arrival.Fact.AboutLane()!.Value)));
                Assert.Equal(LiveOrder.Of(all).Where(placing => placing.Group == "open"), LiveOrder.Of(alone).Where(placing => placing.Group == "open"));
            },
            iter: 300);

    [Fact]
    public void Places_and_gaps_never_disagree_with_each_other() =>
        GeneratedHeat.WithWrongClocks.Sample(
            heat =>
            {
                foreach (var group in LiveOrder.Of(GeneratedHeat.Fold(heat.Facts)).Where(placing => placing.Place is not null).GroupBy(placing => placing.Group))
                {
                    var places = group.Select(placing => placing.Place!.Value).Order().ToList();
                    Assert.All(group, placing => Assert.Equal(1 + places.Count(place => place < placing.Place), placing.Place));
                    Assert.All(group, placing => Assert.Equal(places.Count(place => place == placing.Place) > 1, placing.Tied));
                    Assert.All(group, placing => Assert.True(placing.GapMs is null or >= 0 && placing.AheadMs is null or >= 0));
                    Assert.All(group.Where(placing => placing.Place == 1), placing => Assert.True(placing.AheadMs is null && placing.GapWorth == 0));
                }
            },
            iter: 300);
}
