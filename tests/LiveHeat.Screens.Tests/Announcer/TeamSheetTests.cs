using Bunit;
using LiveHeat.Contracts.Forecasts;
using LiveHeat.Engine;
using LiveHeat.Testing;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace LiveHeat.Screens.Announcer;

public sealed class TeamSheetTests : BunitContext
{
    public TeamSheetTests()
    {
        Services.AddLogging();
        Services.AddLocalization();
        Services.AddSingleton<CalloutWords>();
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void The_card_tells_the_chance_of_each_place_in_steps_of_five()
    {
        var card = Card(new LaneOutlook(Some.Lane(2), 700_000, 690_000, 710_000, 0.62, [0.42, 0.31, 0.01, 0.15, 0.11]));

        Assert.Equal(["1st40%", "2nd30%", "4th or later25%"], card.FindAll("[data-act=card-places] li").Select(line => line.TextContent));
        Assert.Equal("60% to beat the cap", card.Find("[data-act=card-cap]").TextContent);
    }

    [Fact]
    public void Of_three_teams_nobody_comes_fourth() =>
        Assert.Equal(["1st40%", "2nd30%", "3rd25%"], Card(new LaneOutlook(Some.Lane(2), 1, 1, 1, null, [0.42, 0.31, 0.24])).FindAll("[data-act=card-places] li").Select(line => line.TextContent));

    [Theory]
    [InlineData(null)]
    [InlineData(new[] { 0.99, 0.01, 0.0 })]
    public void It_says_nothing_where_nothing_is_known_or_nothing_is_in_doubt(double[]? places)
    {
        var card = Card(new LaneOutlook(Some.Lane(2), null, null, null, places is null ? null : 0.99, places?.ToItems()));

        Assert.Empty(card.FindAll("[data-act=card-places]"));
        Assert.Equal(places is null ? null : "should beat the cap", card.FindAll("[data-act=card-cap]").SingleOrDefault()?.TextContent);
    }

    [Fact]
    public void A_row_says_how_likely_it_wins_while_that_is_in_doubt()
    {
        double? Wins(params double[] places) => RowOutlook.Of(new LaneOutlook(Some.Lane(2), 1, 1, 1, null, places.ToItems()), null, 0, Some.Go).Wins;

        Assert.Equal(0.42, Wins(0.42, 0.3, 0.2));
        Assert.Null(Wins(0.05, 0.3, 0.2));
        Assert.Null(Wins(0.95, 0.05, 0));
    }

    private IRenderedComponent<TeamSheet> Card(LaneOutlook outlook) => Render<TeamSheet>(sheet => sheet
        .Add(component => component.Lane, SomeHeat.Lane("start", 2)).Add(component => component.Outlook, outlook).Add(component => component.Close, () => { }));
}
