using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>What a touch of the pad records, and what no accident may.</summary>
public sealed class RecordingTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 1;

    private static readonly Entrant Team = new(Lane, "Harbour Anvils", "Joss", "Ilka");

    [Fact]
    public async Task A_second_touch_within_the_dead_time_records_nothing_and_says_so()
    {
        var (heat, phone) = await Working();
        await phone.Carries("step-done", 1);
        await JudgePhone.IsSettled(phone.Target);

        await phone.Target.TapAsync();
        await phone.Target.TapAsync();

        await Expect(phone.Notice).ToContainTextAsync("Too quick");
        await heat.LedgerHas(Lane, "step-done 1");
        await phone.IsAllSafe();
    }

    [Fact]
    public async Task A_second_finger_is_ignored_and_said()
    {
        var (heat, phone) = await Working();
        await JudgePhone.IsSettled(phone.Target);
        var box = (await phone.Target.BoundingBoxAsync())!;

        await using (var finger = await Finger.Down(phone.Target))
        {
            await finger.Add(box.X + (box.Width / 4), box.Y + (box.Height / 4));
            await Expect(phone.Notice).ToContainTextAsync("Second finger");
        }

        await heat.LedgerHas(Lane, "step-done 1");
        await phone.IsAllSafe();
    }

    [Fact]
    public async Task An_early_tap_counts_only_when_it_is_held()
    {
        var (heat, phone) = await Working(QuickWork.Slow());
        await JudgePhone.IsSettled(phone.Target);

        await phone.Target.TapAsync();
        await Expect(phone.Notice).ToContainTextAsync("Let go too soon");
        await phone.HasUnsent(0);
        Assert.Empty(await heat.Told(Lane));

        await phone.Hold("done", () => phone.Carries("step-done", 2));
        await heat.LedgerHas(Lane, "step-done 1");
        await phone.IsAllSafe();
    }

    [Fact]
    public async Task A_no_rep_is_recorded_at_once_and_its_reason_takes_its_place()
    {
        var (heat, phone) = await Working();
        await phone.Press("no-rep");
        await Expect(phone.Act("no-rep")).ToContainTextAsync("1 so far");
        await phone.Touch("fault-1");

        await heat.LedgerHas(Lane, "no-rep 1", "undone", "no-rep 1");
        var taps = await heat.Taps(Lane);
        var undone = Assert.Single(taps.OfType<HeatFact.Undone>());
        var (plain, named) = (taps.OfType<HeatFact.NoRep>().First(), taps.OfType<HeatFact.NoRep>().Last());
        Assert.Equal((plain.Id, plain.Instant), (undone.Target, named.Instant));
        Assert.Equal((null, "Ball short of the line"), (plain.Fault, named.Fault));
        Assert.Equal((1, 1), ((await heat.Lane(Lane)).NoReps, (await heat.Lane(Lane)).Open));
        await Expect(phone.Act("no-rep")).ToContainTextAsync("1 so far");
    }

    [Fact]
    public async Task Undo_must_be_held_and_takes_back_the_last_tap()
    {
        var (heat, phone) = await Working();
        await phone.Record("step-done", 1);
        await phone.Carries("step-done", 2);

        await phone.Touch("undo");
        await Expect(phone.Notice).ToContainTextAsync("Let go too soon");
        await phone.Carries("step-done", 2);

        await phone.Undo("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1", "undone");
        await phone.IsAllSafe();
        Assert.Equal(1, (await heat.Lane(Lane)).Open);
    }

    [Fact]
    public async Task A_tag_looks_different_and_can_be_told_late_or_faulty()
    {
        var (heat, phone) = await Working();
        await phone.RecordAll("step-done 1", "step-done 2");
        await phone.Carries("tag-made", 3);
        await Expect(phone.Target).ToContainTextAsync("Joss");
        await Expect(phone.Target).ToContainTextAsync("Ilka");
        await phone.Press("no-rep");
        await phone.Press("already");
        await phone.Carries("step-done", 4);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2", "tag-fault 3", "tag-made 3");

        await phone.IsAllSafe();
        Assert.False(Assert.IsType<HeatFact.TagMade>((await heat.Taps(Lane))[^1]).TimeKnown);
    }

    [Fact]
    public async Task Reps_are_counted_at_their_checkpoints()
    {
        var (heat, phone) = await Working(QuickWork.Reps());
        await phone.Record("count-reached", 1, 5);
        await phone.Record("step-done", 1);
        await phone.Record("step-done", 2);
        await heat.LedgerHas(Lane, "count-reached 1 5", "step-done 1", "step-done 2");

        await phone.IsAllSafe();
    }

    [Fact]
    public async Task A_reading_is_entered_on_the_keys()
    {
        var (heat, phone) = await Working(QuickWork.Lifted());
        await Expect(phone.Target).ToBeDisabledAsync();
        foreach (var key in new[] { "8", "2", ".", "5" })
        {
            await phone.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = key, Exact = true }).TapAsync();
        }

        await phone.Record("value-entered", 1);
        await phone.Carries("step-done", 2);
        await heat.LedgerHas(Lane, "value-entered 1");

        Assert.Equal(82.5m, Assert.IsType<HeatFact.ValueEntered>(Assert.Single(await heat.Taps(Lane))).Value);
    }

    [Fact]
    public async Task The_lane_is_here_now_jumps_forward_with_times_unknown()
    {
        var (heat, phone) = await Working();
        await phone.Touch("here");
        await phone.Page.Locator("[data-step='5']").TapAsync();
        await phone.Carries("step-done", 5);
        await heat.LedgerHas(Lane, "step-done 4");

        Assert.False(Assert.IsAssignableFrom<HeatFact.Done>(Assert.Single(await heat.Taps(Lane))).TimeKnown);
        Assert.Equal((5, null), ((await heat.Lane(Lane)).Open, (await heat.Lane(Lane)).SplitMs));
    }

    [Fact]
    public async Task A_finger_that_lifts_presses_nothing_that_came_under_it()
    {
        var (_, phone) = await Working();
        await phone.Touch("here");
        await phone.Page.Locator("[data-step='6']").TapAsync();
        await phone.Carries("step-done", 6);
        await JudgePhone.IsSettled(phone.Target);
        await phone.Page.EvaluateAsync("() => { window.pressed = []; addEventListener('click', ({ target }) => pressed.push(target.outerHTML), true); }");

        await using (await Finger.Down(phone.Target))
        {
            await phone.IsAt("finish");                            // recorded at pointer-down: the finger stands on another screen now
        }

        await phone.Touch("call");                                 // a press that is meant, and the only one
        Assert.Contains("data-act=\"call\"", Assert.Single(await phone.Page.EvaluateAsync<string[]>("pressed")));
    }

    private async Task<(HallHeat Heat, JudgePhone Phone)> Working(Engine.Workouts.Workout? workout = null)
    {
        var heat = await Hall.Call(workout ?? QuickWork.Sets(), Team);
        return (heat, await WorkingPhone(heat, Lane));
    }
}
