using Bunit;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Standings;
using LiveHeat.Screens.Commands;
using MudBlazor.Services;

namespace LiveHeat.Screens.NearTies;

public sealed class NearTieListTests : BunitContext
{
    private const string Score = "start\nlane 1 step 1 done at 0:30\nlane 2 step 1 done at 0:31";

    public NearTieListTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void Nothing_close_shows_nothing() => Assert.Empty(List(out _).Markup.Trim());

    [Fact]
    public void What_was_decided_is_not_asked_again() =>
        Assert.Empty(List(out _, new NearTie([new(1), new(2)], 40, 200, Decided: true)).Markup.Trim());

    [Fact]
    public void The_second_lane_can_be_put_first()
    {
        var list = List(out var asked, new NearTie([new(1), new(2)], 40, 200, Decided: false));

        list.Find("[data-act=first-2]").Click();

        var decided = Assert.IsType<HeatCommand.DecideNearTie>(Assert.Single(asked));
        Assert.Equal([2, 1], decided.Lanes.Select(lane => lane.Value));
        Assert.False(decided.Tie);
    }

    [Fact]
    public void A_step_at_the_cap_can_be_too_late()
    {
        var list = List(out var asked, new NearTie([new(1)], 30, 120, Decided: false));

        Assert.Contains("after the cap", list.Markup, StringComparison.Ordinal);
        list.Find("[data-act=too-late-1]").Click();

        Assert.False(Assert.IsType<HeatCommand.DecideCap>(Assert.Single(asked)).InTime);
    }

    [Fact]
    public void A_step_at_the_end_of_a_round_by_the_clock_names_its_round()
    {
        var list = List(out var asked, new NearTie([new(1)], -30, 120, Decided: false) { Round = 3 }, new NearTie([new(1)], 50, 120, Decided: false) { Round = 4 });

        Assert.Contains("in round 3, 0.03 s before its end", list.Markup, StringComparison.Ordinal);
        list.Find("[data-act=in-time-1-4]").Click();

        var decided = Assert.IsType<HeatCommand.DecideCap>(Assert.Single(asked));
        Assert.Equal((1, (int?)4, true), (decided.Lane.Value, decided.Round, decided.InTime));
    }

    private IRenderedComponent<NearTieList> List(out List<HeatCommand> asked, params NearTie[] ties)
    {
        var (frame, _) = SomeHeat.Told(Score);
        var commands = asked = [];
        AskHeat ask = (make, _) =>
        {
            commands.Add(make(LiveHeat.Testing.Some.Id("screen", 1)));
            return Task.FromResult<LiveHeat.Screens.Connection.Problem?>(null);
        };
        return Render<NearTieList>(list => list
            .Add(component => component.Frame, frame with { NearTies = [.. ties] })
            .Add(component => component.Lanes, SomeHeat.Lanes(Score))
            .Add(component => component.Ask, ask));
    }
}
