using LiveHeat.Browser.Halls;
using LiveHeat.Browser.Pages;
using LiveHeat.Testing.Hosting.Faults;

namespace LiveHeat.Browser.Pads;

/// <summary>A pad that is loaded again in the middle of a heat, as when a phone threw its tab away.</summary>
[Collection(OneAtATime.Name)]
public sealed class ReloadTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 4;

    private static readonly Entrant Team = new(Lane, "Moss & Iron", "Dina", "Oskar");

    [Fact]
    public async Task With_network_the_open_step_is_where_it_was_and_the_next_tap_counts()
    {
        var heat = await Hall.Call(QuickWork.Reps(), Team);
        var phone = await WorkingPhone(heat, Lane);
        await phone.Record("count-reached", 1, 5);
        await phone.Record("step-done", 1);
        await phone.IsStored();

        await phone.Page.ReloadAsync();
        await phone.IsAt("heat");
        await phone.Record("step-done", 2);
        await phone.Carries("tag-made", 3);
        await heat.LedgerHas(Lane, "count-reached 1 5", "step-done 1", "step-done 2");
        await phone.IsAllSafe();
    }

    [Fact]
    public async Task Without_network_it_records_again_and_what_was_unsent_is_sent_when_the_network_is_back()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane, link);
        await phone.IsKept();
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");
        await phone.Browser.SetOfflineAsync(true);
        link.Be(Fault.Refuse);
        await phone.Record("step-done", 2);
        await phone.IsStored();
        await phone.HasUnsent(1);

        await phone.Page.ReloadAsync();
        await phone.IsAt("heat");
        await phone.HasUnsent(1);
        await phone.Hold("done", () => phone.Carries("step-done", 4));      // a fast phone is back before anybody can have tagged: then the tap must be held
        await phone.Record("step-done", 4);
        await phone.HasUnsent(3);
        Assert.Equal(["step-done 1"], await heat.Told(Lane));

        link.Be(Fault.None);
        await phone.Browser.SetOfflineAsync(false);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2", "tag-made 3", "step-done 4");
        await phone.IsAllSafe();
        var instants = (await heat.Taps(Lane)).Select(tap => tap.Instant).ToList();
        Assert.Equal(instants.Order(), instants);
    }

    [Fact]
    public async Task A_tab_that_was_closed_opens_again_without_network()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane, link);
        await phone.IsKept();
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");
        await phone.Browser.SetOfflineAsync(true);
        link.Be(Fault.Refuse);
        await phone.Page.CloseAsync();

        var again = await phone.SecondTab();
        await again.Open();
        await again.IsAt("heat");
        await again.Record("step-done", 2);
        await again.HasUnsent(1);

        link.Be(Fault.None);
        await again.Browser.SetOfflineAsync(false);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");
        await again.IsAllSafe();
    }

    [Fact]
    public async Task What_was_recorded_before_the_finish_is_there_after_a_reload_and_the_time_is_the_same()
    {
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await WorkingPhone(heat, Lane);
        await phone.Touch("here");
        await phone.Page.Locator("[data-step='6']").TapAsync();
        await phone.Record("step-done", 6);
        await phone.IsAt("finish");
        await phone.IsAllSafe();
        var time = await phone.Act("result").TextContentAsync();

        await phone.Page.ReloadAsync();
        await phone.IsAt("finish");
        Assert.Equal(time, await phone.Act("result").TextContentAsync());
        Assert.Matches(@"^\d+:\d\d\.\d$", time);
    }
}
