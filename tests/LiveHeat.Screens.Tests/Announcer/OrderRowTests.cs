using Bunit;
using MudBlazor.Services;

namespace LiveHeat.Screens.Announcer;

public sealed class OrderRowTests : BunitContext
{
    [Fact]
    public void A_row_says_team_place_gap_who_works_and_who_is_next()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
        var lane = SomeHeat.Lane("start\nlane 1 step 1 done at 0:30\nlane 2 step 1 done at 0:38", 2);

        var row = Render<OrderRow>(row => row.Add(component => component.Lane, lane).Add(component => component.Live, true).Add(component => component.Certified, false));

        Assert.Equal("Team 2", row.Find("[data-act=team]").TextContent);
        Assert.Equal("2nd", row.Find("[data-act=place]").TextContent);
        Assert.Contains("8 s behind", row.Find("[data-act=gap]").TextContent, StringComparison.Ordinal);
        Assert.Contains("Ann", row.Markup, StringComparison.Ordinal);
        Assert.Contains("Bo", row.Markup, StringComparison.Ordinal);
    }
}
