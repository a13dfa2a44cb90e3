using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Library;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Sheets;

/// <summary>
/// What a step asks for, as the pad says it: "18 wall balls". With the workout's own names these are in English the engine's labels (<see cref="Step.Label"/>); names that
/// the workout took from the library are told in the language now.
/// </summary>
public static class StepWords
{
    private static readonly Wording Words = new(typeof(StepWords));

    /// <summary>A tag, to whomever.</summary>
    public static string AnyTag => Words[nameof(AnyTag)];

    /// <summary>A step of which only the number is known.</summary>
    public static string Number(int step) => Words.Say(nameof(Number), step);

    /// <summary>The label of a step.</summary>
    /// <param name="workout">That the plan was made of.</param>
    /// <param name="plan">That it is a step of: it has the athletes' names.</param>
    /// <param name="step">The step.</param>
    public static string Label(Workout workout, RelayPlan plan, Step step) => step.Kind switch
    {
        StepKind.Tag => Tag(plan.Athletes[step.To - 1]),
        StepKind.Finish => workout.Finish == FinishKind.Line ? Line : Mat,
        StepKind.Attempt => Attempt(Movement(workout, step), step.Attempt),
        StepKind.Value when plan.Scoring is ScoringRule.MostReading => Movement(workout, step),
        _ => Amount(step.Quantity, step.Unit, Movement(workout, step)),
    };

    /// <summary>What is done in a step, by name; empty for a tag or finish.</summary>
    public static string Movement(Workout workout, Step step) => workout.Movements.FirstOrDefault(movement => movement.Id == step.MovementId) is not { } known || step.Movement.Length == 0
        ? step.Movement
        : step.Movement == known.Name ? LibraryTelling.Tell(known.Name) : Synchro(LibraryTelling.Tell(known.Name));

    /// <summary>So much of a movement: "12 cal row"; a load has no amount.</summary>
    public static string Amount(int quantity, Unit unit, string movement) => unit switch
    {
        Unit.Cal => Calories(quantity, movement),
        Unit.M => Metres(quantity, movement),
        Unit.Kg or Unit.Lb => movement,
        _ => Reps(quantity, movement),
    };

    private static string Line => Words[nameof(Line)];

    private static string Mat => Words[nameof(Mat)];

    private static string Reps(int quantity, string movement) => Words.Say(nameof(Reps), quantity, movement);

    private static string Calories(int quantity, string movement) => Words.Say(nameof(Calories), quantity, movement);

    private static string Metres(int quantity, string movement) => Words.Say(nameof(Metres), quantity, movement);

    private static string Synchro(string movement) => Words.Say(nameof(Synchro), movement);

    private static string Attempt(string movement, int number) => Words.Say(nameof(Attempt), movement, number);

    private static string Tag(string athlete) => Words.Say(nameof(Tag), athlete);
}
