using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>Desk, head judge and announcer in the languages whose words are longer than English: nothing is cut off, covered, or off the screen.</summary>
public sealed class LanguageLookTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel"), new(3, "Seven Left Gloves", "Mei", "Tove")];

    [Theory]
    [InlineData("de-DE", "aufgerufen")]
    [InlineData("fr-FR", "appelée")]
    [InlineData("es-ES", "llamada")]
    public async Task Longer_words_have_their_room_on_every_screen_of_a_heat(string locale, string called)
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var desk = new DeskScreen(await Page(1440, 900, locale: locale), Hall.Site);
        var judge = new HeadJudgeScreen(await Page(390, 844, phone: true, locale: locale), Hall.Site);
        var announcer = new AnnouncerScreen(await Page(820, 1180, locale: locale), Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        await judge.Join($"join#{await Hall.Code(Role.HeadJudge)}", "Hedda", "head-judge");
        await announcer.Join($"join#{await Hall.Code(Role.Announcer)}", "Ari", "announcer");
        BlazorScreen[] all = [desk, judge, announcer];

        var faults = new List<string>(await Faults("programme", desk));
        await desk.OpenHeat(heat.Id);
        await Expect(desk.Page.Locator(".phase-mark").First).ToHaveTextAsync(called);
        Assert.Equal(locale[..2], await desk.Page.EvaluateAsync<string>("() => document.documentElement.lang"));
        faults.AddRange(await Faults("called", all));

        await heat.RunsSince(60_000);
        await heat.Add(2, 3, 20_000);
        await heat.Add(1, 3, 28_000);
        await heat.Do(Hall.HeadJudge, "hold-lane", new { lane = 3, movesCap = true, reason = "bar fell" });
        await Expect(announcer.Lane(1).Locator("[data-act='gap']")).ToContainTextAsync("8 s");
        await Expect(desk.Page.Locator("[data-lane='3']").First).ToBeVisibleAsync();
        faults.AddRange(await Faults("running", all));

        await desk.InLane(2, "open-lane").ClickAsync();
        await desk.Shows("rulings");
        await judge.InLane(2, "open-lane").ClickAsync();
        await judge.Shows("rulings");
        await announcer.Lane(1).ClickAsync();
        await announcer.Shows("team-card");
        faults.AddRange(await Faults("one lane", all));

        await heat.Do("end");
        await desk.IsIn("ended");
        await announcer.IsIn("ended");
        faults.AddRange(await Faults("ended", desk, announcer));
        await desk.Page.EvaluateAsync("() => document.querySelectorAll('details').forEach(one => { one.open = true; })");
        faults.AddRange(await Faults("ended, all open", desk));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>The size of controls is looked at where fingers are; the desk has a mouse.</summary>
    private static async Task<IEnumerable<string>> Faults(string stage, params BlazorScreen[] screens)
    {
        var faults = new List<string>();
        foreach (var screen in screens)
        {
            faults.AddRange((await screen.Page.Faults("body", screen is DeskScreen ? 0 : Looks.LeastControl, scrolls: true)).Select(fault => $"{screen.GetType().Name}, {stage}: {fault}"));
        }

        return faults;
    }
}
