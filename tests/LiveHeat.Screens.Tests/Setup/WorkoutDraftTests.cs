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
            with
        { Parts = (Items<WorkoutPart>)[new("Opening", new TiebreakSet(1, 2)), new("The rest", null)] };
        var byClock = Some.Prescription(rounds: 3, capMs: 660_000, round: [new("wall-ball", 10), new("row", 12) { InRound = 2 }])
            with
        { Clock = new WorkClock(180_000, 60_000, false), Parts = (Items<WorkoutPart>)[new("Opening", new TiebreakSet(2, 2)), new("The rest", null)] };

        Assert.All([parts, byClock], prescription =>
        {
            var workout = Some.Workout(finish: FinishKind.None, prescriptions: prescription) with { Scoring = prescription.Clock is null ? null : new ScoringRule.MostWork() };
            Assert.Equal(workout, WorkoutDraft.Of(workout, All).Make(All).Workout);
        });
    }

    [Fact]
    public void Where_rounds_go_by_the_clock_a_part_ends_with_one_of_them_and_a_set_may_be_of_one_only()
    {
        var draft = WorkoutDraft.Of(null, All);
        var prescription = draft.Prescriptions[0];
        prescription.Rounds = "3";
        prescription.Round.Add(new SetDraft { Movement = "m1", InRound = "2" });

        Assert.Equal([(new TiebreakSet(1, 1), "end of round 1"), (new(2, 2), "end of round 2"), (new(3, 1), "end of round 3")], SetPlaces.Rounds(prescription));
        Assert.Null(draft.Make(All).Workout.Prescriptions[0].Round[1].InRound);

        (draft.Scoring.Kind, prescription.Clock.On) = (ScoringKind.MostWork, true);
        Assert.Equal(2, draft.Make(All).Workout.Prescriptions[0].Round[1].InRound);
    }

    [Fact]
    public void The_cap_of_rounds_by_the_clock_follows_from_them()
    {
        var draft = WorkoutDraft.Of(null, All);
        var prescription = draft.Prescriptions[0];
        draft.Scoring.Kind = ScoringKind.MostWork;
        prescription.Clock.On = true;
        (prescription.Clock.Work, prescription.Clock.Rest, prescription.Rounds) = ("2:30", "0:30", "4");

        Assert.Equal(11 * 60_000 + 30_000, draft.Make(All).Workout.Prescriptions[0].CapMs);

        prescription.Clock.Rest = "soon";
        Assert.Equal(["prescriptions[0].clock"], draft.Make(All).Errors.All.Select(error => error.Field).Where(field => field.EndsWith("clock", StringComparison.Ordinal)).Distinct());
    }

    public static TheoryData<Workout> Scored =>
    [
        Some.Workout(prescriptions: Some.Prescription()),
        Some.Workout(prescriptions: Some.Prescription() with { Tiebreak = new TiebreakSet(2, 1), After = [new("row", 30)] }) with { Scoring = ScoringRule.Usual },
        Some.Workout(prescriptions: Some.Prescription() with { Tiebreak = new TiebreakSet(null, 1), After = [new("row", 30)] }),
        Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription(rounds: 0) with { Tiebreak = new TiebreakSet(0, 1), Before = [new("row", 30)] }) with { Scoring = new ScoringRule.MostWork() },
        Some.Lifting(5, LoadSum.BestSingle, tiebreak: new TiebreakSet(2, 1)),
        Some.Workout(finish: FinishKind.None, prescriptions: Some.Prescription("open", 3, 540_000, new PrescribedSet("carry", 800, Reading: true))) with { Scoring = new ScoringRule.MostReading() },
    ];

    [Theory]
    [MemberData(nameof(Scored))]
    public void However_it_is_scored_it_stays_the_same(Workout workout)
    {
        var (kept, errors) = WorkoutDraft.Of(workout, All).Make(All);

        Assert.Equal(workout, kept);
        Assert.Empty(errors.All);
    }

    [Fact]
    public void What_a_choice_hides_is_not_lost_when_the_mind_changes()
    {
        var workout = Some.Workout(prescriptions: Some.Prescription(rounds: 5) with { Before = [new("row", 20)], After = [new("row", 30)], Tiebreak = new TiebreakSet(4, 2) });
        var draft = WorkoutDraft.Of(workout, All);
        draft.Scoring.Kind = ScoringKind.MostWork;
        var most = draft.Make(All);
        draft.Scoring.Kind = ScoringKind.HeaviestLoad;
        var load = draft.Make(All).Workout;
        draft.Scoring.Kind = ScoringKind.ForTime;

        Assert.Empty(most.Errors.All);
        Assert.Equal((0, 0, 1, FinishKind.None), (most.Workout.Prescriptions[0].Rounds, most.Workout.Prescriptions[0].After.Count, most.Workout.Prescriptions[0].Before.Count, most.Workout.Finish));
        Assert.Equal((0, 0, new ScoringRule.HeaviestLoad(3, LoadSum.SumOfBest)), (load.Prescriptions[0].Before.Count, load.Prescriptions[0].After.Count, load.Scoring));
        Assert.Equal(workout, draft.Make(All).Workout);
    }

    [Fact]
    public void A_workout_without_rounds_has_some_to_begin_with_when_it_gets_them() =>
        Assert.Equal("4", WorkoutDraft.Of(Some.Lifting(), All).Prescriptions[0].Rounds);
}
