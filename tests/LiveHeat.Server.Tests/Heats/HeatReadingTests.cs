using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Programme;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

public sealed class HeatReadingTests(SharedFloor shared) : FloorTest(shared)
{
    [Theory]
    [InlineData("frame")]
    [InlineData("sheet")]
    [InlineData("result")]
    public async Task Anybody_reads_a_heat_once_it_is_called(string what)
    {
        var planned = await Floor.Plan();
        var answer = await Floor.Visitor().Get($"{planned.Path}/{what}");
        Assert.Equal((404, "no-such-heat", $"There is no heat called {planned.Id}, or it has not been called to the floor yet."), (answer.Status, answer.Code, answer.Detail));

        var heat = await Floor.Call();
        Assert.Equal(heat.Id, (await Floor.Visitor().Get($"{heat.Path}/{what}")).Fine().Json.GetProperty("heat").GetString());
    }

    [Fact]
    public async Task The_frame_tells_where_everybody_is()
    {
        var heat = await Floor.Run(lanes: 2);
        await heat[1].Finish(1);
        await heat[2].Finish(1, afterSeconds: 4);

        var frame = await heat.Frame();

        Assert.Equal((Phase.Running, 600_000, 1, heat.Start, Floor.Now), (frame.Phase, frame.CapMs, frame.Revision, frame.Start!.Id, frame.MadeAt.UnixMs));
        Assert.Equal((1, 20_000, 10, LaneStatus.Working, "Judge 1"), (frame.Lanes[0].Place, frame.Lanes[0].SplitMs, frame.Lanes[0].Worth, frame.Lanes[0].Status, frame.Lanes[0].Judge));
        Assert.Equal((2, 4_000), (frame.Lanes[1].Place, frame.Lanes[1].GapMs));
        Assert.Equal(await heat.Facts(), (await heat.Facts()).OrderBy(line => line.Sequence));
        Assert.Equal(frame.Sequence, (await heat.Facts())[^1].Sequence);
    }

    [Fact]
    public async Task An_unchanged_frame_is_not_sent_again()
    {
        var heat = await Floor.Run(lanes: 1);
        var viewer = Floor.Visitor();
        var tag = (await viewer.Get($"{heat.Path}/frame")).Message.Headers.ETag!.ToString();

        var again = await viewer.Get($"{heat.Path}/frame", ("If-None-Match", tag));
        Assert.Equal((304, ""), (again.Status, again.Text));
        Assert.Equal(304, (await viewer.Get($"{heat.Path}/frame", ("If-None-Match", $"\"other\", W/{tag}"))).Status);

        await heat[1].Finish(1);
        Assert.Equal(2, (await viewer.Get($"{heat.Path}/frame", ("If-None-Match", tag))).Read<Frame>().Lanes[0].Open);
    }

    [Fact]
    public async Task A_lane_that_runs_into_the_cap_changes_the_frame_without_a_fact()
    {
        var heat = await Floor.Run(lanes: 1);
        var before = await Floor.Visitor().Get($"{heat.Path}/frame");
        Floor.Time.Advance(TimeSpan.FromMinutes(11));

        var after = await Floor.Visitor().Get($"{heat.Path}/frame", ("If-None-Match", before.Message.Headers.ETag!.ToString()));

        Assert.Equal(before.Read<Frame>().Sequence, after.Read<Frame>().Sequence);
        Assert.Equal((LaneStatus.Working, LaneStatus.Capped), (before.Read<Frame>().Lanes[0].Status, after.Read<Frame>().Lanes[0].Status));
    }

    /// <summary>What a phone fetches in a hall: nothing of it is another lane's.</summary>
    [Fact]
    public async Task The_sheet_of_a_lane_has_that_lane_and_the_movements_of_its_steps()
    {
        var heat = await Floor.Call(lanes: 4);
        var whole = (await Floor.Visitor().Get($"{heat.Path}/sheet")).Read<Sheet>();
        var own = (await Floor.Visitor().Get($"{heat.Path}/sheet?lane=3")).Read<Sheet>();

        Assert.Equal(whole.Lanes.Single(lane => lane.Lane.Value == 3), own.Lanes.Single());
        Assert.Equal(own.Lanes[0].Steps.Select(step => step.MovementId).OfType<string>().Distinct().Order(), own.Movements.Select(movement => movement.Id).Order());
        Assert.Equal(whole with { Lanes = own.Lanes, Movements = own.Movements }, own);
        Assert.Empty((await Floor.Visitor().Get($"{heat.Path}/sheet?lane=19")).Read<Sheet>().Lanes);
    }

    [Fact]
    public async Task The_sheet_has_all_steps_of_every_lane()
    {
        var heat = await Floor.Call(lanes: 4);

        var sheet = (await Floor.Visitor().Get($"{heat.Path}/sheet")).Read<Sheet>();

        Assert.Equal(("Breakwater Relays", "Low Tide", (await heat.Frame()).Sheet), (sheet.Competition, sheet.Workout.Name, sheet.Version));
        Assert.Equal(["Team 1", "Team 2", "Team 3", "Team 4"], sheet.Lanes.Select(lane => lane.Name));
        Assert.All(sheet.Lanes, lane => Assert.Equal(9, lane.Steps.Count));
        Assert.Equal((10, 8), (sheet.Lanes[0].Steps[0].Quantity, sheet.Lanes[3].Steps[0].Quantity));
    }

