using LiveHeat.Engine.Heats;

namespace LiveHeat.Engine.Judging;

public class JudgingWatchTests
{
    private const int Lanes = 10;
    private const int Rounds = 8;

    /// <summary>Sets of 12 burpees and 15 wall balls in turn; a lane gives no-reps with these chances for every try.</summary>
    private static List<JudgedSet> Heat(Random random, Func<int, double> burpees, Func<int, double> wallBalls)
    {
        var sets = new List<JudgedSet>();
        for (var lane = 1; lane <= Lanes; lane++)
        {
            var at = 0L;
            for (var set = 0; set < 2 * Rounds; set++)
            {
                var (name, reps, chance) = set % 2 == 0 ? ("burpees", 12, burpees(lane)) : ("wall balls", 15, wallBalls(lane));
                var noReps = 0;
                for (var rep = 0; rep < reps;)
                {
                    _ = random.NextDouble() < chance ? noReps++ : rep++;
                }

                at += ((reps + noReps) * 2500) + random.Next(4000);
                sets.Add(new JudgedSet(new LaneNumber(lane), name, at, reps, noReps));
            }
        }

        return sets;
    }

    private static Items<LaneWatch> Watch(IReadOnlyList<JudgedSet> sets) => JudgingWatch.Of(sets, Rounds * (12 + 15));

    /// <summary>What the head judge would have been asked at any moment of the heat: the questions stay once raised.</summary>
    private static int Asked(IReadOnlyList<JudgedSet> sets) => Watch(sets).Count(lane => lane.StandsOut);

    /// <summary>
    /// Where all judges are alike, at most 5 % of heats may raise a question. 1,000 simulated heats; the bound allows for the chance of the simulation itself: three
    /// standard deviations of a share of 5 % in 1,000 are 2.1 %.
    /// </summary>
    [Theory]
    [InlineData(0.03, 0.03)]
    [InlineData(0.10, 0.04)]
    [InlineData(0.30, 0.15)]
    public void Judges_who_are_all_alike_raise_a_question_in_at_most_one_heat_of_twenty(double burpees, double wallBalls)
    {
        var random = new Random(20_261_125);
        var alarms = Enumerable.Range(0, 1_000).Count(_ => Asked(Heat(random, _ => burpees, _ => wallBalls)) > 0);

        Assert.InRange(alarms, 1, 1_000 * (0.05 + 0.021));      // none at all would be a watch that is asleep
    }

    [Fact]
    public void A_lane_that_lets_nothing_pass_is_found_and_so_is_one_that_lets_all_pass()
    {
        var random = new Random(7);
        var strict = Enumerable.Range(0, 200).Count(_ => Watch(Heat(random, lane => lane == 4 ? 0.3 : 0.08, _ => 0.08)).Single(lane => lane.Lane.Value == 4).StandsOut);
        var mild = Enumerable.Range(0, 200).Count(_ => Watch(Heat(random, lane => lane == 4 ? 0 : 0.2, lane => lane == 4 ? 0 : 0.2)).Single(lane => lane.Lane.Value == 4).StandsOut);

        Assert.InRange(strict, 190, 200);
        Assert.InRange(mild, 190, 200);
    }

    [Fact]
    public void The_figures_come_with_the_question()
    {
        var sets = Heat(new Random(7), lane => lane == 4 ? 0.4 : 0.08, _ => 0.08);
        var lane = Watch(sets).Single(one => one.Lane.Value == 4);
        var own = sets.Where(set => set.Lane.Value == 4).ToList();

        Assert.True(lane.StandsOut);
        Assert.Equal((own.Sum(set => set.Reps), own.Sum(set => set.NoReps)), (lane.Reps, lane.NoReps));
        Assert.InRange(lane.NoReps, lane.High + 1, int.MaxValue);
        Assert.InRange(lane.Expected, 0, lane.High);
        Assert.InRange(lane.Rate, lane.Share.From, lane.Share.To);
        Assert.Contains(own, set => set.DoneMs == lane.SinceMs);
    }

    /// <summary>A question that was raised does not go away because the lane goes on as the others do.</summary>
    [Fact]
    public void What_was_found_at_a_look_stays()
    {
        var quiet = Heat(new Random(3), _ => 0.02, _ => 0.02);
        var sets = quiet.Select((set, i) => set.Lane.Value == 2 && i < 2 * Rounds + 2 ? set with { NoReps = 14 } : set).ToList();
        var early = Watch(sets.Where(set => set.DoneMs < 90_000).ToList()).Single(lane => lane.Lane.Value == 2);
        var late = Watch(sets).Single(lane => lane.Lane.Value == 2);

        Assert.True(early.StandsOut);
        Assert.True(late.StandsOut);
        Assert.Equal(early.SinceMs, late.SinceMs);
    }

    [Fact]
    public void Few_reps_a_lane_alone_and_a_movement_that_nobody_else_does_ask_nothing()
    {
        static JudgedSet Set(int lane, string movement, int reps, int noReps) => new(new LaneNumber(lane), movement, 1_000, reps, noReps);

        Assert.Empty(Watch([]));
        Assert.Equal(0, Asked([Set(1, "burpees", 19, 19), Set(2, "burpees", 19, 0)]));
        Assert.Equal(0, Asked([Set(1, "burpees", 100, 90)]));
        Assert.Equal(0, Asked([Set(1, "burpees", 100, 90), Set(2, "wall balls", 100, 0)]));
    }
}
