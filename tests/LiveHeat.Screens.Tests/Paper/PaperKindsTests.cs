using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Paper;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Paper;

/// <summary>What is typed of attempts, readings, shared pools and rounds by the clock, and what cannot be.</summary>
public sealed class PaperKindsTests
{
    private static readonly HeatSnapshot ByClock = SomeCard.ByClock(new ScoringRule.MostWork(), repeat: false, new PrescribedSet("wall-ball", 10), new("row", 12));

    [Fact]
    public void An_attempt_is_a_load_and_a_lift_and_needs_no_tick()
    {
        var draft = SomeCard.Draft(heat: SomeCard.Lifting);
        (draft.At(1).Load, draft.At(1).Good) = ("102,5", true);
        (draft.At(2).Load, draft.At(2).Good) = ("105", false);

        var card = draft.Read();

        Assert.Empty(draft.Wrong);
        Assert.Equal([new(1, true) { Load = 102.5m, Good = true }, new PaperLine(2, true) { Load = 105, Good = false }], card.Lines.Take(2));
        Assert.Equal(2, card.DoneSteps);
        (draft.At(2).Load, draft.At(2).Good) = ("", null);
        Assert.Equal(1, draft.Read().DoneSteps);
    }

    [Theory]
    [InlineData("", true, "LoadMissing")]
    [InlineData("100", null, "LiftMissing")]
    [InlineData("heavy", true, "BadLoad")]
    [InlineData("0", true, "BadLoad")]
    [InlineData("1000.5", true, "BadLoad")]
    [InlineData("100.125", false, "BadLoad")]
    [InlineData("1000", false, "")]
    [InlineData("", null, "")]
    public void What_an_attempt_lacks_is_told_at_its_line(string load, bool? good, string wrong)
    {
        var draft = SomeCard.Draft(heat: SomeCard.Lifting);
        (draft.At(4).Load, draft.At(4).Good) = (load, good);
        draft.Read();

        var words = wrong switch { "LoadMissing" => PaperKindWords.LoadMissing, "LiftMissing" => PaperKindWords.LiftMissing, "BadLoad" => PaperKindWords.BadLoad(Unit.Kg), _ => null };
        Assert.Equal(words is null ? [] : [(4, words)], draft.Wrong.Select(one => (one.Key, one.Value)));
    }

    [Fact]
    public void Where_loads_count_there_is_no_finish_and_nothing_at_the_cap()
    {
        var draft = SomeCard.Draft(heat: SomeCard.Lifting);

        Assert.Null(draft.Finish);
        Assert.False(draft.TakesAtCap);
        Assert.NotNull(SomeCard.Draft().Finish);
        Assert.True(SomeCard.Draft().TakesAtCap);
    }

    [Theory]
    [InlineData("25", "20", "15", true, null)]
    [InlineData("25", "20", "", true, "45")]
    [InlineData("25", "20", "20", true, "65")]
    [InlineData("25", "20", "", false, null)]
    [InlineData("25", "20", "20", false, "65")]
    public void Parts_of_a_pool_come_to_the_set_where_it_is_done_and_to_no_more_where_it_is_not(string one, string two, string three, bool done, string? sum)
    {
        var draft = SomeCard.Draft(heat: SomeCard.Pool);
        (draft.At(1).Shares[0], draft.At(1).Shares[1], draft.At(1).Shares[2], draft.At(1).Done) = (one, two, three, done);
        var card = draft.Read();

        Assert.Equal(sum is null ? [] : [PaperKindWords.SumIs(int.Parse(sum, System.Globalization.CultureInfo.InvariantCulture), 60)], draft.Wrong.Where(wrong => wrong.Key == 1).Select(wrong => wrong.Value));
        Assert.Equal([25, 20], card.Lines[0].Shares.Take(2).Select(share => share.Units));
        Assert.Equal(!done && sum is null ? 45 : null, card.AtCap);
    }

    [Fact]
    public void A_part_that_is_no_number_is_told()
    {
        var draft = SomeCard.Draft(heat: SomeCard.Pool);
        draft.At(1).Shares[1] = "most";
        draft.Read();

        Assert.Equal(PaperWords.CountUpTo(60), draft.Wrong[1]);
        Assert.Empty(SomeCard.Draft(heat: SomeCard.Pool).At(2).Shares);
    }

