using CsCheck;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Callouts;

/// <summary>Callouts of rounds by the clock: of 1:00 with 0:30 rest, one athlete each: steps 1-2 until 1:00 (Ann), 3-4 from 1:30 to 2:30 (Bo), 5-6 from 3:00 to 4:00 (Cy). Each round is worth 22.</summary>
public class RoundsTests
{
    private static readonly HeatSnapshot Heat = Of(new WorkClock(60_000, 30_000, Repeat: false), 240_000);

    /// <summary>Lane 1 has done all of the first round, lane 2 told of 7, lane 3 of 10 and 5.</summary>
    private const string FirstRound = "lane 1 step 2 done at 0:50\nlane 2 7 reps at cap in step 1 at 1:04\nlane 3 step 1 done at 0:40\nlane 3 5 reps at cap in step 2 at 1:05";

    private static HeatSnapshot Of(WorkClock clock, int capMs, RelayOrder? order = null) => Some.Snapshot(3, Some.Workout(
        order, finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: capMs) with { Clock = clock }) with
    { Scoring = new ScoringRule.MostWork() });

    private static CalloutSheet Sheet(string score, string at, HeatSnapshot? heat = null) => SaidAt.Of($"start\n{score}", at, heat: heat ?? Heat);

    private static string ByTheClock(string score, string at, HeatSnapshot? heat = null) =>
        string.Join("; ", Sheet(score, at, heat).Callouts.Where(callout => callout.Grounds == CalloutGrounds.Clock).Select(callout => $"{callout.Kind} {callout.Round} {string.Join(',', callout.Lanes)}".Replace("  ", " ", StringComparison.Ordinal)));

    private static Callout? Lead(string score, string at = "1:10") => Sheet(score, at).Callouts.SingleOrDefault(callout => callout.Kind == CalloutKind.RoundLead);

    [Theory]
    [InlineData("0:39.9", "")]
    [InlineData("0:40.1", "RoundEnds 1 1,2,3")]
    [InlineData("1:00", "")]
    [InlineData("1:00.1", "RestBegins 1 1,2,3; GoesIn 2 1; GoesIn 2 2; GoesIn 2 3")]
    [InlineData("1:13", "GoesIn 2 1; GoesIn 2 2; GoesIn 2 3")]
    [InlineData("1:20.1", "RoundBegins 2 1,2,3; GoesIn 2 1; GoesIn 2 2; GoesIn 2 3")]
    [InlineData("1:30", "")]
    [InlineData("2:20", "RoundEnds 2 1,2,3")]
    [InlineData("3:00.1", "LastMinute 1,2,3")]
    [InlineData("3:50", "RoundEnds 3 1,2,3")]
    [InlineData("4:00.1", "")]
    public void A_round_ends_there_is_rest_and_the_next_begins_each_in_its_time(string at, string told) => Assert.Equal(told, ByTheClock("", at));

    [Theory]
    [InlineData("0:40", "")]
    [InlineData("0:46", "GoesIn 2 1; GoesIn 2 2; GoesIn 2 3")]
    [InlineData("0:51", "RoundEnds 1 1,2,3; GoesIn 2 1; GoesIn 2 2; GoesIn 2 3")]
    [InlineData("1:01", "")]
    public void Where_round_follows_round_without_rest_who_goes_in_is_told_while_the_others_work(string at, string told) =>
        Assert.Equal(told, string.Join("; ", ByTheClock("", at, Of(new WorkClock(60_000, 0, Repeat: false), 180_000)).Split("; ").Where(one => !(at == "0:46" && one.StartsWith("RoundEnds", StringComparison.Ordinal)))));

    [Fact]
    public void Who_goes_in_is_told_by_the_step_and_when_and_nobody_is_who_was_in_already()
    {
        var next = SaidAt.One(Sheet("", "1:02"), CalloutKind.GoesIn, Some.Lane(2));

        Assert.Equal((3, HeatScript.At("1:30"), HeatScript.At("1:00")), (next.Step, next.Due, next.At));
        Assert.DoesNotContain("GoesIn", ByTheClock("", "1:02", Of(new WorkClock(60_000, 30_000, Repeat: false), 240_000, new RelayOrder.Blocks(2))), StringComparison.Ordinal);
        Assert.Contains("GoesIn", ByTheClock("", "2:32", Of(new WorkClock(60_000, 30_000, Repeat: false), 240_000, new RelayOrder.Blocks(2))), StringComparison.Ordinal);
    }

    [Fact]
    public void When_all_are_through_no_end_is_told_of_and_a_short_last_round_is_no_last_minute()
    {
        Assert.Equal("RoundEnds 1 1,2,3", ByTheClock("lane 1 step 2 done at 0:30\nlane 2 step 2 done at 0:31", "0:50"));
        Assert.Equal("", ByTheClock("lane 1 step 2 done at 0:30\nlane 2 step 2 done at 0:31\nlane 3 step 2 done at 0:32", "0:50"));
        Assert.DoesNotContain("LastMinute", ByTheClock("", "1:40", Of(new WorkClock(30_000, 30_000, Repeat: false), 150_000)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_end_has_the_same_id_through_a_halt_in_which_nothing_is_told()
    {
        const string Halted = "halt at 0:50\nresume at 1:20";

        Assert.Equal("", ByTheClock("halt at 0:50", "0:55"));
        Assert.Equal(SaidAt.One(Sheet("", "0:49"), CalloutKind.RoundEnds).Id, SaidAt.One(Sheet(Halted, "1:25"), CalloutKind.RoundEnds).Id);
        Assert.Equal(HeatScript.At("1:30"), SaidAt.One(Sheet(Halted, "1:25"), CalloutKind.RoundEnds).Due);
    }

    [Fact]
    public void A_lane_that_is_held_has_no_end_to_tell_of_and_afterwards_one_of_its_own()
    {
        Assert.Equal("RoundEnds 1 1,3", ByTheClock("hold lane 2 at 0:30", "0:50"));
        Assert.Equal(["RestBegins 1 1,3", "RoundEnds 1 2"], ByTheClock("hold lane 2 at 0:30\nresume lane 2 at 0:40", "1:02").Split("; ").Where(one => !one.StartsWith("GoesIn", StringComparison.Ordinal)).Order());
        Assert.Equal("RoundEnds 1 1,3", ByTheClock("lane 2 stopped medical at 0:30", "0:50"));
    }

    [Fact]
    public void Who_leads_after_a_round_is_told_with_the_work_and_how_much_more_it_is()
    {
        var lead = Lead(FirstRound)!;

        Assert.Equal([Some.Lane(1), Some.Lane(3)], lead.Lanes);
        Assert.Equal((1, 22, 7, HeatScript.At("1:00"), CalloutGrounds.Confirmed), (lead.Round, lead.Worth, lead.Ahead, lead.At, lead.Grounds));
        Assert.Equal(lead.Id, Lead(FirstRound, "1:30")!.Id);
        Assert.Null(Lead(FirstRound, "1:41"));
    }

    [Fact]
    public void Who_leads_after_the_round_is_not_said_to_take_the_lead_besides()
    {
        const string TakenAtTheEnd = "lane 3 step 1 done at 0:40\nlane 1 step 2 done at 0:50\nlane 2 7 reps at cap in step 1 at 1:04";

        Assert.Contains("Lead 1,3", SaidAt.Told(Sheet(TakenAtTheEnd, "1:06")), StringComparison.Ordinal);
        Assert.Equal(["RoundLead 1,3"], SaidAt.Told(Sheet($"{TakenAtTheEnd}\nlane 3 5 reps at cap in step 2 at 1:05", "1:06")).Split("; ").Where(one => one.Contains("Lead", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("lane 1 step 2 done at 0:50\nlane 2 step 1 done at 0:50\nlane 3 step 1 done at 0:52", "1:10")]          // nobody told how much of the open sets was done
    [InlineData("lane 1 step 2 done at 0:30\nlane 2 step 1 done at 0:30\nlane 3 step 1 done at 0:32", "0:40")]          // the round is on
    [InlineData($"{FirstRound}\nhold lane 2 at 1:06", "1:10")]
    [InlineData($"{FirstRound}\nlane 3 reads back disputed at 1:06", "1:10")]
    [InlineData($"{FirstRound}\nlane 2 step 2 done at 0:55 from seat s-9", "1:10")]
    public void Nobody_leads_while_a_judge_has_not_told_all_or_a_ruling_is_open(string score, string at) => Assert.Null(Lead(score, at));

    [Fact]
    public void Whoever_has_gone_on_to_the_next_round_has_told_all_of_the_last() =>
        Assert.Equal([Some.Lane(1), Some.Lane(2)], Lead("lane 1 step 2 done at 0:50\nlane 2 step 1 done at 0:50\nlane 3 count 3 of step 1 at 0:52\nlane 2 count 1 of step 3 at 1:33\nlane 3 count 2 of step 3 at 1:35", "1:36")!.Lanes);

    [Fact]
    public void Two_that_did_as_much_share_the_lead_and_of_three_nothing_is_told()
    {
        var level = Lead("lane 1 step 2 done at 0:50\nlane 2 step 2 done at 0:52\nlane 3 7 reps at cap in step 1 at 1:04")!;

        Assert.Equal([Some.Lane(1), Some.Lane(2)], level.Lanes);
        Assert.Equal((22, 0), (level.Worth, level.Ahead));
        Assert.Null(Lead("lane 1 step 2 done at 0:50\nlane 2 step 2 done at 0:52\nlane 3 step 2 done at 0:55"));
    }

    [Fact]
    public void A_step_too_close_to_the_end_is_kept_back_until_it_is_decided_and_a_lead_that_it_cannot_change_is_told_without_it()
    {
        const string LeaderIsNear = "lane 1 step 1 done at 0:40\nlane 1 step 2 done at 0:59.950\nlane 2 7 reps at cap in step 1 at 1:04\nlane 3 step 1 done at 0:40\nlane 3 5 reps at cap in step 2 at 1:05";
        Assert.Equal("NearRoundEnd 1 1", string.Join("; ", Sheet(LeaderIsNear, "1:10").NotYet.Select(one => $"{one.Why} {one.Round} {string.Join(',', one.Lanes)}")));
        Assert.Null(Lead(LeaderIsNear));
        Assert.Equal((22, 7), (Lead($"{LeaderIsNear}\ndecide lane 1 in time by 107 ms in round 1 at 1:08")!.Worth, Lead($"{LeaderIsNear}\ndecide lane 1 in time by 107 ms in round 1 at 1:08")!.Ahead));

        const string SecondIsNear = "lane 1 step 2 done at 0:50\nlane 2 7 reps at cap in step 1 at 1:04\nlane 3 step 1 done at 0:59.950\nlane 3 0 reps at cap in step 2 at 1:05";
        Assert.Null(Lead(SecondIsNear));                                                     // its row of 12 would make it level
        // Whatever is decided, it has 37 at most.
        var alone = Lead($"{FirstRound}\nlane 1 step 4 done at 2:20\nlane 2 3 reps at cap in step 3 at 2:33\nlane 3 step 3 done at 2:29.950\nlane 3 0 reps at cap in step 4 at 2:35", "2:40")!;
        Assert.Equal([Some.Lane(1)], alone.Lanes);
        Assert.Equal((2, 44, (int?)null), (alone.Round, alone.Worth, alone.Ahead));
    }

    /// <summary>Whatever people decide of steps too close to the end of the round: who was said to lead does.</summary>
    [Fact]
    public void No_decision_about_the_end_of_a_round_makes_a_lead_that_was_told_wrong() =>
        Gen.Select(Gen.Int[-250, 250].Array[3], Gen.Int[0, 12].Array[3], Gen.Int[0, 2].Array[3]).Sample(
            (offMs, counts, how) =>
            {
                static string At(int offMs) => offMs < 0 ? $"0:59.{1000 + offMs:000}" : $"1:00.{offMs:000}";
                var lines = Enumerable.Range(1, 3).Select(lane => how[lane - 1] switch
                {
                    0 => (offMs[lane - 1], $"lane {lane} step 2 done at {At(offMs[lane - 1])}"),
                    1 => (offMs[lane - 1], $"lane {lane} step 1 done at {At(offMs[lane - 1])}"),
                    _ => (-20_000, $"lane {lane} step 1 done at 0:40"),
                }).OrderBy(line => line.Item1).Select(line => line.Item2).Concat(Enumerable.Range(1, 3).Select(lane => $"lane {lane} {counts[lane - 1]} reps at cap in step {(how[lane - 1] == 0 ? 1 : 2)} at 1:04"));
                var score = string.Join('\n', lines);
                var open = NearTies.Of(HeatScript.Play($"start\n{score}", Heat)).Select(tie => tie.Lanes[0]).ToList();
                if (Lead(score) is not { } lead)
                {
                    return;
                }

                foreach (var choice in Enumerable.Range(0, 1 << open.Count))
                {
                    var decided = HeatScript.Play($"start\n{score}\n{string.Join('\n', open.Select((lane, i) => $"decide lane {lane} {((choice >> i) % 2 == 0 ? "in time" : "too late")} by 107 ms in round 1"))}", Heat);
                    var placings = LiveOrder.Of(decided);
                    Assert.All(lead.Ahead == 0 ? lead.Lanes : [lead.Lanes[0]], lane => Assert.Equal((1, lead.Ahead == 0), (placings.First(placing => placing.Lane == lane).Place, placings.First(placing => placing.Lane == lane).Tied)));
                    Assert.Equal(lead.Worth, decided.Find(lead.Lanes[0])!.Worth);
                }
            },
            iter: 400);

    [Fact]
    public void The_best_round_is_told_from_the_second_on_of_whoever_did_it_alone()
    {
        const string Others = "\nlane 1 step 3 done at 2:00\nlane 1 2 reps at cap in step 4 at 2:33\nlane 2 3 reps at cap in step 3 at 2:34";
        const string First = "lane 1 10 reps at cap in step 1 at 1:04\nlane 2 7 reps at cap in step 1 at 1:04\nlane 3 step 1 done at 0:40\nlane 3 5 reps at cap in step 2 at 1:05";
        const string Best = $"{First}\nlane 3 step 4 done at 2:20{Others}";

        Assert.DoesNotContain(Sheet(First, "1:10").Callouts, callout => callout.Kind == CalloutKind.BestRound);
        var best = SaidAt.One(Sheet(Best, "2:40"), CalloutKind.BestRound);
        Assert.Equal((2, 22, 3), (best.Round, best.Worth, best.Step));
        Assert.Equal([Some.Lane(3)], best.Lanes);
        Assert.Null(SaidAt.One(Sheet($"{First}\nlane 3 athlete 1 works step 3 at 1:31\nlane 3 step 4 done at 2:20{Others}", "2:40"), CalloutKind.BestRound).Step);
        Assert.DoesNotContain(Sheet($"{FirstRound}\nlane 3 step 4 done at 2:20{Others}", "2:40").Callouts, callout => callout.Kind == CalloutKind.BestRound);   // lane 1 did as much in the first
        Assert.DoesNotContain(Sheet($"{First}\nlane 3 step 4 done at 2:29.95{Others}", "2:40").Callouts, callout => callout.Kind == CalloutKind.BestRound);
    }

    [Fact]
    public void The_first_set_of_a_later_round_begins_with_the_round_and_not_with_the_rest() => Assert.Equal(
        [10_000, 15_000], Bests.Of(HeatScript.Play("start\nlane 1 step 3 done at 1:40\nlane 1 step 4 done at 1:55", Heat)).Ms.Values.Order());
}
