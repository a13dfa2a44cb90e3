using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Testing.Hosting.Faults;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>What a phone is there for: it judges the lane, taps all of it beside the judge as a witness, or times the finish only.</summary>
public sealed class DutyTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 9;
    private const int Line = 6;

    private static readonly Entrant Team = new(Lane, "Lantern Street", "Uma", "Jory");

    [Fact]
    public async Task Of_three_timekeepers_the_middle_time_is_the_result_and_a_fourth_is_told_that_there_are_three()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var judge = await ReadyPhone(Lane);
        JudgePhone[] keepers = [await Beside("timekeeper", "Kim"), await Beside("timekeeper", "Lou"), await Beside("timekeeper", "Nia")];
        var fourth = await Phone();
        await fourth.Join(await Hall.CodeOf(Lane), "Per");
        await fourth.Choose("timekeeper");
        await Expect(fourth.Page.GetByRole(Microsoft.Playwright.AriaRole.Alert)).ToContainTextAsync("3 timekeepers already");

        await heat.RunsSince(1_000);
        await ToTheLine(judge);
        await keepers[0].Time();
        await judge.Record("step-done", Line);
        await keepers[1].Time();
        await keepers[2].Time();
        foreach (var keeper in keepers)
        {
            await Expect(keeper.Target).ToContainTextAsync("safe");
        }

        await judge.IsAllSafe();
        var goAt = (await heat.Frame()).Start!.GoAt;
        var times = (await heat.Taps(Lane)).OfType<HeatFact.FinishTimed>().Select(tap => tap.Instant - goAt).Order().ToList();
        var result = await heat.Result();
        var lane = Assert.Single(result.Lanes);
        Assert.Equal(TimekeeperRule.Athletics, result.Timekeepers);
        Assert.Equal(times, lane.TimekeeperMs.Order());
        Assert.Equal(3, times.Distinct().Count());
        Assert.Equal(((times[1] + 99) / 100) * 100, lane.OfficialMs);       // up to a tenth, as the result names it
    }

    [Fact]
    public async Task A_timekeeper_records_once_takes_it_back_by_holding_and_not_after_the_freeze()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var keeper = await Beside("timekeeper", "Kim");
        await heat.RunsSince(1_000);
        await keeper.Time();
        await Expect(keeper.Target).ToContainTextAsync("safe");
        await Expect(keeper.Target).ToBeDisabledAsync();
        await keeper.Target.TapAsync(new() { Force = true });
        await heat.LedgerHas(Lane, "finish-timed");

        await keeper.Hold("undo", () => Expect(keeper.Target).ToBeEnabledAsync());
        await keeper.Time();
        await heat.LedgerHas(Lane, "finish-timed", "undone", "finish-timed");
        var last = (await heat.Taps(Lane))[^1];
        Assert.Equal(last.Instant - (await heat.Frame()).Start!.GoAt, Assert.Single((await heat.Result()).Lanes.Single().TimekeeperMs));
        Assert.Equal(1, (await heat.Lane(Lane)).Open);                       // it says when, not that

        await heat.Do("end");
        await Expect(keeper.Act("next")).ToBeVisibleAsync();
        await Expect(keeper.Act("undo")).ToBeEnabledAsync();
        await heat.Do("freeze", new { head = (await heat.Frame()).Sequence });
        await Expect(keeper.Act("undo")).ToBeDisabledAsync();
        await Expect(keeper.Target).ToContainTextAsync("Finish");
    }

    [Fact]
    public async Task A_finish_that_cannot_be_yet_must_be_held()
    {
        var heat = await Hall.Call(QuickWork.Slow(), Team);
        var keeper = await Beside("timekeeper", "Kim");
        await heat.RunsSince(1_000);
        await keeper.Time();
        await Expect(keeper.Notice).ToContainTextAsync("Let go too soon");
        await keeper.HasUnsent(0);
        Assert.Empty(await heat.Told(Lane));

        await keeper.Hold("done", () => Expect(keeper.Target).ToBeDisabledAsync());
        await heat.LedgerHas(Lane, "finish-timed");
    }

    [Fact]
    public async Task A_timekeeper_whose_page_is_loaded_again_without_network_is_a_timekeeper_still_and_has_the_time()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var judge = await ReadyPhone(Lane);
        var keeper = await Beside("timekeeper", "Kim", link);
        await keeper.IsKept();
        await heat.RunsSince(1_000);
        await keeper.IsAt("timer");
        await keeper.Browser.SetOfflineAsync(true);
        link.Be(Fault.Refuse);
        await keeper.Time();
        await keeper.HasUnsent(1);
        await Expect(keeper.Target).ToContainTextAsync("on phone");
        var time = await keeper.Target.Locator("b").TextContentAsync();

        await keeper.Page.ReloadAsync();
        await keeper.IsAt("timer");
        await Expect(keeper.Target.Locator("b")).ToHaveTextAsync(time!);
        await Expect(keeper.Target).ToBeDisabledAsync();
        await keeper.HasUnsent(1);
        Assert.Empty(await heat.Told(Lane));

        link.Be(Fault.None);
        await keeper.Browser.SetOfflineAsync(false);
        await heat.LedgerHas(Lane, "finish-timed");
        await keeper.IsAllSafe();
        await judge.IsAt("heat");
        Assert.Single((await heat.Result()).Lanes.Single().TimekeeperMs);
    }

    [Fact]
    public async Task A_witness_moves_nobody_else_and_is_flagged_when_the_judge_saw_something_else()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var judge = await ReadyPhone(Lane);
        var witness = await Beside("witness", "Kim");
        await heat.RunsSince(1_000);
        await Expect(witness.Page.Locator("header")).ToContainTextAsync("witness");
        await Expect(judge.Page.Locator("header")).Not.ToContainTextAsync("witness");

        await judge.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");
        var split = (await heat.Lane(Lane)).SplitMs;
        await witness.Carries("step-done", 1);                               // what the judge saw is not what the witness saw
        Assert.Equal(FactFlags.None, (await heat.Lane(Lane)).Flags);
        await judge.Carries("step-done", 2);
        await JudgePhone.IsSettled(judge.Target);                            // a second later: more than two hands differ by
        await witness.Record("step-done", 1);
        await witness.Record("step-done", 2);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 1", "step-done 2");

        var lane = await heat.Lane(Lane);
        Assert.Equal((2, split, FactFlags.Disagreement), (lane.Open, lane.SplitMs, lane.Flags));
        await judge.Carries("step-done", 2);
        await judge.Record("step-done", 2);
        await witness.Carries("tag-made", 3);
        await witness.Undo("step-done", 2);                                  // the witness's own, not the judge's
        await judge.Carries("tag-made", 3);
        await witness.IsAllSafe();
        Assert.Equal(3, (await heat.Lane(Lane)).Open);
    }

    [Fact]
    public async Task A_new_judge_ends_only_the_judges_seat_and_who_was_replaced_can_stay_as_a_witness()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var judge = await WorkingPhone(heat, Lane);
        await judge.Record("step-done", 1);
        var witness = await LateBeside("witness", "Kim", "heat");
        await witness.CloseHere();                                        // the panel that asks where the lane is
        await witness.Carries("step-done", 2);                               // begins where the judge is
        var keeper = await LateBeside("timekeeper", "Lou", "timer");
        await judge.IsAt("heat");

        var ruth = await LateBeside("primary", "Ruth", "heat");
        await judge.IsAt("taken");
        await ruth.CloseHere();
        await ruth.Record("step-done", 2);
        await ruth.Carries("tag-made", 3);
        await keeper.Time();
        await witness.Record("step-done", 2);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2", "finish-timed", "step-done 2");
        await keeper.IsAt("timer");
        await witness.IsAt("heat");

        await judge.Choose("witness", "taken");
        await judge.IsAt("heat");
        await judge.CloseHere();
        await judge.Carries("tag-made", 3);
        await ruth.IsAt("heat");
        await judge.Record("tag-made", 3);
        await judge.IsAllSafe();
        await ruth.Carries("tag-made", 3);
        Assert.Equal((3, 0), ((await heat.Lane(Lane)).Open, (await heat.Frame()).Held));
    }

    [Fact]
    public async Task A_witness_whose_page_is_loaded_again_without_network_goes_on_as_a_witness()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        await ReadyPhone(Lane);
        var witness = await Beside("witness", "Kim", link);
        await witness.IsKept();
        await heat.RunsSince(1_000);
        await witness.Record("step-done", 1);
        await witness.Carries("step-done", 2);
        await witness.IsAllSafe();
        await witness.Browser.SetOfflineAsync(true);
        link.Be(Fault.Refuse);

        await witness.Page.ReloadAsync();
        await Expect(witness.Page.Locator("header")).ToContainTextAsync("witness");
        await witness.Record("step-done", 2);
        await witness.IsStored();
        Assert.Equal(["step-done 1"], await heat.Told(Lane));
        link.Be(Fault.None);
        await witness.Browser.SetOfflineAsync(false);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");
        Assert.Equal(1, (await heat.Lane(Lane)).Open);
    }

    [Fact]
    public async Task In_the_next_heat_a_timekeeper_is_asked_for_the_same_again_and_another_choice_gives_the_seat_up()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var keeper = await Beside("timekeeper", "Kim");
        await heat.RunsSince(1_000);
        await keeper.Time();
        await heat.Do("end");
        var next = await Hall.Call(QuickWork.Sets(), Team);
        await keeper.Touch("next");
        await keeper.IsAt("confirm");
        await Expect(keeper.Act("confirm")).ToContainTextAsync("time its finish");
        await keeper.Touch("confirm");
        await keeper.IsAt("checks");
        Assert.Null((await next.Lane(Lane)).Judge);

        await keeper.Touch("ready");
        await keeper.IsAt("ready");
        Assert.False((await next.Lane(Lane)).Ready);                         // only its judge makes a lane ready
        await keeper.Touch("choose");
        await keeper.Page.RunAndWaitForResponseAsync(
            () => keeper.Touch("duty-primary"), answer => answer.Request.PostData?.Contains("give-up-seat", StringComparison.Ordinal) == true && answer.Ok);
        await keeper.IsAt("checks");
        await keeper.Touch("ready");
        await keeper.IsAt("ready");
        await Expect(keeper.Pad).Not.ToContainTextAsync("timekeeper");
        Assert.Equal("Kim", (await next.Lane(Lane)).Judge);
    }

    /// <summary>A phone beside the judge's, ready before the heat.</summary>
    private async Task<JudgePhone> Beside(string duty, string name, FaultProxy? link = null)
    {
        var phone = await Phone(link);
        await phone.Join(await Hall.CodeOf(Lane), name);
        await phone.GetReady(duty);
        return phone;
    }

    /// <summary>The same in a heat that runs: no checks.</summary>
    private async Task<JudgePhone> LateBeside(string duty, string name, string view)
    {
        var phone = await Phone();
        await phone.Join(await Hall.CodeOf(Lane), name);
        await phone.IsAt("confirm");
        await phone.Touch("confirm");
        await phone.Touch($"duty-{duty}");
        await phone.IsAt(view);
        return phone;
    }

    private static async Task ToTheLine(JudgePhone phone)
    {
        await phone.Touch("here");
        await phone.Page.Locator($"[data-step='{Line}']").TapAsync();
        await phone.Carries("step-done", Line);
    }
}