    [Fact]
    public void Every_round_by_the_clock_has_its_own_open_set()
    {
        var draft = SomeCard.Draft(heat: ByClock);
        draft.DoneUpTo(1);
        draft.DoneUpTo(4);
        (draft.Rounds[0].Left, draft.Rounds[2].Left) = ("11", "3");

        var card = draft.Read();

        Assert.Empty(draft.Wrong);
        Assert.Equal([1, 3, 4], card.Lines.Where(line => line.Done).Select(line => line.Step));
        Assert.Equal([new(1, 11), new LeftOpen(3, 3)], card.AtEnds);
        Assert.Null(card.AtCap);
        draft.DoneUpTo(3);
        Assert.Equal([1, 3], draft.Read().Lines.Where(line => line.Done).Select(line => line.Step));
    }

    [Fact]
    public void What_cannot_be_at_a_rounds_end_is_told_at_that_round()
    {
        var draft = SomeCard.Draft(heat: ByClock);
        (draft.Rounds[0].Left, draft.Rounds[1].Left) = ("11", "10");
        draft.DoneUpTo(6);
        draft.Rounds[2].Left = "1";
        draft.Read();

        Assert.Equal([(-3, PaperKindWords.NothingOpen(3)), (-1, PaperWords.CountUpTo(10))], draft.Wrong.OrderBy(wrong => wrong.Key).Select(wrong => (wrong.Key, wrong.Value)));
    }

    [Fact]
    public void A_time_before_its_round_began_is_misread()
    {
        var draft = SomeCard.Draft(heat: ByClock);
        draft.At(3).Time = "1:20";
        draft.At(5).Time = "3:00";
        draft.Read();

        Assert.Equal([(3, PaperKindWords.BeforeRound(2, "1:30"))], draft.Wrong.Select(one => (one.Key, one.Value)));
    }

    /// <summary>What is not done when a round is over stays undone; a lane that was held has its round's end later.</summary>
    [Fact]
    public void A_time_after_its_round_is_misread_and_a_hold_moves_the_rounds_end()
    {
        var draft = SomeCard.Draft(heat: ByClock);
        (draft.At(1).Time, draft.At(3).Time) = ("1:00", "2:31");
        draft.Read();
        Assert.Equal([(3, PaperKindWords.AfterRound(2, "2:30"))], draft.Wrong.Select(one => (one.Key, one.Value)));

        draft.Read(HeatScript.Play("start\nhold lane 1 at 2:00\nresume lane 1 at 2:10", ByClock).Find(Some.Lane(1)));
        Assert.Empty(draft.Wrong);
    }

    [Fact]
    public void A_reading_ticks_its_line_and_one_on_a_line_that_is_not_ticked_is_told()
    {
        var draft = SomeCard.Draft(heat: SomeCard.ByClock(new ScoringRule.MostReading(), repeat: false, new PrescribedSet("row", 12, Reading: true)));
        draft.At(1).Value = "14";
        draft.At(2).Value = "17";
        Assert.Equal([true, true, false], draft.Entries.Select(entry => entry.Done));
        draft.At(2).Done = false;
        draft.Read();

        Assert.Equal([(2, PaperKindWords.NotTicked)], draft.Wrong.Select(one => (one.Key, one.Value)));
        Assert.All(draft.Rounds, round => Assert.False(round.TakesLeft));
    }

    /// <summary>Work that is laid out for the fastest that can be shows as many lines as an ordinary team needs, and one round more than it did.</summary>
    [Fact]
    public void Rounds_without_an_end_show_as_many_lines_as_usual_and_more_when_wanted()
    {
        var endless = Some.Snapshot(1, Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0, capMs: 300_000)) with { Scoring = new ScoringRule.MostWork() });
        var draft = SomeCard.Draft(heat: endless);
        int Rounds() => draft.Entries.Where(draft.Shows).Max(entry => entry.Step.Round!.Value);
        var usual = draft.Lane.Steps[draft.Lane.ExpectedSteps!.Value - 1].Round!.Value;

        Assert.Equal(usual + 1, Rounds());
        draft.DoneUpTo(draft.Entries.Last(draft.Shows).Step.Step);
        Assert.Equal(usual + 2, Rounds());
        draft.ShowsAll = true;
        Assert.Equal(draft.Lane.Steps[^1].Round, Rounds());
    }

    [Fact]
    public void A_round_that_is_repeated_shows_as_many_lines_as_usual()
    {
        var draft = SomeCard.Draft(heat: SomeCard.ByClock(new ScoringRule.MostWork(), repeat: true, new PrescribedSet("wall-ball", 10), new("row", 12)));

        // 56 s each time at the expected pace, in rounds of 60 s: 8 lines are laid out, half as long again is shown.
        Assert.Equal([1, 2, 3, 4, 5], draft.Entries.Take(8).Where(draft.Shows).Select(entry => entry.Step.Step));
        draft.DoneUpTo(4);
        Assert.Equal(8, draft.Entries.Take(8).Count(draft.Shows));
    }
}
