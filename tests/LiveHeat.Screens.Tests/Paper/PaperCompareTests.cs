using Bunit;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;
using Microsoft.AspNetCore.Components;
using MudBlazor.Services;

namespace LiveHeat.Screens.Paper;

/// <summary>Card and record side by side, what is chosen, and what is written.</summary>
public sealed class PaperCompareTests : BunitContext
{
    private const string Phone = "start\nlane 1 step 1 done at 0:30\nlane 1 no-rep step 2 at 0:40\nlane 1 step 2 done at 1:00";

    private readonly List<HeatCommand> asked = [];
    private Problem? answer;
    private long made;

    public PaperCompareTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void A_card_that_says_the_same_asks_nothing()
    {
        var draft = SomeCard.Draft();
        (draft.At(1).Time, draft.At(2).Time, draft.At(2).NoReps) = ("0:30.2", "1:00", "1");

        Assert.NotEmpty(Shown(Phone, draft).FindAll("[data-act=paper-same]"));
    }

    [Fact]
    public void Nothing_typed_and_something_wrong_are_told_and_nothing_can_be_written()
    {
        var draft = SomeCard.Draft();
        Assert.NotEmpty(Shown(Phone, draft).FindAll("[data-act=paper-empty]"));
        draft.At(1).Time = "soon";
        var shown = Shown(Phone, draft);
        Assert.NotEmpty(shown.FindAll("[data-act=paper-put-right]"));
        Assert.Empty(shown.FindAll("[data-act=take-paper]"));
    }

