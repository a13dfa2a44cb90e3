using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Testing.Paced;

/// <summary>What is done in heats whose truth is known: a workout, and how many athletes a team has. All invented.</summary>
/// <param name="Workout">What is done; with the work for time its caps are set from the truth.</param>
/// <param name="Athletes">In a team.</param>
public sealed record PacedShape(Workout Workout, int Athletes)
{
    private static readonly Items<Movement> Movements =
    [
        Some.Movement(), Some.Movement("burpee", "burpees", Unit.Reps, 3.2, 1.2), Some.Movement("run", "shuttle run", Unit.M, 0.42, 0.2),
    ];

    /// <summary>Teams of four, eight rounds one each in turn: many short sets, four tags between the same athlete's rounds.</summary>
    public static PacedShape InTurn { get; } = Of(new RelayOrder.InTurn(), 4, Round("open", 8, 15, 8, 50));

    /// <summary>Teams of three, a change after every set: few long sets, and a tag after each.</summary>
    public static PacedShape LongSets { get; } = Of(new RelayOrder.EachMovement(), 3, Round("open", 4, 40, 20, 150));

    /// <summary>As in turn, every second lane with a lighter prescription of its own.</summary>
    public static PacedShape TwoDivisions { get; } = Of(new RelayOrder.InTurn(), 4, Round("open", 8, 15, 8, 50), Round("scaled", 8, 11, 6, 50));

    /// <summary>As many rounds as possible in ten minutes, one each in turn.</summary>
    public static PacedShape MostWork { get; } = Of(new RelayOrder.InTurn(), 4, Round("open", 0, 15, 8, 50) with { CapMs = 600_000 }) is var shape
        ? shape with { Workout = shape.Workout with { Scoring = new ScoringRule.MostWork(), Finish = FinishKind.None } }
        : throw new InvalidOperationException();

    /// <summary>The division of a lane.</summary>
    public string Division(int lane) => Workout.Prescriptions[(lane - 1) % Workout.Prescriptions.Count].Division;

    private static PacedShape Of(RelayOrder order, int athletes, params Prescription[] prescriptions) =>
        new(Some.Workout(order, prescriptions: prescriptions) with { Movements = Movements }, athletes);

    private static Prescription Round(string division, int rounds, int balls, int burpees, int metres) =>
        Some.Prescription(division, rounds, 3_600_000, new PrescribedSet("wall-ball", balls), new PrescribedSet("burpee", burpees), new PrescribedSet("run", metres));
}
