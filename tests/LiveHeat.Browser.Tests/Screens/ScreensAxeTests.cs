using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>Every Blazor screen, as it stands while one heat goes from the plan to its signed result: nothing on it that axe-core calls serious or critical.</summary>
public sealed class ScreensAxeTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    private readonly List<string> faults = [];

    [Fact]
    public async Task No_screen_has_a_serious_fault_in_any_phase()
    {
        var heat = await Hall.Plan(QuickWork.Sets(), Teams);
        var desk = new DeskScreen(await Page(1440, 900), Hall.Site);
        await desk.Open("screens/", "sign-in");
        await Look(desk, "sign-in");
        await desk.Act("passphrase").FillAsync(Hall.Passphrase);
        await desk.Act("name").FillAsync("Ona");
        await desk.Press("sign-in");
        await desk.Shows("program");
        await Look(desk, "program");
        foreach (var (address, view) in new[]
        {
            ("setup", "setup"), ("setup/teams", "teams"), ("setup/movements", "movements"), ($"setup/workouts/w{heat.Id[1..]}", "consequences"), ($"setup/heats/{heat.Id}", "heat-form"), ("codes", "codes"), ("judges", "judges"),
        })
        {
            await Go(desk, address, view);
            await Look(desk, address);
        }

        await Go(desk, "setup/movements/new", "movement-form");
        await Look(desk, "movement form");
        await desk.Press("save-movement");
        await Expect(desk.Act("problem")).ToBeVisibleAsync();
        await Look(desk, "movement form, refused");
        await Go(desk, $"heat/{heat.Id}", "planned");
        await Look(desk, "heat, planned");
        await desk.Press("call");
        await desk.IsIn("called");
        await Look(desk, "heat, called");
        await heat.Ready();
        await desk.IsIn("armed");
        await Look(desk, "heat, armed");
        await heat.Do("schedule-start", new { inMs = 120_000 });
        await desk.IsIn("countingdown");
        await Look(desk, "heat, counting down");
        await heat.Do("recall-start", new { reason = "a false start" });

        await heat.RunsSince(60_000);
        await heat.Add(1, 3, 20_000);
        await heat.Add(2, 3, 28_000);
        await desk.IsIn("running");
        await Expect(desk.View("lanes")).ToBeVisibleAsync();
        await Look(desk, "heat, running");
        await desk.InLane(2, "open-lane").ClickAsync();
        await desk.Shows("rulings");
        await Look(desk, "rulings at the desk");
        var judge = new HeadJudgeScreen(await Page(390, 844, phone: true), Hall.Site);
        await judge.Open($"join#{await Hall.Code(Role.HeadJudge)}", "join");
        await Look(judge, "join");
        await judge.Act("name").FillAsync("Hedda");
        await judge.Press("join");
        await judge.IsIn("running");
        await Look(judge, "head judge, running");
        await judge.InLane(2, "open-lane").ClickAsync();
        await judge.Shows("rulings");
        await Look(judge, "head judge, rulings");
        await Go(desk, "announcer", "announcer");
        await Expect(desk.Act("team").First).ToBeVisibleAsync();
        await Look(desk, "announcer");
        await desk.Press("open-team");
        await desk.Shows("team-card");
        await Look(desk, "announcer, card");
        await Go(desk, $"judging/{heat.Id}", "judging");
        await Look(desk, "judging");
        await desk.Page.SetViewportSizeAsync(390, 844);
        await Look(desk, "judging on a phone");
        await Go(desk, "announcer", "announcer");
        await Look(desk, "announcer on a phone");
        await desk.Page.SetViewportSizeAsync(1440, 900);

        await heat.Do("halt", new { reason = "a bar rolled into lane 2" });
        await Go(desk, $"heat/{heat.Id}", "heat-desk");
        await desk.IsIn("halted");
        await Look(desk, "heat, halted");
        await heat.Do("resume", new { reason = "the lane is clear" });
        await heat.Do("end");
        await desk.IsIn("ended");
        await Look(desk, "heat, ended");
        await heat.Do("freeze", new { head = (await heat.Frame()).Sequence });
        await desk.IsIn("frozen");
        await desk.Shows("review");
        await Look(desk, "heat, frozen");
        await Go(desk, $"paper/{heat.Id}", "paper");
        await Look(desk, "paper");
        await Go(desk, $"replay/{heat.Id}", "replay-controls");
        await Look(desk, "replay");

        var head = (await heat.Frame()).SignedHead;
        await heat.Do("certify", new { head });
        await heat.Do(Hall.HeadJudge, "certify", new { head });
        await Go(desk, $"heat/{heat.Id}", "heat-desk");
        await desk.IsIn("certified");
        await Look(desk, "heat, certified");

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>Within the program, as its own links do it: nothing is loaded anew.</summary>
    private static async Task Go(BlazorScreen screen, string address, string view)
    {
        await screen.Page.EvaluateAsync("address => Blazor.navigateTo(address)", address);
        await screen.Shows(view);
    }

    private async Task Look(BlazorScreen screen, string what) => faults.AddRange(await screen.Page.SeriousFaults(what));
}
