using LiveHeat.Browser.Halls;
using LiveHeat.Testing.Hosting.Faults;

namespace LiveHeat.Browser.Network;

/// <summary>A second phone takes a lane over in mid-heat, while the first one is out of reach with taps that nobody else has.</summary>
[Collection(OneAtATime.Name)]
public sealed class TakeOverTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 11;

    private static readonly Entrant Team = new(Lane, "Tallow & Twine", "Edda", "Wim");

    [Fact]
    public async Task What_the_first_phone_still_holds_is_merged_when_it_comes_back()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var first = await WorkingPhone(heat, Lane, link);
        await first.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");
        link.Be(Fault.Refuse);
        await first.Record("step-done", 2);
        await first.HasUnsent(1);

        // The second has the lane from the ledger, and sees with its own eyes that it is further.
        var second = await Phone();
        await second.Join(await Hall.CodeOf(Lane), "Ruth");
        await second.Choose("primary");
        await second.IsAt("heat");
        await second.Carries("step-done", 2);
        await second.Page.Locator("[data-step='3']").TapAsync();
        await second.Carries("tag-made", 3);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");
        Assert.Equal(3, (await heat.Lane(Lane)).Open);

        link.Be(Fault.None);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2", "step-done 2");
        await first.IsAllSafe();
        await first.IsAt("taken");
        var (told, made) = ((await heat.Taps(Lane))[1], (await heat.Taps(Lane))[2]);
        Assert.NotEqual(told.Id.Outbox, made.Id.Outbox);
        Assert.Equal(0, (await heat.Frame()).Held);
        Assert.Equal((3, made.Instant.UnixMs - (await heat.Frame()).Start!.GoAt.UnixMs), ((await heat.Lane(Lane)).Open, (await heat.Lane(Lane)).SplitMs));
        await second.Record("tag-made", 3);
        await second.IsAllSafe();
        Assert.Equal(4, (await heat.Lane(Lane)).Open);
    }
}
