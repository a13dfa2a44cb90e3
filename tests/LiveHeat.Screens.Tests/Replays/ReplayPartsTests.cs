using Bunit;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Announcer;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Look;
using LiveHeat.Testing;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace LiveHeat.Screens.Replays;

/// <summary>The parts of a replay draw what they are given and do what is pressed.</summary>
public sealed class ReplayPartsTests : BunitContext, IAsyncLifetime
{
    private readonly List<HeatCommand> asked = [];

    public ReplayPartsTests()
    {
        Services.AddMudServices();
        Services.AddSingleton<PageScript>();
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.SetupModule("./page.js").Mode = JSRuntimeMode.Loose;
    }

    public Task InitializeAsync() => Task.CompletedTask;

    async Task IAsyncLifetime.DisposeAsync() => await DisposeAsync();

    [Theory]
    [InlineData("0:38", 38_000)]
    [InlineData("1:00.5", 60_500)]
    public void A_heat_time_that_is_written_is_gone_to(string time, long ms)
    {
        var store = SomeReplay.Store(SomeReplay.Score, ReplayBy.Happened, out _);
        var controls = Render<ReplayControls>(part => part.Add(component => component.Store, store));
        controls.Find("[data-act=time]").Input(time);
        controls.Find("form").Submit();
        Assert.Equal(ms, store.HeatMs);
    }

    [Fact]
    public void What_is_no_time_is_told_and_nothing_moves()
    {
        var store = SomeReplay.Store(SomeReplay.Score, ReplayBy.Happened, out _);
        var controls = Render<ReplayControls>(part => part.Add(component => component.Store, store));
        controls.Find("[data-act=time]").Input("half past");
        controls.Find("form").Submit();
        Assert.Equal(0, store.HeatMs);
        Assert.Contains("such as 4:32", controls.Find("[role=alert]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_slider_moves_it_and_speeds_are_chosen()
    {
        var store = SomeReplay.Store(SomeReplay.Score, ReplayBy.Happened, out _);
        var controls = Render<ReplayControls>(part => part.Add(component => component.Store, store));
        controls.Find("[data-act=speed-20]").Click();
        controls.Find("[data-act=scrub]").Input($"{Some.Go + 50_000 - store.Player.From}");
        Assert.Equal((20.0, 50_000L), (store.Player.Speed, store.HeatMs));
        Assert.Equal("true", controls.Find("[data-act=speed-20]").GetAttribute("aria-checked"));
    }

    [Fact]
    public void A_fact_says_when_where_who_what_and_how_it_is_kept_and_can_be_voided()
    {
        var list = Facts(moving: false, closed: false);
        var row = list.FindAll("[data-view=near-facts] .fact")[^1];
        Assert.Contains("0:38.0", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("Judge s-2, lane judge, phone in-2", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("Ann", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("±12 ms", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("came in 20 s later", row.TextContent, StringComparison.Ordinal);

        row.QuerySelector("[data-act=void]")!.Click();
        list.Find("[data-act=void-reason] input, input[data-act=void-reason]").Input("wrong lane");
        list.Find("[data-act=void-yes]").Click();
        Assert.Equal("wrong lane", Assert.IsType<HeatCommand.Void>(Assert.Single(asked)).Reason);
    }

    [Fact]
    public void What_is_yet_to_come_stands_below_the_moment()
    {
        var list = Facts(moving: false, closed: false);
        var order = list.FindAll("[data-view=near-facts] > li").Select(item => item.ClassList.Contains("moment") ? "moment" : item.ClassList.Contains("ahead") ? "ahead" : "before");
        Assert.Equal(["before", "moment", "ahead"], order);
    }

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void While_it_runs_on_and_when_it_is_certified_nothing_is_voided(bool moving, bool closed) =>
        Assert.Empty(Facts(moving, closed).FindAll("[data-act=void]"));

    [Fact]
    public void The_announcers_bar_says_that_it_is_not_live_what_is_live_meanwhile_and_leads_back()
    {
        var back = false;
        var bar = Render<ReplayBar>(part => part
            .Add(component => component.Store, SomeReplay.Store(SomeReplay.Score, ReplayBy.Known, out _))
            .Add(component => component.LiveNow, "Live now: Heat 2, running")
            .Add(component => component.GoLive, () => back = true));
        Assert.Contains("REPLAY", bar.Markup, StringComparison.Ordinal);
        Assert.Contains("not live, as it was known", bar.Markup, StringComparison.Ordinal);
        Assert.Equal("Live now: Heat 2, running", bar.Find("[data-act=live-now]").TextContent);
        bar.Find("[data-act=go-live]").Click();
        Assert.True(back);
    }

    private IRenderedComponent<NearFacts> Facts(bool moving, bool closed)
    {
        var store = SomeReplay.Store(SomeReplay.Score, ReplayBy.Happened, out _);
        store.SeekHeat(35_000);
        var book = SomeReplay.Book(SomeReplay.Score);
        AskHeat ask = (make, _) =>
        {
            asked.Add(make(Some.Id("screen", 1)));
            return Task.FromResult<Connection.Problem?>(null);
        };
        return Render<NearFacts>(part => part
            .Add(component => component.Facts, FactsAround.Of(book, ReplayBy.Happened, store.Player.Now, null))
            .Add(component => component.Lanes, store.Scene.Lanes)
            .Add(component => component.Book, book)
            .Add(component => component.Clock, store.Clock)
            .Add(component => component.Moment, ReplayMoment.Words(store))
            .Add(component => component.Moving, moving)
            .Add(component => component.Closed, closed)
            .Add(component => component.Ask, ask));
    }
}
