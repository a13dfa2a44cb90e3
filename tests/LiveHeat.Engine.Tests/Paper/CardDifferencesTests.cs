using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Paper;

/// <summary>A lane's paper card against its phone. Steps: 1 set, 2 set, 3 tag, 4 set, 5 set, 6 tag, 7 set, 8 set, 9 finish.</summary>
public sealed class CardDifferencesTests
{
    private const string Phone = """
        start
        lane 1 step 1 done at 0:30 within 20
        lane 1 no-rep step 2 at 0:40
        lane 1 step 2 done at 1:00 within 20
        lane 1 tag 3 at 1:02 within 20
        """;

    [Fact]
    public void A_card_that_says_the_same_differs_in_nothing() =>
        Assert.Empty(Of(Phone, Line(1, 30_000), Line(2, 60_000) with { NoReps = 1 }, Line(3, 62_000)));

    [Fact]
    public void A_card_with_nothing_on_it_differs_in_nothing()
    {
        Assert.Empty(Of(Phone));
        Assert.Empty(Of(Phone, new PaperLine(1, false), new PaperLine(4, false)));
    }

    [Fact]
    public void A_step_that_only_the_card_has_and_one_that_only_the_phone_has()
    {
        Assert.Equal([new(DifferenceKind.Reached, 4, 3, 5)], Of(Phone, new PaperLine(5, true)));
        Assert.Equal([new(DifferenceKind.Reached, 3, 3, 2)], Of(Phone, new PaperLine(2, true)));
        Assert.Equal([new(DifferenceKind.Reached, 1, 3, 0), new(DifferenceKind.NoReps, 1, 0, 4)], Of(Phone, new PaperLine(1, false) { NoReps = 4 }));
    }

    /// <summary>
    /// The phone's clock (20 ms), the paper's (a tenth read and written: 500 ms) and two hands, each wrong by half of the 0.19 s by which the timers of one run differed
    /// (J Strength Cond Res 29(6):1509, 2015): up to 710 ms they say the same.
    /// </summary>
    [Theory]
    [InlineData(30_710, false)]
    [InlineData(30_711, true)]
    [InlineData(29_290, false)]
    [InlineData(29_289, true)]
    public void Times_further_apart_than_hands_and_clocks_explain(int paperMs, bool differ)
    {
        Items<CardDifference> expected = differ ? [new(DifferenceKind.Time, 1, 30_000, paperMs, 710)] : [];
        Assert.Equal(expected, Of(Phone, Line(1, paperMs), new PaperLine(3, true)));
    }

    [Fact]
    public void A_time_in_whole_seconds_is_known_less_well() =>
        Assert.Empty(Of(Phone, new PaperLine(1, true) { Time = new PaperTime(31_000, PaperTime.SecondsMs) }, new PaperLine(3, true)));

    [Fact]
    public void A_step_that_the_phone_only_implied_has_its_time_on_paper() =>
        Assert.Equal([new(DifferenceKind.TimeMissing, 1, null, 30_000)], Of("start\nlane 1 step 2 done at 1:00", Line(1, 30_000), new PaperLine(2, true)));

    [Fact]
    public void No_reps_are_compared_where_they_were_written()
    {
        Assert.Equal([new(DifferenceKind.NoReps, 2, 1, 3)], Of(Phone, new PaperLine(2, true) { NoReps = 3 }, new PaperLine(3, true)));
        Assert.Equal([new(DifferenceKind.NoReps, 2, 1, 0)], Of(Phone, new PaperLine(2, true) { NoReps = 0 }, new PaperLine(3, true)));
        Assert.Empty(Of(Phone, new PaperLine(2, true), new PaperLine(3, true)));
    }

    [Fact]
    public void How_much_of_the_open_set()
    {
        var card = new PaperCard([new PaperLine(3, true)], 7);
        Assert.Equal([new(DifferenceKind.AtCap, 4, 5, 7)], CardDifferences.Of(HeatScript.Play(Phone + "\nlane 1 5 reps at cap in step 4 at 10:00"), Some.Lane(1), card));
        Assert.Empty(CardDifferences.Of(HeatScript.Play(Phone + "\nlane 1 7 reps at cap in step 4 at 10:00"), Some.Lane(1), card));
        Assert.Equal([DifferenceKind.Reached, DifferenceKind.AtCap], CardDifferences.Of(HeatScript.Play(Phone), Some.Lane(1), card with { Lines = [new PaperLine(4, true)] }).Select(one => one.Kind));
    }

    [Fact]
    public void A_reading()
    {
        var heat = Some.Snapshot(1, Some.Workout(prescriptions: Some.Prescription(round: [new PrescribedSet("bar", 1, Reading: true)])));
        var state = HeatScript.Play("start\nlane 1 value 82.5 in step 1 at 0:20", heat);
        Assert.Equal([new(DifferenceKind.Value, 1, 82.5m, 80m)], CardDifferences.Of(state, Some.Lane(1), Card(new PaperLine(1, true) { Value = 80m })));
        Assert.Empty(CardDifferences.Of(state, Some.Lane(1), Card(new PaperLine(1, true) { Value = 82.5m })));
    }

    /// <summary>The floor's clock goes on while one lane is held, and stands while the heat is halted: a card has what the clock showed.</summary>
    [Fact]
    public void Times_are_those_of_the_floors_clock_whatever_was_held_or_halted()
    {
        const string Held = """
            start
            hold lane 1 at 0:10
            resume lane 1 at 0:40
            lane 1 step 1 done at 1:00 within 20
            halt at 1:10
            resume at 2:10
            lane 1 step 2 done at 2:30 within 20
            """;
        Assert.Empty(Of(Held, Line(1, 60_000), Line(2, 90_000)));
    }

    [Fact]
    public void A_lane_without_taps_is_known()
    {
        Assert.True(CardDifferences.HasTaps(HeatScript.Play(Phone), Some.Lane(1)));
        Assert.False(CardDifferences.HasTaps(HeatScript.Play(Phone), Some.Lane(2)));
        Assert.False(CardDifferences.HasTaps(HeatScript.Play("start\nlane 1 step 1 done at 0:30 [one]\nvoid one"), Some.Lane(1)));
        Assert.False(CardDifferences.HasTaps(HeatScript.Play("lane 1 seat w-1 taken as witness at -0:30\nstart\nlane 1 step 1 done at 0:30 from seat w-1"), Some.Lane(1)));
    }

    internal static PaperLine Line(int step, long ms) => new(step, true) { Time = new PaperTime(ms, PaperTime.TenthsMs) };

    internal static PaperCard Card(params PaperLine[] lines) => new(lines.ToItems(), null);

    private static Items<CardDifference> Of(string score, params PaperLine[] lines) => CardDifferences.Of(HeatScript.Play(score), Some.Lane(1), Card(lines));
}
