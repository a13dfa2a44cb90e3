using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Server.Cards;

/// <summary>Cards of work that is more than one set after the other: a heat can go on without any phone.</summary>
public sealed class CardKindsTests
{
    [Fact]
    public void Every_attempt_has_its_athlete_its_number_a_load_and_no_boxes_of_reps()
    {
        var card = Card(Some.Lifting(attempts: 2));

        var rounds = card.Pages.Single();
        Assert.Equal(["Attempts Ann", "Attempts Bo", "Attempts Cy"], rounds.Select(round => $"{round.Heading} {round.Who}"));
        Assert.Equal(["attempt", "attempt", "tag"], rounds[0].Lines.Select(line => line.Kind));
        Assert.Equal(["one lift, attempt 1", "one lift, attempt 2"], rounds[1].Lines.Take(2).Select(line => line.Label));
        Assert.All(rounds[0].Lines.Take(2), line => Assert.Equal((0, "kg"), (line.Boxes, line.Field)));
        Assert.Equal([CardKindWords.MarkAttempts], card.Marks);
        Assert.Equal([CardKindWords.Load(Unit.Kg)], card.Totals);
    }

    [Fact]
    public void Attempt_by_attempt_every_line_says_who_tries()
    {
        var rounds = Card(Some.Lifting(attempts: 2, order: new RelayOrder.EachMovement())).Pages.Single();

        Assert.Equal(["Round 1", "Round 2"], rounds.Select(round => round.Heading));
        Assert.Equal(["Ann", "Bo", "Cy"], rounds[0].Lines.Where(line => line.Kind == "attempt").Select(line => line.Who));
    }

    [Fact]
    public void A_pool_has_a_line_for_everybodys_part_with_the_least()
    {
        var card = Card(Some.Workout(prescriptions: Some.Prescription(rounds: 1, round: [new PrescribedSet("wall-ball", 60) { MinimumEach = 15 }, new("row", 12) { MinimumEach = 0 }])));

        var lines = card.Pages.Single().SelectMany(round => round.Lines).ToList();
        Assert.Equal(60, lines[0].Boxes);
        Assert.Equal([new("Ann", "at least 15"), new("Bo", "at least 15"), new CardTally("Cy", "at least 15")], lines[0].Tallies);
        Assert.Equal(["", "", ""], lines[1].Tallies.Select(tally => tally.Least));
        Assert.Contains(CardKindWords.MarkShares, card.Marks);
    }

    [Fact]
    public void Synchronised_sets_name_all_who_do_every_rep_together()
    {
        var rounds = Card(Some.Workout(prescriptions: Some.Prescription(round: new PrescribedSet("wall-ball", 10) { Together = 2 }))).Pages.Single();

        Assert.Equal(["Ann + Bo", "Bo + Cy", "Cy + Ann"], rounds.Select(round => round.Who));
        Assert.Equal("10 synchro wall balls", rounds[0].Lines[0].Label);

        var mixed = Card(Some.Workout(prescriptions: Some.Prescription(round: [new PrescribedSet("wall-ball", 10) { Together = 2 }, new("row", 12)]))).Pages.Single();
        Assert.Equal(["Ann + Bo", "Ann", ""], mixed[0].Lines.Select(line => line.Who));
    }

    /// <summary>Three rounds by the clock of 1:00 with 0:30 rest.</summary>
    [Fact]
    public void Rounds_by_the_clock_say_from_when_to_when_who_works_and_until_when_there_is_rest()
    {
        var card = Card(ByClock(new ScoringRule.MostWork(), repeat: false, new("wall-ball", 10), new("row", 12)));

        var rounds = card.Pages.Single();
        Assert.Equal(["Round 1 0:00 to 1:00 Ann", "Round 2 1:30 to 2:30 Bo", "Round 3 3:00 to 4:00 Cy"], rounds.Select(round => $"{round.Heading} {round.Times} {round.Who}"));
        Assert.Equal([new("Of the open set, done by 1:00", "Rest until 1:30"), new("Of the open set, done by 2:30", "Rest until 3:00"), new CardRoundEnd("Of the open set, done by 4:00", "")], rounds.Select(round => round.End));
        Assert.Equal([1, 2, 3, 4, 5, 6], rounds.SelectMany(round => round.Lines).Select(line => line.Step));
        Assert.False(card.Endless);
        Assert.Contains(CardKindWords.MarkClock, card.Marks);
        Assert.Equal([CardKindWords.AllReps], card.Totals);
    }

