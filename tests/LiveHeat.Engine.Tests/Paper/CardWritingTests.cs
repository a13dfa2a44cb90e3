using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;
using static LiveHeat.Engine.Paper.CardDifferencesTests;

namespace LiveHeat.Engine.Paper;

/// <summary>What is taken from a card is what the lane then says, by the engine's own rules and fold.</summary>
public sealed class CardWritingTests
{
    private const string Phone = """
        start
        lane 1 step 1 done at 0:30
        lane 1 no-rep step 2 at 0:40
        lane 1 no-rep step 2 at 0:45
        lane 1 step 2 done at 1:00
        lane 1 tag 3 at 1:02
        """;

    private long made;

    /// <summary>Nine steps with times and no phone: the whole card makes the lane's splits and its finish.</summary>
    [Fact]
    public void A_whole_card_of_a_lane_without_a_phone()
    {
        var heat = HeatScript.Play("start");
        var card = Card([.. Enumerable.Range(1, 9).Select(step => Line(step, step * 20_000) with { NoReps = step == 2 ? 2 : null })]);

        var lane = After(heat, card).Find(Some.Lane(1))!;

        Assert.True(lane.Finished);
        Assert.Equal(180_000, lane.Finish!.Value.LaneMs);
        Assert.Equal(Enumerable.Range(1, 9).Select(step => (long?)step * 20_000), lane.Splits.Select(split => split?.LaneMs));
        Assert.Equal(2, lane.NoReps[1]);
        Assert.Empty(CardDifferences.Of(After(heat, card), Some.Lane(1), card));
    }

    [Fact]
    public void Ticks_without_a_time_imply_each_other_and_make_no_times()
    {
        var heat = HeatScript.Play("start");
        var writes = Writes(heat, new PaperCard([new PaperLine(1, true), new PaperLine(4, true)], 5));

        Assert.Equal(2, writes.Count);
        var lane = CardWriting.Preview(heat, writes, Some.Organiser, Now).Heat.Find(Some.Lane(1))!;
        Assert.Equal((4, null, 5, 10 + 12 + 10 + 5), (lane.DoneSteps, lane.Splits[3]?.LaneMs, lane.Count, lane.Worth));
    }

    [Fact]
    public void Reps_at_the_cap_stand_in_the_open_set()
    {
        var heat = HeatScript.Play(Phone + "\nlane 1 5 reps at cap in step 4 at 10:05");
        var card = new PaperCard([new PaperLine(3, true)], 7);

        Assert.Equal(7, After(heat, card).Find(Some.Lane(1))!.Count);
        Assert.Empty(CardDifferences.Of(After(heat, card), Some.Lane(1), card));
    }

    [Theory]
    [InlineData(28_000)]
    [InlineData(35_000)]
    public void A_time_from_paper_replaces_the_phones_earlier_or_later(int ms)
    {
        var card = Card(Line(1, ms), new PaperLine(3, true));
        var after = After(HeatScript.Play(Phone), card).Find(Some.Lane(1))!;

        Assert.Equal((3, ms, 60_000L), (after.DoneSteps, after.Splits[0]!.Value.LaneMs, after.Splits[1]!.Value.LaneMs));
    }

    [Fact]
    public void No_step_is_without_its_time_between_two_commands()
    {
        var heat = HeatScript.Play(Phone);
        var kinds = Writes(heat, Card(Line(1, 35_000), new PaperLine(3, true))).Select(write => write.Command.GetType().Name);

        Assert.Equal([nameof(HeatCommand.Add), nameof(HeatCommand.Void)], kinds);
    }

    [Fact]
    public void What_the_phone_has_too_much_is_voided()
    {
        var after = After(HeatScript.Play(Phone), Card(new PaperLine(1, true), new PaperLine(2, false) { NoReps = 1 })).Find(Some.Lane(1))!;

        Assert.Equal((1, 1), (after.DoneSteps, after.NoReps[1]));
    }

