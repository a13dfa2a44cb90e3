using Bunit;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;
using Microsoft.AspNetCore.Components;
using MudBlazor.Services;

namespace LiveHeat.Screens.Paper;

/// <summary>The form of attempts, readings, shared pools and rounds by the clock, and what is told of a difference.</summary>
public sealed class PaperKindRowsTests : BunitContext
{
    private int changes;
    private long made;

    public PaperKindRowsTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void Every_attempt_has_its_load_and_its_lift_and_who_tried()
    {
        var draft = SomeCard.Draft(heat: SomeCard.Lifting);
        var rows = Rows(draft, SomeCard.Lifting, "start\nlane 1 lifts 100 in step 1 at 0:30");

        Assert.Equal(["Ann", "Bo", "Cy"], rows.FindAll("tr.round .dim").Select(who => who.TextContent));
        Assert.Equal("0:30.0, 100 kg, good lift", rows.Find("[data-step='1'] [data-act=paper-record]").TextContent);
        rows.Find("[data-step='4'] [data-act=paper-load]").Input("82,5");
        rows.Find("[data-step='4'] [data-act=paper-lift]").Change("no");
        Assert.Equal(("82,5", false, true), (draft.At(4).Load, draft.At(4).Good, draft.At(4).Done));
        Assert.Equal(2, changes);
        rows.Find("[data-step='4'] [data-act=paper-lift]").Change("");
        Assert.Null(draft.At(4).Good);
        Assert.Empty(rows.FindAll("[data-step='4'] [data-act=paper-done], [data-step='4'] [data-act=paper-up-to], [data-step='4'] [data-act=paper-no-reps]"));
    }

    [Fact]
    public void A_pool_has_a_field_for_everybodys_part()
    {
        var draft = SomeCard.Draft(heat: SomeCard.Pool);
        var rows = Rows(draft, SomeCard.Pool);

        Assert.Equal(["Ann", "Bo", "Cy"], rows.FindAll("[data-parts='1'] label span").Select(who => who.TextContent));
        Assert.Contains("15", rows.Find("[data-parts='1'] legend").TextContent, StringComparison.Ordinal);
        Assert.Empty(rows.FindAll("[data-parts='2']"));
        rows.Find("[data-act=paper-share-2]").Input("20");
        Assert.Equal("20", draft.At(1).Shares[1]);
        draft.At(1).Done = true;
        Assert.Equal(PaperKindWords.SumIs(20, 60), Rows(draft, SomeCard.Pool).Find("[data-act=paper-wrong]").TextContent);
    }

    [Fact]
    public void A_round_by_the_clock_says_its_time_and_takes_what_was_open_at_its_end()
    {
        var heat = SomeCard.ByClock(new ScoringRule.MostWork(), repeat: false, new PrescribedSet("wall-ball", 10) { Together = 2 }, new("row", 12));
        var draft = SomeCard.Draft(heat: heat);
        var rows = Rows(draft, heat, "start\nlane 1 step 1 done at 0:30\nlane 1 step 4 done at 2:20");

        Assert.Contains("Round 2, 1:30 to 2:30", rows.FindAll("tr.round")[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Ann + Bo", rows.Find("[data-step='1']").TextContent, StringComparison.Ordinal);
        Assert.Equal(["0:30.0", "–", "done", "2:20.0", "–", "–"], rows.FindAll("[data-act=paper-record]").Select(cell => cell.TextContent));
        rows.Find("[data-act=paper-left-2]").Input("99");
        Assert.Equal("99", draft.Rounds[1].Left);
        Assert.Equal(PaperWords.CountUpTo(10), Rows(draft, heat).Find("[data-act=paper-wrong]").TextContent);
    }

    [Fact]
    public void Lines_beyond_the_usual_come_with_a_press()
    {
        var endless = Some.Snapshot(1, Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 300_000)) with { Scoring = new ScoringRule.MostWork() });
        var rows = Rows(SomeCard.Draft(heat: endless), endless);
        var usual = rows.FindAll("tr[data-step]").Count;
        rows.Find("[data-act=paper-more]").Click();

        Assert.True(rows.FindAll("tr[data-step]").Count > usual, "no line came");
        Assert.Empty(rows.FindAll("[data-act=paper-more]"));
    }