    [Fact]
    public async Task Facts_are_for_organiser_and_head_judge_and_come_from_where_one_stands()
    {
        var heat = await Floor.Run(lanes: 1);
        await heat[1].Finish(1);
        var all = (await Floor.HeadJudge.Get($"{heat.Path}/facts")).Read<FactLines>();

        Assert.Equal(Enumerable.Range(1, (int)all.Head).Select(n => (long)n), all.Facts.Select(line => line.Sequence));
        var last = (await Floor.Organiser.Get($"{heat.Path}/facts?after={all.Head - 1}")).Read<FactLines>();
        Assert.Equal((all.Head, all.Head), (Assert.Single(last.Facts).Sequence, last.Head));
        Assert.Empty((await Floor.Organiser.Get($"{heat.Path}/facts?after={all.Head + 5}")).Read<FactLines>().Facts);

        Assert.Equal((401, "not-signed-in"), await Told(Floor.Visitor().Get($"{heat.Path}/facts")));
        Assert.Equal((403, "not-yours"), await Told(heat[1].Phone.Get($"{heat.Path}/facts")));
        Assert.Equal((400, "unreadable"), await Told(Floor.Organiser.Get($"{heat.Path}/facts?after=soon")));
    }

    [Fact]
    public async Task A_judge_reads_the_own_lane_with_the_rulings_on_it_and_no_other()
    {
        var heat = await Floor.Run(lanes: 2);
        var tap = await heat[1].Finish(1);
        await heat[2].Finish(1);
        await heat.Do(Floor.HeadJudge, "void", new { target = tap.Id, reason = "wrong team" });

        var own = (await heat[1].Phone.Get($"{heat.Path}/lanes/1/facts")).Read<FactLines>();

        Assert.Equal((await heat.Frame()).Sequence, own.Head);
        Assert.Equal([typeof(HeatFact.SeatTaken), typeof(HeatFact.LaneReady), typeof(HeatFact.StepDone), typeof(HeatFact.Voided)], own.Facts.Select(line => line.Fact.GetType()));
        var other = await heat[1].Phone.Get($"{heat.Path}/lanes/2/facts");
        Assert.Equal((403, "not-your-lane", "This phone does not judge lane 2."), (other.Status, other.Code, other.Detail));
        Assert.Equal((401, "not-signed-in"), await Told(Floor.Visitor().Get($"{heat.Path}/lanes/1/facts")));
        Assert.Equal(own.Facts.Count, (await Floor.HeadJudge.Get($"{heat.Path}/lanes/1/facts")).Read<FactLines>().Facts.Count);
    }

    [Fact]
    public async Task A_judges_phone_hears_at_once_what_was_ruled_on_a_tap_and_on_that_ruling()
    {
        var heat = await Floor.Run(lanes: 2);
        var tap = await heat[1].Finish(1);
        await heat.Do(Floor.HeadJudge, "void", new { target = tap.Id, reason = "wrong team" });
        var first = await Newest();
        await heat.Do(Floor.HeadJudge, "void", new { target = first.Fact.Id.ToString(), reason = "right team after all" });
        var second = await Newest();

        Assert.Equal((typeof(HeatFact.Voided), first.Fact.Id, first.Sequence + 1), (second.Fact.GetType(), ((HeatFact.Voided)second.Fact).Target, second.Sequence));
        Assert.Equal(second.Sequence, (await heat.Frame()).Lanes[0].FactSequence);
        Assert.NotEqual(second.Sequence, (await heat.Frame()).Lanes[1].FactSequence);

        async Task<FactLine> Newest() => (await heat[1].Phone.Get($"{heat.Path}/lanes/1/facts")).Read<FactLines>().Facts[^1];
    }

    [Fact]
    public async Task A_lane_that_is_not_there_has_no_facts_to_read()
    {
        var heat = await Floor.Call(lanes: 1);

        var answer = await Floor.Organiser.Get($"{heat.Path}/lanes/7/facts");

        Assert.Equal((404, "no-such-lane", $"This heat has no lane 7."), (answer.Status, answer.Code, answer.Detail));
    }

    [Fact]
    public async Task The_programme_lists_called_heats_as_called_and_the_others_as_planned()
    {
        var (called, planned) = (await Floor.Call(), await Floor.Plan(lanes: 3));

        var program = (await Floor.Visitor().Get("/api/program")).Read<ProgramList>();

        Assert.Equal(("Breakwater Relays", called.Id, Floor.Now), (program.Competition, program.Current!.Value.Value, program.ServerNow.UnixMs));
        Assert.Equal(program.Heats.OrderBy(heat => heat.Number), program.Heats);
        Assert.Equal((Phase.Called, 2), Of(program, called));
        Assert.Equal((Phase.Planned, 3), Of(program, planned));
    }

