using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class LanePlansTests
{
    private static LaneState Lane1(string score) => HeatScript.Play(score).Lanes[0];

    private static string Athletes(LaneState lane) => string.Join(' ', lane.Plan.Steps.Select(step => step.Athlete == 0 ? "all" : lane.Plan.Athletes[step.Athlete - 1]));

    [Fact]
    public void A_line_up_changed_puts_others_to_work_from_a_step_on()
    {
        var lane = Lane1("""
            start
            lane 1 tag 3 at 1:10
            lane 1 line-up Ann,Dot,Bo from step 4 at 1:12
            """);

        Assert.Equal("Ann Ann Ann Dot Dot Dot Bo Bo Bo", Athletes(lane));
        Assert.Equal((2, "open", 4), (lane.PlanVersion, lane.Plan.Group, lane.Open));
        Assert.Equal(["Ann", "Bo", "Cy", "Dot"], lane.Plan.Athletes);
        Assert.Equal("tag Bo", lane.Plan.Steps[5].Label);
    }

    [Fact]
    public void Who_did_what_before_the_change_stays_as_it_was() => Assert.Equal("Ann Ann Ann Bo Bo Bo Ann Ann Ann", Athletes(Lane1("""
        start
        lane 1 line-up Cy,Bo,Ann from step 7
        """)));

    [Fact]
    public void Two_athletes_of_one_name_stay_two()
    {
        var lane = HeatScript.Play("""
            start
            lane 1 line-up Sam,Bo,Sam from step 4
            """).Lanes[0];

        Assert.Equal(["Ann", "Bo", "Cy", "Sam", "Sam"], lane.Plan.Athletes);
        Assert.Equal([1, 1, 1, 2, 2, 2, 5, 5, 5], lane.Plan.Steps.Select(step => step.Athlete));
    }

    [Fact]
    public void A_variant_brings_another_prescription_from_a_step_on()
    {
        var lane = Lane1("""
            start
            lane 1 tag 3 at 1:10
            lane 1 variant scaled from step 4 at 1:12
            """);

        Assert.Equal([10, 12, 0, 8, 9, 0, 8, 9, 0], lane.Plan.Steps.Select(step => step.Quantity));
        Assert.Equal(("open+scaled@4", "open", 22), (lane.Plan.Group, lane.Plan.Division, lane.Worth));
    }

    [Fact]
    public void A_line_up_changed_keeps_the_variant_taken_before_it()
    {
        var lane = Lane1("""
            start
            lane 1 variant scaled from step 4
            lane 1 line-up Ann,Dot,Bo from step 7
            """);

        Assert.Equal([10, 12, 0, 8, 9, 0, 8, 9, 0], lane.Plan.Steps.Select(step => step.Quantity));
        Assert.Equal("Ann Ann Ann Bo Bo Bo Bo Bo Bo", Athletes(lane));
        Assert.Equal(("open+scaled@4", 3), (lane.Plan.Group, lane.PlanVersion));
    }

    [Fact]
    public void A_variant_keeps_the_line_up_changed_before_it() => Assert.Equal("Ann Ann Ann Dot Dot Dot Bo Bo Bo", Athletes(Lane1("""
        start
        lane 1 line-up Ann,Dot,Bo from step 4
        lane 1 variant scaled from step 5
        """)));

    [Fact]
    public void Two_variants_are_told_apart() => Assert.Equal("open+scaled@4+open@7", Lane1("""
        start
        lane 1 variant scaled from step 4
        lane 1 variant open from step 7
        """).Plan.Group);

    [Theory]
    [InlineData("lane 1 line-up Ann,Bo from step 4")]
    [InlineData("lane 1 line-up Ann,Bo,Dot from step 10")]
    [InlineData("lane 1 line-up Ann,Bo,Dot from step 0")]
    [InlineData("lane 1 variant masters from step 4")]
    public void A_ruling_that_cannot_be_changes_nothing(string ruling)
    {
        var heat = HeatScript.Play($"""
            start
            {ruling}
            """);

        Assert.Equal(HeatScript.Play("start").Lanes[0].Plan, heat.Lanes[0].Plan);
        Assert.Equal(1, heat.Lanes[0].PlanVersion);
    }

    [Fact]
    public void A_voided_change_gives_the_plan_back_and_its_number_to_nobody()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 line-up Ann,Dot,Bo from step 4 [change]
            void change
            """);
        Assert.Equal(1, heat.State.Lanes[0].PlanVersion);
        Assert.Equal("Ann Ann Ann Bo Bo Bo Cy Cy Cy", Athletes(heat.State.Lanes[0]));
        Assert.Equal(3, heat.Then("lane 1 line-up Cy,Bo,Ann from step 4").State.Lanes[0].PlanVersion);
    }

    [Fact]
    public void Every_change_of_what_is_to_be_done_makes_a_new_sheet()
    {
        var heat = new HeatScript().Then("start");
        Assert.Equal(1, heat.State.SheetVersion);
        Assert.Equal(2, heat.Then("lane 1 line-up Ann,Dot,Bo from step 4 [change]").State.SheetVersion);
        Assert.Equal(2, heat.Then("lane 1 step 1 done at 0:40 [tap]\nvoid tap").State.SheetVersion);
        Assert.Equal(3, heat.Then("void change [undo1]").State.SheetVersion);
        Assert.Equal(4, heat.Then("void undo1").State.SheetVersion);
        Assert.Equal(5, heat.Then("lane 2 variant scaled from step 4").State.SheetVersion);
    }

    [Fact]
    public void A_tap_made_on_the_plan_before_counts_when_its_step_is_still_the_same()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 variant scaled from step 4 at 0:30
            lane 1 step 2 done at 1:00 on plan 1 [same]
            lane 1 tag 6 at 2:00 on plan 1 [tag]
            lane 1 step 7 done at 2:30 on plan 1 [other]
            """);
        var lane = heat.State.Lanes[0];

        Assert.Equal(FactFlags.OldPlan, lane.FlagsOf(heat["same"]));
        Assert.Equal(FactFlags.OldPlan, lane.FlagsOf(heat["tag"]));
        Assert.Equal(FactFlags.OldPlan | FactFlags.Quarantined, lane.FlagsOf(heat["other"]));
        Assert.Equal(7, lane.Open);
        Assert.Equal(8, heat.Then("admit other").State.Lanes[0].Open);
    }

    [Theory]
    [InlineData("0:59.999", FactFlags.None)]
    [InlineData("1:00", FactFlags.OldPlan | FactFlags.Quarantined)]
    public void A_tap_made_before_the_ruling_was_made_on_the_plan_in_force_then(string at, FactFlags flags)
    {
        var heat = new HeatScript().Then($"""
            start
            lane 1 step 4 done at {at} on plan 1 [tap]
            lane 1 variant scaled from step 4 at 1:00
            """);

        Assert.Equal(flags, heat.State.Lanes[0].FlagsOf(heat["tap"]));
        Assert.Equal(flags == FactFlags.None ? 5 : 1, heat.State.Lanes[0].Open);
    }

    [Fact]
    public void Of_two_changes_each_tap_belongs_to_the_plan_of_its_moment()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40 on plan 1 [first]
            lane 1 line-up Ann,Dot,Bo from step 4 at 1:00
            lane 1 step 2 done at 1:20 on plan 2 [second]
            lane 1 line-up Ann,Bo,Dot from step 7 at 1:30
            lane 1 tag 3 at 1:40 on plan 2 [late]
            lane 1 step 4 done at 2:10 on plan 3 [third]
            """);

        Assert.Equal([FactFlags.None, FactFlags.None, FactFlags.OldPlan, FactFlags.None], new[] { "first", "second", "late", "third" }.Select(name => heat.State.Lanes[0].FlagsOf(heat[name])));
    }

    [Fact]
    public void A_tap_on_a_plan_that_was_voided_is_told()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 line-up Ann,Dot,Bo from step 4 at 0:30 [change]
            lane 1 step 1 done at 0:40 on plan 2 [tap]
            void change
            """);

        Assert.Equal((FactFlags.OldPlan, 2), (heat.State.Lanes[0].FlagsOf(heat["tap"]), heat.State.Lanes[0].Open));
    }

    [Fact]
    public void A_call_replaced_is_the_whole_heat_what_was_changed_before_it_was_of_another_call()
    {
        var lane = Lane1("""
            lane 1 line-up Ann,Dot,Bo from step 4
            withdraw lane 1
            call again
            """);

        Assert.Equal((1, false), (lane.PlanVersion, lane.Withdrawn));
        Assert.Equal("Ann Ann Ann Bo Bo Bo Cy Cy Cy", Athletes(lane));
    }

    [Fact]
    public void A_ledger_with_a_lane_that_cannot_be_compiled_still_opens()
    {
        var heat = HeatScript.Play("""
            start
            lane 1 step 1 done at 0:40
            lane 2 step 1 done at 0:40
            """, Some.Snapshot(2, divisions: ["open", "masters"]));

        Assert.Equal((2, 10), (heat.Lanes[0].Open, heat.Lanes[0].Worth));
        Assert.False(heat.Lanes[1].Finished);
        Assert.Equal(1, heat.Lanes[1].Quarantined);
    }
}
