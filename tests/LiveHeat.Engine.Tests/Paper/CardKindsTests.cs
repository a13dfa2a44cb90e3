using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Paper;

/// <summary>Paper cards of work that is more than one set after the other: compared with the phone, and written to the record.</summary>
public sealed class CardKindsTests
{
    /// <summary>Two attempts of each of three: Ann steps 1 and 2, a tag, Bo 4 and 5, a tag, Cy 7 and 8.</summary>
    private static readonly HeatSnapshot Lifting = Some.Snapshot(1, Some.Lifting(attempts: 2));

    /// <summary>60 cal row as a pool, each at least 15; then 10 wall balls.</summary>
    private static readonly HeatSnapshot Pool = Some.Snapshot(1, Some.Workout(finish: FinishKind.None, prescriptions:
        Some.Prescription(rounds: 1, round: [new PrescribedSet("row", 60) { MinimumEach = 15 }, new("wall-ball", 10)])));

    /// <summary>Three rounds by the clock of 1:00 with 0:30 rest: steps 1-2 until 1:00, 3-4 from 1:30 to 2:30, 5-6 from 3:00 to 4:00.</summary>
    private static readonly HeatSnapshot ByClock = Some.Snapshot(1, Clocked(new ScoringRule.MostWork(), new("wall-ball", 10), new("row", 12)));

    private long made;

    [Fact]
    public void A_card_of_attempts_makes_the_lanes_loads()
    {
        var card = Card(Attempt(1, 100, true), Attempt(2, 105, false), Attempt(4, 80, true), Attempt(7, 60.5m, false), Attempt(8, 60.5m, true));

        var lane = Whole(Lifting, "", card);

        Assert.Equal([new(1, 1, 100, true, null), new(2, 1, 105, false, null), new(4, 2, 80, true, null), new(7, 3, 60.5m, false, null), new JudgedAttempt(8, 3, 60.5m, true, null)], lane.Attempts);
        Assert.Equal((100_000 + 80_000 + 60_500, 8), (lane.Worth, lane.DoneSteps));
        Assert.Equal([0, 1, 0, 0, 0, 0, 1, 0], lane.NoReps);
    }

    [Fact]
    public void Of_an_attempt_load_and_lift_differ_apart_and_each_is_taken_alone()
    {
        const string Phone = "lane 1 lifts 100 in step 1 at 0:30\nlane 1 fails 105 in step 2 at 1:00";
        var card = Card(Attempt(1, 102.5m, true), Attempt(2, 110, true));
        var heat = HeatScript.Play($"start\n{Phone}", Lifting);

        Assert.Equal(
            [new(DifferenceKind.Load, 1, 100, 102.5m), new(DifferenceKind.Load, 2, 105, 110), new CardDifference(DifferenceKind.Lift, 2, 0, 1)], CardDifferences.Of(heat, Some.Lane(1), card));
        Assert.Equal((105m, true), Second(Taking(heat, card, one => one.Kind == DifferenceKind.Lift)));
        Assert.Equal((110m, false), Second(Taking(heat, card, one => one.Kind == DifferenceKind.Load && one.Step == 2)));
        Assert.Equal((110m, true), Second(Whole(Lifting, Phone, card)));
        Assert.Equal(60_000, Whole(Lifting, Phone, card).Splits[1]!.Value.LaneMs);

        static (decimal, bool) Second(LaneState lane) => lane.Attempts.Where(attempt => attempt.Step == 2).Select(attempt => (attempt.Load, attempt.Good)).Single();
    }

    /// <summary>A card that was typed in wrong is put right from the card: what comes later must not be in front of what it replaces.</summary>
    [Theory]
    [InlineData("", 2)]
    [InlineData("lane 1 lifts 80 in step 4 at 2:00", 1)]
    public void An_attempt_from_paper_is_put_right_from_paper(string phone, int again)
    {
        var wrong = Card(Attempt(1, 100, true), Attempt(2, 105, true), Attempt(4, 80, true));
        var right = wrong with { Lines = wrong.Lines.Select(line => line.Step == again ? line with { Load = 106 } : line).ToItems() };
        var heat = After(HeatScript.Play($"start\n{phone}", Lifting), wrong);

        var lane = After(heat, right).Find(Some.Lane(1))!;

        Assert.Equal([again == 1 ? 106m : 100m, again == 2 ? 106m : 105m, 80m], lane.Attempts.Select(attempt => attempt.Load));
    }

