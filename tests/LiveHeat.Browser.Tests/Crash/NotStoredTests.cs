using LiveHeat.Browser.Halls;
using LiveHeat.Testing.Hosting.Faults;
using static Microsoft.Playwright.Assertions;

namespace LiveHeat.Browser.Crash;

/// <summary>A phone that cannot keep a tap says so: at once, and where it can be known before, before the heat.</summary>
[Collection(OneAtATime.Name)]
public sealed class NotStoredTests(Hall hall) : HallTest(hall)
{
    private const int Lane = 10;

    /// <summary>What a browser does on a full disk, from memory: the write fails and its whole transaction is undone.</summary>
    private const string FullDisk = """
        const add = IDBObjectStore.prototype.add;
        IDBObjectStore.prototype.add = function (...what) {
          const request = add.apply(this, what);
          if (window.diskFull) this.transaction.abort();
          return request;
        };
        """;

    /// <summary>What some browsers answer in a private window, from memory.</summary>
    private const string NoStorage = "IDBFactory.prototype.open = () => { throw new DOMException('Not allowed here.', 'InvalidStateError'); };";

    private static readonly Entrant Team = new(Lane, "Paper Lanterns", "Ines", "Joon");

    [Fact]
    public async Task A_full_disk_is_told_at_once_and_the_tap_is_sent_all_the_same()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await Phone(link);
        await phone.Browser.AddInitScriptAsync(FullDisk);
        await phone.Join(await Hall.CodeOf(Lane), "Mara");
        await phone.GetReady();
        await heat.RunsSince(1_000);
        await phone.Record("step-done", 1);
        await heat.LedgerHas(Lane, "step-done 1");

        link.Be(Fault.Refuse);
        await phone.Page.EvaluateAsync("window.diskFull = true");
        await phone.Record("step-done", 2);
        await Expect(phone.Notice).ToContainTextAsync("Taps are not stored. Keep this page open until all is sent.");
        await Expect(phone.Status).ToContainTextAsync("1 NOT stored");
        await Expect(phone.Target.Locator(".state")).ToContainTextAsync("not stored");
        await phone.Carries("tag-made", 3);

        link.Be(Fault.None);
        await heat.LedgerHas(Lane, "step-done 1", "step-done 2");
        await phone.IsAllSafe();
    }

    [Fact]
    public async Task A_private_window_without_storage_is_told_before_the_heat_and_never_says_on_phone()
    {
        await using var link = new FaultProxy(Hall.Site);
        var heat = await Hall.Call(QuickWork.Sets(), Team);
        var phone = await Phone(link);
        await phone.Browser.AddInitScriptAsync(NoStorage);
        await phone.Join(await Hall.CodeOf(Lane), "Mara");
        await phone.IsAt("confirm");
        await phone.Touch("confirm");
        await phone.IsAt("checks");
        var storage = phone.Page.Locator("[data-check='storage']");
        await Expect(storage).ToHaveAttributeAsync("data-state", "warn");
        await Expect(storage).ToContainTextAsync("Taps are not kept");

        await phone.Touch("ready");
        await heat.RunsSince(1_000);
        await phone.IsAt("heat");
        link.Be(Fault.Refuse);
        await phone.Record("step-done", 1);
        await Expect(phone.Target.Locator(".state")).ToContainTextAsync("not stored");
        await Expect(phone.Status).ToContainTextAsync("1 NOT stored");
        link.Be(Fault.None);
        await heat.LedgerHas(Lane, "step-done 1");
        await phone.IsAllSafe();
    }
}
