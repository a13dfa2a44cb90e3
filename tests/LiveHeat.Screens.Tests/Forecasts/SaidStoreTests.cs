using Bunit;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Look;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Forecasts;

/// <summary>What was said, as a tab keeps it: another store over the same browser is the page loaded anew.</summary>
public sealed class SaidStoreTests : BunitContext
{
    private static readonly Instant Now = Some.Go + 5_000;
    private readonly BunitJSModuleInterop browser;

    public SaidStoreTests() => browser = JSInterop.SetupModule("./page.js");

    private static ForecastFrame Frame(params string[] callouts) => new(
        Some.Heat, "e1", 5, Now, [], [], [], callouts.Select(id => new Callout(id, CalloutKind.Tag, 30, Some.Go, CalloutGrounds.Confirmed, [Some.Lane(1)])).ToItems(), []);

    [Fact]
    public async Task What_was_said_does_not_come_back_with_the_next_forecast_and_the_tab_keeps_it()
    {
        var store = await Loaded(Frame("a", "b"));
        var keeping = browser.SetupVoid("keep", _ => true);
        keeping.SetVoidResult();
        await store.Said(Frame("a", "b"), "a");

        Assert.Equal(["b", "c"], Told(store, Frame("a", "b", "c")));
        var kept = Assert.Single(keeping.Invocations);
        Assert.Equal("said.e1.h1", kept.Arguments[0]);
        Assert.Equal(["a"], Assert.IsType<string[]>(kept.Arguments[1]));
    }

    [Fact]
    public async Task A_page_that_is_loaded_anew_says_nothing_before_it_knows_what_was_said_and_nothing_of_that()
    {
        var reading = browser.Setup<string[]?>("kept", "said.e1.h1");
        var (store, frame, changed) = (new SaidStore(new PageScript(JSInterop.JSRuntime)), Frame("a", "b"), 0);
        store.Changed += () => changed++;
        var read = store.ReadFor(frame);
        Assert.Empty(Told(store, frame));

        reading.SetResult(["a"]);
        await read;
        Assert.Equal(1, changed);
        Assert.Equal(["b"], Told(store, frame));
    }

    [Fact]
    public async Task Each_heat_and_each_restored_ledger_has_a_list_of_its_own()
    {
        var frame = Frame("a");
        var store = await Loaded(frame, "a");
        browser.Setup<string[]?>("kept", "said.e1.h2").SetResult([]);
        browser.Setup<string[]?>("kept", "said.e2.h1").SetResult(null);
        await store.ReadFor(frame with { Heat = new HeatId("h2") });
        await store.ReadFor(frame with { Epoch = "e2" });

        Assert.Equal((0, 1, 1), (Told(store, frame).Count, Told(store, frame with { Heat = new HeatId("h2") }).Count, Told(store, frame with { Epoch = "e2" }).Count));
    }

    [Theory]
    [InlineData(CalloutKind.HeatResult)]
    [InlineData(CalloutKind.OverallLead)]
    public async Task What_a_result_made_known_and_was_said_is_not_said_again_in_the_next_heat(CalloutKind kind)
    {
        var won = Frame("won").Callouts[0] with { Kind = kind, Lanes = [] };
        won = kind == CalloutKind.HeatResult
            ? won with { Earlier = new EarlierResult(new HeatId("h0"), "Heat 0", null, ["Harbour Anvils"], true, 300_000, 80) }
            : won with { Overall = new OverallLead(new HeatId("h0"), null, 2, ["Harbour Anvils"], true, 3) };
        var frame = Frame("won") with { Callouts = [won] };
        var keeping = browser.SetupVoid("keep", _ => true);
        keeping.SetVoidResult();
        browser.Setup<string[]?>("kept", "said.e1.h0").SetResult([]);
        browser.Setup<string[]?>("kept", "said.e1.h2").SetResult([]);
        var store = await Loaded(frame);
        Assert.Equal(["won"], Told(store, frame));

        await store.Said(frame, "won");
        await store.ReadFor(frame with { Heat = new HeatId("h2") });
        Assert.Empty(Told(store, frame with { Heat = new HeatId("h2") }));
        Assert.Equal("said.e1.h0", keeping.Invocations.Single().Arguments[0]);
    }

    [Fact]
    public async Task What_is_too_old_is_gone_though_no_newer_forecast_comes()
    {
        var frame = Frame("a");
        var store = await Loaded(frame);

        Assert.Single(store.ToSay(frame, Some.Go + 12_000));
        Assert.Empty(store.ToSay(frame, Some.Go + 12_001));
    }

    private async Task<SaidStore> Loaded(ForecastFrame frame, params string[] kept)
    {
        browser.Setup<string[]?>("kept", "said.e1.h1").SetResult(kept);
        var store = new SaidStore(new PageScript(JSInterop.JSRuntime));
        await store.ReadFor(frame);
        return store;
    }

    private static List<string> Told(SaidStore store, ForecastFrame frame) => [.. store.ToSay(frame, Now).Select(callout => callout.Id)];
}