    [Fact]
    public async Task A_pad_learns_its_heat_and_seat()
    {
        var heat = await Floor.Call(lanes: 2);
        var judge = await heat.Seat(2);

        var pad = (await judge.Phone.Get("/api/pad")).Read<PadState>();

        Assert.Equal(("Breakwater Relays", 2, "Judge 2", judge.Seat), (pad.Competition, pad.Lane.Value, pad.Judge, pad.Seat!.Value.Value));
        Assert.Equal(new PadHeat(new HeatId(heat.Id), "Heat " + heat.Id[1..], Phase.Called), pad.Heat);
        Assert.NotEmpty(pad.Build);
        Assert.Equal(Duty.Primary, pad.Duty);
        Assert.Equal((403, "not-yours"), await Told(Floor.Organiser.Get("/api/pad")));
    }

    [Theory]
    [InlineData("witness", Duty.Witness)]
    [InlineData("timekeeper", Duty.Timekeeper)]
    public async Task A_pad_beside_the_judge_learns_what_its_seat_is_for_and_the_judge_keeps_the_lane(string duty, Duty told)
    {
        var heat = await Floor.Call(lanes: 1);
        var judge = await heat.Seat(1);
        var other = await Floor.Join(Role.Judge, 1, "Kim");
        await heat.Do(other, "take-seat", new { lane = 1, duty });

        var (pad, own) = ((await other.Get("/api/pad")).Read<PadState>(), await Pad(heat));

        Assert.Equal((told, Duty.Primary, judge.Seat), (pad.Duty, own.Duty, own.Seat!.Value.Value));
        Assert.NotEqual(own.Seat, pad.Seat);
        Assert.Equal(own.Seat, (await heat.Frame()).Lanes[0].Seat);
    }

    [Fact]
    public async Task A_pad_whose_lane_is_through_goes_on_to_the_next_heat_while_others_still_work()
    {
        var first = await Floor.Run(lanes: 2);
        var second = await Floor.Call(lanes: 2);
        await first[1].Finish(8);
        Assert.Equal(first.Id, (await Pad(first)).Heat!.Id.Value);

        await first[1].Finish(9);

        Assert.Equal(second.Id, (await Pad(first)).Heat!.Id.Value);
        Assert.Equal(first.Id, (await first[2].Phone.Get("/api/pad")).Read<PadState>().Heat!.Id.Value);
    }

    [Fact]
    public async Task A_pad_stays_in_a_running_heat_when_the_next_is_called_and_goes_on_when_it_is_over()
    {
        var first = await Floor.Run(lanes: 1);
        var second = await Floor.Call(lanes: 1);
        Assert.Equal(first.Id, (await Pad(first)).Heat!.Id.Value);

        await first.Do(Floor.Organiser, "end");
        Assert.Equal((second.Id, null), ((await Pad(first)).Heat!.Id.Value, (await Pad(first)).Seat));

        await first.Do(Floor.Organiser, "freeze", new { head = (await first.Frame()).Sequence });
        Assert.DoesNotContain(new HeatId(first.Id), (await Pad(first)).Certified);
        await first.Certify();
        Assert.Contains(new HeatId(first.Id), (await Pad(first)).Certified);
    }

    [Fact]
    public async Task The_result_has_places_splits_and_the_ledgers_head_hash()
    {
        var heat = await Floor.Run(lanes: 2);
        for (var step = 1; step <= 9; step++)
        {
            await heat[2].Finish(step);
        }

        await heat[1].Finish(1, afterSeconds: 1);
        await heat.EndAndFreeze();

        var result = (await Floor.Visitor().Get($"{heat.Path}/result")).Read<ResultTable>();

        Assert.Equal(("frozen", 1, (await heat.Frame()).SignedHead), (result.Status, result.Revision, result.Head));
        Assert.Matches("^[0-9a-f]{64}$", result.HeadHash);
        Assert.Equal([2, 1], result.Lanes.Select(lane => lane.Lane.Value));
        Assert.Equal((1, 180_000), (result.Lanes[0].Place, result.Lanes[0].OfficialMs));
        Assert.Equal(Enumerable.Range(1, 9).Select(step => (long?)step * 20_000), result.Lanes[0].Splits.Select(split => split.Ms));
        Assert.Equal((2, null, 10, 66), (result.Lanes[1].Place, result.Lanes[1].OfficialMs, result.Lanes[1].Worth, result.Lanes[1].WorthOfAll));
    }

    private static async Task<PadState> Pad(TestHeat heat) => (await heat[1].Phone.Get("/api/pad")).Read<PadState>();

    private static (Phase, int) Of(ProgramList program, TestHeat heat)
    {
        var listed = program.Heats.Single(one => one.Heat.Value == heat.Id);
        return (listed.Phase, listed.Lanes.Count);
    }

    private static async Task<(int, string)> Told(Task<Reply> answer) => ((await answer).Status, (await answer).Code);
}
