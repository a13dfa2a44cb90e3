using LiveHeat.Contracts.Setup;
using LiveHeat.Engine.Workouts;
using LiveHeat.Testing;

namespace LiveHeat.Screens.Setup;

public sealed class WorkoutDraftTests
{
    private static readonly SetupAll All = new(new CompetitionSetup("Breakwater Relays"), [new DivisionSetup("open", "Open")], [], [], []);

    /// <summary>What the form does not show must not be lost by saving it.</summary>
    [Fact]
    public void A_workout_opened_and_kept_as_it_is_is_the_same_workout()
    {
        var workout = Some.Workout(prescriptions: Some.Prescription() with { Tiebreak = new TiebreakSet(1, 2) }) with { Scoring = new ScoringRule.ForTime(Unfinished.CapPlusSeconds) };

        Assert.Equal(workout, WorkoutDraft.Of(workout, All).Make(All).Workout);
    }
}
