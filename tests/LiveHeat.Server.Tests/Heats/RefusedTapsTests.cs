using System.Text.Json.Nodes;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

/// <summary>Law 3: refused is only what is malformed, too large or never this judge's lane, and it blocks none behind it.</summary>
public sealed class RefusedTapsTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task A_tap_for_another_lane_is_refused_and_those_behind_it_are_taken()
    {
        var heat = await Floor.Run(lanes: 2);

        var receipts = (await heat[1].Send(heat[1].Done(1), heat[1].Done(1, ("lane", 2)), heat[1].Done(2))).Receipts;

        Assert.Equal([TapOutcome.Accepted, TapOutcome.Refused, TapOutcome.Accepted], receipts.Select(receipt => receipt.Outcome));
        Assert.Equal((null, "not-your-lane", "This phone never judged lane 2. Show the tap to the head judge."), (receipts[1].Sequence, receipts[1].Code, receipts[1].Detail));
        Assert.All(await heat.Taps(), line => Assert.Equal(new LaneNumber(1), line.Fact.AboutLane()));
        Assert.Equal([3, 1], (await heat.Frame()).Lanes.Select(lane => lane.Open));
    }

    [Fact]
    public async Task Another_judges_seat_does_not_open_their_lane()
    {
        var heat = await Floor.Run(lanes: 2);

        await NothingIsRecorded(heat, async () =>
        {
            var receipt = await heat[1].SendOne(heat[1].Done(1, ("lane", 2), ("seat", heat[2].Seat)));
            Assert.Equal((TapOutcome.Refused, "not-your-lane"), (receipt.Outcome, receipt.Code));
        });
    }

    [Fact]
    public async Task A_lane_that_the_heat_does_not_have_is_refused()
    {
        var heat = await Floor.Run(lanes: 2);

        await NothingIsRecorded(heat, async () =>
        {
            var receipt = await heat[1].SendOne(heat[1].Done(1, ("lane", 9)));
            Assert.Equal((TapOutcome.Refused, "no-such-lane", "This heat has no lane 9."), (receipt.Outcome, receipt.Code, receipt.Detail));
        });
    }

    /// <summary>ID stands for a good id, NOW for the instant.</summary>
    [Theory]
    [InlineData("null")]
    [InlineData("5")]
    [InlineData("\"step-done\"")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("""{"id":"ID"}""")]
    [InlineData("""{"fact":"step-done","lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":null,"lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":17,"lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"short.1","lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"\ud800","lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"\ud800":1,"fact":"step-done","id":"ID","lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-undone","id":"ID","lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":7,"id":"ID","lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"voided","id":"ID","lane":1,"target":"ID","instant":NOW,"by":{"signIn":"x","name":"x","role":"organiser"}}""")]
    [InlineData("""{"fact":"step-done","id":"ID","step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":"1","step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":0,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":100,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":"1","instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1.5,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":99999999999,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1,"instant":"NOW"}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1,"instant":NOW.5}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1,"instant":1795600841}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1,"instant":NOW,"timeKnown":"yes"}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1,"instant":NOW,"phone":{"monoMs":1e999,"wallMs":1,"offsetMs":1}}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"lane":1,"step":1,"instant":NOW}""")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":1,"instant":NOW,"uncertaintyMs":-1}""")]
    [InlineData("""{"fact":"value-entered","id":"ID","lane":1,"step":1,"instant":NOW,"value":"12"}""")]
    [InlineData("""{"fact":"value-entered","id":"ID","lane":1,"step":1,"instant":NOW,"value":1e400}""")]
    [InlineData("""{"fact":"value-entered","id":"ID","lane":1,"step":1,"instant":NOW,"value":79228162514264337593543950335}""")]
    [InlineData("""{"fact":"lane-stopped","id":"ID","lane":1,"instant":NOW,"reason":"tired"}""")]
    [InlineData("""{"fact":"score-read-back","id":"ID","lane":1,"instant":NOW,"agreed":true}""")]
    [InlineData("""{"fact":"score-read-back","id":"ID","lane":1,"instant":NOW,"agreed":true,"name":"\udc00"}""")]
    [InlineData("""{"fact":"undone","id":"ID","lane":1,"instant":NOW,"target":"x"}""")]
    public async Task What_cannot_be_read_is_refused_alone(string tap)
    {
        var heat = await Floor.Run(lanes: 1);
        var (spoilt, good) = (heat[1].Done(1), heat[1].Done(1));
        var text = tap.Replace("ID", spoilt["id"]!.ToString(), StringComparison.Ordinal).Replace("NOW", $"{Floor.Now}", StringComparison.Ordinal);

        var answer = await heat[1].Phone.PostText($"{heat.Path}/taps", $$"""{"taps":[{{text}},{{good.ToJsonString()}}]}""");

        var receipts = answer.Read<TapReceipts>().Receipts;
        Assert.Equal([TapOutcome.Refused, TapOutcome.Accepted], receipts.Select(receipt => receipt.Outcome));
        Assert.Equal((null, "unreadable"), (receipts[0].Sequence, receipts[0].Code));
        Assert.Matches("^This tap (is empty\\.|cannot be read: .+ it is kept on the phone\\.)$", receipts[0].Detail);
        Assert.Equal(good["id"]!.ToString(), Assert.Single(await heat.Taps()).Fact.Id.ToString());
        Assert.Equal(2, (await heat.Frame()).Lanes[0].Open);
    }

    [Theory]
    [InlineData("""{"fact":"step-done","id":"ID","lane":"1","step":1,"instant":NOW}""", "lane")]
    [InlineData("""{"fact":"step-done","id":"ID","lane":1,"step":"1","instant":NOW}""", "step")]
    public async Task The_field_that_is_wrong_is_named(string tap, string field)
    {
        var heat = await Floor.Run(lanes: 1);
        var text = tap.Replace("ID", heat[1].Done(1)["id"]!.ToString(), StringComparison.Ordinal).Replace("NOW", $"{Floor.Now}", StringComparison.Ordinal);

        var receipt = (await heat[1].Phone.PostText($"{heat.Path}/taps", $$"""{"taps":[{{text}}]}""")).Read<TapReceipts>().Receipts.Single();

        Assert.Equal($"This tap cannot be read: its field {field} is not as it should be. Show it to the head judge; it is kept on the phone.", receipt.Detail);
    }

    [Fact]
    public async Task A_tap_that_is_too_large_is_refused_alone()
    {
        var heat = await Floor.Run(lanes: 1);
        var large = heat[1].Tap("score-read-back", ("agreed", true), ("name", new string('x', 5000)));

        var receipts = (await heat[1].Send(large, heat[1].Done(1))).Receipts;

        Assert.Equal([TapOutcome.Refused, TapOutcome.Accepted], receipts.Select(receipt => receipt.Outcome));
        Assert.Equal(("too-large", "This tap is larger than any tap needs to be. Show it to the head judge; it is kept on the phone."), (receipts[0].Code, receipts[0].Detail));
        Assert.IsType<HeatFact.StepDone>(Assert.Single(await heat.Taps()).Fact);
    }

    [Fact]
    public async Task What_is_unknown_may_be_null_or_left_out()
    {
        var heat = await Floor.Run(lanes: 1);
        var (nulls, less) = (heat[1].Done(1, ("start", null), ("seat", null), ("phone", null)), heat[1].Done(2));
        foreach (var field in new[] { "start", "seat", "phone", "plan", "uncertaintyMs" })
        {
            less.Remove(field);
        }

        var receipts = (await heat[1].Send(nulls, less)).Receipts;

        // Without a seat it waits for the head judge; it is not lost.
        Assert.All(receipts, receipt => Assert.Equal((TapOutcome.Accepted, FactFlags.NoSeat | FactFlags.Quarantined), (receipt.Outcome, receipt.Flags & ~FactFlags.Implausible)));
        Assert.Equal(2, (await heat.Taps()).Count);
    }

    [Fact]
    public async Task Fields_that_nobody_knows_do_no_harm()
    {
        var heat = await Floor.Run(lanes: 1);

        var receipt = await heat[1].SendOne(heat[1].Done(1, ("pulse", JsonValue.Create(180))));

        Assert.Equal(TapOutcome.Accepted, receipt.Outcome);
    }
}
