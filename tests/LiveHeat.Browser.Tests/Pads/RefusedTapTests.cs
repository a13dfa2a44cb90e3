using System.Text.Json.Nodes;
using LiveHeat.Browser.Halls;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>Receipts that are no "accepted": on the way back from the real server, the receipt of one kind of tap is changed.</summary>
public sealed class RefusedTapTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 7;
    private const string Refused = "This phone never judged lane 7. Show the tap to the head judge.";

    private static readonly Entrant Team = new(Lane, "Northbank Otters", "Cal", "Orla");

    [Fact]
    public async Task A_refused_tap_stays_in_sight_until_it_is_dismissed_and_holds_up_nothing_behind_it()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane, inReach: true);
        await Answer(phone.Page, "no-rep", receipt =>
        {
            receipt["outcome"] = "refused";
            receipt["code"] = "not-your-lane";
            receipt["detail"] = Refused;
        });

        await phone.Press("no-rep");
        await Expect(phone.Notice).ToContainTextAsync(Refused);
        await phone.Record("step-done", 1);
        await phone.Carries("step-done", 2);
        await phone.IsAllSafe();
        await Expect(phone.Notice).ToContainTextAsync(Refused);

        await phone.Page.ReloadAsync();
        await Expect(phone.Notice).ToContainTextAsync(Refused);
        await phone.Touch("dismiss");
        await Expect(phone.Notice).Not.ToContainTextAsync(Refused);
        await phone.Page.ReloadAsync();
        await phone.Carries("step-done", 2);
        await Expect(phone.Notice).Not.ToContainTextAsync(Refused);
    }

    [Fact]
    public async Task A_tap_whose_id_is_taken_goes_again_under_a_new_one()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane, inReach: true);
        var sent = new List<string>();
        await Answer(phone.Page, "step-done", receipt =>
        {
            sent.Add((string)receipt["id"]!);
            if (sent.Count == 1)
            {
                receipt["outcome"] = "conflict";
            }
        });

        await phone.Record("step-done", 1);
        await phone.Carries("step-done", 2);
        await phone.IsAllSafe();

        var outboxes = sent.Select(id => id.Split('.')[0]).ToList();
        Assert.Equal(2, outboxes.Count);
        Assert.NotEqual(outboxes[0], outboxes[1]);
        Assert.EndsWith(".1", sent[1], StringComparison.Ordinal);
    }

    private static Task Answer(Microsoft.Playwright.IPage page, string fact, Action<JsonObject> change) => page.RouteAsync("**/taps", async route =>
    {
        var sent = JsonNode.Parse(route.Request.PostData!)!["taps"]!.AsArray();
        var answer = await route.FetchAsync();
        var receipts = JsonNode.Parse(await answer.TextAsync())!;
        foreach (var (tap, receipt) in sent.Zip(receipts["receipts"]!.AsArray()).Where(pair => (string)pair.First!["fact"]! == fact))
        {
            change(receipt!.AsObject());
        }

        await route.FulfillAsync(new() { Response = answer, Body = receipts.ToJsonString() });
    });
}
