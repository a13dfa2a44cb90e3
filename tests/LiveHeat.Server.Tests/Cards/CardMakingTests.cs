using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Server.Cards;

/// <summary>What stands on a lane's paper card.</summary>
public sealed class CardMakingTests
{
    [Fact]
    public void Every_step_stands_on_it_once_in_order_grouped_by_round_with_who_does_it()
    {
        var card = CardMaking.Of(Some.Snapshot(), null).Lanes[1];

        Assert.Equal((2, "Team 2", "Open", "10:00"), (card.Lane, card.Team, card.Division, card.Cap));
        Assert.Equal(["Ann", "Bo", "Cy"], card.Athletes);
        var rounds = Assert.Single(card.Pages);
        Assert.Equal(["Round 1 Ann", "Round 2 Bo", "Round 3 Cy"], rounds.Select(round => $"{round.Heading} {round.Who}"));
        var lines = rounds.SelectMany(round => round.Lines).ToList();
        Assert.Equal(Enumerable.Range(1, 9), lines.Select(line => line.Step));
        Assert.Equal(["10 wall balls", "12 cal row", "tag Bo"], lines.Take(3).Select(line => line.Label));
        Assert.Equal(["set", "set", "tag"], lines.Take(3).Select(line => line.Kind));
        Assert.Equal("finish", lines[^1].Kind);
    }

    /// <summary>Every rep a box; what is measured one an increment; a machine's amount, or a run in one, a box and a field.</summary>
    [Theory]
    [InlineData("wall-ball", 18, 1, false, 18, null, "")]
    [InlineData("wall-ball", 150, 1, false, 150, null, "")]
    [InlineData("wall-ball", 151, 1, false, 16, null, "a box is 10 reps")]
    [InlineData("carry", 40, 10, false, 4, null, "a box is 10 m")]
    [InlineData("carry", 25, 10, false, 3, null, "a box is 10 m")]
    [InlineData("carry", 400, 1, false, 1, "m", "")]
    [InlineData("row", 12, 1, false, 1, "cal", "")]
    [InlineData("bar", 1, 1, true, 0, "kg", "")]
    [InlineData("stone", 1, 1, true, 0, "lb", "")]
    public void Boxes(string movement, int quantity, int increment, bool reading, int boxes, string? field, string notes)
    {
        var workout = Some.Workout(prescriptions: Some.Prescription(round: new PrescribedSet(movement, quantity, Increment: increment, Reading: reading)));
        workout = workout with { Movements = workout.Movements.With(Some.Movement("stone", "stone", Unit.Lb)) };

        var line = CardMaking.Of(Some.Snapshot(1, workout), null).Lanes[0].Pages.SelectMany(page => page).First().Lines[0];

        Assert.Equal((boxes, field, notes), (line.Boxes, line.Field, line.Notes));
    }

    [Fact]
    public void Loads_stand_beside_their_sets_also_where_one_movement_is_done_twice_with_two()
    {
        var workout = Some.Workout(prescriptions: Some.Prescription(round: [new("wall-ball", 5, Load: "6 kg"), new("row", 8), new("wall-ball", 5, Load: "9 kg")]));

        var lines = CardMaking.Of(Some.Snapshot(1, workout), null).Lanes[0].Pages[0].SelectMany(round => round.Lines).Where(line => line.Kind == "set").Select(line => line.Notes);

        Assert.Equal(["6 kg", "", "9 kg", "6 kg", "", "9 kg", "6 kg", "", "9 kg"], lines);
    }

    [Fact]
    public void Where_athletes_change_within_a_round_every_line_says_who()
    {
        var round = CardMaking.Of(Some.Snapshot(1, Some.Workout(new RelayOrder.EachMovement())), null).Lanes[0].Pages[0][0];

        Assert.Equal("", round.Who);
        Assert.Equal(["Ann", "", "Bo", ""], round.Lines.Select(line => line.Who));
    }

    /// <summary>Endless rounds: as many as a team at the expected pace begins, and two to spare.</summary>
    [Fact]
    public void Rounds_without_an_end_have_two_to_spare()
    {
        var endless = Some.Prescription(rounds: 0, capMs: 300_000);
        var workout = Some.Workout(finish: FinishKind.None, prescriptions: endless) with { Scoring = new ScoringRule.MostWork() };
        var plan = HeatScript.Play("start", Some.Snapshot(1, workout)).Lanes[0].Plan;

        var card = CardMaking.Of(Some.Snapshot(1, workout), null).Lanes[0];

        Assert.True(card.Endless);
        Assert.Equal(plan.Find(SheetMaking.ExpectedSteps(plan))!.Round + 2, card.Pages.SelectMany(page => page).Count());
        Assert.True(card.Pages.SelectMany(page => page).Count() < plan.Steps[^1].Round, "all that the fastest could begin stands on the paper");
    }

    [Fact]
    public void A_line_up_that_was_changed_after_the_call_stands_on_it()
    {
        var heat = HeatScript.Play("lane 1 line-up Ann,Cy,Bo from step 4");

        var card = CardMaking.Of(heat.Snapshot!, heat).Lanes[0];

        Assert.Equal(["Ann", "Cy", "Bo"], card.Athletes);
        Assert.Equal(["Ann", "Cy", "Bo"], card.Pages[0].Select(round => round.Who));
    }

    [Fact]
    public void Long_work_goes_on_another_sheet_and_no_step_is_lost_or_told_twice()
    {
        foreach (var rounds in new[] { 1, 6, 12, 20, 40, 120 })
        {
            var workout = Some.Workout(prescriptions: Some.Prescription(rounds: rounds, round: [new("wall-ball", 30), new("row", 12)]));
            var card = CardMaking.Of(Some.Snapshot(1, workout), null).Lanes[0];
            var steps = card.Pages.SelectMany(page => page).SelectMany(round => round.Lines).Select(line => line.Step).ToList();
            Assert.Equal(Enumerable.Range(1, rounds * 3), steps);
            Assert.All(card.Pages, page => Assert.NotEmpty(page));
        }

        var one = Some.Workout(prescriptions: Some.Prescription(rounds: 1, round: Enumerable.Repeat(new PrescribedSet("wall-ball", 60), 60).ToArray()));
        var sheets = CardMaking.Of(Some.Snapshot(1, one), null).Lanes[0].Pages;
        Assert.True(sheets.Count > 1, "sixty sets of sixty do not fit one sheet");
        Assert.Equal(Enumerable.Range(1, 61), sheets.SelectMany(page => page).SelectMany(round => round.Lines).Select(line => line.Step));
    }

    [Fact]
    public void A_lane_whose_work_cannot_be_laid_out_has_no_sheet()
    {
        var heat = Some.Snapshot(1) with { Lanes = [Some.Entry(1, "nowhere")] };

        Assert.Empty(CardMaking.Of(heat, null).Lanes[0].Pages);
    }
}