    [Fact]
    public void An_attempt_that_only_the_card_knows_stands_before_what_the_phone_has()
    {
        var heat = HeatScript.Play("start\nlane 1 lifts 80 in step 4 at 2:00", Lifting);
        var card = Card(Attempt(1, 100, true), Attempt(4, 80, true));

        Assert.Equal([new(DifferenceKind.Load, 1, null, 100), new CardDifference(DifferenceKind.Lift, 1, null, 1)], CardDifferences.Of(heat, Some.Lane(1), card));
        Assert.Equal([100m, 80m], After(heat, card).Find(Some.Lane(1))!.Attempts.Select(attempt => attempt.Load));
    }

    [Fact]
    public void A_load_that_nobody_lifts_is_refused()
    {
        var heat = HeatScript.Play("start", Lifting);
        var card = Card(Attempt(1, 1001, true));
        Assert.Equal(Refusals.Unliftable(1000), CardWriting.Preview(heat, Writes(heat, card, _ => true), Some.Organiser, Now).Refused);
    }

    [Fact]
    public void Who_did_how_much_of_a_pool_is_told_in_one_go()
    {
        var card = Card(new PaperLine(1, true) { Time = new PaperTime(180_000, PaperTime.TenthsMs), Shares = [new(1, 1, 25), new(1, 2, 20), new(1, 3, 15)] }, new PaperLine(2, true));

        var lane = Whole(Pool, "", card);

        Assert.Equal([new(1, 1, 25), new(1, 2, 20), new Share(1, 3, 15)], lane.Shares);
        Assert.Equal((2, 180_000), (lane.DoneSteps, lane.Splits[0]!.Value.LaneMs));
        Assert.Empty(lane.Short());
    }

    [Fact]
    public void Shares_of_a_phone_that_differ_are_replaced_as_a_whole()
    {
        const string Phone = """
            lane 1 athlete 1 works step 1 at 0:05
            lane 1 count 45 of step 1 at 1:00
            lane 1 athlete 2 works step 1 at 1:01
            lane 1 step 1 done at 3:00
            """;
        var card = Card(new PaperLine(1, true) { Shares = [new(1, 1, 25), new(1, 2, 20), new(1, 3, 15)] });

        var one = Assert.Single(CardDifferences.Of(HeatScript.Play($"start\n{Phone}", Pool), Some.Lane(1), card));
        Assert.Equal((DifferenceKind.Shares, 1, 60, 60), (one.Kind, one.Step, (int)one.Phone!, (int)one.Paper));
        Assert.Equal([new(1, 1, 45), new Share(1, 2, 15)], one.PhoneShares);
        Assert.Equal(card.Lines[0].Shares, one.PaperShares);

        var lane = Whole(Pool, Phone, card);
        Assert.Equal([new(1, 1, 25), new(1, 2, 20), new Share(1, 3, 15)], lane.Shares);
        Assert.Equal(180_000, lane.Splits[0]!.Value.LaneMs);
    }

    [Fact]
    public void Shares_that_say_the_same_or_were_not_written_differ_in_nothing()
    {
        const string Phone = "lane 1 athlete 1 works step 1 at 0:05\nlane 1 count 45 of step 1 at 1:00\nlane 1 athlete 2 works step 1 at 1:01\nlane 1 step 1 done at 3:00";
        var heat = HeatScript.Play($"start\n{Phone}", Pool);

        Assert.Empty(CardDifferences.Of(heat, Some.Lane(1), Card(new PaperLine(1, true) { Shares = [new(1, 2, 15), new(1, 1, 45), new(1, 3, 0)] })));
        Assert.Empty(CardDifferences.Of(heat, Some.Lane(1), Card(new PaperLine(1, true))));
    }

