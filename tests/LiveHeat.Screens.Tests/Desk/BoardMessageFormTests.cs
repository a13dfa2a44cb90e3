using Bunit;
using LiveHeat.Contracts.Programme;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Words;
using MudBlazor.Services;

namespace LiveHeat.Screens.Desk;

/// <summary>What the organiser tells the hall over the boards.</summary>
public sealed class BoardMessageFormTests : BunitContext
{
    private readonly List<string> put = [];
    private Problem? problem;

    public BoardMessageFormTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void What_is_written_is_put_and_the_field_is_empty_again()
    {
        var form = Form(null);
        form.Find("input").Change("  Lunch until 13:30  ");
        form.Find("[data-act=board-message-show]").Click();

        Assert.Equal(["Lunch until 13:30"], put);
        Assert.True(string.IsNullOrEmpty(form.Find("input").GetAttribute("value")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    public void Nothing_is_put_where_nothing_is_written(string text)
    {
        var form = Form(new BoardMessage("Lunch"));
        form.Find("input").Change(text);
        form.Find("[data-act=board-message-show]").Click();

        Assert.Empty(put);
        Assert.Contains(BoardMessageWords.Needed, form.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_shown_can_be_taken_away_and_only_then()
    {
        Assert.Empty(Form(null).FindAll("[data-act=board-message-away], [data-act=board-message-shown]"));
        var form = Form(new BoardMessage("Lunch"));
        Assert.Contains("Lunch", form.Find("[data-act=board-message-shown]").TextContent, StringComparison.Ordinal);
        form.Find("[data-act=board-message-away]").Click();

        Assert.Equal([""], put);
    }

    [Fact]
    public void A_refusal_is_told_and_what_was_written_stays()
    {
        problem = Problem.Of("bad-setup", "Too long.");
        var form = Form(null);
        form.Find("input").Change("Lunch");
        form.Find("[data-act=board-message-show]").Click();

        Assert.Contains("Too long.", form.Markup, StringComparison.Ordinal);
        Assert.Equal("Lunch", form.Find("input").GetAttribute("value"));
    }

    private IRenderedComponent<BoardMessageForm> Form(BoardMessage? shown) => Render<BoardMessageForm>(form => form
        .Add(part => part.Message, shown)
        .Add(part => part.Put, message =>
        {
            put.Add(message.Text);
            return Task.FromResult(problem is null ? new Reply<Done>(new Done(), null) : new Reply<Done>(null, problem));
        }));
}
