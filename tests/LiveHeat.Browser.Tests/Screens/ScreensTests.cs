using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>Getting in by code, and the desk by keyboard alone.</summary>
public sealed class ScreensTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    [Fact]
    public async Task A_head_judges_code_opens_the_head_judges_screen_and_spends_nothing_before_the_button()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(5_000);
        var screen = new HeadJudgeScreen(await Page(390, 844, phone: true), Hall.Site);
        await screen.Open($"join#{await Hall.Code(Role.HeadJudge)}", "join");
        Assert.DoesNotContain(await screen.Page.Context.CookiesAsync(), cookie => cookie.Name == "sign-in");
        await screen.Act("name").FillAsync("Hedda");
        await screen.Press("join");
        await screen.Shows("head-judge");
        await screen.IsIn("running");
        Assert.DoesNotContain("#", screen.Page.Url, StringComparison.Ordinal);

        await screen.InLane(2, "open-lane").ClickAsync();
        await screen.Shows("rulings");
        Assert.Empty(await screen.Page.Faults("body", scrolls: true));
        await screen.PressAndConfirm("warn", "left the lane");
        await Expect(screen.View("facts").First).ToContainTextAsync("left the lane");
    }

    [Fact]
    public async Task A_wrong_code_and_a_missing_name_are_told_in_words()
    {
        var screen = new HeadJudgeScreen(await Page(390, 844, phone: true), Hall.Site);
        await screen.Open("screens/head-judge", "not-head-judge");
        await screen.Press("go-join");
        await screen.Shows("join");
        await screen.Act("code").FillAsync("0000-0000");
        await screen.Press("join");
        await Expect(screen.View("join")).ToContainTextAsync("name");
        await screen.Act("name").FillAsync("Hedda");
        await screen.Press("join");
        await Expect(screen.Act("problem")).ToContainTextAsync("not known here");
    }

    [Fact]
    public async Task The_announcer_joins_by_code_and_reads_the_order()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(40_000);
        await heat.Add(2, 3, 20_000);
        await heat.Add(1, 3, 28_000);
        var screen = new AnnouncerScreen(await Page(1280, 800), Hall.Site);
        await screen.Join($"join#{await Hall.Code(Role.Announcer)}", "Ari", "announcer");
        await screen.OrderIs("Tin Whistle Four", "Harbour Anvils");
        await Expect(screen.Lane(1).Locator("[data-act='gap']")).ToContainTextAsync("8 s");
        await Expect(screen.Sayings).ToContainTextAsync("Tin Whistle Four");
        Assert.Empty(await screen.Page.Faults("body", scrolls: true));
    }

    /// <summary>From the programme to GO and to the end of a heat without a mouse: each button is reached by Tab and pressed by Enter.</summary>
    [Fact]
    public async Task The_desks_main_actions_are_reached_by_Tab_and_pressed_by_Enter()
    {
        var heat = await Hall.Plan(QuickWork.Sets(), Teams);
        var desk = new DeskScreen(await Page(1440, 900), Hall.Site);
        await desk.Open("screens/", "sign-in");
        await Type(desk, "passphrase", Hall.Passphrase);
        await Type(desk, "name", "Ona");
        await desk.Page.Keyboard.PressAsync("Enter");
        await desk.Shows("program");

        await Key(desk, $"[data-heat='{heat.Id}'] [data-act='open-heat']");
        await desk.Shows("planned");
        await Key(desk, "[data-act='call']");
        await desk.IsIn("called");
        await Key(desk, "[data-act='override-all']");
        await desk.Page.Keyboard.TypeAsync("judged from paper");       // the question takes the focus
        await Key(desk, "[data-act='override-all-yes']");
        await Expect(desk.Act("go")).ToBeEnabledAsync();
        await Key(desk, "[data-act='count-down-5']");
        await Key(desk, "[data-act='go']");
        await desk.IsIn("countingdown");
        await desk.IsIn("running");
        await Key(desk, "[data-act='end']");
        await Key(desk, "[data-act='end-yes']");
        await desk.IsIn("ended");
        await Key(desk, "[data-act='freeze']");
        await Key(desk, "[data-act='freeze-yes']");
        await desk.IsIn("frozen");
    }

    private static async Task Type(BlazorScreen screen, string act, string text)
    {
        await TabTo(screen, $"[data-act='{act}']");
        await screen.Page.Keyboard.TypeAsync(text);
    }

    private static async Task Key(BlazorScreen screen, string selector)
    {
        await TabTo(screen, selector);
        await screen.Page.Keyboard.PressAsync("Enter");
    }

    private static async Task TabTo(BlazorScreen screen, string selector)
    {
        const int Most = 80;
        await Expect(screen.Page.Locator(selector).First).ToBeEnabledAsync();
        for (var press = 0; press < Most; press++)
        {
            if (await screen.Page.EvaluateAsync<bool>("selector => !!document.activeElement?.matches(selector)", selector))
            {
                return;
            }

            await screen.Page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"{selector} was not reached in {Most} presses of Tab.");
    }
}