    [Fact]
    public void Where_the_phone_counted_and_nobody_said_who_worked_it_said_nothing_of_anybody()
    {
        var heat = HeatScript.Play("start\nlane 1 count 45 of step 1 at 1:00\nlane 1 step 1 done at 3:00", Pool);

        var one = Assert.Single(CardDifferences.Of(heat, Some.Lane(1), Card(new PaperLine(1, true) { Shares = [new(1, 1, 60)] })));

        Assert.Null(one.Phone);
        Assert.Empty(one.PhoneShares);
    }

    [Fact]
    public void An_open_pool_has_its_shares_and_its_count()
    {
        var card = new PaperCard([new PaperLine(1, false) { Shares = [new(1, 1, 25), new(1, 2, 20)] }], 45);

        var lane = Whole(Pool, "", card);

        Assert.Equal((0, 45, 45), (lane.DoneSteps, lane.Count, lane.Worth));
        Assert.Equal([new(1, 1, 25), new Share(1, 2, 20)], lane.Shares);
    }

    [Fact]
    public void Every_round_by_the_clock_says_how_far_it_came_whatever_came_after_it()
    {
        var card = new PaperCard([new PaperLine(1, true), new PaperLine(4, true)], null) { AtEnds = [new(1, 5), new(3, 3)] };

        var lane = Whole(ByClock, "", card);

        Assert.Equal([(1, 5), (4, 0), (4, 3)], lane.Rounds.Select(round => (round.Done, round.Count)));
        Assert.Equal(10 + 5 + 22 + 3, lane.Worth);
        Assert.All(lane.Flagged, flagged => Assert.Equal(FactFlags.None, flagged.Flags));
    }

    [Fact]
    public void A_round_in_which_nothing_was_done_stays_empty()
    {
        var card = new PaperCard([new PaperLine(1, true), new PaperLine(5, true)], null);

        Assert.Equal([DifferenceKind.Reached, DifferenceKind.Reached], CardDifferences.Of(HeatScript.Play("start", ByClock), Some.Lane(1), card).Select(one => one.Kind));
        Assert.Equal([1, 2, 5], Whole(ByClock, "", card).Rounds.Select(round => round.Done));
    }

    [Fact]
    public void Rounds_by_the_clock_differ_each_on_its_own()
    {
        const string Phone = "lane 1 step 2 done at 0:50\nlane 1 step 3 done at 2:00\nlane 1 4 reps at cap in step 4 at 2:31";
        var card = new PaperCard([new PaperLine(1, true), new PaperLine(3, true), new PaperLine(5, true)], null) { AtEnds = [new(1, 11), new(2, 4)] };
        var heat = HeatScript.Play($"start\n{Phone}", ByClock);

        Assert.Equal(
            [new(DifferenceKind.Reached, 2, 2, 1), new(DifferenceKind.AtCap, 2, null, 11), new CardDifference(DifferenceKind.Reached, 5, 4, 5)], CardDifferences.Of(heat, Some.Lane(1), card));
        var lane = Whole(ByClock, Phone, card);
        Assert.Equal([(1, 11), (3, 4), (5, 0)], lane.Rounds.Select(round => (round.Done, round.Count)));

        // Taking back the first round leaves what the phone has of the second.
        var first = Taking(heat, card, one => one is { Kind: DifferenceKind.Reached, Step: 2 });
        Assert.Equal([1, 3], first.Rounds.Take(2).Select(round => round.Done));
    }

