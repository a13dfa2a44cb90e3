using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Contracts.Library;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>What a good rep is, one touch away, for a judge who has never seen the movement.</summary>
public sealed class StandardTests(Hall hall) : HallTest(hall)
{
    [Fact]
    public async Task The_open_sets_standard_is_one_touch_away_and_one_touch_gone_and_records_nothing()
    {
        const int Lane = 21;
        var heat = await Hall.Call(Told(), Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await phone.Touch("standard");
        var panel = phone.Act("standard-panel");
        await Expect(panel).ToBeVisibleAsync();
        await Expect(phone.Act("standard-start")).ToHaveTextAsync("Standing behind the rope.");
        await Expect(phone.Act("standard-finish")).ToHaveTextAsync("The ball is through the gate.");
        await Expect(phone.Act("standard-between")).ToHaveTextAsync(["One throw only.", "Feet on the floor."]);
        await Expect(phone.Act("standard-allowed")).ToHaveTextAsync("Any hand.");
        await Expect(phone.Act("standard-fault")).ToHaveTextAsync(["past the gateThe ball missed the gate.", "second throwThe ball was thrown twice."]);
        await Expect(panel.Locator("dd").Last).ToHaveTextAsync("Look before you throw.");      // the caution stands last

        await phone.Act("standard-caution").TapAsync();                                        // anywhere
        await Expect(panel).ToBeHiddenAsync();
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");

        await phone.Touch("standard");                                                         // row: only a line is written
        await Expect(panel).ToContainTextAsync("Handle to the chain guard.");
        await phone.Touch("standard-close");
        await phone.Record("step-done", 2);
        await phone.Touch("standard");                                                         // at the tag: that of the work after it
        await Expect(panel.Locator("h2")).ToHaveTextAsync("gate balls");
    }

    [Fact]
    public async Task It_is_there_without_network_and_goes_with_its_step()
    {
        const int Lane = 22;
        var heat = await Hall.Call(Told(), Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await phone.IsKept();
        await phone.Browser.SetOfflineAsync(true);
        await phone.Touch("standard");
        await Expect(phone.Act("standard-start")).ToBeVisibleAsync();
        await phone.Browser.SetOfflineAsync(false);

        await heat.Add(Lane, 1, 500);                                                          // somebody else ends the set
        await Expect(phone.Act("standard-panel")).ToBeHiddenAsync();
        await phone.Carries("step-done", 2);
    }

    [Fact]
    public async Task From_a_no_rep_one_touch_tells_why_and_the_reasons_wait()
    {
        const int Lane = 23;
        var heat = await Hall.Call(Told(), Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await phone.Press("no-rep");
        await phone.Touch("why");
        await Expect(phone.Act("standard-fault").First).ToContainTextAsync("The ball missed the gate.");
        await phone.Touch("standard-close");
        await phone.Touch("fault-2");
        await heat.LedgerHas(Lane, "no-rep 1", "undone", "no-rep 1");
        Assert.Equal("second throw", Assert.IsType<Engine.Heats.HeatFact.NoRep>((await heat.Taps(Lane))[^1]).Fault);
    }

    [Fact]
    public async Task The_reason_given_most_in_this_heat_is_offered_first()
    {
        const int Lane = 24;
        var heat = await Hall.Call(Told(), Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await phone.Press("no-rep");
        await Expect(phone.Act("fault-1")).ToHaveTextAsync("past the gate");
        await phone.Touch("fault-2");
        await phone.Press("no-rep");
        await Expect(phone.Act("fault-1")).ToHaveTextAsync("second throw");
        await Expect(phone.Act("fault-2")).ToHaveTextAsync("past the gate");
        await phone.Touch("fault-2");
        await phone.Press("no-rep");                                                           // once each: as the workout has them
        await Expect(phone.Act("fault-1")).ToHaveTextAsync("past the gate");
        await phone.Record("step-done", 1);                                                    // without a reason
        await heat.LedgerHas(Lane, "no-rep 1", "undone", "no-rep 1", "no-rep 1", "undone", "no-rep 1", "no-rep 1", "step-done 1");
    }

    [Fact]
    public async Task A_judge_reads_a_workout_of_another_language_in_their_own_and_records_its_own_names()
    {
        const int Lane = 25;
        var german = LibraryFiles.In("de").Movements.Single(movement => movement.Id == "wall-ball").ToMovement("gate") with { FastestSecondsPerUnit = 0.001 };
        var told = Told();
        var heat = await Hall.Call(told with { Movements = [german, told.Movements[1]] }, Entrants(Lane));
        var phone = await WorkingPhone(heat, Lane);
        await phone.Press("no-rep");
        await Expect(phone.Act("fault-1")).ToHaveTextAsync("ball below the line");
        await phone.Touch("fault-1");
        await heat.LedgerHas(Lane, "no-rep 1", "undone", "no-rep 1");
        Assert.Equal("Ball unter der Linie", Assert.IsType<Engine.Heats.HeatFact.NoRep>((await heat.Taps(Lane))[^1]).Fault);
        await Expect(phone.Act("undo")).ToContainTextAsync("ball below the line");
        await phone.Touch("standard");
        await Expect(phone.Act("standard-finish")).ToHaveTextAsync("The ball touches the wall, the whole of it at or above the line.");
    }

    private static Entrant Entrants(int lane) => new(lane, "Harbour Anvils", "Joss", "Ilka");

    /// <summary>Steps: 1 set, 2 set, 3 tag, 4 set, 5 set.</summary>
    private static Workout Told() => new(
        "", "Ropes End", new RelayOrder.InTurn(), Counting.Sets, 1, FinishKind.None,
        [
            new("gate", "gate balls", Unit.Reps, 2, 0.001, "", ["past the gate", "second throw"])
            {
                FullStandard = new Standard(
                    "Standing behind the rope.", "The ball is through the gate.", ["One throw only.", "Feet on the floor."], ["Any hand."],
                    [new("past the gate", "The ball missed the gate."), new("second throw", "The ball was thrown twice.")], "Look before you throw."),
            },
            new("row", "row", Unit.Cal, 3, 0.001, "Handle to the chain guard.", []),
        ],
        [new("open", "Open", 600_000, 2, [], [new("gate", 10), new("row", 8)], [])]);
}
