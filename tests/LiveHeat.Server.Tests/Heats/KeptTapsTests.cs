using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

/// <summary>Law 3: an odd tap is kept and flagged, for the athlete did not repeat the rep for our sake.</summary>
public sealed class KeptTapsTests(SharedFloor shared) : FloorTest(shared)
{
    private const FactFlags Held = FactFlags.Quarantined;

    [Fact]
    public async Task From_a_seat_given_up_it_waits_and_counts_once_admitted()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat.Do(heat[1].Phone, "give-up-seat", new { lane = 1, seat = heat[1].Seat });
        Floor.Time.Advance(TimeSpan.FromSeconds(20));

        var tap = await Kept(heat[1], heat[1].Done(1), Held | FactFlags.NoSeat);
        await Counts(heat, 0, held: 1);

        await heat.Do(Floor.HeadJudge, "admit", new { target = tap.Id, reason = "seen by the head judge" });
        await Counts(heat, 1, held: 0);
        Assert.Equal(FactFlags.NoSeat, (await heat.Taps()).Single().Flags & ~FactFlags.Implausible);
    }

    [Fact]
    public async Task From_a_seat_that_another_phone_took_over_it_waits_but_what_was_tapped_before_counts()
    {
        var heat = await Floor.Run(lanes: 1);
        Floor.Time.Advance(TimeSpan.FromSeconds(20));
        var (first, before) = (heat[1], heat[1].Done(1));
        Floor.Time.Advance(TimeSpan.FromSeconds(1));
        var second = await heat.Seat(1);
        Floor.Time.Advance(TimeSpan.FromSeconds(20));

        var receipts = (await first.Send(before, first.Done(2))).Receipts;

        Assert.Equal([FactFlags.None, Held | FactFlags.NoSeat], receipts.Select(receipt => receipt.Flags));
        await Counts(heat, 1, held: 1);
        Assert.Equal(FactFlags.None, (await second.SendOne(second.Done(2))).Flags);
        await Counts(heat, 2, held: 1);
        Assert.Equal(second.Seat, (await heat.Frame()).Lanes[0].Seat!.Value.Value);
    }

    [Fact]
    public async Task After_the_freeze_it_is_kept_as_late_and_changes_no_result()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        var offline = heat[1].Done(2);
        await heat.EndAndFreeze();
        var result = Lanes(await heat.Floor.Organiser.Get($"{heat.Path}/result"));

        await Kept(heat[1], offline, Held | FactFlags.Late);

        await Counts(heat, 1, held: 1);
        Assert.Equal(result, Lanes(await heat.Floor.Organiser.Get($"{heat.Path}/result")));
    }

    [Fact]
    public async Task After_the_signatures_it_is_kept_as_late_and_the_result_stays_certified()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        var offline = heat[1].Done(2);
        await heat.EndAndFreeze();
        await heat.Certify();
        var result = Lanes(await heat.Floor.Organiser.Get($"{heat.Path}/result"));

        await Kept(heat[1], offline, Held | FactFlags.Late);

        Assert.Equal(Phase.Certified, (await heat.Frame()).Phase);
        Assert.Equal(result, Lanes(await heat.Floor.Organiser.Get($"{heat.Path}/result")));

        await heat.Do(Floor.Organiser, "reopen", new { reason = "a phone came back" });
        await Counts(heat, 2, held: 0);
    }

    [Fact]
    public async Task With_a_time_in_the_future_it_waits()
    {
        var heat = await Floor.Run(lanes: 1);
        Floor.Time.Advance(TimeSpan.FromSeconds(20));

        await Kept(heat[1], heat[1].Done(1, ("instant", Floor.Now + 60_000)), Held | FactFlags.Future);
        await Counts(heat, 0, held: 1);
        await Kept(heat[1], heat[1].Done(1, ("instant", Floor.Now + 1_000)), FactFlags.None);
        await Counts(heat, 1, held: 1);
    }

    [Fact]
    public async Task Before_go_it_waits()
    {
        var heat = await Floor.Call(lanes: 1);
        var judge = await heat.Seat(1, ready: true);
        await Kept(judge, judge.Done(1), Held | FactFlags.Early);
        Floor.Time.Advance(TimeSpan.FromSeconds(1));
        var hasty = judge.Done(1);

        await heat.Go();
        hasty["start"] = heat.Start;
        await Kept(judge, hasty, Held | FactFlags.Early);
        await Counts(heat, 0, held: 2);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(10)]
    [InlineData(int.MaxValue)]
    public async Task For_a_step_that_does_not_exist_it_is_kept_and_can_never_count(int step)
    {
        var heat = await Floor.Run(lanes: 1);

        var receipt = await Kept(heat[1], heat[1].Done(step), Held | FactFlags.NoSuchStep);
        await heat.Do(Floor.HeadJudge, "admit", new { target = receipt.Id, reason = "" });

        await Counts(heat, 0, held: 1);
        Assert.Equal(FactFlags.None, (await heat[1].Finish(1)).Flags);
        await Counts(heat, 1, held: 1);
    }

    [Theory]
    [InlineData("tag-made", null)]
    [InlineData("count-reached", 11)]
    [InlineData("count-reached", -1)]
    [InlineData("value-entered", null)]
    public async Task For_a_step_of_another_kind_or_size_it_is_kept(string fact, int? count)
    {
        var heat = await Floor.Run(lanes: 1);

        await Kept(heat[1], heat[1].Tap(fact, ("step", 1), ("count", count), ("value", 80)), Held | FactFlags.NoSuchStep);
        await Counts(heat, 0, held: 1);
    }

    [Fact]
    public async Task On_an_old_plan_it_counts_where_the_step_is_the_same_and_is_flagged()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        var offline = heat[1].Done(2);
        await heat.Do(Floor.HeadJudge, "take-variant", new { lane = 1, fromStep = 4, prescription = "scaled", reason = "hurt" });

        await Kept(heat[1], offline, FactFlags.OldPlan, besides: FactFlags.Implausible);
        await Counts(heat, 2, held: 0);
    }

    [Fact]
    public async Task On_an_old_plan_it_waits_where_the_step_became_another()
    {
        var heat = await Floor.Run(lanes: 1);
        for (var step = 1; step <= 3; step++)
        {
            await heat[1].Finish(step);
        }

        await heat.Do(Floor.HeadJudge, "take-variant", new { lane = 1, fromStep = 4, prescription = "scaled", reason = "hurt" });
        Floor.Time.Advance(TimeSpan.FromSeconds(20));

        await Kept(heat[1], heat[1].Done(4), Held | FactFlags.OldPlan);
        await Counts(heat, 3, held: 1);
        await Kept(heat[1], heat[1].Done(4, ("plan", 2)), FactFlags.None);
        await Counts(heat, 4, held: 1);
    }

    [Fact]
    public async Task On_a_recalled_start_it_waits()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        var offline = heat[1].Done(2);
        await heat.Do(Floor.Organiser, "recall-start", new { reason = "lane 2 moved" });
        Assert.Equal(Held | FactFlags.OldStart, (await heat.Taps()).Single().Flags);
        await heat.Go();

        await Kept(heat[1], offline, Held | FactFlags.OldStart);

        await Counts(heat, 0, held: 2);
        Assert.Equal(FactFlags.None, (await heat[1].Finish(1)).Flags);
        await Counts(heat, 1, held: 2);
    }

    [Fact]
    public async Task A_phone_that_missed_the_go_still_counts()
    {
        var heat = await Floor.Run(lanes: 1);
        Floor.Time.Advance(TimeSpan.FromSeconds(20));

        await Kept(heat[1], heat[1].Done(1, ("start", null)), FactFlags.None);
        await Counts(heat, 1, held: 0);
    }

    /// <summary>Accepted with these flags, in the receipt and on the ledger.</summary>
    private static async Task<TapReceipt> Kept(LaneJudge judge, System.Text.Json.Nodes.JsonObject tap, FactFlags flags, FactFlags besides = FactFlags.None)
    {
        var receipt = await judge.SendOne(tap);

        Assert.Equal((TapOutcome.Accepted, flags), (receipt.Outcome, receipt.Flags & ~besides));
        Assert.Null(receipt.Code);
        var line = (await judge.Heat.Taps()).Single(line => line.Fact.Id.ToString() == tap["id"]!.ToString());
        Assert.Equal((receipt.Sequence!.Value, flags), (line.Sequence, line.Flags & ~besides));
        return receipt;
    }

    private static async Task Counts(TestHeat heat, int stepsDone, int held)
    {
        var frame = await heat.Frame();
        Assert.Equal((stepsDone + 1, held), (frame.Lanes[0].Open, frame.Held));
    }

    private static string Lanes(Reply result) => result.Fine().Json.GetProperty("lanes").GetRawText();
}