    /// <summary>10 wall balls at 2 s and 12 cal at 3 s take 56 s: a team at the expected pace begins them a second time within the minute. A third time is to spare.</summary>
    [Fact]
    public void A_round_that_is_repeated_until_it_is_over_stands_there_as_often_as_expected_and_once_more()
    {
        var rounds = Card(ByClock(new ScoringRule.MostWork(), repeat: true, new("wall-ball", 10, Load: "6 kg"), new("row", 12))).Pages.Single();

        Assert.Equal([6, 6, 6], rounds.Select(round => round.Lines.Count));
        Assert.Equal([1, 2, 3, 4, 5, 6, 9], rounds.SelectMany(round => round.Lines).Select(line => line.Step).Take(7));
        Assert.All(rounds.SelectMany(round => round.Lines).Where(line => line.Label.EndsWith("balls", StringComparison.Ordinal)), line => Assert.Equal("6 kg", line.Notes));
    }

    [Fact]
    public void A_round_by_the_clock_with_work_of_its_own_has_that_and_its_loads_alone()
    {
        var rounds = Card(ByClock(new ScoringRule.MostWork(), repeat: false, new("wall-ball", 10, Load: "6 kg") { InRound = 1 }, new("row", 12), new("wall-ball", 20, Load: "9 kg") { InRound = 3 })).Pages.Single();

        Assert.Equal(["10 wall balls 6 kg, 12 cal row", "12 cal row", "12 cal row, 20 wall balls 9 kg"],
            rounds.Select(round => string.Join(", ", round.Lines.Select(line => $"{line.Label} {line.Notes}".TrimEnd()))));
    }

    [Fact]
    public void A_reading_has_a_box_for_every_round_and_nothing_is_left_open()
    {
        var card = Card(ByClock(new ScoringRule.MostReading(), repeat: false, new PrescribedSet("row", 12, Reading: true)));

        var rounds = card.Pages.Single();
        Assert.All(rounds, round => Assert.Equal(("value", 0, "cal"), (round.Lines.Single().Kind, round.Lines.Single().Boxes, round.Lines.Single().Field)));
        Assert.Equal(["Ann", "Bo", "Cy"], rounds.Select(round => round.Who));
        Assert.All(rounds, round => Assert.Equal("", round.End!.LeftOpen));
        Assert.Equal([CardKindWords.AllReadings(Unit.Cal)], card.Totals);
        Assert.Equal([CardKindWords.MarkReadings, CardKindWords.MarkClock], card.Marks);
    }

    [Fact]
    public void What_ends_a_round_by_the_clock_stands_once_where_it_goes_on_the_next_sheet()
    {
        var round = Enumerable.Repeat(new PrescribedSet("wall-ball", 60), 40).ToArray();
        var workout = ByClock(new ScoringRule.MostWork(), repeat: false, round);

        var pages = Card(workout).Pages;

        Assert.True(pages.Count > 1, "it was to be too long for one sheet");
        Assert.Equal(3, pages.SelectMany(page => page).Count(part => part.End is not null));
        Assert.Equal(Enumerable.Range(1, 120), pages.SelectMany(page => page).SelectMany(part => part.Lines).Select(line => line.Step));
    }

    private static LaneCard Card(Workout workout) => CardMaking.Of(Some.Snapshot(1, workout), null).Lanes[0];

    private static Workout ByClock(ScoringRule scoring, bool repeat, params PrescribedSet[] round) =>
        Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 3, capMs: 240_000, round: round) with { Clock = new WorkClock(60_000, 30_000, repeat) }) with { Scoring = scoring };
}
