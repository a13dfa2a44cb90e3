using CsCheck;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Heats.Laws;
using LiveHeat.Engine.Timing;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

public class HeatResultTests
{
    private static string Lines(HeatState heat, string now = "20:00") => string.Join(" | ", HeatResult.Of(heat, HeatScript.At(now))
        .Select(line => $"{line.Place?.ToString() ?? "-"} lane {line.Lane.Lane} {line.Outcome} {(line.OfficialMs is { } ms ? TimeText.Of(ms) : line.Worth.ToString())}{(line.Tied ? " tied" : "")}"));

    [Fact]
    public void Finishers_rank_by_time_above_all_others_and_the_rest_by_work_done() =>
        // Common practice, no source.
        Assert.Equal("1 lane 3 Finished 9:30.2 | 2 lane 1 Capped 56 | 3 lane 2 Capped 44", Lines(HeatScript.Play("""
            start
            lane 1 step 7 done at 9:20
            lane 1 2 reps at cap in step 8 at 10:05
            lane 2 step 5 done at 6:00
            lane 3 step 9 done at 9:30.12
            end at 10:10
            """)));

    [Fact]
    public void A_finish_exactly_at_the_cap_ranks_ahead_of_every_team_that_did_not_make_it() =>
        // Common practice, no source.
        Assert.Equal("1 lane 2 Finished 10:00.0 | 2 lane 1 Capped 66 | 3 lane 3 Capped 0", Lines(HeatScript.Play("""
            start
            lane 1 step 8 done at 9:00
            lane 1 step 9 done at 10:00.001
            lane 2 step 9 done at 10:00.000
            end at 10:10
            """)));

    [Fact]
    public void Ties_share_a_place_and_the_places_covered_are_not_given_again() =>
        // 1 2 2 4: standard competition ranking, as in RosettaCode's ranking-methods data.
        Assert.Equal("1 lane 4 Finished 8:59.9 | 2 lane 1 Finished 9:00.4 tied | 2 lane 2 Finished 9:00.4 tied | 4 lane 3 Finished 9:00.5", Lines(HeatScript.Play("""
            start
            lane 4 step 9 done at 8:59.9
            lane 1 step 9 done at 9:00.33
            lane 2 step 9 done at 9:00.40
            lane 3 step 9 done at 9:00.41
            end at 10:10
            """, Some.Snapshot(4))));

    [Fact]
    public void Teams_that_stopped_come_after_all_others_and_who_did_not_start_has_no_place() =>
        Assert.Equal("1 lane 3 Capped 10 | 2 lane 1 Stopped 44 | - lane 2 DidNotStart 0", Lines(HeatScript.Play("""
            withdraw lane 2
            start
            lane 1 step 5 done at 2:00
            lane 1 stopped medical at 3:00
            lane 3 step 1 done at 5:00
            end at 10:10
            """)));

    [Fact]
    public void A_finish_without_a_time_is_said_and_ranks_after_those_with_one() =>
        Assert.Equal("1 lane 2 Finished 9:00.0 | 2 lane 1 FinishedTimeUnknown 66 | 3 lane 3 Capped 0", Lines(HeatScript.Play("""
            start
            lane 1 step 9 done at 5:00 time unknown
            lane 2 step 9 done at 9:00
            end at 10:10
            """)));

    [Fact]
    public void A_time_penalty_after_a_warning_is_added_to_the_official_time() =>
        // +30 s per offence after a warning: international functional-fitness federation, 2021 and 2023 test announcements.
        Assert.Equal("1 lane 2 Finished 9:10.0 | 2 lane 1 Finished 9:30.0 | 3 lane 3 Capped 0", Lines(HeatScript.Play("""
            start
            warn lane 1 at 1:00
            penalise lane 1 by 30000 ms
            lane 1 step 9 done at 9:00
            lane 2 step 9 done at 9:10
            end at 10:10
            """)));

    [Fact]
    public void Each_division_has_its_own_places_in_the_order_of_the_prescriptions() =>
        Assert.Equal("1 lane 3 Finished 5:00.0 | 2 lane 1 Capped 10 | 1 lane 2 Finished 4:00.0 | 2 lane 4 Capped 0", Lines(HeatScript.Play("""
            start
            lane 2 step 9 done at 4:00
            lane 3 step 9 done at 5:00
            lane 1 step 1 done at 9:00
            end at 10:10
            """, Some.Snapshot(4, divisions: ["open", "scaled"]))));