    /// <summary>What a difference is about, and what phone and card say of it.</summary>
    [Fact]
    public void Differences_are_told_in_their_own_words()
    {
        var lifts = SomeCard.Draft(heat: SomeCard.Lifting);
        (lifts.At(1).Load, lifts.At(1).Good) = ("105", false);
        Assert.Equal(
            ["one lift, attempt 1: load | 100 kg | 105 kg", "one lift, attempt 1: good lift or no lift | good lift | no lift"],
            Told("start\nlane 1 lifts 100 in step 1 at 0:30", lifts, SomeCard.Lifting));

        var pool = SomeCard.Draft(heat: SomeCard.Pool);
        (pool.At(1).Shares[0], pool.At(1).Shares[1], pool.At(1).Done) = ("35", "25", true);
        Assert.Equal(["60 cal row: who did how much | Ann 40, Bo 20 | Ann 35, Bo 25"], Told("""
            start
            lane 1 athlete 1 works step 1 at 0:05
            lane 1 count 40 of step 1 at 1:00
            lane 1 athlete 2 works step 1 at 1:01
            lane 1 step 1 done at 3:00
            """, pool, SomeCard.Pool));

        var heat = SomeCard.ByClock(new ScoringRule.MostWork(), repeat: false, new PrescribedSet("wall-ball", 10), new("row", 12));
        var clock = SomeCard.Draft(heat: heat);
        clock.At(3).Done = true;
        (clock.Rounds[0].Left, clock.Rounds[1].Left) = ("7", "5");
        Assert.Equal(
            ["10 wall balls (round 1): how many when the round was over | 4 | 7", "Round 2: how far the team came | nothing done | done to 10 wall balls, step 3 of 6", "12 cal row (round 2): how many when the round was over | nothing | 5"],
            Told("start\nlane 1 count 4 of step 1 at 0:40", clock, heat));
    }

    [Fact]
    public void What_will_be_written_is_told_in_words()
    {
        var lifts = SomeCard.Draft(heat: SomeCard.Lifting);
        (lifts.At(1).Load, lifts.At(1).Good) = ("105", true);
        Assert.Equal(["one lift, attempt 1: 105 kg, good lift"], Written(lifts, SomeCard.Lifting));

        var pool = SomeCard.Draft(heat: SomeCard.Pool);
        (pool.At(1).Shares[0], pool.At(1).Shares[1]) = ("35", "20");
        Assert.Equal(["55 of 60 cal row at the cap", "Ann works at 60 cal row", "35 of 60 cal row counted", "Bo works at 60 cal row", "55 of 60 cal row counted"], Written(pool, SomeCard.Pool));

        var readings = SomeCard.ByClock(new ScoringRule.MostReading(), repeat: false, new PrescribedSet("row", 12, Reading: true));
        var read = SomeCard.Draft(heat: readings);
        read.At(2).Value = "17";
        Assert.Equal(["row (round 2): 17 cal"], Written(read, readings));
    }

    private static IEnumerable<string> Told(string score, PaperDraft draft, HeatSnapshot heat) =>
        SomeCard.Compared(score, draft, heat).Differences.Select(one => $"{PaperWords.About(one, draft.Lane)} | {PaperWords.Said(one, paper: false, draft.Lane)} | {PaperWords.Said(one, paper: true, draft.Lane)}");

    private IEnumerable<string> Written(PaperDraft draft, HeatSnapshot heat)
    {
        var comparison = SomeCard.Compared("start", draft, heat);
        foreach (var one in comparison.Differences)
        {
            comparison.Choose(one, "card");
        }

        var plan = comparison.Plan(() => Some.Id("paper", ++made), Some.Organiser, SomeHeat.Now);
        Assert.Null(plan.Refused);
        Assert.Empty(plan.NotSo);
        return plan.Writes.Select(write => PaperWords.Of(write, comparison.Lane!, comparison.Heat!));
    }

    private IRenderedComponent<PaperRows> Rows(PaperDraft draft, HeatSnapshot heat, string phone = "start") => Render<PaperRows>(rows => rows
        .Add(part => part.Draft, draft).Add(part => part.Comparison, SomeCard.Compared(phone, draft, heat)).Add(part => part.Changed, EventCallback.Factory.Create(this, () => changes++)));
}
