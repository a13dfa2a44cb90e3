using LiveHeat.Browser.Halls;
using LiveHeat.Testing.Hosting.Faults;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Pads;

/// <summary>A phone that loses its network in the middle of a heat, and gets it back.</summary>
public sealed class NetworkTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 2;

    private static readonly Entrant[] Teams = [new(Lane, "Tin Whistle Four", "Ravi", "Ansel"), new(Lane + 1, "Quarry Lights", "Pip", "Lars")];

    [Fact]
    public async Task Without_network_the_judge_goes_on_and_every_tap_arrives_in_order_afterwards()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var phone = await WorkingPhone(heat, Lane, link);
        var board = await Board(heat);
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");

        await phone.Browser.SetOfflineAsync(true);
        link.Be(Fault.Refuse);
        await phone.Record("step-done", 2);
        await phone.Record("tag-made", 3);
        await phone.HasUnsent(2);
        await Expect(phone.Status).ToContainTextAsync("2 on phone, not sent yet");
        await Expect(phone.Status).ToContainTextAsync("no network");
        await phone.Press("no-rep");
        await phone.Record("step-done", 4);
        await phone.HasUnsent(4);
        await phone.Carries("step-done", 5);
        Assert.Equal(["step-done 1"], await heat.Told(Lane));
        await board.Tells(Lane, "row");                       // what the hall knows: still the second set

        link.Be(Fault.None);
        await phone.Browser.SetOfflineAsync(false);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2", "tag-made 3", "no-rep 4", "step-done 4");
        await phone.IsAllSafe();
        await board.Tells(Lane, "Ansel");
        await board.HasPlace(Lane, 1);
        await phone.Record("step-done", 5);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2", "tag-made 3", "no-rep 4", "step-done 4", "step-done 5");
        await AllInOrderOfTheirInstants(heat);
    }

    [Fact]
    public async Task A_link_that_swallows_everything_is_noticed_and_loses_nothing()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var phone = await WorkingPhone(heat, Lane, link);
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");

        link.Be(Fault.Hang);                                        // the sockets stay open: only silence tells
        await phone.RecordAll("step-done 2", "tag-made 3");
        await phone.HasUnsent(2);
        await Expect(phone.Status).ToContainTextAsync("no network", new() { Timeout = 30_000 });
        await phone.Record("step-done", 4);

        link.Be(Fault.None);
        await Expect(phone.Status).ToHaveAttributeAsync("data-unsent", "0", new() { Timeout = 30_000 });
        Assert.Equal(["step-done 1", "step-done 2", "tag-made 3", "step-done 4"], await heat.Told(Lane));
        await AllInOrderOfTheirInstants(heat);
    }

    [Fact]
    public async Task Taps_whose_receipts_were_lost_are_sent_again_and_stand_once()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var phone = await WorkingPhone(heat, Lane, link);

        link.Be(Fault.HalfOpen);
        await phone.RecordAll("step-done 1", "step-done 2");
        await heat.LedgerHas(Lane, "step-done 1");                 // it is safe, but the phone cannot know
        await phone.HasUnsent(2);

        link.Be(Fault.Reset);
        link.Be(Fault.None);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");
        await phone.IsAllSafe();
    }

    [Fact]
    public async Task A_GO_that_comes_before_the_network_goes_is_counted_down_by_the_phone_itself()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var phone = await ReadyPhone(Lane, link: link);
        await heat.Ready();
        await heat.Do("schedule-start", new { inMs = 4_000 });
        await phone.IsAt("countdown");

        await phone.Browser.SetOfflineAsync(true);
        link.Be(Fault.Refuse);
        await phone.IsAt("heat");
        var goAt = (await heat.Frame()).Start!.GoAt.UnixMs;
        await phone.Record("step-done", 1);
        await phone.HasUnsent(1);

        link.Be(Fault.None);
        await phone.Browser.SetOfflineAsync(false);
        await phone.IsAllSafe();
        var tap = Assert.Single(await heat.Taps(Lane));
        Assert.InRange(tap.Instant.UnixMs - goAt, 0, 15_000);
        Assert.Equal((await heat.Frame()).Start!.Id, tap.Start);
    }

    [Fact]
    public async Task A_horn_that_this_phone_never_heard_of_is_begun_by_hand_and_its_taps_count_afterwards()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Teams);
        var phone = await ReadyPhone(Lane, link: link);
        await phone.Browser.SetOfflineAsync(true);
        link.Be(Fault.Refuse);

        await heat.RunsSince(1_000);
        await phone.Hold("begin", () => phone.IsAt("heat"));
        await phone.Record("step-done", 1);
        await phone.HasUnsent(1);

        link.Be(Fault.None);
        await phone.Browser.SetOfflineAsync(false);
        await phone.IsAllSafe();
        await phone.Carries("step-done", 2);
        Assert.Null(Assert.Single(await heat.Taps(Lane)).Start);
        Assert.Equal(2, (await heat.Lane(Lane)).Open);
    }

    private static async Task AllInOrderOfTheirInstants(HallHeat heat)
    {
        var instants = (await heat.Taps(Lane)).Select(tap => tap.Instant).ToList();
        Assert.Equal(instants.Order(), instants);
    }
}
