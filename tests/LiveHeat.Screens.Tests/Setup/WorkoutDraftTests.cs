using LiveHeat.Contracts.Setup;
using LiveHeat.Engine;
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

    [Fact]
    public void Synchronised_and_shared_sets_parts_and_rounds_by_the_clock_are_kept_too()
    {
        var parts = Some.Prescription(round: [new PrescribedSet("wall-ball", 10) { Together = 2 }, new PrescribedSet("row", 60) { MinimumEach = 15 }])
            with { Parts = (Items<WorkoutPart>)[new("Opening", new TiebreakSet(1, 2)), new("The rest", null)] };
        var byClock = Some.Prescription(rounds: 3, capMs: 660_000) with { Clock = new WorkClock(180_000, 60_000, false) };

        Assert.All([parts, byClock], prescription =>
        {
            var workout = Some.Workout(finish: FinishKind.None, prescriptions: prescription) with { Scoring = new ScoringRule.MostWork() };
            Assert.Equal(workout, WorkoutDraft.Of(workout, All).Make(All).Workout);
        });
    }

    [Fact]
    public void The_cap_of_rounds_by_the_clock_follows_from_them()
    {
        var draft = WorkoutDraft.Of(null, All);
        var prescription = draft.Prescriptions[0];
        prescription.Clock.On = true;
        (prescription.Clock.Work, prescription.Clock.Rest, prescription.Rounds) = ("2:30", "0:30", "4");

        Assert.Equal(11 * 60_000 + 30_000, draft.Make(All).Workout.Prescriptions[0].CapMs);

        prescription.Clock.Rest = "soon";
        Assert.Equal(["prescriptions[0].clock"], draft.Make(All).Errors.All.Select(error => error.Field).Where(field => field.EndsWith("clock", StringComparison.Ordinal)).Distinct());
    }
}
