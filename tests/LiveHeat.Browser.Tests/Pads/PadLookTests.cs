using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>Every view of the pad at the sizes of small, usual and turned phones: nothing is cut, covered or off the screen, and all can be hit.</summary>
public sealed class PadLookTests(Hall hall) : HallTest(hall)
{
    private static readonly (int Width, int Height)[] Sizes = [(360, 640), (844, 390), (390, 844)];

    private readonly List<string> faults = [];

    [Fact]
    public async Task Before_the_heat()
    {
        const int Lane = 11;
        var phone = await Phone();
        await phone.Open();
        await phone.IsAt("join");
        await Look(phone, "join");
        await phone.Touch("join");
        await Expect(phone.Page.GetByRole(Microsoft.Playwright.AriaRole.Alert)).Not.ToBeEmptyAsync();
        await Look(phone, "join without a code");

        await Hall.Plan(LongWords(), Entrants(Lane));
        await phone.Act("code").FillAsync(await Hall.CodeOf(Lane));
        await phone.Act("name").FillAsync("Maximiliane-Sophie");
        await phone.Touch("join");
        await phone.IsAt("waiting");
        await Look(phone, "waiting");

        var heat = await Hall.Call(LongWords(), Entrants(Lane));
        await phone.IsAt("confirm");
        await Look(phone, "confirm");
        await phone.Touch("not-mine");
        await Look(phone, "another team");
        await phone.Touch("choose");
        await Expect(phone.Act("duty-witness")).ToBeVisibleAsync();
        await Look(phone, "another duty");
        using var other = await Hall.Join(Engine.Heats.Role.Judge, Lane, "Wilhelmina-Charlotte");
        await heat.Do(other, "take-seat", new { lane = Lane, duty = "primary" });
        await Expect(phone.Act("duty-witness")).ToContainTextAsync("Wilhelmina");
        await Look(phone, "a lane that has a judge");
        await phone.Touch("duty-primary");
        await phone.IsAt("checks");
        await Look(phone, "checks");
        await phone.Touch("ready");
        await phone.IsAt("ready");
        await Look(phone, "ready");
        await heat.Ready();
        await heat.Do("schedule-start", new { inMs = 8_000 });
        await phone.IsAt("countdown");
        await Look(phone, "count-down");
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    [Fact]
    public async Task In_the_heat()
    {
        const int Lane = 12;
        var heat = await Hall.Call(LongWords(), Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await Look(phone, "a count");
        await phone.Touch("standard");
        await Expect(phone.Act("standard-panel")).ToBeVisibleAsync();
        await Look(phone, "the standard", ".panel");
        await phone.Touch("standard-close");
        await phone.Press("no-rep");
        await Expect(phone.Act("fault-1")).ToBeVisibleAsync();
        await Look(phone, "faults");
        await phone.Touch("fault-1");
        await phone.Record("count-reached", 1, 5);
        await phone.Record("step-done", 1);
        await Look(phone, "a reading");
        await phone.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "8", Exact = true }).TapAsync();
        await phone.Record("value-entered", 2);
        await phone.Carries("tag-made", 3);
        await Look(phone, "a tag");
        await phone.Press("already");
        await phone.Touch("here");
        await Expect(phone.Act("here-step").First).ToBeVisibleAsync();
        await Look(phone, "where is the lane", ".panel");
        await phone.Touch("close");
        await heat.Do(Hall.HeadJudge, "send-back", new { lane = Lane, step = 1, reason = "The athlete who began was not the one who stands on the list of the team" });
        await Expect(phone.Act("dismiss")).ToBeVisibleAsync();
        await Look(phone, "a ruling");
        await phone.Touch("dismiss");
        await phone.Touch("call");
        await Look(phone, "calling the head judge");
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    [Fact]
    public async Task In_the_other_hand_and_in_the_dark()
    {
        const int Lane = 13;
        var heat = await Hall.Call(LongWords(), Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await phone.Touch("here");
        await phone.Touch("hand");
        await Expect(phone.Act("look")).ToHaveTextAsync("dark");             // a browser that asks for nothing is in the light
        await phone.Touch("look");
        await phone.Touch("close");
        await Expect(phone.Page.Locator("html")).ToHaveAttributeAsync("data-hand", "left");
        await Expect(phone.Page.Locator("html")).ToHaveAttributeAsync("data-look", "dark");
        await Look(phone, "left hand");
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    [Fact]
    public async Task At_the_cap_and_after_it()
    {
        const int Lane = 14;
        var heat = await Hall.Call(LongWords() with { Prescriptions = LongWords().Prescriptions.Select(one => one with { CapMs = 2_000 }).ToItems() }, Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await Expect(phone.Act("cap-record")).ToBeVisibleAsync();
        await Look(phone, "the cap");
        await phone.Touch("cap-plus");
        await phone.Touch("cap-record");
        await Look(phone, "counted at the cap");
        await heat.Do("end");
        await phone.IsAt("finish");
        await Look(phone, "capped");
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    [Fact]
    public async Task Beside_the_judge()
    {
        const int Lane = 16;
        var heat = await Hall.Call(LongWords(), Entrants(Lane));
        var witness = await Phone();
        await witness.Join(await Hall.CodeOf(Lane), "Wilhelmina-Charlotte");
        await witness.GetReady("witness");
        await Look(witness, "a witness, ready");
        var keeper = await Phone();
        await keeper.Join(await Hall.CodeOf(Lane), "Maximiliane-Sophie");
        await keeper.GetReady("timekeeper");
        await Look(keeper, "a timekeeper, ready");
        await heat.RunsSince(1_000);
        await witness.IsAt("heat");
        await Look(witness, "a witness");
        await witness.Touch("here");
        await witness.Page.Locator("[data-step='12']").TapAsync();
        await witness.Record("step-done", 12);
        await witness.IsAt("finish");
        await Look(witness, "a witness's finish");
        await keeper.IsAt("timer");
        await Look(keeper, "a timekeeper");
        await keeper.Time();
        await Expect(keeper.Target).ToContainTextAsync("safe");
        await Look(keeper, "a finish timed");
        await heat.Do("end");
        await Expect(keeper.Act("next")).ToBeVisibleAsync();
        await Look(keeper, "a timekeeper, afterwards");
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    [Fact]
    public async Task After_the_finish_and_when_the_lane_is_somebody_elses()
    {
        const int Lane = 15;
        var heat = await Hall.Call(LongWords(), Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await phone.Touch("here");
        await phone.Page.Locator("[data-step]").Last.TapAsync();
        await Expect(phone.Target).ToHaveAttributeAsync("data-fact", new System.Text.RegularExpressions.Regex("step-done"));
        await Look(phone, "the line");
        await JudgePhone.IsSettled(phone.Target);
        await phone.Target.TapAsync();
        await phone.IsAt("finish");
        await Look(phone, "finish");
        await phone.Touch("captain-name");
        await phone.Touch("agree");
        await Expect(phone.Act("read-back")).ToBeVisibleAsync();
        await Look(phone, "read back");

        var second = await phone.SecondTab();
        await second.Open();
        await second.IsAt("tab");
        await Look(second, "another tab");

        var next = await Hall.Call(LongWords(), Entrants(Lane));
        await phone.Touch("next");
        await phone.GetReady();
        await next.RunsSince(500);
        await phone.IsAt("heat");
        using var other = await Hall.Join(Engine.Heats.Role.Judge, Lane, "Wilhelmina-Charlotte");
        await next.Do(other, "take-seat", new { lane = Lane, duty = "primary" });
        await phone.IsAt("taken");
        await Look(phone, "taken");
        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    private static Entrant Entrants(int lane) => new(lane, "Żółte Łódki znad Wielkiej Rzeki Północnej", "Maximiliane-Sophie", "עבד אל־רחמן", "Þorgerður", "François-Xavier");

    /// <summary>Counted reps with long names, then a reading, a tag after it, and a line at the end; nobody is early.</summary>
    private static Workout LongWords() => new(
        "", "Low Tide", new RelayOrder.InTurn(), Counting.Reps, 5, FinishKind.Line,
        [
            new("snatch", "synchronised dumbbell snatches over the box", Unit.Reps, 3, 0.001, "Both heads touch down.", ["Head did not touch the floor", "Not synchronised with the partner", "Box stepped on"]),
            new("lift", "heaviest single clean and jerk", Unit.Kg, 30, 0, "Locked out.", ["Pressed out"]),
        ],
        [new("open", "Open", 600_000, 4, [], [new("snatch", 10), new("lift", 1, Reading: true)], [])]);

    private async Task Look(JudgePhone phone, string what, string root = "#pad") =>
        faults.AddRange(await phone.Page.FaultsAt(what, Sizes, root, Looks.LeastPadControl));
}
