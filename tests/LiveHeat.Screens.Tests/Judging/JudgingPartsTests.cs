using AngleSharp.Dom;
using Bunit;
using LiveHeat.Contracts.Judging;
using LiveHeat.Engine.Heats;
using MudBlazor.Services;

namespace LiveHeat.Screens.Judging;

public sealed class JudgingPartsTests : BunitContext
{
    private readonly List<LaneNumber> aside = [];

    public JudgingPartsTests()
    {
        Services.AddMudServices();
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void While_nothing_stands_out_there_is_nothing_at_all() =>
        Assert.Empty(Questions([.. JudgingMaking.Of(SomeJudging.Alike)!.Lanes.Where(lane => lane.StandsOut)]).Markup.Trim());

    [Fact]
    public void A_lane_that_stands_out_is_asked_about_with_its_figures_and_the_question_can_be_put_aside()
    {
        var questions = Questions([SomeJudging.Lane(1)]);
        var said = questions.Find("[data-lane='1'] p").TextContent;
        Assert.Contains("Lane 1: 9 no-reps in 30 wall balls, the floor's rate makes 1.5. Have a look?", said, StringComparison.Ordinal);
        Assert.Contains("Athletes differ too", questions.Markup, StringComparison.Ordinal);
        questions.Find("[data-act=put-aside]").Click();
        Assert.Equal([1], aside.Select(lane => lane.Value));
    }

    [Fact]
    public void Several_movements_are_told_one_by_one()
    {
        var lane = SomeJudging.Lane(1);
        var two = lane with { Reps = 42, Movements = [.. lane.Movements, lane.Movements[0] with { Movement = "burpees", Reps = 12, NoReps = 0 }] };
        Assert.Contains("9 no-reps in 42 reps (wall balls 9 in 30, burpees 0 in 12)", Questions([two]).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lanes_card_tells_its_limits_and_what_all_others_gave()
    {
        var card = Card(SomeJudging.Lane(1));
        var lane = SomeJudging.Lane(1);
        Assert.Contains($"Up to {lane.High} would be like the other lanes.", card.Find("[data-act=limits]").TextContent, StringComparison.Ordinal);
        Assert.Equal("yes", card.Find("article").GetAttribute("data-stands-out"));
        var row = card.Find("[data-movement='wall balls']");
        Assert.Equal(["wall balls", "9 no-reps in 30 reps", "23.1 %", "", "0 %, 0 no-reps in 150 reps"], row.Children.Select(cell => cell.TextContent.Trim()));
    }

    [Fact]
    public void Without_another_lane_there_are_no_limits() =>
        Assert.Contains("No other lane has done these movements yet", Card(SomeJudging.Lane(1) with { High = int.MaxValue }).Find("[data-act=limits]").TextContent, StringComparison.Ordinal);

    /// <summary>9 no-reps of 39 tries: Wilson's 95 % interval is 12.6 % to 38.3 % (computed), on a scale to 40 % 200 units long.</summary>
    [Fact]
    public void The_bar_is_drawn_from_one_end_of_the_interval_to_the_other()
    {
        var bar = Render<RateBar>(part => part.Add(one => one.Own, JudgingRate.Of(9, 30)).Add(one => one.Others, JudgingRate.Of(15, 135)).Add(one => one.Most, 0.4));
        double Number(string part, string name) => double.Parse(bar.Find(part).GetAttribute(name)!, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(0.126 * 500, Number(".interval", "x"), 0.5);
        Assert.Equal((0.383 - 0.126) * 500, Number(".interval", "width"), 0.5);
        Assert.Equal(9 / 39.0 * 500, Number(".counted", "x1"), 0.1);
        Assert.Equal(0.1 * 500, Number(".others", "x1"), 0.1);
        Assert.Contains("23.1 % as counted", bar.Find("svg").GetAttribute("aria-label"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 1000, 0.1)]
    [InlineData(9, 30, 0.4)]
    [InlineData(9, 0, 1)]
    public void A_scale_ends_at_the_next_tenth(int noReps, int reps, double most) => Assert.Equal(most, RateScale.Of([JudgingRate.Of(noReps, reps)]), 6);

    [Fact]
    public void A_judges_card_has_each_movement_beside_all_others()
    {
        var page = JudgingMaking.Judges([SomeJudging.Strict]).Single(one => one.Judge == "Judge s-1");
        var card = Render<JudgeCard>(part => part.Add(one => one.Page, page).Add(one => one.Most, 1));
        Assert.Contains("Judge s-1 1 heat", string.Join(' ', card.Find("h2").TextContent.Split()), StringComparison.Ordinal);
        Assert.Contains("9 no-reps in 30 reps", card.Find("[data-movement='wall balls']").TextContent, StringComparison.Ordinal);
    }

    private IRenderedComponent<JudgingQuestions> Questions(IReadOnlyList<JudgingLane> lanes) =>
        Render<JudgingQuestions>(part => part.Add(one => one.Lanes, lanes).Add(one => one.PutAside, (LaneNumber lane) => aside.Add(lane)));

    private IRenderedComponent<JudgingLaneCard> Card(JudgingLane lane) =>
        Render<JudgingLaneCard>(part => part.Add(one => one.Lane, lane).Add(one => one.Most, 1).Add(one => one.Aside, false).Add(one => one.TakeUp, () => { }));
}
