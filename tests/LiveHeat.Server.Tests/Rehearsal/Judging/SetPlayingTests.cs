using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;
using LiveHeat.Rehearsal.Judging;

namespace LiveHeat.Server.Rehearsal.Judging;

public class SetPlayingTests
{
    private const int Many = 3000;
    private const double PaceMs = 30_000;
    private static readonly SheetStep Balls = DemoSheets.Sheet(1).Lanes[0].Steps[0];
    private static readonly SheetStep Tag = DemoSheets.Sheet(1).Lanes[0].Steps.First(step => step.Kind == StepKind.Tag);
    private static readonly SheetStep Swings = DemoSheets.Sheet(2).Lanes[0].Steps.First(step => step.Movement == "kettlebell swings");

    private static List<SetPlay> Plays(SheetStep step, MistakeRates rates, int checkpointEvery = 0)
    {
        var random = new Random(5);
        return [.. Enumerable.Range(0, Many).Select(_ => SetPlaying.Make(step, PaceMs, checkpointEvery, rates, random))];
    }

    [Fact]
    public void Without_mistakes_is_one_tap_a_little_late()
    {
        foreach (var play in Plays(Balls, MistakeRates.None))
        {
            Assert.Equal(PaceMs, play.EndMs, 3);
            Assert.Equal(Deed.Done, Assert.Single(play.Moments).Deed);
            Assert.InRange(play.Moments[0].AtMs - play.EndMs, 100, 300);
        }
    }

    [Fact]
    public void Counts_at_each_checkpoint_but_not_at_the_end()
    {
        var play = Plays(Swings, MistakeRates.None, checkpointEvery: 5)[0];
        Assert.Equal([(Deed.Count, 5), (Deed.Count, 10), (Deed.Done, 0)], play.Moments.Select(moment => (moment.Deed, moment.Count)));
        Assert.All(play.Moments.Take(2), moment => Assert.Equal(moment.Count, play.UnitsAt(moment.AtMs)));
    }

    [Fact]
    public void Knows_the_units_done_at_any_time()
    {
        var play = Plays(Balls, MistakeRates.None)[0];
        Assert.Equal(0, play.UnitsAt(0));
        Assert.Equal(Balls.Quantity, play.UnitsAt(PaceMs + 1));
        Assert.InRange(play.UnitsAt(PaceMs / 2), (Balls.Quantity / 2) - 2, (Balls.Quantity / 2) + 2);
    }

    [Fact]
    public void Has_a_few_percent_of_no_reps_and_each_takes_a_reps_time()
    {
        var plays = Plays(Balls, MistakeRates.None with { NoRep = 0.025 });
        var noReps = plays.Sum(play => play.Moments.Count(moment => moment.Deed == Deed.NoRep));
        Assert.InRange(noReps / (double)(Many * Balls.Quantity), 0.020, 0.031);
        var one = plays.First(play => play.Moments.Count(moment => moment.Deed == Deed.NoRep) == 1);
        Assert.InRange(one.EndMs - PaceMs, PaceMs / Balls.Quantity * 0.5, PaceMs / Balls.Quantity * 1.6);
    }

    [Fact]
    public void Names_only_faults_of_the_movement()
    {
        var faults = Plays(Balls, MistakeRates.None with { NoRep = 0.2 }).SelectMany(play => play.Moments).Where(moment => moment.Fault is not null).Select(moment => moment.Fault!).Distinct();
        Assert.Equal(Balls.Faults.Order(), faults.Order());
    }

    [Fact]
    public void Takes_every_early_tap_back_before_the_set_is_done()
    {
        var early = Plays(Balls, MistakeRates.None with { EarlyTap = 1, NoRep = 0.1 }, checkpointEvery: 3);
        foreach (var moments in early.Select(play => play.Moments))
        {
            var wrong = moments.Select(moment => moment.Deed).ToList().IndexOf(Deed.Done);
            Assert.Equal((Deed.Done, Deed.Undo), (moments[wrong].Deed, moments[wrong + 1].Deed));
            Assert.InRange(moments[wrong + 1].AtMs - moments[wrong].AtMs, 1000, 2500);
            Assert.Equal(Deed.Done, moments[^1].Deed);
            Assert.Equal(2, moments.Count(moment => moment.Deed == Deed.Done));
        }
    }

    [Fact]
    public void Takes_a_wrong_no_rep_back() =>
        Assert.All(Plays(Balls, MistakeRates.None with { WrongNoRep = 1 }), play => Assert.Equal([Deed.NoRep, Deed.Undo, Deed.Done], play.Moments.Select(moment => moment.Deed)));

    [Fact]
    public void Bounces_a_finger_within_a_quarter_second()
    {
        foreach (var moments in Plays(Balls, MistakeRates.None with { DoubleTap = 1 }).Select(play => play.Moments))
        {
            Assert.Equal([Deed.Done, Deed.Done], moments.Select(moment => moment.Deed));
            Assert.InRange(moments[1].AtMs - moments[0].AtMs, 80, 250);
        }
    }

    [Fact]
    public void Repeats_a_tag_that_was_missed()
    {
        foreach (var play in Plays(Tag, MistakeRates.None with { TagFault = 1 }))
        {
            Assert.Equal([Deed.TagFault, Deed.Done], play.Moments.Select(moment => moment.Deed));
            Assert.True(play.EndMs > PaceMs + 2000);
        }
    }

    [Fact]
    public void Usually_goes_in_order_and_ends_with_the_set_done()
    {
        foreach (var play in Plays(Swings, MistakeRates.Usual, checkpointEvery: 5))
        {
            Assert.Equal(play.Moments.OrderBy(moment => moment.AtMs), play.Moments);
            Assert.Equal(Deed.Done, play.Moments[^1].Deed);
            Assert.True(play.Moments[^1].AtMs > play.EndMs);
        }
    }
}