    [Fact]
    public void A_team_that_took_a_variant_stands_below_its_division_without_a_place_though_it_did_more_or_was_faster() =>
        Assert.Equal("1 lane 4 Finished 9:00.0 | 2 lane 1 Capped 10 | - lane 3 Finished 5:00.0 | - lane 2 Finished 6:00.0", Lines(HeatScript.Play("""
            start
            lane 2 variant scaled from step 4 at 1:00
            lane 3 variant scaled from step 4 at 1:00
            lane 1 step 1 done at 9:00
            lane 2 step 9 done at 6:00
            lane 3 step 9 done at 5:00
            lane 4 step 9 done at 9:00
            end at 10:10
            """, Some.Snapshot(4))));

    [Fact]
    public void A_variant_that_was_voided_gives_the_place_back() =>
        Assert.Equal("1 lane 1 Finished 5:00.0 | 2 lane 2 Capped 0", Lines(HeatScript.Play("""
            start
            lane 1 variant scaled from step 4 at 1:00 [variant]
            lane 1 step 9 done at 5:00
            end at 10:10
            void variant
            """, Some.Snapshot(2))));

    [Fact]
    public void Places_of_a_division_are_what_they_would_be_without_the_lanes_that_took_a_variant() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                var all = GeneratedHeat.Fold(heat.Facts);
                var apart = all.Lanes.Where(lane => lane.Plan.VariantFrom is not null).Select(lane => lane.Lane).ToHashSet();
                var alone = GeneratedHeat.Fold(heat.Facts.Where(arrival => arrival.Fact is not (HeatFact.Floor or HeatFact.FactAdded) || !apart.Contains(arrival.Fact.AboutLane()!.Value)));
                string Places(HeatState state) => string.Join(' ', HeatResult.Of(state, HeatScript.At("30:00")).Where(line => !apart.Contains(line.Lane.Lane)).Select(line => $"{line.Lane.Lane}:{line.Place}:{line.Tied}"));

                Assert.Equal(Places(alone), Places(all));
                Assert.All(HeatResult.Of(all, HeatScript.At("30:00")).Where(line => apart.Contains(line.Lane.Lane)), line => Assert.Null(line.Place));
            },
            iter: 300);

    [Fact]
    public void The_rounding_rule_of_the_heat_makes_times_official()
    {
        string Official(Rounding rounding) => TimeText.Of(HeatResult.Of(HeatScript.Play("""
            start
            lane 1 step 9 done at 4:12.441
            """, Some.Snapshot(1) with { Rounding = rounding }), HeatScript.At("5:00"))[0].OfficialMs!.Value);

        Assert.Equal(["4:12.5", "4:13.0", "4:12.45", "4:12.44"],
            new[] { Rounding.UpTenth, Rounding.UpSecond, Rounding.UpHundredth, Rounding.DownHundredth }.Select(Official));
    }

    [Fact]
    public void While_the_heat_runs_a_team_works_until_its_cap_has_passed()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:40
            """, Some.Snapshot(1));

        Assert.Equal("1 lane 1 Working 10", Lines(heat, "10:00"));
        Assert.Equal("1 lane 1 Capped 10", Lines(heat, "10:00.001"));
    }

    [Fact]
    public void A_team_whose_cap_moved_works_on_while_the_others_are_capped()
    {
        var heat = HeatScript.Play("""
            start
            hold lane 1 at 1:00
            resume lane 1 at 1:30
            """, Some.Snapshot(2));

        Assert.Equal("1 lane 1 Working 0 tied | 1 lane 2 Capped 0 tied", Lines(heat, "10:20"));
        Assert.Equal("1 lane 1 Capped 0 tied | 1 lane 2 Capped 0 tied", Lines(heat, "10:30.001"));
    }

    [Fact]
    public void The_ledger_before_the_call_has_no_result() => Assert.Empty(HeatResult.Of(HeatState.Empty(Some.Heat), Some.Go));
}
