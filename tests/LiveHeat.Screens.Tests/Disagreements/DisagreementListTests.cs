using Bunit;
using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Screens.Commands;
using LiveHeat.Testing;
using MudBlazor.Services;

namespace LiveHeat.Screens.Disagreements;

public sealed class DisagreementListTests : BunitContext
{
    private const string Score = """
        lane 1 seat w-1 taken as witness at -0:30
        start
        lane 1 step 1 done at 0:40.000 within 20
        lane 1 step 1 done at 0:41.250 within 30 from seat w-1
        """;

    private readonly List<HeatCommand> asked = [];

    public DisagreementListTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void Agreeing_phones_show_nothing() => Assert.Empty(List("start\nlane 1 step 1 done at 0:40").Markup.Trim());

    [Fact]
    public void Both_times_stand_side_by_side_each_with_whose_phone_it_came_from()
    {
        var list = List(Score);
        var (judge, witness) = (list.Find("[data-act=judge-time]").TextContent, list.Find("[data-act=witness-time]").TextContent);
        Assert.Contains("0:40.000", judge, StringComparison.Ordinal);
        Assert.Contains("Judge s-1", judge, StringComparison.Ordinal);
        Assert.Contains("0:41.250", witness, StringComparison.Ordinal);
        Assert.Contains("Judge w-1", witness, StringComparison.Ordinal);
        Assert.Contains("1.25 s apart, where clocks and hands may differ by 0.24 s", list.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_thumbs_that_saw_the_same_are_no_question() => Assert.Empty(SomeHeat.Told("""
        lane 1 seat w-1 taken as witness at -0:30
        start
        lane 1 step 1 done at 0:40.000
        lane 1 step 1 done at 0:40.180 from seat w-1
        """).Frame.Disagreements);

    [Fact]
    public void The_judges_time_can_stand()
    {
        var list = List(Score);
        list.Find("[data-act=judge-stands]").Click();
        list.Find("[data-act=judge-stands-yes]").Click();
        Assert.Equal(Both.Witness.Fact, Assert.IsType<HeatCommand.Void>(Assert.Single(asked)).Target);
    }

    [Fact]
    public void The_witnesss_time_can_count()
    {
        var list = List(Score);
        list.Find("[data-act=witness-counts]").Click();
        list.Find("[data-act=witness-counts-yes]").Click();
        Assert.Equal(Both.Witness.Fact, Assert.IsType<HeatCommand.Admit>(asked[0]).Target);
        Assert.Equal(Both.Judge.Fact, Assert.IsType<HeatCommand.Void>(asked[1]).Target);
    }

    /// <summary>What the two commands come to, by the engine itself.</summary>
    [Fact]
    public void Admitted_and_with_the_judges_tap_void_the_witnesss_time_is_the_lanes()
    {
        var state = HeatScript.Play(Score + " [seen]\nadmit seen\n" + "").Lanes[0];
        Assert.Equal(40_000, state.Splits[0]!.Value.LaneMs);
        var script = new HeatScript().Then(Score.Replace("within 20", "within 20 [judged]", StringComparison.Ordinal) + " [seen]");
        script.Then("admit seen\nvoid judged");
        Assert.Equal(41_250, script.State.Lanes[0].Splits[0]!.Value.LaneMs);
        Assert.Empty(script.State.Lanes[0].Disagreements);
    }

    [Fact]
    public void A_certified_result_shows_both_and_asks_nothing()
    {
        var list = List(Score, Phase.Certified);
        Assert.NotEmpty(list.FindAll("[data-act=witness-time]"));
        Assert.Empty(list.FindAll("[data-act=judge-stands]"));
    }

    private static TwoTimes Both => Assert.Single(SomeHeat.Told(Score).Frame.Disagreements);

    private IRenderedComponent<DisagreementList> List(string score, Phase? phase = null)
    {
        var (frame, _) = SomeHeat.Told(score);
        AskHeat ask = (make, _) =>
        {
            asked.Add(make(Some.Id("screen", asked.Count + 1)));
            return Task.FromResult<Connection.Problem?>(null);
        };
        return Render<DisagreementList>(list => list
            .Add(component => component.Frame, phase is { } other ? frame with { Phase = other } : frame)
            .Add(component => component.Lanes, SomeHeat.Lanes(score))
            .Add(component => component.Ask, ask));
    }
}
