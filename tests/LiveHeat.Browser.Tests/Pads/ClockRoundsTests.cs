using LiveHeat.Browser.Halls;
using LiveHeat.Engine.Workouts;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>Rounds by the clock on the pad: a round that is over asks for its reps, then there is rest, then the next athlete's round opens by itself.</summary>
[Collection(OneAtATime.Name)]
public sealed class ClockRoundsTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 7;
    private const int WorkMs = 12_000;
    private const int RestMs = 9_000;

    private static readonly Entrant Team = new(Lane, "Saltmarsh Union", "Lena", "Theo");

    private static Workout ByTheClock()
    {
        var sets = QuickWork.Sets((2 * WorkMs) + RestMs);
        return sets with
        {
            Finish = FinishKind.None,
            Scoring = new ScoringRule.MostWork(),
            Prescriptions = [sets.Prescriptions[0] with { Clock = new WorkClock(WorkMs, RestMs, Repeat: false) }],
        };
    }

    [Fact]
    public async Task What_is_left_of_a_round_is_counted_in_the_rest_and_the_next_round_opens_by_itself()
    {
        var heat = await Hall.Call(ByTheClock(), Team);
        var phone = await WorkingPhone(heat, Lane);
        await phone.Record("step-done", 1);
        await Expect(phone.Act("cap-record")).ToBeVisibleAsync(new() { Timeout = 30_000 });
        for (var rep = 0; rep < 3; rep++)
        {
            await phone.Touch("cap-plus");
        }

        await phone.Touch("cap-record");
        await Expect(phone.Page.Locator(".cap")).ToContainTextAsync("Rest. At 0:21: Theo, 10 wall balls");
        await Expect(phone.Target).ToBeHiddenAsync();

        await Expect(phone.Target).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await phone.Carries("step-done", 3);
        await phone.Record("step-done", 3);
        await heat.LedgerHas(Lane, "step-done 1", "reps-at-cap 2 3", "step-done 3");
        Assert.Equal(10 + 3 + 10, (await heat.Lane(Lane)).Worth);
    }
}
