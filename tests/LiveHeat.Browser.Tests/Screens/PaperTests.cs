using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>Paper cards at the desk: a lane that no phone judged, and one that both did.</summary>
public sealed class PaperTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    [Fact]
    public async Task A_lane_without_a_phone_gets_its_time_from_the_card_by_keyboard()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(400_000);
        var desk = await Desk(heat, 1);
        await desk.Act("paper-time").First.ClickAsync();
        await desk.Page.Keyboard.TypeAsync("0:40");
        await desk.Page.Keyboard.PressAsync("Enter");                                   // goes to the next line
        await Expect(desk.Act("paper-time").Nth(1)).ToBeFocusedAsync();
        await desk.Page.Keyboard.TypeAsync("1:15");
        await desk.Act("paper-finish").FillAsync("soon");
        await Expect(desk.Act("paper-put-right")).ToBeVisibleAsync();
        await desk.Act("paper-finish").FillAsync("4:10.3");
        await desk.Press("whole-card");
        await desk.Press("whole-card-yes");
        await Expect(desk.Act("paper-same")).ToBeVisibleAsync();
        Assert.Empty(await heat.Told(1));                                               // no taps: what was added stands as added

        await Expect(desk.Page.Locator("[data-step='1'] [data-act='paper-record']")).ToHaveTextAsync("0:40.0");
        var result = new ResultPage(await Page(1280, 800), Hall.Site);
        await result.Open(heat.Id);
        await Expect(result.Cell(1, "score")).ToContainTextAsync("4:10.3");
        var lane = (await heat.Result()).Lanes.Single(one => one.Lane.Value == 1);
        Assert.Equal([40_000, 75_000, null, null, null, 250_300], lane.Splits.Select(split => split.Ms));
    }

    [Fact]
    public async Task Where_card_and_phone_differ_a_person_chooses_and_nothing_is_written_before()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(300_000);
        await heat.Add(2, 1, 30_000);
        await heat.Add(2, 2, 60_000);
        var before = (await heat.Facts()).Count;
        var desk = await Desk(heat, 2);
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));
        await desk.Page.Locator("[data-step='1'] [data-act='paper-time']").FillAsync("0:36.0");
        await desk.Page.Locator("[data-step='2'] [data-act='paper-time']").FillAsync("1:00.2");
        await desk.Page.Locator("[data-step='2'] [data-act='paper-no-reps']").FillAsync("2");
        var differences = desk.View("paper-compare").Locator("article");
        await Expect(differences).ToHaveCountAsync(2);
        await differences.First.Locator("[data-act='take-paper']").ClickAsync();
        await Expect(desk.Act("paper-writes").Locator("li")).ToHaveCountAsync(2);
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));
        await desk.Page.SetViewportSizeAsync(390, 844);
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));
        await desk.Page.SetViewportSizeAsync(1440, 900);
        Assert.Equal(before, (await heat.Facts()).Count);

        await desk.Press("paper-write");
        await desk.Press("paper-write-yes");
        await Expect(differences).ToHaveCountAsync(1);
        Assert.Equal(before + 2, (await heat.Facts()).Count);
        var lane = (await heat.Result()).Lanes.Single(one => one.Lane.Value == 2);
        Assert.Equal([36_000, 60_000], lane.Splits.Take(2).Select(split => split.Ms));
    }

    private async Task<DeskScreen> Desk(HallHeat heat, int lane)
    {
        var desk = new DeskScreen(await Page(1440, 900), Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        await desk.Open($"screens/paper/{heat.Id}?lane={lane}", "paper-rows");
        return desk;
    }
}
