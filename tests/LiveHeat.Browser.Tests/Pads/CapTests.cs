using LiveHeat.Browser.Halls;
using LiveHeat.Contracts.Frames;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>The time cap on the pad: the reps of the open set are asked for, and the target is there until the heat is ended.</summary>
[Collection(OneAtATime.Name)]
public sealed class CapTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 8;
    private const int CapMs = 6_000;

    private static readonly Entrant Team = new(Lane, "Saltmarsh Union", "Lena", "Theo");

    [Fact]
    public async Task At_the_cap_the_pad_asks_for_the_reps_of_the_open_set_and_keeps_the_target()
    {
        var heat = await Hall.Call(QuickWork.Sets(CapMs), Team);
        var phone = await WorkingPhone(heat, Lane);
        await phone.Record("step-done", 1);
        await Expect(phone.Act("cap-record")).ToBeVisibleAsync();
        await Expect(phone.Target).ToBeVisibleAsync();
        await phone.Carries("step-done", 2);

        for (var rep = 0; rep < 4; rep++)
        {
            await phone.Touch("cap-plus");
        }

        await phone.Touch("cap-minus");
        await phone.Touch("cap-record");
        await heat.LedgerHas(Lane, "step-done 1", "reps-at-cap 2 3");
        await Expect(phone.Act("cap-record")).ToContainTextAsync("3 recorded");
        await Expect(phone.Target).ToBeVisibleAsync();

        await phone.Touch("cap-record");                            // a miscount is put right
        await phone.Touch("cap-plus");
        await phone.Touch("cap-record");
        await heat.LedgerHas(Lane, "step-done 1", "reps-at-cap 2 3", "undone", "reps-at-cap 2 4");

        await heat.Do("end");
        await phone.IsAt("finish");
        await Expect(phone.Act("result")).ToContainTextAsync("4 of 8 cal row");
        var lane = await heat.Lane(Lane);
        Assert.Equal((LaneStatus.Capped, 14), (lane.Status, lane.Worth));
    }

    [Fact]
    public async Task A_set_that_was_done_before_the_cap_but_tapped_after_it_does_not_count_as_done_before()
    {
        var heat = await Hall.Call(QuickWork.Sets(CapMs), Team);
        var phone = await WorkingPhone(heat, Lane);
        await Expect(phone.Act("cap-record")).ToBeVisibleAsync();
        await phone.Record("step-done", 1);                         // the target is there: the judge decides, and the engine by instants
        await heat.LedgerHas(Lane, "step-done 1");
        await heat.Do("end");
        Assert.Equal((LaneStatus.Capped, 0), ((await heat.Lane(Lane)).Status, (await heat.Lane(Lane)).Worth));
    }
}
