namespace LiveHeat.Screens.Setup;

public sealed class OwnMovementDraftTests
{
    [Fact]
    public void A_copy_has_an_id_of_its_own_and_says_what_it_is_a_copy_of()
    {
        var draft = OwnMovementDraft.New(SomeMovements.WallBalls);
        draft.Movement.Start = "Kneeling.";

        var (copy, errors) = draft.Make(["wall-ball", "wall-balls"]);

        Assert.Empty(errors.All);
        Assert.Equal(SomeMovements.WallBalls with { Id = "wall-balls-2", Start = "Kneeling.", BasedOn = "wall-ball" }, copy);
    }

    [Fact]
    public void One_that_is_there_keeps_its_id_picture_and_variants()
    {
        var own = SomeMovements.OwnWallBalls with { Picture = "/api/setup/movements/wall-balls-2/picture?v=0123456789abcdef0123456789abcdef" };

        Assert.Equal(own, OwnMovementDraft.Of(own).Make([own.Id]).Movement);
    }

    [Fact]
    public void What_cannot_be_is_told_by_its_field()
    {
        var draft = OwnMovementDraft.New(null);
        (draft.Movement.Seconds, draft.Movement.Fastest) = ("quick", "9");

        var errors = draft.Make([]).Errors;

        Assert.Equal(["fastestSecondsPerUnit", "name", "secondsPerUnit"], errors.All.Select(error => error.Field).Order());
    }
}
