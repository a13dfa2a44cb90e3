using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

public sealed class CommandsTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task A_command_becomes_one_fact_with_its_id_and_author()
    {
        var heat = await Floor.Run(lanes: 1);
        var id = Floor.Organiser.NewId();

        var answer = (await heat.Command(Floor.Organiser, "warn", new { lane = 1, reason = "late to the mat" }, id)).Read<CommandAnswer>();

        var line = (await heat.Facts())[^1];
        Assert.Equal((TapOutcome.Accepted, line.Sequence, line.Sequence), (answer.Outcome, answer.Sequence, answer.Head));
        var warned = Assert.IsType<HeatFact.Warned>(line.Fact);
        Assert.Equal((id, "late to the mat", Floor.Now), (warned.Id.ToString(), warned.Reason, warned.Instant.UnixMs));
        Assert.Equal(("Ona", Role.Organiser, line.Sender), (warned.By.Name, warned.By.Role, warned.By.SignIn));
    }

    [Fact]
    public async Task The_same_command_again_is_known_even_when_it_could_not_be_done_a_second_time()
    {
        var heat = await Floor.Run(lanes: 1);
        var id = Floor.Organiser.NewId();
        var first = (await heat.Command(Floor.Organiser, "end", new { reason = "" }, id)).Read<CommandAnswer>();

        await NothingIsRecorded(heat, async () =>
        {
            var again = (await heat.Command(Floor.Organiser, "end", new { reason = "" }, id)).Read<CommandAnswer>();
            Assert.Equal((TapOutcome.Known, first.Sequence), (again.Outcome, again.Sequence));
        });
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task The_same_id_for_something_else_or_from_somebody_else_is_a_conflict(bool sameSender)
    {
        var heat = await Floor.Run(lanes: 1);
        var id = Floor.Organiser.NewId();
        (await heat.Command(Floor.Organiser, "warn", new { lane = 1, reason = "a" }, id)).Fine();

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(sameSender ? Floor.Organiser : Floor.HeadJudge, "warn", new { lane = 1, reason = sameSender ? "b" : "a" }, id);
            Assert.Equal((409, "conflict", "The ledger holds another fact under this id. Nothing was done; press again."), (answer.Status, answer.Code, answer.Detail));
        });
    }

    [Fact]
    public async Task An_id_that_another_heat_has_is_a_conflict_here()
    {
        var (first, second) = (await Floor.Call(lanes: 1), await Floor.Call(lanes: 1));
        var id = Floor.Organiser.NewId();
        (await first.Command(Floor.Organiser, "warn", new { lane = 1, reason = "" }, id)).Fine();

        await NothingIsRecorded(second, async () =>
            Assert.Equal((409, "conflict"), await Told(second.Command(Floor.Organiser, "warn", new { lane = 1, reason = "" }, id))));
    }

    [Fact]
    public async Task Two_organisers_press_go_at_once_and_there_is_one_start()
    {
        var heat = await Floor.Call(lanes: 2);
        await heat.Seat(1, ready: true);
        await heat.Seat(2, ready: true);
        var second = Floor.Visitor();
        second.Cookies.Add(Floor.Organiser.Cookies.GetCookies(Floor.Organiser.Site));

        var answers = await Task.WhenAll(heat.Command(Floor.Organiser, "schedule-start", new { inMs = 5000 }), heat.Command(second, "schedule-start", new { inMs = 9000 }));

        var won = Assert.Single(answers, answer => answer.Status == 200);
        var lost = Assert.Single(answers, answer => answer.Status != 200);
        Assert.Equal(TapOutcome.Accepted, won.Read<CommandAnswer>().Outcome);
        Assert.Equal((409, "already-started", "GO is set already. Recall it first if it was wrong."), (lost.Status, lost.Code, lost.Detail));
        var start = Assert.IsType<HeatFact.StartScheduled>(Assert.Single(await heat.Facts(), line => line.Fact is HeatFact.StartScheduled).Fact);
        var frame = await heat.Frame();
        Assert.Equal((Phase.CountingDown, start.Start, start.GoAt), (frame.Phase, frame.Start!.Id, frame.Start.GoAt));
    }

    [Fact]
    public async Task One_press_of_go_that_is_sent_many_times_at_once_is_one_start()
    {
        var heat = await Floor.Call(lanes: 1);
        await heat.Seat(1, ready: true);
        var id = Floor.Organiser.NewId();

        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => heat.Command(Floor.Organiser, "schedule-start", new { inMs = 5000 }, id)));

        var outcomes = answers.Select(answer => answer.Read<CommandAnswer>()).ToList();
        Assert.Equal(1, outcomes.Count(answer => answer.Outcome == TapOutcome.Accepted));
        Assert.Single(outcomes.Select(answer => answer.Sequence).Distinct());
        Assert.Single(await heat.Facts(), line => line.Fact is HeatFact.StartScheduled);
    }

    [Fact]
    public async Task A_lane_that_is_not_there_is_told()
    {
        var heat = await Floor.Run(lanes: 2);

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.HeadJudge, "warn", new { lane = 7, reason = "" });
            Assert.Equal((404, "no-such-lane", "This heat has no lane 7."), (answer.Status, answer.Code, answer.Detail));
            Assert.Equal((404, "no-such-lane"), await Told(heat.Command(Floor.Organiser, "add", new { source = "paper", tap = heat[1].Done(1, ("lane", 7)), reason = "" })));
        });
    }

    [Fact]
    public async Task A_step_or_fact_that_is_not_there_is_told()
    {
        var heat = await Floor.Run(lanes: 1);

        await NothingIsRecorded(heat, async () =>
        {
            var step = await heat.Command(Floor.HeadJudge, "send-back", new { lane = 1, step = 10, reason = "" });
            Assert.Equal((404, "no-such-step", "Lane 1 has steps 1 to 9; there is no step 10."), (step.Status, step.Code, step.Detail));
            Assert.Equal((404, "no-such-fact"), await Told(heat.Command(Floor.HeadJudge, "void", new { target = Floor.HeadJudge.NewId(), reason = "" })));
        });
    }

    [Fact]
    public async Task A_heat_that_nobody_knows_is_told_and_does_not_come_into_being()
    {
        var answer = await new TestHeat(Floor, "nowhere").Command(Floor.Organiser, "call");

        Assert.Equal((404, "no-such-heat", "There is no heat called nowhere, or it has not been called to the floor yet."), (answer.Status, answer.Code, answer.Detail));
        Assert.DoesNotContain("nowhere", (await Floor.Visitor().Get("/api/program")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_planned_heat_is_called_before_anything_else_is_done_with_it()
    {
        var heat = await Floor.Plan(lanes: 1);

        var answer = await heat.Command(Floor.Organiser, "schedule-start");
        Assert.Equal((409, "wrong-phase", "This heat has not been called yet. Call it first."), (answer.Status, answer.Code, answer.Detail));
        Assert.Equal(404, (await Floor.Organiser.Get($"{heat.Path}/facts")).Status);

        await heat.Do(Floor.Organiser, "call");
        Assert.IsType<HeatFact.HeatCalled>(Assert.Single(await heat.Facts()).Fact);
    }

    [Fact]
    public async Task Not_all_lanes_are_ready_and_they_are_named()
    {
        var heat = await Floor.Call(lanes: 3);
        await heat.Seat(2, ready: true);

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(Floor.Organiser, "schedule-start");
            Assert.Equal((409, "lanes-not-ready", "Not ready yet: lanes 1 and 3. Wait for their judges, or count them as ready by name."), (answer.Status, answer.Code, answer.Detail));
        });
        await heat.Do(Floor.HeadJudge, "override-ready", new { lanes = new[] { 1, 3 }, reason = "judged on paper" });
        await heat.Do(Floor.Organiser, "schedule-start");
    }

    [Fact]
    public async Task A_judge_speaks_for_the_own_lane_and_seat_only()
    {
        var heat = await Floor.Run(lanes: 2);

        await NothingIsRecorded(heat, async () =>
        {
            var other = await heat.Command(heat[1].Phone, "take-seat", new { lane = 2, duty = "primary" });
            Assert.Equal((403, "not-your-lane", "This phone judges lane 1, not lane 2. Join with the code of lane 2 to judge it."), (other.Status, other.Code, other.Detail));
            var seat = await heat.Command(heat[1].Phone, "give-up-seat", new { lane = 1, seat = heat[2].Seat });
            Assert.Equal((403, "not-yours", "This seat is another phone's."), (seat.Status, seat.Code, seat.Detail));
        });
    }

    [Fact]
    public async Task A_seat_that_was_taken_over_is_told()
    {
        var heat = await Floor.Call(lanes: 1);
        var first = await heat.Seat(1);
        await heat.Seat(1);

        await NothingIsRecorded(heat, async () =>
        {
            var answer = await heat.Command(first.Phone, "ready", new { lane = 1, seat = first.Seat });
            Assert.Equal((409, "seat-given-up", "Another phone has taken this lane over, or the seat was given up. Confirm lane and team again."), (answer.Status, answer.Code, answer.Detail));
        });
    }

    private static async Task<(int, string)> Told(Task<Reply> answer) => ((await answer).Status, (await answer).Code);
}