    [Fact]
    public void The_record_stands_until_somebody_says_that_the_card_counts()
    {
        var shown = Shown(Phone, Different());

        Assert.Equal(["time", "noreps"], shown.FindAll("article").Select(one => one.GetAttribute("data-kind")));
        Assert.All(shown.FindAll("[data-act=take-record]"), one => Assert.Equal("true", one.GetAttribute("aria-checked")));
        Assert.Contains("0:30.0", shown.Find("[data-act=take-record]").TextContent, StringComparison.Ordinal);
        Assert.Contains("0:35.0", shown.Find("[data-act=take-paper]").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(shown.FindAll("[data-act=nothing-chosen]"));
        Assert.Empty(shown.FindAll("[data-act=paper-write]"));
        Assert.Empty(asked);
    }

    [Fact]
    public void What_is_taken_is_listed_before_it_is_written_with_what_the_lane_then_shows()
    {
        var shown = Shown(Phone, Different());
        shown.Find("[data-kind=time] [data-act=take-paper]").Click();
        shown.Find("[data-kind=time] [data-act=paper-reason]").Change("the judge's stopwatch");

        Assert.Equal(["10 wall balls done at 0:35.0", "void what the record has of 10 wall balls"], shown.FindAll("[data-act=paper-writes] li").Select(line => line.TextContent));
        Assert.Contains("2 of 9 steps, 22 reps", shown.Find("[data-act=paper-after]").TextContent, StringComparison.Ordinal);
        Assert.Empty(asked);

        shown.Find("[data-act=paper-write]").Click();
        Assert.Empty(asked);
        shown.Find("[data-act=paper-write-yes]").Click();
        var add = Assert.IsType<HeatCommand.Add>(asked[0]);
        Assert.Equal((Source.Paper, "the judge's stopwatch", Some.Go + 35_000), (add.Source, add.Reason, add.Tap.Instant));
        Assert.Equal("the judge's stopwatch", Assert.IsType<HeatCommand.Void>(asked[1]).Reason);
        Assert.Equal(2, asked.Count);
    }

    [Fact]
    public void The_record_can_stand_again()
    {
        var shown = Shown(Phone, Different());
        shown.Find("[data-kind=noreps] [data-act=take-paper]").Click();
        Assert.Equal(2, shown.FindAll("[data-act=paper-writes] li").Count);
        shown.Find("[data-kind=noreps] [data-act=take-record]").Click();
        Assert.Empty(shown.FindAll("[data-act=paper-writes]"));
    }

    /// <summary>The card has the first set later than the phone has the second: taken alone it would be lost.</summary>
    [Fact]
    public void What_would_not_come_out_as_on_the_card_is_said()
    {
        var draft = SomeCard.Draft();
        (draft.At(1).Time, draft.At(2).Done) = ("1:20", true);
        var shown = Shown(Phone, draft);
        shown.Find("[data-kind=time] [data-act=take-paper]").Click();

        Assert.Contains(PaperWords.About(new(Engine.Paper.DifferenceKind.Time, 1, 30_000, 80_000), draft.Lane), shown.Find("[data-act=paper-not-so]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lane_without_a_phone_takes_the_whole_card_in_one_go()
    {
        var draft = SomeCard.Draft();
        (draft.At(1).Time, draft.At(3).Time, draft.At(2).NoReps) = ("0:30", "1:02", "2");
        var shown = Shown("start", draft);
        Assert.Empty(shown.FindAll("article"));
        shown.Find("[data-act=whole-card]").Click();
        shown.Find("[data-act=whole-card-yes]").Click();

        Assert.Equal(["StepDone 1", "TagMade 3", "NoRep 2", "NoRep 2"], asked.Cast<HeatCommand.Add>().Select(add => $"{add.Tap.GetType().Name} {((HeatFact.AtStep)add.Tap).Step}"));
        Assert.All(asked.Cast<HeatCommand.Add>(), add => Assert.Equal((Source.Paper, PaperWords.UsualReason), (add.Source, add.Reason)));
    }

    [Fact]
    public void It_stops_at_the_first_refusal_says_at_which_line_and_goes_on_with_the_same_ids()
    {
        var draft = SomeCard.Draft();
        (draft.At(1).Time, draft.At(2).Time, draft.At(3).Time) = ("0:30", "1:00", "1:02");
        answer = Problem.Of("ledger-unavailable", "The disk refuses.");
        var shown = Shown("start", draft, refuseAt: 2);
        shown.Find("[data-act=whole-card]").Click();
        shown.Find("[data-act=whole-card-yes]").Click();

        Assert.Equal(2, asked.Count);
        Assert.Contains("1 of 3 lines written", shown.Find("[data-act=paper-progress]").TextContent, StringComparison.Ordinal);
        Assert.Contains("12 cal row done at 1:00.0", shown.Find("[data-act=paper-refused]").TextContent, StringComparison.Ordinal);
        Assert.Contains("The disk refuses.", shown.Find("[data-act=paper-refused]").TextContent, StringComparison.Ordinal);

        answer = null;
        shown.Find("[data-act=paper-go-on]").Click();
        Assert.Equal([1, 2, 2, 3], asked.Cast<HeatCommand.Add>().Select(add => ((HeatFact.AtStep)add.Tap).Step));
        Assert.Equal(asked[1], asked[2]);
        Assert.Empty(shown.FindAll("[data-act=paper-refused]"));
    }

    private static PaperDraft Different()
    {
        var draft = SomeCard.Draft();
        (draft.At(1).Time, draft.At(2).Time, draft.At(2).NoReps) = ("0:35.0", "1:00", "3");
        return draft;
    }

    /// <summary>The part as the page drives it.</summary>
    private IRenderedComponent<PaperCompare> Shown(string score, PaperDraft draft, int refuseAt = 0)
    {
        var comparison = SomeCard.Compared(score, draft);
        PaperPlan? plan = null;
        PaperSending? sending = null;
        IRenderedComponent<PaperCompare> shown = null!;
        AskHeat ask = (make, _) =>
        {
            asked.Add(make(Some.Id("screen", 1)));
            return Task.FromResult(asked.Count >= refuseAt ? answer : null);
        };
        void Draw() => shown.Render(Parameters);
        void Plan()
        {
            plan = comparison.Taken.Count > 0 ? comparison.Plan(() => Some.Id("paper", ++made), Some.Organiser, SomeHeat.Now) : null;
            Draw();
        }

        Task Send() => sending!.Go(ask, Draw);
        void Parameters(ComponentParameterCollectionBuilder<PaperCompare> part) => part
            .Add(one => one.Draft, draft).Add(one => one.Comparison, comparison).Add(one => one.Plan, plan).Add(one => one.Sending, sending)
            .Add(one => one.Changed, EventCallback.Factory.Create(this, Plan))
            .Add(one => one.Begin, () =>
            {
                sending = new PaperSending(plan!.Writes, write => PaperWords.Of(write, comparison.Lane!, comparison.Heat!));
                return Send();
            })
            .Add(one => one.GoOn, EventCallback.Factory.Create(this, Send)).Add(one => one.Leave, EventCallback.Factory.Create(this, () => sending = null));
        shown = Render<PaperCompare>(Parameters);
        return shown;
    }
}