    /// <summary>A lane held for 20 s: on the floor's clock the round it was held in ends later, and those before it do not. What has no time must still lie in its round.</summary>
    [Theory]
    [InlineData("0:10", "0:30", 80_000)]
    [InlineData("2:00", "2:20", 60_000)]
    public void Of_a_lane_that_was_held_rounds_end_later_on_the_floors_clock(string from, string until, int endMs)
    {
        var heat = HeatScript.Play($"start\nhold lane 1 at {from}\nresume lane 1 at {until}", ByClock);
        var after = After(heat, Card(new PaperLine(2, true), new PaperLine(6, true)));

        Assert.Equal([2, 2, 6], after.Find(Some.Lane(1))!.Rounds.Select(round => round.Done));
        Assert.Equal(endMs, after.Clock.HeatMs(after.StandingTaps(Some.Lane(1)).OfType<HeatFact.StepDone>().Single(done => done.Step == 2).Instant));
    }

    [Fact]
    public void Readings_of_rounds_by_the_clock_add_up()
    {
        var heat = Some.Snapshot(1, Clocked(new ScoringRule.MostReading(), new PrescribedSet("row", 12, Reading: true)));
        var card = Card(new PaperLine(1, true) { Value = 14 }, new PaperLine(2, true) { Value = 17 }, new PaperLine(3, true) { Value = 12 });

        var lane = Whole(heat, "lane 1 value 14 in step 1 at 1:02\nlane 1 value 19 in step 2 at 2:32", card);

        Assert.Equal([(1, 14m), (2, 17m), (3, 12m)], lane.Values);
        Assert.Equal(14 + 17 + 12, lane.Worth);
    }

    [Fact]
    public void Synchronised_sets_are_done_as_others_are()
    {
        var heat = Some.Snapshot(1, Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(round: new PrescribedSet("wall-ball", 10) { Together = 2 })));

        var lane = Whole(heat, "", new PaperCard([new PaperLine(3, true)], null));

        Assert.Equal((3, 20), (lane.DoneSteps, lane.Worth));
    }

    [Fact]
    public void Rounds_without_an_end_end_where_the_card_does()
    {
        var endless = Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 300_000)) with { Scoring = new ScoringRule.MostWork() };

        var lane = Whole(Some.Snapshot(1, endless), "", new PaperCard([new PaperLine(12, true)], 4));

        Assert.Equal((12, 4, (4 * 22) + 4), (lane.DoneSteps, lane.Count, lane.Worth));
    }

    private static Timing.Instant Now => HeatScript.At("12:00");

    private static Workout Clocked(ScoringRule scoring, params PrescribedSet[] round) =>
        Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000, round: round) with { Clock = new WorkClock(60_000, 30_000, Repeat: false) }) with { Scoring = scoring };

    private static PaperLine Attempt(int step, decimal load, bool good) => new(step, true) { Load = load, Good = good };

    private static PaperCard Card(params PaperLine[] lines) => new(lines.ToItems(), null);

    private FactId NewId() => Some.Id("paper", ++made);

    private Items<CardWrite> Writes(HeatState heat, PaperCard card, Func<CardDifference, bool> taken) => CardWriting.Of(
        heat, Some.Lane(1), card, [.. CardDifferences.Of(heat, Some.Lane(1), card).Where(taken).Select(one => new TakenFromPaper(one, "the judge's card"))], NewId, Now);

    private LaneState Taking(HeatState heat, PaperCard card, Func<CardDifference, bool> taken)
    {
        var (after, refused) = CardWriting.Preview(heat, Writes(heat, card, taken), Some.Organiser, Now);
        Assert.Null(refused);
        return after.Find(Some.Lane(1))!;
    }

    private HeatState After(HeatState heat, PaperCard card)
    {
        var (after, refused) = CardWriting.Preview(heat, Writes(heat, card, _ => true), Some.Organiser, Now);
        Assert.Null(refused);
        return after;
    }

    /// <summary>The lane when all of the card is taken: then nothing differs.</summary>
    private LaneState Whole(HeatSnapshot snapshot, string phone, PaperCard card)
    {
        var after = After(HeatScript.Play($"start\n{phone}", snapshot), card);
        Assert.Empty(CardDifferences.Of(after, Some.Lane(1), card));
        return after.Find(Some.Lane(1))!;
    }
}
