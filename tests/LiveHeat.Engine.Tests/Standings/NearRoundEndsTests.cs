using LiveHeat.Contracts.Language;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Standings;

/// <summary>
/// Rounds by the clock of 1:00 with 0:30 rest: steps 1-2 until 1:00, 3-4 from 1:30 to 2:30, 5-6 from 3:00 to 4:00. What is closer to a round's end than clock (12 ms) and
/// hand (95 ms: half of the 0.19 s by which the timers of one run differed, J Strength Cond Res 29(6):1509, 2015) is for people to decide.
/// </summary>
public class NearRoundEndsTests
{
    private static readonly HeatSnapshot Heat = Of(new ScoringRule.MostWork());

    [Theory]
    [InlineData("0:59.892", "")]
    [InlineData("0:59.893", "1/1:-107")]
    [InlineData("1:00.107", "1/1:107")]
    [InlineData("1:00.108", "")]
    public void A_step_closer_to_the_end_of_its_round_than_clock_and_hand_is_in_question(string done, string near) => Assert.Equal(near, Near($"lane 1 step 2 done at {done}"));

    [Fact]
    public void Every_round_has_its_own_and_the_last_ends_at_the_cap_and_is_told_once() => Assert.Equal("1/2:50 1/3:-50", Near("""
        lane 1 step 2 done at 0:40
        lane 1 step 4 done at 2:30.050
        lane 1 step 6 done at 3:59.950
        """));

    [Fact]
    public void The_nearest_counts_of_two_and_lanes_are_told_apart() => Assert.Equal("1/1:-20 2/1:30", Near("""
        lane 1 step 1 done at 0:59.910
        lane 1 step 2 done at 0:59.980
        lane 2 step 1 done at 1:00.030
        """));

    [Fact]
    public void In_the_middle_of_a_round_or_of_a_rest_nothing_is_in_question() => Assert.Equal("", Near("lane 1 step 1 done at 0:30\nlane 1 step 3 done at 1:40\nlane 1 step 5 done at 2:50"));

    [Fact]
    public void People_decide_whether_it_counts()
    {
        Assert.Equal(10, Worth("lane 1 step 1 done at 0:40\nlane 1 step 2 done at 1:00.050"));
        Assert.Equal(22, Worth("lane 1 step 1 done at 0:40\nlane 1 step 2 done at 1:00.050\ndecide lane 1 in time by 107 ms in round 1"));
        Assert.Equal(22, Worth("lane 1 step 1 done at 0:40\nlane 1 step 2 done at 0:59.950"));
        Assert.Equal(10, Worth("lane 1 step 1 done at 0:40\nlane 1 step 2 done at 0:59.950\ndecide lane 1 too late by 107 ms in round 1"));
    }

    [Theory]
    [InlineData("4:00.107", "in time", 22)]
    [InlineData("3:59.893", "too late", 10)]
    public void In_the_last_round_too_where_the_cap_is(string done, string decided, int worth)
    {
        var heat = Play($"lane 1 step 5 done at 3:20\nlane 1 step 6 done at {done}\ndecide lane 1 {decided} by 107 ms in round 3");

        Assert.Equal(worth, heat.Lanes[0].Worth);
        Assert.True(Assert.Single(NearTies.Of(heat)).Decided);
    }

    [Fact]
    public void A_decision_about_one_round_says_nothing_of_another()
    {
        var heat = Play("""
            lane 1 step 2 done at 1:00.050
            lane 1 step 4 done at 2:30.050
            decide lane 1 in time by 107 ms in round 2
            """);

        Assert.Equal([(1, false), (2, true)], NearTies.Of(heat).Select(tie => (tie.Round!.Value, tie.Decided)));
        Assert.Equal(22, heat.Lanes[0].Worth);
    }

    [Fact]
    public void A_count_is_in_question_until_the_judge_says_how_many_there_were()
    {
        Assert.Equal("1/1:40", Near("lane 1 count 6 of step 1 at 0:58\nlane 1 count 7 of step 1 at 1:00.040"));
        Assert.Equal("", Near("lane 1 count 6 of step 1 at 0:58\nlane 1 count 7 of step 1 at 1:00.040\nlane 1 7 reps at cap in step 1 at 1:05"));
        Assert.Equal(7, Worth("lane 1 count 6 of step 1 at 0:58\nlane 1 count 7 of step 1 at 1:00.040\ndecide lane 1 in time by 107 ms in round 1"));
    }

    [Fact]
    public void A_machine_is_read_after_its_time_and_a_team_that_stopped_does_no_more()
    {
        Assert.Empty(NearTies.Of(HeatScript.Play("start\nlane 1 value 14 in step 1 at 1:00.050", Of(new ScoringRule.MostReading()))));
        Assert.Equal("", Near("lane 1 stopped withdrew at 0:50\nlane 1 step 2 done at 0:59.950"));
        Assert.Equal("", Near("lane 1 step 2 done at 0:59.950\nlane 1 sent back to 2 at 1:05"));
    }

    [Fact]
    public void The_head_judge_names_the_round_and_the_result_is_not_signed_before()
    {
        var script = new HeatScript(Heat).Then("start\nlane 1 step 2 done at 1:00.050\nend at 4:10\nfreeze");
        Verdict Decide(int? round) => HeatRules.Decide(script.State, new HeatCommand.DecideCap { Id = Some.Id("desk", 900), Lane = Some.Lane(1), InTime = true, Round = round }, Some.Asking(Some.HeadJudge, HeatScript.At("4:20")));

        Assert.Equal("no-near-tie", Assert.IsType<Verdict.Refused>(Decide(null)).Code);
        Assert.Equal("no-near-tie", Assert.IsType<Verdict.Refused>(Decide(2)).Code);
        var fact = Assert.IsType<HeatFact.CapDecided>(Assert.IsType<Verdict.Accepted>(Decide(1)).Fact);
        Assert.Equal((1, 107, true), (fact.Round!.Value, fact.WithinMs, fact.InTime));

        var sign = HeatRules.Decide(script.State, new HeatCommand.Certify { Id = Some.Id("desk", 901), Head = script.State.SignedHead }, Some.Asking(Some.HeadJudge, HeatScript.At("4:20")));
        var refused = Assert.IsType<Verdict.Refused>(sign);
        Assert.Equal("near-tie-open", refused.Code);
        Assert.Contains("round 1", refused.Why.Sentence(), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_teams_equal_in_their_rounds_share_the_place() => Assert.Equal("1=2 3", HeatScript.Board(HeatScript.Play("""
        start
        lane 1 step 2 done at 0:40
        lane 2 step 2 done at 0:50
        lane 3 step 1 done at 0:30
        """, Heat)));

    private static HeatSnapshot Of(ScoringRule scoring) => Some.Snapshot(3, Some.Workout(finish: FinishKind.None, prescriptions: (scoring is ScoringRule.MostReading
        ? Some.Prescription(rounds: 3, capMs: 240_000, round: new PrescribedSet("row", 12, Reading: true))
        : Some.Prescription(rounds: 3, capMs: 240_000)) with
    { Clock = new WorkClock(60_000, 30_000, Repeat: false) }) with
    { Scoring = scoring });

    private static HeatState Play(string score) => HeatScript.Play($"start\n{score}", Heat);

    private static int Worth(string score) => Play(score).Lanes[0].Worth;

    private static string Near(string score) => string.Join(' ', NearTies.Of(Play(score)).Select(tie => $"{tie.Lanes[0]}/{tie.Round}:{tie.ApartMs}"));
}