    [Fact]
    public void A_reading_is_put_right_and_its_time_stays()
    {
        var snapshot = Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription(round: [new PrescribedSet("bar", 1, Reading: true)])));
        var heat = HeatScript.Play("start\nlane 1 value 82.5 in step 1 at 0:20", snapshot);

        var after = After(heat, Card(new PaperLine(1, true) { Value = 80m })).Find(Some.Lane(1))!;

        Assert.Equal([(1, 80m)], after.Values);
        Assert.Equal(20_000, after.Splits[0]!.Value.LaneMs);
    }

    [Fact]
    public void Where_the_phones_time_stands_and_the_papers_reading_counts_both_are_kept()
    {
        var snapshot = Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription(round: [new PrescribedSet("bar", 1, Reading: true)])));
        var heat = HeatScript.Play("start\nlane 1 value 82.5 in step 1 at 0:20", snapshot);
        var card = Card(Line(1, 30_000) with { Value = 80m });
        var all = CardDifferences.Of(heat, Some.Lane(1), card);
        Assert.Equal([DifferenceKind.Time, DifferenceKind.Value], all.Select(one => one.Kind));

        (long, decimal) Taking(params DifferenceKind[] kinds)
        {
            var writes = CardWriting.Of(heat, Some.Lane(1), card, [.. all.Where(one => kinds.Contains(one.Kind)).Select(one => new TakenFromPaper(one, ""))], NewId, Now);
            var lane = CardWriting.Preview(heat, writes, Some.Organiser, Now).Heat.Find(Some.Lane(1))!;
            return (lane.Splits[0]!.Value.LaneMs, Assert.Single(lane.Values).Value);
        }

        Assert.Equal((20_000, 80m), Taking(DifferenceKind.Value));
        Assert.Equal((30_000, 82.5m), Taking(DifferenceKind.Time));
        Assert.Equal((30_000, 80m), Taking(DifferenceKind.Time, DifferenceKind.Value));
    }

    /// <summary>A step without a time lies before the next that has one: it must not be taken for a repetition of it.</summary>
    [Fact]
    public void A_reading_without_a_time_stands_before_the_steps_after_it()
    {
        var snapshot = Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription(round: [new PrescribedSet("bar", 1, Reading: true), new PrescribedSet("wall-ball", 5)])));
        var card = Card(new PaperLine(1, true) { Value = 60m }, Line(2, 50_000));

        var after = After(HeatScript.Play("start", snapshot), card).Find(Some.Lane(1))!;

        Assert.Equal([(1, 60m)], after.Values);
        Assert.Equal((2, null, 50_000L), (after.DoneSteps, after.Splits[0]?.LaneMs, after.Splits[1]!.Value.LaneMs));
    }

    [Fact]
    public void Every_id_is_its_own_and_a_second_run_finds_nothing_to_do()
    {
        var heat = HeatScript.Play(Phone);
        var card = Card(Line(1, 35_000), new PaperLine(2, true) { NoReps = 5 }, Line(4, 100_000));
        var writes = Writes(heat, card);

        Assert.Distinct(writes.Select(write => write.Command.Id).Concat(writes.Select(write => write.Command).OfType<HeatCommand.Add>().Select(add => add.Tap.Id)));
        Assert.Empty(Writes(CardWriting.Preview(heat, writes, Some.Organiser, Now).Heat, card));
    }

    [Fact]
    public void A_heat_that_is_certified_says_why_not()
    {
        var heat = HeatScript.Play(Phone + "\nend at 10:00\nfreeze\nsign organiser\nsign head judge");
        var (_, refused) = CardWriting.Preview(heat, Writes(heat, Card(new PaperLine(4, true))), Some.Organiser, Now);

        Assert.Equal(Refusals.Certified, refused);
    }

    private static Timing.Instant Now => HeatScript.At("12:00");

    private FactId NewId() => Some.Id("paper", ++made);

    private Items<CardWrite> Writes(HeatState heat, PaperCard card) => CardWriting.Of(
        heat, Some.Lane(1), card, [.. CardDifferences.Of(heat, Some.Lane(1), card).Select(one => new TakenFromPaper(one, "the judge's card"))], NewId, Now);

    private HeatState After(HeatState heat, PaperCard card)
    {
        var (after, refused) = CardWriting.Preview(heat, Writes(heat, card), Some.Organiser, Now);
        Assert.Null(refused);
        return after;
    }
}
