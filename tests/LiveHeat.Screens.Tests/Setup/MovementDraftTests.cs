using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

public sealed class MovementDraftTests
{
    private static readonly SetupAll All = new(new CompetitionSetup("Breakwater Relays"), [new("open", "Open"), new("scaled", "Scaled")], [], [], []);

    [Fact]
    public void A_chosen_movement_fills_pace_faults_and_standard_and_is_kept_as_it_is()
    {
        var movement = SomeMovements.WallBalls.ToMovement("wall-ball");

        var draft = MovementDraft.Of(movement);

        Assert.Equal(("wall balls", "2.3", "0.9", "Standing.", "Look up."), (draft.Name, draft.Seconds, draft.Fastest, draft.Start, draft.Caution));
        Assert.Equal("below the line = It met the wall too low.\nhips above the knees", draft.Faults);
        Assert.Equal(movement, Made(draft));
    }

    [Fact]
    public void Seconds_are_shown_with_the_languages_decimal_sign_and_read_again()
    {
        Tongue.Speak("de");
        var movement = SomeMovements.WallBalls.ToMovement("wall-ball");

        var draft = MovementDraft.Of(movement);

        Assert.Equal(("2,3", "0,9"), (draft.Seconds, draft.Fastest));
        Assert.Equal(movement, Made(draft));
    }

    [Fact]
    public void Every_part_can_be_edited_after()
    {
        var draft = MovementDraft.Of(SomeMovements.WallBalls.ToMovement("wall-ball"));
        (draft.Seconds, draft.Start, draft.Between, draft.Caution) = ("3,5", " Seated. ", "One.\n\nTwo.", "");
        draft.Faults = "dropped\nbelow the line = Too low.";

        var made = Made(draft);

        Assert.Equal(3.5, made.SecondsPerUnit);
        Assert.Equal(["dropped", "below the line"], made.Faults);
        Assert.Equal(
            new Standard("Seated.", "The ball meets the wall.", ["One.", "Two."], ["Letting it fall."], [new("dropped", ""), new("below the line", "Too low.")]), made.FullStandard);
        Assert.Equal("Seated. → The ball meets the wall.", made.Standard);
    }

    [Fact]
    public void A_movement_of_before_stays_as_it_was()
    {
        var before = new Movement("row", "row", Unit.Cal, 3, 1, "Seated until the end.", ["left the seat"]);

        Assert.Equal(before, Made(MovementDraft.Of(before)));
        Assert.Null(Made(new MovementDraft { Id = "m1", Name = "row" }).FullStandard);
    }

    [Fact]
    public void The_first_chosen_one_fills_the_empty_line_that_the_sets_name()
    {
        var draft = WorkoutDraft.Of(null, All);

        draft.AddMovement(SomeMovements.WallBalls);
        draft.AddMovement(SomeMovements.Row);

        Assert.Equal(["m1 wall balls", "row-cal row"], draft.Movements.Select(movement => $"{movement.Id} {movement.Name}"));
        Assert.Equal("m1", draft.Prescriptions[0].Round[0].Movement);
    }

    [Fact]
    public void The_tag_keeps_its_id_by_which_the_engine_knows_it()
    {
        var draft = WorkoutDraft.Of(null, All);

        Assert.Equal(Movement.TagId, draft.AddMovement(SomeMovements.Tag).Id);
        Assert.Equal("", draft.Movements[0].Name);
    }

    [Fact]
    public void Each_division_can_have_its_own_standard()
    {
        var draft = WorkoutDraft.Of(null, All);
        draft.Name = "Low Tide";
        draft.AddDivision(All.Divisions[1]);
        draft.AddMovement(SomeMovements.WallBalls);
        var own = draft.AddMovement(SomeMovements.OwnWallBalls);
        draft.Prescriptions[1].Round[0].Movement = own.Id;

        var (workout, errors) = draft.Make(All);

        Assert.Empty(errors.All);
        Assert.Equal(["Standing.", "Seated."], workout.Prescriptions.Select(prescription =>
            workout.Movements.Single(movement => movement.Id == prescription.Round[0].Movement).FullStandard!.Start));
    }

    private static Movement Made(MovementDraft draft) => draft.Make((text, _) => WorkoutDraft.ReadSeconds(text)!.Value, "movements[0].");
}
