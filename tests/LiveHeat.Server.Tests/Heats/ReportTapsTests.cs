using System.Text.Json.Nodes;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

public sealed class ReportTapsTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task A_tap_is_accepted_and_stands_on_the_ledger_as_it_was_sent()
    {
        var heat = await Floor.Run(lanes: 1);
        Floor.Time.Advance(TimeSpan.FromSeconds(20));
        var tap = heat[1].Done(1);

        var answer = await heat[1].Send(tap);

        var receipt = Assert.Single(answer.Receipts);
        Assert.Equal((tap["id"]!.ToString(), TapOutcome.Accepted, FactFlags.None), (receipt.Id, receipt.Outcome, receipt.Flags));
        Assert.Equal(answer.Head, receipt.Sequence);
        Assert.Equal((await Floor.Visitor().Get("/health")).Json.GetProperty("epoch").GetString(), answer.Epoch);
        var line = Assert.Single(await heat.Taps());
        Assert.Equal(receipt.Sequence, line.Sequence);
        var fact = Assert.IsType<HeatFact.StepDone>(line.Fact);
        Assert.Equal(
            (new LaneNumber(1), 1, Floor.Now, 5, heat.Start, 1, heat[1].Seat, new PhoneReadings(1234.5, Floor.Now - 250, 250)),
            (fact.Lane, fact.Step, fact.Instant.UnixMs, fact.UncertaintyMs, fact.Start, fact.Plan, fact.Seat.Value, fact.Phone));
        Assert.Equal((2, 20_000), ((await heat.Frame()).Lanes[0].Open, (await heat.Frame()).Lanes[0].SplitMs));
    }

    [Fact]
    public async Task A_tap_sent_again_is_known_and_adds_nothing()
    {
        var heat = await Floor.Run(lanes: 1);
        var tap = heat[1].Done(1);
        var first = await heat[1].SendOne(tap);

        await NothingIsRecorded(heat, async () =>
        {
            var again = await heat[1].SendOne(tap);
            Assert.Equal((TapOutcome.Known, first.Sequence, first.Flags), (again.Outcome, again.Sequence, again.Flags));
        });
    }

    [Fact]
    public async Task It_is_known_however_its_fields_are_ordered_and_spaced()
    {
        var heat = await Floor.Run(lanes: 1);
        var tap = heat[1].Done(1);
        await heat[1].SendOne(tap);
        var turned = new JsonObject(tap.Reverse().Select(field => KeyValuePair.Create(field.Key, field.Value?.DeepClone())));

        var again = await heat[1].Phone.PostText($"{heat.Path}/taps", $$"""{ "epoch" : null, "taps" : [ {{turned.ToJsonString(new() { WriteIndented = true })}} ] }""");

        Assert.Equal(TapOutcome.Known, again.Read<TapReceipts>().Receipts.Single().Outcome);
    }

    [Fact]
    public async Task The_same_id_with_another_body_is_a_conflict_and_the_first_stays()
    {
        var heat = await Floor.Run(lanes: 1);
        var (tap, behind) = (heat[1].Done(1), heat[1].Tap("no-rep", ("step", 2)));
        await heat[1].SendOne(tap);
        var other = tap.DeepClone().AsObject();
        other["step"] = 2;

        var receipts = (await heat[1].Send(other, behind)).Receipts;

        Assert.Equal((TapOutcome.Conflict, null, "conflict"), (receipts[0].Outcome, receipts[0].Sequence, receipts[0].Code));
        Assert.Equal("The ledger holds another fact under this id. It will be sent again under a new one.", receipts[0].Detail);
        Assert.Equal(TapOutcome.Accepted, receipts[1].Outcome);
        Assert.Equal([1, 2], (await heat.Taps()).Select(line => ((HeatFact.AtStep)line.Fact).Step));
        Assert.Equal(2, (await heat.Frame()).Lanes[0].Open);
    }

    [Fact]
    public async Task The_same_tap_from_another_sender_is_a_conflict_and_stays_the_first_ones()
    {
        var heat = await Floor.Run(lanes: 1);
        var tap = heat[1].Done(1);
        await heat[1].SendOne(tap);
        var witness = await heat.Seat(1, duty: "witness");

        await NothingIsRecorded(heat, async () => Assert.Equal(TapOutcome.Conflict, (await witness.SendOne(tap)).Outcome));
        Assert.Equal((await heat[1].Phone.Get("/api/me")).Json.GetProperty("signIn").GetString(), (await heat.Taps()).Single().Sender);
    }

    [Fact]
    public async Task The_same_id_twice_in_one_batch_is_known_or_a_conflict_with_the_first()
    {
        var heat = await Floor.Run(lanes: 1);
        var tap = heat[1].Done(1);
        var other = tap.DeepClone().AsObject();
        other["step"] = 2;

        var receipts = (await heat[1].Send(tap, tap, other)).Receipts;

        Assert.Equal([TapOutcome.Accepted, TapOutcome.Known, TapOutcome.Conflict], receipts.Select(receipt => receipt.Outcome));
        Assert.Equal([receipts[0].Sequence, receipts[0].Sequence, null], receipts.Select(receipt => receipt.Sequence));
        Assert.Equal(["conflict"], receipts.Select(receipt => receipt.Code).OfType<string>());
        Assert.Equal(1, ((HeatFact.StepDone)Assert.Single(await heat.Taps()).Fact).Step);
    }

    [Fact]
    public async Task The_same_id_in_another_heat_is_a_conflict_there_and_blocks_none_behind_it()
    {
        var first = await Floor.Run(lanes: 1);
        var tap = first[1].Done(1);
        await first[1].SendOne(tap);
        var second = await Floor.Call(lanes: 1);
        var judge = await second.Seat(1, ready: true, phone: first[1].Phone);
        await second.Go();

        var receipts = (await judge.Send(judge.Done(1), tap, judge.Done(2))).Receipts;

        Assert.Equal([TapOutcome.Accepted, TapOutcome.Conflict, TapOutcome.Accepted], receipts.Select(receipt => receipt.Outcome));
        Assert.Equal([1, 2], (await second.Taps()).Select(line => ((HeatFact.StepDone)line.Fact).Step));
        Assert.Equal([first.Start], (await first.Taps()).Select(line => ((HeatFact.StepDone)line.Fact).Start));
    }

    [Fact]
    public async Task A_full_batch_is_taken_in_the_order_sent()
    {
        var heat = await Floor.Run(lanes: 1);
        var taps = Enumerable.Range(0, TapBatch.Most).Select(_ => heat[1].Tap("no-rep", ("step", 1))).ToList();

        var receipts = (await heat[1].Send(taps)).Receipts;

        Assert.All(receipts, receipt => Assert.Equal(TapOutcome.Accepted, receipt.Outcome));
        Assert.Equal(taps.Select(tap => tap["id"]!.ToString()), receipts.Select(receipt => receipt.Id));
        Assert.Equal(receipts.Select(receipt => receipt.Sequence!.Value), (await heat.Taps()).Select(line => line.Sequence));
        Assert.Equal(taps.Select(tap => tap["id"]!.ToString()), (await heat.Taps()).Select(line => line.Fact.Id.ToString()));
    }

    [Theory]
    [InlineData(TapBatch.Most + 1)]
    [InlineData(10_000)]
    public async Task Too_many_at_once_are_not_recorded_and_may_come_in_smaller_batches(int count)
    {
        var heat = await Floor.Run(lanes: 1);
        var taps = Enumerable.Range(0, count).Select(_ => heat[1].Tap("no-rep", ("step", 1))).ToList();

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat[1].Post(taps);
            Assert.Equal((413, "too-many-taps", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count:#,0} taps came at once; send at most 500. None of them was recorded yet.")), (answer.Status, answer.Code, answer.Detail));
        });
        await heat[1].Send(taps.Take(TapBatch.Most));
        await heat[1].Send(taps.Skip(TapBatch.Most).Take(1));
        Assert.Equal(TapBatch.Most + 1, (await heat.Taps()).Count);
    }

    [Fact]
    public async Task An_empty_batch_tells_the_head()
    {
        var heat = await Floor.Run(lanes: 1);

        var answer = await heat[1].Send();

        Assert.Empty(answer.Receipts);
        Assert.Equal((await heat.Frame()).Sequence, answer.Head);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_heat_that_was_not_called_takes_no_taps(bool planned)
    {
        var heat = await Floor.Run(lanes: 1);
        var other = planned ? (await Floor.Plan()).Id : "nowhere";

        var answer = await heat[1].Phone.Post($"/api/heats/{other}/taps", TestHeat.Batch(heat[1].Done(1)));

        Assert.Equal((404, "no-such-heat"), (answer.Status, answer.Code));
        Assert.Equal($"There is no heat called {other}, or it has not been called to the floor yet.", answer.Detail);
        Assert.Empty(await heat.Taps());
        Assert.Equal(404, (await Floor.Organiser.Get($"/api/heats/{other}/facts")).Status);
    }
}
