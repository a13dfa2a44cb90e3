using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>A set that the team shares, on the pad: 20 cal row for Lena and Theo, at least 9 each.</summary>
public sealed class SharedSetTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 6;

    private static readonly Entrant Team = new(Lane, "Saltmarsh Union", "Lena", "Theo");

    private static Workout Pool()
    {
        var sets = QuickWork.Sets();
        return sets with
        {
            Finish = FinishKind.None,
            Prescriptions = [sets.Prescriptions[0] with { Rounds = 1, Round = [new PrescribedSet("row", 20) { MinimumEach = 9 }] }],
        };
    }

    [Fact]
    public async Task The_judge_says_who_works_and_what_was_done_at_the_change_and_is_told_whose_least_is_missing()
    {
        var heat = await Hall.Call(Pool(), Team);
        var phone = await WorkingPhone(heat, Lane);

        await Works(phone, "Lena", null);
        await Works(phone, "Theo", 12);
        await heat.LedgerHas(Lane, "athlete-working 1", "count-reached 1 12", "athlete-working 1");
        await Expect(phone.Target).ToContainTextAsync("too little yet: Theo");

        await Works(phone, "Lena", 15);
        await Works(phone, "Theo", 14);                             // a miscount is put right at the next change
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "athlete-working 1", "count-reached 1 12", "athlete-working 1", "count-reached 1 15", "athlete-working 1", "count-reached 1 14", "athlete-working 1", "step-done 1");

        var shares = (await heat.Result()).Lanes.Single(lane => lane.Lane.Value == Lane).Shares;
        Assert.Equal([("Lena", 11, 0), ("Theo", 9, 0)], shares.Select(share => (share.Athlete, share.Units, share.Missing)));
    }

    private static async Task Works(JudgePhone phone, string name, int? count)
    {
        await phone.Touch("shares");
        if (count is { } so)
        {
            await phone.Act("shares-count").FillAsync(so.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }

        await phone.Page.Locator("[data-act=shares-who]", new() { HasText = name }).ClickAsync();
        await Expect(phone.Act("shares")).ToContainTextAsync(name);
    }
}
