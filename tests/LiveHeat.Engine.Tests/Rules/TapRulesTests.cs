using LiveHeat.Engine.Heats;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Rules;

public class TapRulesTests
{
    private static readonly HeatState Heat = HeatScript.Play("start");

    private static string? Refuse(int lane, By by, int? ownLane) => TapRules.Refuse(
        Heat, new HeatFact.StepDone { Id = Some.Id("s-1", 1), Instant = HeatScript.At("0:40"), Lane = new(lane), Step = 99 }, by, ownLane is { } own ? new LaneNumber(own) : null)?.Code;

    [Fact]
    public void A_judge_taps_on_the_lane_that_is_that_judges_however_odd_the_tap() => Assert.Null(Refuse(1, Some.Judge(1), 1));

    [Fact]
    public void A_judge_taps_on_no_other_lane()
    {
        Assert.Equal("not-your-lane", Refuse(2, Some.Judge(1), 1));
        Assert.Equal("not-your-lane", Refuse(2, new By("in-nobody", "No", Role.Judge), null));
    }

    [Fact]
    public void A_phone_that_moved_to_another_lane_still_brings_the_taps_of_the_lane_it_had() => Assert.Null(Refuse(1, Some.Judge(1), 2));

    [Theory]
    [InlineData(102.5, null)]
    [InlineData(0.01, null)]
    [InlineData(1000, null)]
    [InlineData(0, "unreadable")]
    [InlineData(-20, "unreadable")]
    [InlineData(1000.01, "unreadable")]
    [InlineData(100.005, "unreadable")]
    public void A_load_that_nobody_lifts_is_refused(double load, string? code)
    {
        var tap = new HeatFact.AttemptJudged { Id = Some.Id("s-1", 1), Instant = HeatScript.At("0:40"), Lane = new(1), Step = 1, Load = (decimal)load, Good = true };
        var added = HeatRules.Decide(HeatScript.Play("start", Some.Snapshot(1, Some.Lifting())), new HeatCommand.Add { Id = Some.Id("desk", 99), Source = Source.Paper, Tap = tap }, Some.Asking(Some.HeadJudge, HeatScript.At("1:00")));

        Assert.Equal(code, TapRules.Refuse(Heat, tap, Some.Judge(1), new LaneNumber(1))?.Code);
        Assert.Equal(code, (added as Verdict.Refused)?.Code);
    }

    [Fact]
    public void A_lane_that_the_heat_does_not_have_is_said_so() => Assert.Equal("no-such-lane", Refuse(9, Some.Judge(9), 9));
}
