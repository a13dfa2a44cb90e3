using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class HeatStateTests
{
    private static Phase PhaseAt(string score, string now) => new HeatScript().Then(score).State.PhaseAt(HeatScript.At(now));

    [Fact]
    public void A_heat_goes_from_the_list_to_the_signed_result()
    {
        var heat = new HeatScript(called: false);
        void Is(Phase phase, string now, string score)
        {
            heat.Then(score);
            Assert.Equal(phase, heat.State.PhaseAt(HeatScript.At(now)));
        }

        Is(Phase.Planned, "-2:00", "");
        Is(Phase.Called, "-0:50", "call at -1:00");
        Is(Phase.Called, "-0:40", """
            lane 1 seat s-1 taken as primary at -0:50
            lane 1 ready with s-1 at -0:45
            lane 2 seat s-2 taken as primary at -0:44
            """);
        Is(Phase.Called, "-0:30", "lane 2 ready with s-1");    // not that lane's seat
        Is(Phase.Called, "-0:30", "override lanes 3");
        Is(Phase.Armed, "-0:30", "withdraw lane 2");
        Is(Phase.CountingDown, "-0:00.001", "start");
        Is(Phase.Running, "0:00", "");
        Is(Phase.Halted, "2:00", "halt at 1:00");
        Is(Phase.Running, "3:00", "resume at 2:30");
        Is(Phase.Ended, "11:00", "end at 11:00");
        Is(Phase.Frozen, "12:00", "freeze at 12:00");
        Is(Phase.Frozen, "12:10", "sign organiser at 12:10");
        Is(Phase.Certified, "12:20", "sign head judge at 12:20");
        Is(Phase.Ended, "13:00", "reopen at 13:00");
    }

    [Fact]
    public void A_recalled_start_leaves_the_lanes_ready_and_a_return_to_the_call_asks_again()
    {
        Assert.Equal(Phase.Armed, PhaseAt("start\nrecall at 0:05", "0:06"));
        Assert.Equal(Phase.Called, PhaseAt("start\nhalt at 0:05\nreturn to call at 1:00", "1:01"));
        Assert.Equal(Phase.Armed, PhaseAt("start\nhalt at 0:05\nreturn to call at 1:00\noverride lanes 1,2,3", "1:01"));
        Assert.Null(HeatScript.Play("start\nhalt at 0:05\nreturn to call at 1:00").Clock.Start);
    }

    [Fact]
    public void A_horn_that_went_without_us_starts_the_heat_from_the_call_or_the_count_down()
    {
        Assert.Equal(Phase.Running, PhaseAt("observe start give or take 500 at 0:00", "0:05"));
        Assert.Equal(Phase.Running, PhaseAt("start at 0:10\ncorrect start start-1 at 0:03", "0:04"));
        Assert.Equal(Phase.Ended, PhaseAt("start\nend at 10:00\ncorrect start start-1 at 0:03", "10:05"));
    }

    [Fact]
    public void A_new_call_asks_every_lane_to_confirm_again()
    {
        Assert.Equal(Phase.Called, PhaseAt("call again at -0:20", "-0:10"));
        Assert.Equal(Phase.Armed, PhaseAt("""
            call again at -0:20
            lane 1 ready with s-1
            override lanes 2,3
            """, "-0:10"));
    }

    [Fact]
    public void A_phone_that_takes_a_lane_over_must_be_ready_itself()
    {
        var heat = new HeatScript().Then("lane 1 seat s-new taken as primary at -0:20");

        Assert.False(heat.State.Lanes[0].Ready);
        Assert.Equal(HeatScript.At("-0:20"), heat.State.Seats.First(seat => seat.Id.Value == "s-1").Until);
        Assert.True(heat.Then("lane 1 ready with s-new").State.Lanes[0].Ready);
    }

    [Fact]
    public void A_witness_ends_nobodys_seat()
    {
        var heat = HeatScript.Play("lane 1 seat w-1 taken as witness at -0:20");

        Assert.Equal("s-1", heat.Lanes[0].Seat!.Id.Value);
        Assert.True(heat.Lanes[0].Ready);
    }

    [Fact]
    public void Two_signatures_of_the_same_head_certify()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 9 done at 9:00
            end at 10:05
            freeze at 11:00
            sign organiser
            sign head judge
            """);

        Assert.Equal((Phase.Certified, heat.State.Freeze!.Head + 1), (heat.State.Told, heat.State.SignedHead));
        Assert.Equal([Role.Organiser, Role.HeadJudge], heat.State.Signatures.Select(signature => signature.By.Role));
        Assert.All(heat.State.Signatures, signature => Assert.Equal(heat.State.SignedHead, signature.Head));
    }

    [Fact]
    public void Two_signatures_of_one_role_do_not()
    {
        var heat = HeatScript.Play("""
            start
            end at 10:05
            freeze at 11:00
            sign organiser
            sign organiser
            """);

        Assert.Equal(Phase.Frozen, heat.Told);
        Assert.Single(heat.Signatures);
    }

    [Fact]
    public void One_signature_alone_lapses_when_something_new_is_known()
    {
        var heat = new HeatScript().Then("""
            start
            end at 10:05
            freeze at 11:00
            sign organiser
            penalise lane 1 by 5000 ms
            """);
        Assert.Empty(heat.State.Signatures);

        heat.Then("sign head judge");
        Assert.Equal(Phase.Frozen, heat.State.Told);
        Assert.Equal(Phase.Certified, heat.Then("sign organiser").State.Told);
    }

    [Fact]
    public void What_comes_after_the_certificate_leaves_its_signatures()
    {
        var heat = HeatScript.Play("""
            start
            end at 10:05
            freeze at 11:00
            sign organiser
            sign head judge
            lane 1 step 1 done at 0:40 arriving 12:00
            """);

        Assert.Equal((Phase.Certified, 2, 1), (heat.Told, heat.Signatures.Count, heat.Lanes[0].Quarantined));
    }

    [Fact]
    public void A_reopened_heat_is_a_new_revision_without_freeze_and_signatures()
    {
        var heat = HeatScript.Play("""
            start
            end at 10:05
            freeze at 11:00
            sign organiser
            sign head judge
            reopen at 12:00
            """);

        Assert.Equal((Phase.Ended, 2, 0), (heat.Told, heat.Revision, heat.Signatures.Count));
        Assert.Null(heat.Freeze);
    }

    [Fact]
    public void A_tap_for_a_lane_that_the_heat_does_not_have_is_kept_and_moves_nobody()
    {
        var heat = new HeatScript().Then("start");
        var before = heat.State.Lanes;
        heat.Then("lane 9 step 1 done at 0:40 [stray]");

        Assert.NotNull(heat.State.Find(heat["stray"]));
        Assert.Equal(before, heat.State.Lanes);
    }

    [Fact]
    public void Facts_are_found_by_id_and_by_lane()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40 [tap]
            lane 2 step 1 done at 0:41
            warn lane 1
            add lane 1 step 2 done at 1:00
            """);

        Assert.Equal(heat.Entries[^4], heat.State.Find(heat["tap"]));
        Assert.Equal(heat.Entries[^1], heat.State.Find(Some.Id("paper", 1)));
        Assert.Equal(heat.Entries.Where(entry => entry.Fact.AboutLane() == Some.Lane(1)), heat.State.EntriesOf(Some.Lane(1)));
        Assert.Equal((heat.State.Head, 0L), (heat.State.NewestAbout(Some.Lane(1)), heat.State.NewestAbout(Some.Lane(7))));
    }

    [Fact]
    public void What_was_ruled_on_a_lanes_tap_is_about_the_lane_and_so_is_what_was_ruled_on_that()
    {
        var heat = new HeatScript().Then("""
            start
            lane 1 step 1 done at 0:40 [tap]
            lane 2 step 1 done at 0:41
            void tap [void1]
            void void1
            """);

        Assert.Equal(heat.Entries.TakeLast(2), heat.State.EntriesOf(Some.Lane(1)).TakeLast(2));
        Assert.Equal(heat.State.Head, heat.State.NewestAbout(Some.Lane(1)));
        Assert.Equal(heat.State.Head - 2, heat.State.NewestAbout(Some.Lane(2)));
        Assert.Equal(2, heat.State.Lanes[0].Open);
    }

    [Fact]
    public void Equal_heats_are_equal_and_a_single_difference_is_one()
    {
        HeatScript Told(string at) => new HeatScript().Then($"""
            start
            lane 1 step 1 done at {at}
            """);

        Assert.Equal(Told("0:40").State, Told("0:40").State);
        Assert.Equal(Told("0:40").State.GetHashCode(), Told("0:40").State.GetHashCode());
        Assert.NotEqual(Told("0:40").State, Told("0:40.001").State);
        Assert.NotEqual(Told("0:40").State, Told("0:40").Then("warn lane 3").State);
    }

    [Fact]
    public void A_reason_told_later_changes_nothing_but_the_record()
    {
        var heat = new HeatScript().Then("""
            start
            hold lane 1 at 1:00 [hold]
            """);
        var before = heat.State.Standing();

        Assert.Equal(before, heat.Then("reason for hold").State.Standing());
        Assert.Equal(heat.State.Head, heat.State.Entries.Count);
    }

    [Fact]
    public void A_heat_ended_in_a_halt_stands_still_until_its_end_for_whatever_arrives()
    {
        // The tap says 1:10, the heat stood from 1:00 until it ended at 1:05: ten seconds less five, whenever the tap arrives.
        var before = HeatScript.Play("""
            start
            halt at 1:00
            lane 1 step 1 done at 1:10
            end at 1:05
            """);
        var after = HeatScript.Play("""
            start
            halt at 1:00
            end at 1:05
            lane 1 step 1 done at 1:10
            """);

        Assert.Equal(65_000, before.Lanes[0].Splits[0]!.Value.LaneMs);
        Assert.Equal(before.Standing(), after.Standing());
    }
}
