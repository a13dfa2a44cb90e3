using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>Who records: one tab of one phone, whose judge has the lane's seat; and what that judge and the desk tell each other.</summary>
public sealed class SeatTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 6;

    private static readonly Entrant Team = new(Lane, "Copper Kettles", "Ada", "Nils");

    [Fact]
    public async Task A_code_is_redeemed_by_a_button_and_leaves_the_address_at_once()
    {
        var phone = await Phone();
        await phone.Open($"#{await Hall.CodeOf(Lane)}");
        await phone.IsAt("join");
        Assert.DoesNotContain("#", phone.Page.Url, StringComparison.Ordinal);
        await phone.Touch("join");
        await Expect(phone.Page.GetByRole(Microsoft.Playwright.AriaRole.Alert)).ToContainTextAsync("your name");
        Assert.DoesNotContain(await phone.Browser.CookiesAsync(), cookie => cookie.Name == "sign-in");

        await phone.Act("code").FillAsync("0000 0000");
        await phone.Act("name").FillAsync("Mara");
        await phone.Touch("join");
        await Expect(phone.Page.GetByRole(Microsoft.Playwright.AriaRole.Alert)).ToContainTextAsync("not known here");

        await phone.Act("code").FillAsync((await Hall.CodeOf(Lane)).ToLowerInvariant().Insert(4, "-"));   // as people type it
        await phone.Touch("join");
        await Expect(phone.Pad).Not.ToHaveAttributeAsync("data-view", "join");
    }

    /// <summary>Only one tab may record, and a slow browser takes a while to say that it is this one: until then the pad shows another view.</summary>
    [Fact]
    public async Task The_code_of_the_link_is_still_there_when_a_slow_phone_knows_late_that_it_is_the_only_tab()
    {
        var (phone, code) = (await Phone(), await Hall.CodeOf(Lane));
        await phone.Page.AddInitScriptAsync("""
            const { locks } = navigator, request = locks.request.bind(locks);
            locks.request = (...asked) => new Promise(done => { window.grant = () => done(request(...asked)); });
            """);
        await phone.Open($"#{code}");
        await phone.IsAt("tab");
        await phone.Page.EvaluateAsync("grant()");
        await phone.IsAt("join");

        await Expect(phone.Act("code")).ToHaveValueAsync(code);
        await phone.Act("name").FillAsync("Mara");
        await phone.Touch("join");
        await Expect(phone.Pad).Not.ToHaveAttributeAsync("data-view", "join");
    }

    [Fact]
    public async Task Of_two_tabs_only_one_records_until_the_judge_says_which()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var first = await WorkingPhone(heat, Lane);
        var second = await first.SecondTab();
        await second.Open();
        await second.IsAt("tab");
        await first.IsAt("heat");
        await first.Record("step-done", 1);

        await second.Touch("use-here");
        await second.IsAt("heat");
        await first.IsAt("tab");
        await second.Record("step-done", 2);
        await second.Carries("tag-made", 3);
        await second.IsAllSafe();
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");
    }

    [Fact]
    public async Task A_phone_whose_seat_another_took_is_told_by_whom_and_can_take_it_back()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var mara = await WorkingPhone(heat, Lane);
        await mara.Record("step-done", 1);
        await mara.IsAllSafe();

        var ruth = await Phone();
        await ruth.Join(await Hall.CodeOf(Lane), "Ruth");
        await ruth.IsAt("confirm");
        await ruth.Touch("confirm");
        await Expect(ruth.Act("duty-primary")).ToContainTextAsync("takes over from Mara");
        await mara.IsAt("heat");                                    // asking takes nothing from anybody
        await ruth.Touch("duty-primary");
        await ruth.IsAt("heat");
        await mara.IsAt("taken");
        await Expect(mara.Pad).ToContainTextAsync("Ruth");
        await ruth.CloseHere();                                  // the panel that asks where the lane is
        await ruth.Record("step-done", 2);
        await ruth.Carries("tag-made", 3);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");

        await mara.Touch("take-back");
        await mara.IsAt("heat");
        await ruth.IsAt("taken");
        await mara.Record("tag-made", 3);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2", "tag-made 3");
        Assert.Equal(4, (await heat.Lane(Lane)).Open);
    }

    [Fact]
    public async Task What_was_tapped_without_network_after_another_took_the_seat_waits_for_the_head_judge_and_stays_in_sight()
    {
        await using var link = new Testing.Hosting.Faults.FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane, link);
        link.Be(Testing.Hosting.Faults.Fault.Refuse);
        var other = await Hall.Join(Role.Judge, Lane, "Ruth");
        await heat.Do(other, "take-seat", new { lane = Lane, duty = "primary" });
        await phone.Record("step-done", 1);
        await phone.HasUnsent(1);

        link.Be(Testing.Hosting.Faults.Fault.None);
        await phone.IsAt("taken");
        await phone.IsAllSafe();
        Assert.Equal(1, (await heat.Frame()).Held);
        Assert.Equal(1, (await heat.Lane(Lane)).Open);
        other.Dispose();
    }

    [Fact]
    public async Task The_head_judge_is_called_after_three_seconds_in_which_it_can_be_taken_back()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane);
        await phone.Touch("call");
        await Expect(phone.Act("call")).ToContainTextAsync("take back");
        await phone.Touch("call");
        await Expect(phone.Act("call")).Not.ToContainTextAsync("take back");

        await phone.Touch("call");
        await Expect(phone.Act("call")).ToContainTextAsync("called");
        await heat.LedgerHas(Lane, "head-judge-called");
        Assert.Equal(Lane, Assert.Single((await heat.Frame()).Calls).Value);

        await heat.Do(Hall.HeadJudge, "answer-call", new { lane = Lane });
        await Expect(phone.Act("call")).Not.ToContainTextAsync("called");
    }

    [Fact]
    public async Task A_ruling_is_told_to_the_judge_and_moves_the_target()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane);
        await phone.RecordAll("step-done 1", "step-done 2");
        await phone.Carries("tag-made", 3);
        await phone.IsAllSafe();

        await heat.Do(Hall.HeadJudge, "send-back", new { lane = Lane, step = 1, reason = "wrong athlete" });
        await phone.Carries("step-done", 1);
        await Expect(phone.Notice).ToContainTextAsync("Hedda");
        await Expect(phone.Notice).ToContainTextAsync("wrong athlete");
        await phone.Touch("dismiss");
        await Expect(phone.Notice).Not.ToContainTextAsync("Hedda");

        await heat.Do(Hall.HeadJudge, "owe-reps", new { lane = Lane, step = 1, reps = 3, reason = "short" });
        await Expect(phone.Target).ToContainTextAsync("first 3 owed");
    }

    [Fact]
    public async Task A_halted_heat_is_halted_on_the_pad_and_goes_on_with_it()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane);
        await heat.Do("halt", new { reason = "somebody on the floor" });
        await Expect(phone.Pad).ToContainTextAsync("halted");
        await heat.Do("resume", new { reason = "all clear" });
        await Expect(phone.Pad).Not.ToContainTextAsync("halted");
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");
    }

    [Fact]
    public async Task A_recalled_start_is_told_and_nothing_of_it_counts()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane);
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");

        await heat.Do("recall-start", new { reason = "a lane moved early" });
        await phone.IsAt("ready");
        await Expect(phone.Pad).ToContainTextAsync("Nothing of it counts");

        await heat.RunsSince(1_000);
        await phone.IsAt("heat");
        await phone.Carries("step-done", 1);
        Assert.Equal((1, LaneStatus.Working), ((await heat.Lane(Lane)).Open, (await heat.Lane(Lane)).Status));
    }
}
