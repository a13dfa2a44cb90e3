using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Standings;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Scoring;

/// <summary>The most metres in 9:00: three athletes, each reads 800 m or so off the machine, then the tag. Steps: 1 value, 2 tag, 3 value, 4 tag, 5 value.</summary>
public class MostReadingTests
{
    private static readonly Workout Workout = Some.Workout(
        counting: Counting.Sets, finish: FinishKind.None, prescriptions: Some.Prescription("open", 3, 540_000, new PrescribedSet("carry", 800, Reading: true))) with
    { Scoring = new ScoringRule.MostReading() };

    private static HeatState Play(string score, int lanes = 1, Workout? workout = null) => HeatScript.Play($"start\n{score}", Some.Snapshot(lanes, workout ?? Workout));

    [Fact]
    public void The_readings_are_added_up_and_their_fractions_cut()
    {
        var heat = Play("""
            lane 1 value 812.9 in step 1 at 3:00
            lane 1 tag 2 at 3:02
            lane 1 value 790.5 in step 3 at 6:00
            lane 1 tag 4 at 6:02
            lane 1 value 640 in step 5 at 8:59
            """);

        Assert.Equal(812 + 790 + 640, heat.Lanes[0].Worth);
        Assert.Equal(new ScoreUnit(Unit.M, 1), heat.Lanes[0].Plan.Score);
        Assert.Equal(Outcome.Through, HeatResult.Of(heat, HeatScript.At("9:10"))[0].Outcome);
        Assert.Equal(0, heat.Lanes[0].Plan.WorthThrough(5));
    }

    [Fact]
    public void More_is_ahead_however_late_and_as_much_shares_the_place() => Assert.Equal("3 1=2", HeatScript.Board(Play("""
        lane 1 value 812 in step 1 at 3:00
        lane 2 value 812.4 in step 1 at 3:20
        lane 3 value 813 in step 1 at 3:30
        """, 3)));

    [Theory]
    [InlineData("lane 1 undo last at 3:10")]
    [InlineData("lane 1 sent back to 1 at 3:10")]
    public void A_reading_that_no_longer_stands_counts_for_nothing(string ruling) => Assert.Equal(0, Play($"lane 1 value 812 in step 1 at 3:00\n{ruling}").Lanes[0].Worth);

    [Fact]
    public void Other_work_is_worth_only_what_it_says()
    {
        PrescribedSet[] round = [new("carry", 800, Reading: true), new("wall-ball", 20), new("wall-ball", 20, Worth: 5)];
        var heat = Play("lane 1 value 812 in step 1 at 3:00\nlane 1 step 3 done at 4:00", 1, Workout with { Prescriptions = [Some.Prescription("open", 1, 540_000, round)] });

        Assert.Equal(817, heat.Lanes[0].Worth);
    }

    [Fact]
    public void A_reading_that_cannot_be_breaks_no_sum() =>
        Assert.Equal(2_000_000, Play("lane 1 value 79228162514264337593543950335 in step 1 at 3:00\nlane 1 value 2147483647 in step 3 at 6:00").Lanes[0].Worth);

    [Fact]
    public void The_gap_is_told_in_metres_alone() =>
        Assert.Equal([(null, 8), (null, 0)], LiveOrder.Of(Play("lane 1 value 812 in step 1 at 3:00\nlane 2 value 820 in step 1 at 3:20", 2)).Select(placing => (placing.GapMs, placing.GapWorth)));
}
