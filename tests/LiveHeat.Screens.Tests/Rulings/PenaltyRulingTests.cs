using Bunit;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Commands;
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

    private IRenderedComponent<PenaltyRuling> Form(PenaltyRule? rule, bool warned)
    {
        AskHeat ask = (make, _) =>
        {
            asked.Add(make(Some.Id("screen", 1)));
            return Task.FromResult<LiveHeat.Screens.Connection.Problem?>(null);
        };
        var form = Render<PenaltyRuling>(list => list
            .Add(component => component.Lane, SomeHeat.Lane("start", 1))
            .Add(component => component.Rule, rule)
            .Add(component => component.Warned, warned)
            .Add(component => component.Ask, ask));
        form.Find("[data-act=penalise]").Click();
        return form;
    }
}
