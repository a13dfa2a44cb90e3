using System.Text.Json.Nodes;
using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine.Heats;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>How a heat is judged: a question on the head judge's phone while it runs, all lanes and all judges to read.</summary>
public sealed class JudgingTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka"), new(2, "Tin Whistle Four", "Ravi", "Ansel")];

    /// <summary>Lane 1 has nine no-reps in its twenty wall balls and lane 2 none: with two lanes each is unlike the other.</summary>
    [Fact]
    public async Task A_lane_that_stands_out_is_a_question_that_can_be_put_aside()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        await heat.RunsSince(90_000);
        for (var noRep = 0; noRep < 9; noRep++)
        {
            await NoRep(heat, 1, 10_000 + (noRep * 1_000));
        }

        await heat.Add(2, 4, 59_000);
        await heat.Add(1, 4, 60_000);
        var screen = new HeadJudgeScreen(await Page(390, 844, phone: true), Hall.Site);
        await screen.Join($"join#{await Hall.Code(Role.HeadJudge)}", "Hedda", "head-judge");
        await screen.IsIn("running");
        var questions = screen.View("judging-question");
        await Expect(questions).ToHaveCountAsync(2);
        await Expect(questions.First).ToContainTextAsync("Lane 1: 9 no-reps in 20 wall balls, the floor's rate makes 4.5. Have a look?");
        Assert.Empty(await screen.Page.Faults("body", scrolls: true));
        await questions.First.Locator("[data-act='put-aside']").ClickAsync();
        await Expect(questions).ToHaveCountAsync(1);

        await screen.Press("open-judging");
        var lane = screen.Page.Locator(".judging-lane[data-lane='1']");
        await Expect(lane).ToHaveAttributeAsync("data-stands-out", "yes");
        await Expect(lane.Locator("[data-movement='wall balls']")).ToContainTextAsync("9 no-reps in 20 reps");
        await Expect(lane.Locator("[data-act='take-up']")).ToBeVisibleAsync();
        Assert.Empty(await screen.Page.Faults("body", scrolls: true));
        await screen.Page.SetViewportSizeAsync(1440, 900);
        Assert.Empty(await screen.Page.Faults("body", scrolls: true));
        await screen.Page.SetViewportSizeAsync(390, 844);

        await screen.Press("leave-judging");
        await screen.Shows("judging-questions");
        await Expect(questions).ToHaveCountAsync(1);
        await screen.Press("open-judges");
        await screen.Shows("judges");
        await Expect(screen.View("judges")).ToContainTextAsync("For training, not for blame");
        await Expect(screen.Act("empty")).ToContainTextAsync("join codes");         // both lanes were written down at the desk: no judge had them
    }

    private async Task NoRep(HallHeat heat, int lane, int atMs)
    {
        var start = (await heat.Frame()).Start!;
        await heat.Do("add", new
        {
            source = "video",
            reason = "seen on the recording",
            tap = new JsonObject
            {
                ["fact"] = "no-rep",
                ["id"] = Hall.Organiser.NewId(),
                ["lane"] = lane,
                ["step"] = 1,
                ["instant"] = start.GoAt.UnixMs + atMs,
                ["uncertaintyMs"] = 40,
                ["start"] = start.Id,
                ["plan"] = 1,
            },
        });
    }
}
