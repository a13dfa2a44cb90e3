using LiveHeat.Engine.Forecasts;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>The heaviest load in 10:00, three attempts each. With two athletes the steps are 1 to 3 attempts, 4 tag, 5 to 7 attempts. Worth is in grams.</summary>
public class HeaviestLoadTests
{
    private const string TwoBest = """
        start
        lane 1 lifts 100 in step 1 at 0:30
        lane 1 lifts 105 in step 2 at 1:30
        lane 1 fails 110 in step 3 at 2:30
        lane 1 tag 4 at 2:40
        lane 1 lifts 82.5 in step 5 at 3:30
        lane 1 fails 90 in step 6 at 4:30
        lane 1 lifts 80.25 in step 7 at 5:30
        """;

    private static HeatSnapshot Heat(int lanes = 1, LoadSum sum = LoadSum.SumOfBest, TiebreakSet? tiebreak = null) => Some.Snapshot(lanes, Some.Lifting(sum: sum, tiebreak: tiebreak), athletes: 2);

    private static LaneState Lane(string score, HeatSnapshot? heat = null) => HeatScript.Play(score, heat ?? Heat()).Lanes[0];

    private static string Lines(HeatState heat, string now = "9:00") => string.Join(" | ", HeatResult.Of(heat, HeatScript.At(now)).Select(line =>
        $"{line.Place}{(line.Tied ? "=" : "")} lane {line.Lane.Lane} {line.Outcome} {line.Worth}{(line.OfficialMs is null ? "" : " timed")}"));

    [Fact]
    public void The_best_good_load_of_each_athlete_is_added_up()
    {
        var lane = Lane(TwoBest);

        Assert.Equal(187_500, lane.Worth);
        Assert.Equal(new ScoreUnit(Unit.Kg, 1000), lane.Plan.Score);
        Assert.Equal(["1:1 100 good", "2:1 105 good", "3:1 110 no", "5:2 82.5 good", "6:2 90 no", "7:2 80.25 good"], lane.Attempts.Select(Told));
        Assert.Equal((1, 1), (lane.NoReps[2], lane.NoReps[5]));
    }

    [Fact]
    public void Or_the_best_load_of_any_athlete() => Assert.Equal(105_000, Lane(TwoBest, Heat(sum: LoadSum.BestSingle)).Worth);

    [Fact]
    public void Through_the_last_attempt_the_lane_is_done_and_has_no_time()
    {
        var heat = HeatScript.Play(TwoBest, Heat());

        Assert.Equal("1 lane 1 Through 187500", Lines(heat));
        Assert.False(heat.Lanes[0].Finished);
        Assert.Null(heat.Lanes[0].Finish);
        Assert.Null(CapPace.AheadMs(heat.Lanes[0]));
        Assert.Empty(Forecast.Of(heat, HeatScript.At("5:00"), PacePriors.None, 1));
    }

    [Fact]
    public void The_heaviest_leads_however_late_and_the_same_load_shares_the_place()
    {
        // 1 2 2 4: "standard competition ranking", RosettaCode, Ranking methods; the heavier load ahead: common practice, no source.
        var heat = HeatScript.Play("""
            start
            lane 1 lifts 100 in step 1 at 0:30
            lane 2 lifts 110 in step 1 at 5:00
            lane 3 lifts 99.99 in step 1 at 0:20
            lane 4 fails 140 in step 1 at 0:40
            lane 4 lifts 100 in step 2 at 4:00
            """, Heat(4));

        Assert.Equal("2 1=4 3", HeatScript.Board(heat));
        Assert.Equal("1 lane 2 Working 110000 | 2= lane 1 Working 100000 | 2= lane 4 Working 100000 | 4 lane 3 Working 99990", Lines(heat, "5:10"));
        Assert.Equal([10_000, 0, 10_010, 10_000], LiveOrder.Of(heat).Select(placing => placing.GapWorth));
        Assert.All(LiveOrder.Of(heat), placing => Assert.Null(placing.GapMs));
    }

    [Fact]
    public void A_tiebreak_parts_the_same_load()
    {
        const string Score = """
            start
            lane 1 lifts 100 in step 1 at 0:30
            lane 2 lifts 100 in step 1 at 0:20
            """;

        Assert.Equal("1=2", HeatScript.Board(HeatScript.Play(Score, Heat(2))));
        Assert.Equal("2 1", HeatScript.Board(HeatScript.Play(Score, Heat(2, tiebreak: new TiebreakSet(1, 1)))));
    }

