using Bunit;
using LiveHeat.Contracts.Results;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Desk;

/// <summary>What whoever freezes or signs is told first.</summary>
public sealed class SignFormTests : BunitContext
{
    private const string Ended = "start\nlane 1 step 1 done at 0:30\nend at 1:00\nlane 2 reads back disputed at 1:10";
    private readonly List<HeatCommand> asked = [];

    public SignFormTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void Whoever_signs_over_an_open_appeal_is_told_of_the_lane_sees_its_place_in_brackets_and_signs_it_as_pending()
    {
        var form = Sign(Ended + "\nfreeze at 2:00\nlane 1 appeals at 3:00");
        Assert.Equal($"An appeal is open: lane 1. {AppealWords.PendingNote}", form.Find("[data-act=pending]").TextContent);
        Assert.Equal("(1st)", form.Find("li.pending b").TextContent);

        form.Find("[data-act=sign]").Click();
        form.Find("[data-act=sign-yes]").Click();

        Assert.Equal([new LaneNumber(1)], Assert.IsType<HeatCommand.Certify>(Assert.Single(asked)).Pending);
    }

    [Fact]
    public void Without_an_appeal_nothing_is_pending()
    {
        var form = Sign(Ended + "\nfreeze at 2:00");
        Assert.Empty(form.FindAll("[data-act=pending], li.pending"));

        form.Find("[data-act=sign]").Click();
        form.Find("[data-act=sign-yes]").Click();

        Assert.Null(Assert.IsType<HeatCommand.Certify>(Assert.Single(asked)).Pending);
    }

    [Fact]
    public void Whoever_freezes_is_told_of_each_disputed_lane_by_name()
    {
        var (frame, _) = SomeHeat.Told(Ended);
        AskHeat ask = Ask;
        var form = Render<FreezeForm>(list => list
            .Add(component => component.Frame, frame)
            .Add(component => component.Lanes, SomeHeat.Lanes(Ended))
            .Add(component => component.Book, FactBook.Empty)
            .Add(component => component.Missing, [])
            .Add(component => component.Ask, ask));

        form.Find("[data-act=freeze]").Click();

        Assert.Equal("lane 2: the score is disputed by Ann", Assert.Single(form.FindAll("[data-act=disputed]")).TextContent);
    }

    [Fact]
    public void A_lane_with_an_open_appeal_is_marked()
    {
        var (frame, _) = SomeHeat.Told(Ended + "\nlane 1 appeals at 3:00");
        var lanes = SomeHeat.Lanes(Ended);

        Assert.Contains(LaneMarkWords.AppealOpen, LaneMarks.Of(lanes[0], frame).Select(mark => mark.Words));
        Assert.DoesNotContain(LaneMarkWords.AppealOpen, LaneMarks.Of(lanes[1], frame).Select(mark => mark.Words));
    }

    private Task<LiveHeat.Screens.Connection.Problem?> Ask(Func<FactId, HeatCommand> make, string words)
    {
        asked.Add(make(Some.Id("screen", 1)));
        return Task.FromResult<LiveHeat.Screens.Connection.Problem?>(null);
    }

    private IRenderedComponent<SignForm> Sign(string score)
    {
        var state = HeatScript.Play(score);
        var (frame, _) = SomeHeat.Told(score);
        AskHeat ask = Ask;
        return Render<SignForm>(form => form
            .Add(component => component.Frame, frame)
            .Add(component => component.Title, "Heat 1")
            .Add(component => component.Table, ResultMaking.Of(state, "", SomeHeat.Now))
            .Add(component => component.Lanes, SomeHeat.Lanes(score))
            .Add(component => component.Book, new FactBook(state.Head, state.Entries.Select(entry => new FactLine(entry.Sequence, entry.ReceivedAt, entry.Sender, FactFlags.None, entry.Fact))))
            .Add(component => component.Me, Role.Organiser)
            .Add(component => component.Ask, ask));
    }
}
