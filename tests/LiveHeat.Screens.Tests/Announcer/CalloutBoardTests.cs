using Bunit;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Callouts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Screens.Clock;
using LiveHeat.Testing;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace LiveHeat.Screens.Announcer;

/// <summary>The parts of the announcer's screen that tell what is worth saying.</summary>
public sealed class CalloutBoardTests : BunitContext
{
    private const string Score = "start\nlane 1 step 1 done at 0:30\nlane 2 step 2 done at 0:38";

    public CalloutBoardTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddMudServices().AddLogging().AddSingleton<CalloutWords>().AddSingleton(TimeProvider.System);
    }

    private static Callout Lead(string id = "lead.2.1.9") => new(id, CalloutKind.Lead, 90, Some.Go + 38_000, CalloutGrounds.Confirmed, [Some.Lane(2), Some.Lane(1)]) { Step = 2, Place = 1 };

    private IRenderedComponent<CalloutBoard> Board(IReadOnlyList<Callout> toSay, Action<string>? said = null) => Render<CalloutBoard>(board => board
        .Add(component => component.ToSay, toSay).Add(component => component.Lanes, SomeHeat.Lanes(Score)).Add(component => component.Clock, new StandingClock())
        .Add(component => component.Said, id => said?.Invoke(id)));

    [Fact]
    public void The_heaviest_stands_first_with_its_reason_and_age_and_two_more_below()
    {
        var board = Board([Lead(), .. Enumerable.Range(1, 4).Select(i => Lead($"more.{i}"))]);

        var first = board.Find("[data-act=callout-first]");
        Assert.Equal("Team 2 take the lead from Team 1.", first.QuerySelector("[data-act=sentence]")!.TextContent);
        Assert.Equal("confirmed, after 12 cal row", first.QuerySelector("[data-act=reason]")!.TextContent);
        Assert.Equal("4 s ago", first.QuerySelector("[data-act=callout-age]")!.TextContent);
        Assert.Equal(2, board.FindAll("[data-act=callout]").Count);
    }

    [Fact]
    public void What_is_about_the_whole_heat_shows_no_lane()
    {
        var ends = new Callout("roundends", CalloutKind.LastMinute, 70, Some.Go, CalloutGrounds.Clock, [Some.Lane(1), Some.Lane(2), Some.Lane(3)]);

        Assert.Equal([0, 2], Board([ends, Lead()]).FindAll("article").Select(article => article.QuerySelectorAll(".lane-number").Length));
    }

    [Fact]
    public void What_was_said_is_tapped_away_by_its_id()
    {
        var said = new List<string>();

        Board([Lead()], said.Add).Find("[data-act=said]").Click();

        Assert.Equal(["lead.2.1.9"], said);
    }

    [Fact]
    public void With_nothing_to_say_it_says_so() => Assert.NotEmpty(Board([]).Find("[data-act=nothing]").TextContent);

    [Fact]
    public void What_not_to_say_stands_there_while_it_is_open_and_nothing_does_when_nothing_is()
    {
        IRenderedComponent<NotYetStrip> Strip(params NotYet[] open) => Render<NotYetStrip>(strip => strip.Add(component => component.Open, open).Add(component => component.Lanes, SomeHeat.Lanes(Score)));

        Assert.Contains("Name no order", Strip(new NotYet(NotYetWhy.NearTie, [Some.Lane(1), Some.Lane(2)])).Find("[data-why=neartie]").TextContent, StringComparison.Ordinal);
        Assert.Empty(Strip().Markup.Trim());
    }

    [Theory]
    [InlineData(2, "▲2", "up 2 places in a minute")]
    [InlineData(-1, "▼1", "down 1 place in a minute")]
    public void A_trend_is_an_arrow_with_a_number_and_words_for_who_does_not_see_it(int gained, string shown, string words)
    {
        var mark = Render<TrendMark>(mark => mark.Add(component => component.Gained, gained)).Find("[data-act=trend]");

        Assert.Equal((shown, words), (mark.TextContent, mark.GetAttribute("aria-label")));
    }

    [Fact]
    public void A_row_says_who_is_next_in_how_many_seconds_and_the_chance_while_the_cap_is_in_doubt()
    {
        var outlook = RowOutlook.Of(new LaneOutlook(Some.Lane(2), 1, 1, 1, 0.42, [0.5, 0.3, 0.2]), new TagOutlook(Some.Lane(2), 3, Some.Go + 50_000), 1, Some.Go + 42_000);
        var row = Render<OrderRow>(row => row.Add(component => component.Lane, SomeHeat.Lane(Score, 2)).Add(component => component.Live, true).Add(component => component.Certified, false)
            .Add(component => component.Outlook, outlook).Add(component => component.Clock, new StandingClock()));

        Assert.Equal("Bo in about 8 s", row.Find("[data-act=next-tag]").TextContent);
        Assert.Equal("40% to beat the cap", row.Find("[data-act=cap-chance]").TextContent);
        Assert.Equal("▲1", row.Find("[data-act=trend]").TextContent);
    }

    [Theory]
    [InlineData(0.95, "should beat the cap")]
    [InlineData(0.9, "should beat the cap")]
    [InlineData(0.89, "90% to beat the cap")]
    [InlineData(0.05, "hardly beats the cap")]
    [InlineData(null, null)]
    public void A_row_tells_who_should_beat_the_cap_and_who_hardly_does_and_nothing_where_nobody_knows(double? chance, string? words)
    {
        var outlook = RowOutlook.Of(new LaneOutlook(Some.Lane(2), 1, 1, 1, chance, null), null, 0, Some.Go);
        var row = Render<OrderRow>(row => row.Add(component => component.Lane, SomeHeat.Lane(Score, 2)).Add(component => component.Live, true).Add(component => component.Certified, false)
            .Add(component => component.Outlook, outlook).Add(component => component.Clock, new StandingClock()));

        Assert.Equal(words, row.FindAll("[data-act=cap-chance]").SingleOrDefault()?.TextContent);
    }

    [Fact]
    public void A_card_has_the_athletes_in_relay_order_who_works_how_to_say_names_and_what_to_tell()
    {
        var introduction = new TeamIntroduction("t2", "TEEM two", "Quarry Road", [new NameSaid("Bo", "boh")], ["Their first heat."]);
        var card = Render<TeamSheet>(card => card.Add(component => component.Lane, SomeHeat.Lane(Score, 2)).Add(component => component.Introduction, introduction).Add(component => component.Close, () => { }));

        Assert.Equal(["Ann", "Bo", "Cy"], card.FindAll("[data-act=card-athlete] strong").Select(name => name.TextContent));
        Assert.Contains("works now", card.FindAll("[data-act=card-athlete]")[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("say: boh", card.FindAll("[data-act=card-athlete]")[1].TextContent, StringComparison.Ordinal);
        Assert.Equal("say: TEEM two", card.Find("[data-act=say]").TextContent);
        Assert.Contains("From Quarry Road", card.Markup, StringComparison.Ordinal);
        Assert.Equal("Their first heat.", card.Find("[data-act=card-fact]").TextContent);
    }

    /// <summary>It is always 42 s after GO.</summary>
    private sealed class StandingClock : ISceneClock
    {
        public Instant Now => Some.Go + 42_000;

        public double Rate => 0;

        public int Turn => 0;

        public TimeSpan Since(Instant at) => TimeSpan.FromMilliseconds(Now - at);
    }
}