    [Theory]
    [InlineData("lane 1 undo second at 2:00", 100_000, 2)]
    [InlineData("void second", 100_000, 2)]
    [InlineData("lane 1 sent back to 2 at 2:00", 100_000, 2)]
    [InlineData("lane 1 sent back to 2 at 2:00\nlane 1 lifts 102 in step 2 at 2:30", 102_000, 3)]
    [InlineData("lane 1 sent back to 2 at 2:00\nlane 1 step 2 done time unknown at 2:30", 100_000, 3)]
    public void An_attempt_that_no_longer_stands_counts_for_nothing(string ruling, int worth, int open)
    {
        var lane = Lane($"start\nlane 1 lifts 100 in step 1 at 0:30\nlane 1 lifts 130 in step 2 at 1:30 [second]\n{ruling}");

        Assert.Equal((worth, open), (lane.Worth, lane.Open));
        Assert.DoesNotContain(lane.Attempts, attempt => attempt.Load == 130);
    }

    [Fact]
    public void A_lift_after_the_cap_does_not_count() =>
        Assert.Equal("1 lane 1 Capped 100000", Lines(HeatScript.Play("start\nlane 1 lifts 100 in step 1 at 9:30\nlane 1 lifts 120 in step 2 at 10:01", Heat()), "10:05"));

    [Fact]
    public void Who_lifted_in_anothers_place_has_one_best_of_all_attempts()
    {
        var lane = Lane("start\nlane 1 lifts 100 in step 1 at 0:30\nlane 1 athlete 1 works step 5 at 1:00\nlane 1 lifts 120 in step 5 at 1:30");

        Assert.Equal(120_000, lane.Worth);
        Assert.Equal(["1:1 100 good", "5:1 120 good"], lane.Attempts.Select(Told));
    }

    [Fact]
    public void What_was_lifted_before_a_variant_or_another_line_up_stays_and_the_team_grows_no_larger()
    {
        var workout = Some.Lifting() with { Prescriptions = [.. Some.Lifting().Prescriptions, Some.Prescription("scaled", 0, 600_000, new PrescribedSet("bar", 1))] };
        var lane = Lane("""
            start
            lane 1 lifts 100 in step 1 at 0:30
            lane 1 variant scaled from step 2 at 0:40
            lane 1 lifts 60 in step 5 at 3:00
            lane 1 line-up Ann,Dot from step 6 at 3:10
            lane 1 lifts 70 in step 6 at 4:00
            """, Some.Snapshot(1, workout, athletes: 2));

        Assert.Equal(["1:1 100 good", "5:2 60 good", "6:3 70 good"], lane.Attempts.Select(Told));
        Assert.Equal(170_000, lane.Worth);
    }

    [Fact]
    public void A_penalty_takes_whole_kilograms_off() => Assert.Equal("1 lane 1 Working 95000", Lines(HeatScript.Play("start\nlane 1 lifts 100 in step 1 at 0:30\npenalise lane 1 by 5 reps", Heat()), "1:00"));

    [Fact]
    public void A_team_that_stopped_ranks_last_unless_all_its_attempts_are_made()
    {
        const string Done = "lane 1 lifts 100 in step 7 at 1:00\n";

        Assert.Equal("2 1", HeatScript.Board(HeatScript.Play("start\nlane 1 lifts 100 in step 1 at 0:30\nlane 1 stopped medical at 1:00\nlane 2 lifts 50 in step 1 at 2:00", Heat(2))));
        Assert.Equal("1 2", HeatScript.Board(HeatScript.Play($"start\n{Done}lane 1 stopped medical at 1:10\nlane 2 lifts 50 in step 1 at 2:00", Heat(2))));
    }

    [Theory]
    [InlineData("lane 1 lifts 100 in step 4 at 0:30")]
    [InlineData("lane 1 lifts 0 in step 1 at 0:30")]
    [InlineData("lane 1 lifts 2000 in step 1 at 0:30")]
    public void What_is_no_attempt_or_no_load_is_held(string line)
    {
        var lane = Lane($"start\n{line}");

        Assert.Equal((0, 1, 1), (lane.Worth, lane.Open, lane.Quarantined));
    }

    [Fact]
    public void In_several_heats_the_same_load_shares_the_place_too()
    {
        var (first, second) = (HeatScript.Play("start\nlane 1 lifts 100 in step 1 at 0:30", Heat()), HeatScript.Play("start\nlane 1 lifts 100 in step 1 at 0:50", Heat()));
        TeamResult Result(string team, HeatState heat) => new(team, new HeatId(team), HeatResult.Of(heat, HeatScript.At("1:00"))[0], true);

        Assert.Equal([1, 1], WorkoutOrder.Of([Result("a", first), Result("b", second)]).Select(place => place.Place));
    }

    private static string Told(JudgedAttempt attempt) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{attempt.Step}:{attempt.Athlete} {attempt.Load} {(attempt.Good ? "good" : "no")}");
}
