using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Heats;

/// <summary>
/// A competition of three workouts (a relay for time, as many reps as possible, a heaviest lift) for two divisions, from an empty database through the
/// screens and the judges' phones to certified results and overall standings.
/// </summary>
public sealed class WholeCompetitionTests(BareHall hall) : HallTest<BareHall>(hall)
{
    private static readonly string[] Judges = ["Mara", "Odd", "Kim", "Sol"];

    [Fact]
    public async Task Three_workouts_and_two_divisions_go_from_nothing_to_certified_results_and_standings()
    {
        var page = await Page(1440, 900);
        var desk = new DeskScreen(page, Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        await SetUp(new SetupScreen(page, Hall.Site));
        var codes = await desk.MakeCodes(1, 2, 3, 4);
        var headJudge = new HeadJudgeScreen(await Page(390, 844, phone: true), Hall.Site);
        await headJudge.Join(codes.HeadJudge, "Hedda", "head-judge");
        var phones = new List<JudgePhone>();
        foreach (var (judge, lane) in Judges.Select((judge, i) => (judge, i + 1)))
        {
            phones.Add(await Phone());
            await phones[^1].Join(new Uri(codes.Lanes[lane]).Fragment.TrimStart('#'), judge);
        }

        await Run("Relay", desk, headJudge, phones, Relay);
        await Run("Most reps", desk, headJudge, phones, MostReps);
        await Run("Lift", desk, headJudge, phones, Lift);
        await TheStandingsAre();
    }

    /// <summary>Teams fill the lanes by name: 1 and 4 are of the first division, 2 and 3 of the second.</summary>
    private static async Task SetUp(SetupScreen setup)
    {
        await setup.Name("Breakwater Relays");
        await setup.AddDivision("Open");
        await setup.AddDivision("Scaled");
        await setup.AddWorkout("Low Tide", "ForTime", "wall balls", "Reps", async () =>
        {
            await setup.Work("open", "cap").FillAsync("10:00");
            await setup.Work("open", "rounds").FillAsync("2");
            await setup.Press("add-prescription-scaled");
            await setup.Work("scaled", "quantity").FillAsync("8");
        });
        await setup.AddWorkout("Ebb", "MostWork", "burpees", "Reps", async () =>
        {
            await setup.Work("open", "cap").FillAsync("0:40");
            await setup.Press("add-prescription-scaled");
        });
        await setup.AddWorkout("Anchor", "HeaviestLoad", "one lift", "Kg", async () =>
        {
            await setup.Act("attempts").FillAsync("1");
            await setup.Press("add-prescription-scaled");
        });
        await setup.PasteTeams(
            "Harbour Anvils; Open; Joss; Ilka", "Tin Whistle Two; Open; Ravi; Ansel", "Quiet Thunder; Scaled; Nell; Piet", "Saltmarsh Union; Scaled; Lena; Theo");
        await setup.AddHeat("Relay", "Low Tide", 4);
        await setup.AddHeat("Most reps", "Ebb", 4);
        await setup.AddHeat("Lift", "Anchor", 4);
    }

    /// <summary>A heat from its call to both signatures.</summary>
    private static async Task Run(string title, DeskScreen desk, HeadJudgeScreen headJudge, List<JudgePhone> phones, Func<JudgePhone, int, Task> judge)
    {
        await desk.Press("go-program");
        await desk.Page.Locator("[data-heat]", new() { HasText = title }).Locator("[data-act='open-heat']").First.ClickAsync();
        await desk.Shows("heat-desk");
        await desk.Press("call");
        await desk.IsIn("called");
        await Task.WhenAll(phones.Select(GetReady));
        await desk.IsIn("armed");
        await desk.Press("count-down-10");
        await desk.Press("go");
        await Task.WhenAll(phones.Select(phone => phone.IsAt("heat")));

        // Nobody is through with ten reps at GO: the pad would ask to hold such a tap.
        await Task.WhenAll(phones.Select(phone => Expect(phone.Page.Locator("header .clock b")).Not.ToHaveTextAsync("0:00")));
        await Task.WhenAll(phones.Select((phone, i) => judge(phone, i + 1)));

        await desk.PressAndConfirm("end");
        await desk.IsIn("ended");
        await desk.Press("freeze");
        await desk.Press("freeze-yes");
        await Task.WhenAll(desk.IsIn("frozen"), headJudge.IsIn("frozen"));
        await desk.Press("sign");
        await desk.Press("sign-yes");
        await Expect(headJudge.Act("signature-organiser")).ToHaveClassAsync("yes");
        await headJudge.Press("sign");
        await headJudge.Press("sign-yes");
        await Task.WhenAll(desk.IsIn("certified"), headJudge.IsIn("certified"));
    }

    /// <summary>The first heat asks at once; after another one the judge goes on to the next.</summary>
    private static async Task GetReady(JudgePhone phone)
    {
        var next = phone.Act("next");
        await Expect(next.Or(phone.Act("confirm")).First).ToBeVisibleAsync();
        if (await next.IsVisibleAsync())
        {
            await next.First.TapAsync();
        }

        await phone.GetReady();
    }

    /// <summary>Lane 1 beats lane 4, lane 3 beats lane 2: the slower team's judge waits for the faster one, or it would be a near tie.</summary>
    private readonly TaskCompletionSource[] done = [new(), new()];

    private async Task Relay(JudgePhone phone, int lane)
    {
        if (lane is 4 or 2)
        {
            await done[lane == 4 ? 0 : 1].Task;
        }

        await phone.RecordAll("step-done 1", "tag-made 2", "step-done 3");
        await phone.IsAt("finish");
        await phone.IsAllSafe();
        if (lane is 1 or 3)
        {
            done[lane == 1 ? 0 : 1].SetResult();
        }
    }

    /// <summary>22, 12, 31 and 14 reps.</summary>
    private static async Task MostReps(JudgePhone phone, int lane)
    {
        var (sets, reps) = new[] { (2, 2), (1, 2), (3, 1), (1, 4) }[lane - 1];
        for (var set = 1; set <= sets; set++)
        {
            await phone.Record("step-done", (2 * set) - 1);
            await phone.Record("tag-made", 2 * set);
        }

        await Expect(phone.Act("cap-record")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        for (var rep = 0; rep < reps; rep++)
        {
            await phone.Touch("cap-plus");
        }

        await phone.Touch("cap-record");
        await phone.IsAllSafe();
    }

    /// <summary>A lift of each athlete, in kilograms; the second of lane 4 is no good one.</summary>
    private static async Task Lift(JudgePhone phone, int lane)
    {
        var loads = new[] { ("90", "70"), ("60", "62.5"), ("60", "62.5"), ("95", "80") }[lane - 1];
        await Attempt(phone, loads.Item1, "good");
        await phone.Record("tag-made", 2);
        await Attempt(phone, loads.Item2, lane == 4 ? "no-lift" : "good");
        await phone.IsAllSafe();
    }

    private static async Task Attempt(JudgePhone phone, string load, string verdict)
    {
        foreach (var key in load)
        {
            await phone.Page.GetByRole(AriaRole.Button, new() { Name = key.ToString(), Exact = true }).TapAsync();
        }

        await Expect(phone.Act("good")).ToContainTextAsync($"{load} kg");
        await phone.Press(verdict);
    }

    /// <summary>By place: Harbour 1, 1, 1; Tin Whistle 2, 2, 2; Saltmarsh 1, 1 and a shared first; Quiet Thunder 2, 2 and the same.</summary>
    private async Task TheStandingsAre()
    {
        var page = await Page(1280, 900);
        await page.GotoAsync(new Uri(Hall.Site, "standings").ToString());
        await Expect(page.Locator("[data-division='open'] .status")).ToHaveTextAsync("Certified results");
        await Expect(page.Locator("[data-division='scaled'] .status")).ToHaveTextAsync("Certified results");
        foreach (var (team, place, points, scores) in new[]
        {
            ("Harbour Anvils", "1", "3", new[] { "160 kg", "2 rounds + 2 reps" }), ("Tin Whistle Two", "2", "6", ["95 kg", "1 round + 4 reps"]),
            ("Saltmarsh Union", "1", "3.5", ["122.5 kg", "3 rounds + 1 rep"]), ("Quiet Thunder", "2", "5.5", ["122.5 kg", "1 round + 2 reps"]),
        })
        {
            var row = page.Locator("tr[data-team]", new() { HasText = team });
            await Expect(row.Locator(".place")).ToHaveTextAsync(place);
            await Expect(row.Locator("td.score")).ToHaveTextAsync(points);
            foreach (var score in scores)
            {
                await Expect(row).ToContainTextAsync(score);
            }
        }

        await Expect(page.Locator("th.workout")).ToHaveTextAsync(["Low Tide", "Ebb", "Anchor", "Low Tide", "Ebb", "Anchor"]);
    }
}
