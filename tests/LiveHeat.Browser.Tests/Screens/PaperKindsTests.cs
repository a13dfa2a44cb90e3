using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Look;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Screens;

/// <summary>From the printed card over what is typed in to the result: rounds by the clock, attempts at a lift, a machine's readings.</summary>
public sealed class PaperKindsTests(Hall hall) : HallTest(hall)
{
    private static readonly Entrant[] Teams = [new(1, "Harbour Anvils", "Joss", "Ilka", "Perpetua"), new(2, "Tin Whistle Four", "Ravi", "Ansel", "Oona")];

    /// <summary>Three rounds of 2:00 with 1:00 rest, the row another in each: steps 1-2 until 2:00, 3-4 from 3:00 to 5:00, 5-6 from 6:00 to 8:00.</summary>
    private static readonly Workout Rounds = ByTheClock(new ScoringRule.MostWork(), [new("wall-ball", 20, Load: "9 kg"), new("row", 15) { InRound = 1 }, new("row", 20) { InRound = 2 }, new("row", 25) { InRound = 3 }]);

    [Fact]
    public async Task Rounds_by_the_clock_are_typed_in_as_the_card_has_them_and_the_result_adds_them_up()
    {
        var heat = await Hall.Call(Rounds, Teams);
        await heat.RunsSince(1_000_000);
        var card = await Page(900, 1200);
        await card.GotoAsync($"{Hall.Site}cards/{heat.Id}");
        var rounds = card.Locator(".sheet[data-lane='1'] .together");
        await Expect(rounds).ToHaveCountAsync(3);
        await Expect(rounds.Nth(1)).ToContainTextAsync("Of the open set, done by 5:00");
        Assert.Equal("1 1 1", await rounds.EvaluateAllAsync<string>("all => all.map(one => one.getClientRects().length).join(' ')"));   // none is torn between columns

        var desk = await Desk(heat, 1);
        await desk.Act("paper-time").First.FocusAsync();
        await Type(desk, "Enter", "1:50", "Enter");                              // wall balls ticked, row done at 1:50: nothing is open in round 1
        await Expect(desk.Act("paper-time").Nth(2)).ToBeFocusedAsync();
        await Type(desk, "Enter");
        await desk.Act("paper-left-2").FillAsync("7");
        await Type(desk, "Enter");
        await Expect(desk.Act("paper-time").Nth(4)).ToBeFocusedAsync();
        await Expect(desk.Act("paper-left-1")).ToBeHiddenAsync();
        await Expect(desk.Page.Locator("tr.ends").First).ToContainTextAsync("How many of 20 cal row by 5:00");
        await desk.Act("paper-time").Nth(2).FillAsync("0:40");
        await Expect(desk.Act("paper-wrong")).ToContainTextAsync("counted from the round's start");
        await desk.Act("paper-time").Nth(2).FillAsync("5:40");
        await Expect(desk.Act("paper-wrong")).ToContainTextAsync("Round 2 ended at 5:00");
        await desk.Act("paper-time").Nth(2).FillAsync("");
        await desk.Act("paper-left-3").FillAsync("12");
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));

        await WholeCard(desk);
        await Scored(heat, "74 of 120 reps");                                           // 20 + 15, 20 + 7, 12
    }

    [Fact]
    public async Task Of_a_round_by_the_clock_a_person_chooses_between_card_and_phone()
    {
        var heat = await Hall.Call(Rounds, Teams);
        await heat.RunsSince(1_000_000);
        await heat.Add(1, 1, 30_000);
        await heat.Add(1, 2, 110_000);
        await heat.Add(1, 3, 200_000);
        var desk = await Desk(heat, 1);
        await desk.Page.Locator("[data-step='1'] [data-act='paper-done']").CheckAsync();
        await desk.Act("paper-left-1").FillAsync("9");
        await desk.Page.Locator("[data-step='3'] [data-act='paper-done']").CheckAsync();
        var differences = desk.View("paper-compare").Locator("article");
        await Expect(differences).ToHaveCountAsync(2);
        await Expect(differences.Locator("h3")).ToHaveTextAsync(["Round 1: how far the team came", "15 cal row (round 1): how many when the round was over"]);
        Assert.Equal(20 + 15 + 20, (await heat.Lane(1)).Worth);

        await differences.Nth(0).Locator("[data-act='take-paper']").ClickAsync();
        await differences.Nth(1).Locator("[data-act='take-paper']").ClickAsync();
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));
        await desk.Press("paper-write");
        await desk.Press("paper-write-yes");
        await Expect(desk.Act("paper-same")).ToBeVisibleAsync();
        await Scored(heat, "49 of 120 reps");                                           // 20 + 9, 20
    }

    [Fact]
    public async Task Attempts_at_a_lift_are_typed_in_and_the_best_of_each_add_up()
    {
        var heat = await Hall.Call(QuickWork.Attempts(2), Teams);
        await heat.RunsSince(300_000);
        var card = await Page(900, 1200);
        await card.GotoAsync($"{Hall.Site}cards/{heat.Id}");
        await Expect(card.Locator(".sheet[data-lane='1'] article.attempt")).ToHaveCountAsync(6);

        var desk = await Desk(heat, 1);
        await Expect(desk.Page.Locator("tr.round").First).ToContainTextAsync("Attempts Joss");
        await Lifts(desk, 0, "100", "good");
        await Lifts(desk, 1, "110", "no");
        await Lifts(desk, 2, "62,5", "good");
        await desk.Act("paper-load").Nth(3).FillAsync("65");
        await Expect(desk.Act("paper-wrong")).ToContainTextAsync("good lift or no lift");
        await desk.Act("paper-lift").Nth(3).SelectOptionAsync("good");
        await Expect(desk.Act("paper-wrong")).ToBeHiddenAsync();
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));

        await WholeCard(desk);
        await Scored(heat, "165 kg");
    }

    [Fact]
    public async Task A_machines_readings_are_typed_in_and_add_up()
    {
        var heat = await Hall.Call(ByTheClock(new ScoringRule.MostReading(), [new("row", 1, Reading: true)]), Teams);
        await heat.RunsSince(1_000_000);
        var card = await Page(900, 1200);
        await card.GotoAsync($"{Hall.Site}cards/{heat.Id}");
        await Expect(card.Locator(".sheet[data-lane='1'] article.value .field")).ToHaveTextAsync(["cal", "cal", "cal"]);

        var desk = await Desk(heat, 1);
        await Expect(desk.Page.Locator("th", new() { HasTextString = "Reading" })).ToBeVisibleAsync();
        await desk.Act("paper-value").Nth(0).FillAsync("27");
        await desk.Act("paper-value").Nth(1).FillAsync("many");
        await Expect(desk.Act("paper-wrong")).ToContainTextAsync("as a number");
        await desk.Act("paper-value").Nth(1).FillAsync("24");
        await desk.Act("paper-value").Nth(2).FillAsync("30");
        Assert.Empty(await desk.Page.Faults("body", scrolls: true));

        await WholeCard(desk);
        await Scored(heat, "81 cal");
    }

    private static Workout ByTheClock(ScoringRule scoring, Items<PrescribedSet> round)
    {
        var clock = new WorkClock(120_000, 60_000, Repeat: false);
        var sets = QuickWork.Sets((int)clock.LengthMs(3));
        return sets with { Finish = FinishKind.None, Scoring = scoring, Prescriptions = [sets.Prescriptions[0] with { Rounds = 3, Clock = clock, Round = round }] };
    }

    private static async Task Type(DeskScreen desk, params string[] keys)
    {
        foreach (var key in keys)
        {
            await (key == "Enter" ? desk.Page.Keyboard.PressAsync(key) : desk.Page.Keyboard.TypeAsync(key));
        }
    }

    private static async Task Lifts(DeskScreen desk, int attempt, string load, string lift)
    {
        await desk.Act("paper-load").Nth(attempt).FillAsync(load);
        await desk.Act("paper-lift").Nth(attempt).SelectOptionAsync(lift);
    }

    private static async Task WholeCard(DeskScreen desk)
    {
        await desk.Press("whole-card");
        await desk.Press("whole-card-yes");
        await Expect(desk.Act("paper-same")).ToBeVisibleAsync();
    }

    private async Task Scored(HallHeat heat, string score)
    {
        var result = new ResultPage(await Page(1280, 800), Hall.Site);
        await result.Open(heat.Id);
        await Expect(result.Cell(1, "score")).ToContainTextAsync(score);
    }

    private async Task<DeskScreen> Desk(HallHeat heat, int lane)
    {
        var desk = new DeskScreen(await Page(1440, 900), Hall.Site);
        await desk.SignIn(Hall.Passphrase, "Ona");
        await desk.Open($"screens/paper/{heat.Id}?lane={lane}", "paper-rows");
        return desk;
    }
}
