using Bunit;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;
using MudBlazor.Services;

namespace LiveHeat.Screens.Paper;

/// <summary>The card as a form.</summary>
public sealed class PaperRowsTests : BunitContext
{
    private const string Phone = "start\nlane 1 step 1 done at 0:30\nlane 1 no-rep step 2 at 0:40\nlane 1 step 2 done at 1:00";

    public PaperRowsTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void Every_step_has_a_line_with_what_the_record_says_of_it()
    {
        var rows = Rows(SomeCard.Draft());

        Assert.Equal(9, rows.FindAll("tr[data-step]").Count);
        Assert.Equal(["0:30.0", "1:00.0, 1 no-rep", "–"], rows.FindAll("[data-act=paper-record]").Take(3).Select(cell => cell.TextContent));
        Assert.Equal(6, rows.FindAll("[data-act=paper-no-reps]").Count);                // tags and the line have none
        Assert.Contains("Ann", rows.Find("tr.round").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_time_ticks_its_line_and_Enter_ticks_without_one()
    {
        var draft = SomeCard.Draft();
        var rows = Rows(draft);
        rows.Find("[data-step='1'] [data-act=paper-time]").Input("0:35");
        rows.Find("[data-step='2'] [data-act=paper-time]").KeyDown("Enter");
        rows.Find("[data-step='3'] [data-act=paper-time]").KeyDown("Tab");

        Assert.Equal([true, true, false], draft.Entries.Take(3).Select(entry => entry.Done));
    }

    [Fact]
    public void One_press_ticks_all_up_to_a_step()
    {
        var draft = SomeCard.Draft();
        Rows(draft).Find("[data-step='5'] [data-act=paper-up-to]").Click();

        Assert.Equal(5, draft.Read().DoneSteps);
    }

    [Fact]
    public void Lines_that_differ_are_marked_and_what_cannot_be_read_is_told_under_them()
    {
        var draft = SomeCard.Draft();
        (draft.At(1).Time, draft.At(2).Time) = ("0:40", "0:20");
        var rows = Rows(draft);

        Assert.Contains("differs", rows.Find("tr[data-step='1']").ClassName, StringComparison.Ordinal);
        Assert.Equal(PaperWords.EarlierThan(SomeCard.Draft().At(1).Step), rows.Find("[data-act=paper-wrong]").TextContent);
    }

    private IRenderedComponent<PaperRows> Rows(PaperDraft draft) => Render<PaperRows>(rows => rows
        .Add(part => part.Draft, draft).Add(part => part.Comparison, SomeCard.Compared(Phone, draft)).Add(part => part.Changed, EventCallback.Factory.Create(this, () => { })));
}
