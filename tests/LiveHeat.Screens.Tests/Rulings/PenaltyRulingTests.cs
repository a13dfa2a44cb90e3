using Bunit;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Commands;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Rulings;

public sealed class PenaltyRulingTests : BunitContext
{
    private readonly List<HeatCommand> asked = [];

    public PenaltyRulingTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void The_workouts_penalty_stands_in_the_form_and_is_given_as_it_is()
    {
        var form = Form(new PenaltyRule(30_000, 2), warned: true);
        Assert.Empty(form.FindAll("[data-act=not-warned]"));

        form.Find("[data-act=penalise-yes]").Click();

        var penalty = Assert.IsType<HeatCommand.Penalise>(Assert.Single(asked));
        Assert.Equal((30_000, 2), (penalty.AddMs, penalty.Reps));
    }

    [Fact]
    public void Without_a_warning_the_head_judge_is_told_and_may_warn_or_go_on()
    {
        var form = Form(new PenaltyRule(30_000), warned: false);
        form.Find("[data-act=warn-first]").Click();
        Assert.IsType<HeatCommand.Warn>(Assert.Single(asked));

        form.Find("[data-act=penalise-yes]").Click();

        Assert.Equal(30_000, Assert.IsType<HeatCommand.Penalise>(asked[1]).AddMs);
    }

    [Fact]
    public void A_workout_that_warns_nobody_or_names_no_penalty_says_nothing()
    {
        Assert.Empty(Form(new PenaltyRule(30_000, WarnFirst: false), warned: false).FindAll("[data-act=not-warned]"));
        var none = Form(null, warned: false);
        Assert.Empty(none.FindAll("[data-act=penalty-rule]"));
        Assert.Equal("", none.Find("input[data-act=penalty-time]").GetAttribute("value") ?? "");
    }

    /// <summary>What is taken off is told in what the score counts.</summary>
    [Fact]
    public void Where_loads_count_kilograms_are_taken_off_and_not_reps()
    {
        var form = Form(new PenaltyRule(0, 5), warned: true, Some.Snapshot(1, Some.Lifting()));

        Assert.Contains(RulingWords.TakeOff(ScoreUnit.Of(Unit.Kg)), form.Markup, StringComparison.Ordinal);
        Assert.Contains("5 kg off", form.Find("[data-act=penalty-rule]").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(RulingWords.TakeReps, form.Markup, StringComparison.Ordinal);
        Assert.Contains(RulingWords.TakeReps, Form(null, warned: true).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_penalty_that_stands_is_told_in_what_the_score_counts()
    {
        var lane = SomeHeat.Lane("start\npenalise lane 1 by 5 reps", 1, Some.Snapshot(1, Some.Lifting()));

        Assert.Equal("5 kg off", RulingWords.Penalty(0, 5, lane.State.Score));
        Assert.Equal("+10 s, 5 reps off", RulingWords.Penalty(10_000, 5));
    }

    [Fact]
    public void Where_parts_are_scored_apart_the_head_judge_says_in_which_it_costs()
    {
        Assert.Empty(Form(new PenaltyRule(30_000), warned: true).FindAll("[data-act=penalty-part]"));
        var form = Form(new PenaltyRule(30_000), warned: true, SomeHeat.InParts);

        Assert.Equal([RulingWords.PartNow, "First buy-in", "The rest", RulingWords.OnlyWhole], form.FindAll("[data-act=penalty-part] option").Select(option => option.TextContent));
        form.Find("[data-act=penalty-part]").Change("1");
        form.Find("[data-act=penalise-yes]").Click();
        form.Find("[data-act=penalise]").Click();
        form.Find("[data-act=penalise-yes]").Click();

        Assert.Equal([1, null], asked.Cast<HeatCommand.Penalise>().Select(penalty => penalty.Part));
        Assert.Equal("penalty: +30 s, counts only in the whole", RulingWords.Of(Penalised("penalise lane 1 by 30000 ms in part 0 at 9:00"), SomeHeat.Lane("start", 1, SomeHeat.InParts)));

        static HeatFact.Penalised Penalised(string score) => HeatScript.Play("start\n" + score, SomeHeat.InParts).Entries.Select(entry => entry.Fact).OfType<HeatFact.Penalised>().Single();
    }

    private IRenderedComponent<PenaltyRuling> Form(PenaltyRule? rule, bool warned, HeatSnapshot? heat = null)
    {
        AskHeat ask = (make, _) =>
        {
            asked.Add(make(Some.Id("screen", 1)));
            return Task.FromResult<LiveHeat.Screens.Connection.Problem?>(null);
        };
        var form = Render<PenaltyRuling>(list => list
            .Add(component => component.Lane, SomeHeat.Lane("start", 1, heat))
            .Add(component => component.Rule, rule)
            .Add(component => component.Warned, warned)
            .Add(component => component.Ask, ask));
        form.Find("[data-act=penalise]").Click();
        return form;
    }
}
