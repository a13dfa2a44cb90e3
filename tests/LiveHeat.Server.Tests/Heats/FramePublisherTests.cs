using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

public sealed class FramePublisherTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task Many_taps_make_few_frames_and_the_last_frame_has_them_all()
    {
        const int Taps = 100;
        var heat = await Floor.Run(lanes: 1);
        await using var board = await HubViewer.Connect(Floor.Visitor());
        await board.Watch(heat.Id);
        var since = TimeProvider.System.GetTimestamp();

        var receipts = await Task.WhenAll(Enumerable.Range(0, Taps).Select(_ => heat[1].SendOne(heat[1].Tap("no-rep", ("step", 1)))));
        var last = await board.Frame(receipts.Max(receipt => receipt.Sequence!.Value));

        Assert.Equal(Taps, last.Lanes[0].NoReps);
        // Ten a second, the first at once; one may have been on its way when the clock was started.
        var most = 2 + (TimeProvider.System.GetElapsedTime(since).TotalMilliseconds / 100);
        Assert.InRange(board.Frames.All.Count, 1, most);
        Assert.Equal(board.Frames.All.Select(pushed => pushed.Frame.Sequence).Order(), board.Frames.All.Select(pushed => pushed.Frame.Sequence));
    }

    [Fact]
    public async Task A_live_heat_is_heard_of_at_least_each_second()
    {
        var heat = await Floor.Run(lanes: 1);
        await using var board = await HubViewer.Connect(Floor.Visitor());
        var newest = (await board.Watch(heat.Id))!;

        for (var beacon = 0; beacon < 3; beacon++)
        {
            Assert.Equal(newest.Sequence, (await board.Frames.First(_ => true, from: beacon)).Frame.Sequence);
        }

        // A busy machine may delay one, not all.
        var pushed = board.Frames.All;
        var shortest = pushed.Zip(pushed.Skip(1), (before, after) => after.At - before.At).Min();
        Assert.InRange(shortest, TimeSpan.FromMilliseconds(90), TimeSpan.FromSeconds(1));
    }

    [Fact]
    public async Task What_is_pushed_is_what_can_be_asked_for()
    {
        var heat = await Floor.Run(lanes: 2);
        await using var board = await HubViewer.Connect(Floor.Visitor());
        await board.Watch(heat.Id);

        var receipt = await heat[2].Finish(1);
        var pushed = await board.Frames.First(pushed => pushed.Frame.Sequence == receipt.Sequence);

        Assert.Equal((await Floor.Visitor().Get($"{heat.Path}/frame")).Fine().Text, pushed.Json);
    }

    [Fact]
    public async Task Another_heats_frames_do_not_come()
    {
        var (watched, other) = (await Floor.Run(lanes: 1), await Floor.Run(lanes: 1));
        await using var board = await HubViewer.Connect(Floor.Visitor());
        await board.Watch(watched.Id);
        await using var check = await HubViewer.Connect(Floor.Visitor());
        await check.Watch(other.Id);

        await check.Frame((await other[1].Finish(1)).Sequence!.Value);
        await board.Frame((await watched[1].Finish(1)).Sequence!.Value);

        Assert.All(board.Frames.All, pushed => Assert.Equal(watched.Id, pushed.Frame.Heat.Value));
        Assert.All(check.Frames.All, pushed => Assert.Equal(other.Id, pushed.Frame.Heat.Value));
    }

    [Fact]
    public async Task Whoever_follows_the_current_heat_stays_with_the_one_that_runs_and_moves_on_when_it_ends()
    {
        await using var floor = await TestFloor.Open();     // what another test left running would be current too
        var first = await floor.Run(lanes: 1);
        await using var board = await HubViewer.Connect(floor.Visitor());
        Assert.Equal(first.Id, (await board.Watch("current"))!.Heat.Value);

        var second = await floor.Call(lanes: 1);
        var seated = await second.Seat(1);
        var tapped = await first[1].Finish(1);
        await board.Frames.First(pushed => pushed.Frame.Heat.Value == first.Id && pushed.Frame.Sequence >= tapped.Sequence);
        Assert.DoesNotContain(board.Frames.All, pushed => pushed.Frame.Heat.Value == second.Id);

        // The result is held; then nothing happens in the second heat: it is pushed since it is the current one now.
        await first.Do(floor.Organiser, "end");
        await board.Frames.First(pushed => pushed.Frame.Heat.Value == first.Id && pushed.Frame.Phase == Phase.Ended);
        Assert.DoesNotContain(board.Frames.All, pushed => pushed.Frame.Heat.Value == second.Id);
        var lists = board.Programs.All.Count;
        floor.Time.Advance(TimeSpan.FromSeconds(120));
        var next = await board.Frames.First(pushed => pushed.Frame.Heat.Value == second.Id);
        Assert.Equal((Phase.Called, seated.Seat), (next.Frame.Phase, next.Frame.Lanes[0].Seat?.Value));
        await board.Programs.First(_ => board.Programs.All.Count > lists);     // the list of heats names the current one
    }

    [Fact]
    public async Task A_result_is_held_for_two_minutes_or_until_the_next_counts_down_and_a_call_after_the_end_takes_the_screens()
    {
        await using var floor = await TestFloor.Open();
        async Task<string> Current() => (await floor.Visitor().Get("/api/program")).Json.GetProperty("current").GetString()!;
        var first = await floor.Run(lanes: 1);
        var second = await floor.Call(lanes: 1);
        await second.Seat(1, ready: true);
        floor.Time.Advance(TimeSpan.FromSeconds(1));
        await first.EndAndFreeze();
        await first.Certify();
        floor.Time.Advance(TimeSpan.FromSeconds(119));
        Assert.Equal(first.Id, await Current());           // the next is ready, and this one is signed
        floor.Time.Advance(TimeSpan.FromSeconds(1));
        Assert.Equal(second.Id, await Current());

        await second.Go();
        var third = await floor.Call(lanes: 1);
        floor.Time.Advance(TimeSpan.FromSeconds(1));
        await second.Do(floor.Organiser, "end");
        Assert.Equal(second.Id, await Current());
        await third.Seat(1, ready: true);
        await third.Do(floor.Organiser, "schedule-start", new { inMs = 3000 });
        Assert.Equal(third.Id, await Current());

        floor.Time.Advance(TimeSpan.FromSeconds(4));
        await third.Do(floor.Organiser, "end");
        floor.Time.Advance(TimeSpan.FromSeconds(1));
        var fourth = await floor.Call(lanes: 1);
        Assert.Equal(fourth.Id, await Current());
    }

    [Fact]
    public async Task A_recalled_start_is_a_call_again_and_of_two_live_heats_the_one_called_last_is_current()
    {
        await using var floor = await TestFloor.Open();
        async Task<string> Current() => (await floor.Visitor().Get("/api/program")).Json.GetProperty("current").GetString()!;
        var first = await floor.Run(lanes: 1);
        var second = await floor.Call(lanes: 1);
        Assert.Equal(first.Id, await Current());

        floor.Time.Advance(TimeSpan.FromSeconds(1));
        await first.Do(floor.Organiser, "recall-start", new { reason = "a lane moved early" });
        Assert.Equal(first.Id, await Current());

        await second.Seat(1, ready: true);
        await second.Go();
        Assert.Equal(second.Id, await Current());
        await first.Go();
        Assert.Equal(second.Id, await Current());

        await second.Do(floor.Organiser, "end");
        Assert.Equal(first.Id, await Current());
        await first.Do(floor.Organiser, "end");
        Assert.Equal(second.Id, await Current());
    }

    [Fact]
    public async Task The_list_of_heats_is_told_when_it_changes()
    {
        await using var desk = await HubViewer.Connect(Floor.Organiser);

        var heat = await Floor.Plan(lanes: 1);
        await desk.Programs.First(_ => true);
        var heard = desk.Programs.All.Count;
        await heat.Do(Floor.Organiser, "call");

        await desk.Programs.First(_ => true, from: heard);
    }

    [Fact]
    public async Task The_cap_is_told_without_a_fact()
    {
        var heat = await Floor.Run(lanes: 1);
        await using var board = await HubViewer.Connect(Floor.Visitor());
        await board.Watch(heat.Id);

        Floor.Time.Advance(TimeSpan.FromMinutes(11));

        await board.Frames.First(pushed => pushed.Frame.Lanes[0].Status == Contracts.Frames.LaneStatus.Capped);
    }

    [Fact]
    public async Task A_count_down_turns_to_running_by_itself()
    {
        var heat = await Floor.Call(lanes: 1);
        await heat.Seat(1, ready: true);
        await using var board = await HubViewer.Connect(Floor.Visitor());
        await board.Watch(heat.Id);
        await heat.Do(Floor.Organiser, "schedule-start", new { inMs = 3000 });
        await board.Frames.First(pushed => pushed.Frame.Phase == Phase.CountingDown);

        Floor.Time.Advance(TimeSpan.FromSeconds(3));

        await board.Frames.First(pushed => pushed.Frame.Phase == Phase.Running);
    }
}
