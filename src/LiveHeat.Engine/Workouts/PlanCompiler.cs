using System.Globalization;

namespace LiveHeat.Engine.Workouts;

/// <summary>Something in a form that cannot be.</summary>
/// <param name="Field">Where: a path as in the JSON, such as <c>prescriptions[0].rounds</c>.</param>
/// <param name="Message">What is wrong and what to do, in a sentence.</param>
public sealed record FieldError(string Field, string Message);

/// <summary>A plan, or why there is none. A closed family.</summary>
public abstract record Compiled
{
    private Compiled()
    {
    }

    /// <summary>The lane's plan.</summary>
    public sealed record Plan(RelayPlan Relay) : Compiled;

    /// <summary>It cannot be done; at least one error.</summary>
    public sealed record Impossible(Items<FieldError> Errors) : Compiled;
}

/// <summary>Compiles a workout, a division and a line-up into the ordered steps of one lane.</summary>
public static class PlanCompiler
{
    private const int TagExpectedMs = 2000;
    private const int TagEarliestMs = 200;
    private const int FinishExpectedMs = 3000;
    private const int FinishEarliestMs = 300;

    /// <summary>The plan, or every field that stands in its way.</summary>
    public static Compiled Compile(Workout workout, LineUp lineUp)
    {
        var errors = WorkoutCheck.Errors(workout).Concat(LineUpCheck.Errors(lineUp, workout)).ToItems();
        if (errors.Count > 0)
        {
            return new Compiled.Impossible(errors);
        }

        var prescription = workout.Prescriptions.First(p => p.Division == lineUp.Division);
        var movements = workout.Movements.ToDictionary(movement => movement.Id);
        if (workout.Scoring is ScoringRule.MostWork)
        {
            prescription = prescription with { Rounds = EndlessRounds.Of(workout.Order, prescription, movements) };
        }

        var steps = new List<Step>();
        Work? last = null;
        foreach (var work in RelayWork.Of(workout.Order, prescription, lineUp.Athletes.Count))
        {
            if (last is { } before && before.Athlete != work.Athlete)
            {
                steps.Add(Tag(steps.Count + 1, LegAfter(steps), before, work, lineUp, movements.GetValueOrDefault(Movement.TagId)));
            }

            var leg = LegAfter(steps);
            steps.Add(SetStep(steps.Count + 1, leg, work, movements[work.Set.Movement]));
            last = work;
        }

        if (workout.Finish != FinishKind.None)
        {
            steps.Add(Finish(steps.Count + 1, LegAfter(steps), last!, workout.Finish));
        }

        return new Compiled.Plan(new RelayPlan(
            prescription.Division, prescription.Division, prescription.DivisionName, prescription.CapMs, lineUp.Athletes,
            [new Track(steps.ToItems())])
            {
                Scoring = workout.Scoring ?? ScoringRule.Usual,
                TiebreakStep = prescription.Tiebreak is { } tiebreak
                    ? steps.Where(step => step.Kind is StepKind.Set or StepKind.Value && step.Round == tiebreak.Round).ElementAtOrDefault(tiebreak.Set - 1)?.Number
                    : null,
            });
    }

    private static int LegAfter(List<Step> steps) => steps.Count == 0 ? 1 : steps[^1].Leg + (steps[^1].Kind == StepKind.Tag ? 1 : 0);

    private static Step SetStep(int number, int leg, Work work, Movement movement)
    {
        var set = work.Set;
        return new Step(
            number, set.Reading ? StepKind.Value : StepKind.Set, work.Round, leg, work.Athlete, 0, movement.Name, set.Quantity, movement.Unit,
            set.Worth ?? set.Quantity, set.Increment,
            Math.Max(1, Ms(set.Quantity * movement.SecondsPerUnit)), Ms(set.Quantity * movement.FastestSecondsPerUnit),
            Label(set, movement), movement.Faults) { MovementId = movement.Id };
    }

    /// <summary>Whole milliseconds; the longest that a number holds where an expectation is absurd.</summary>
    private static int Ms(double seconds) => (int)Math.Min(int.MaxValue, Math.Round(seconds * 1000));

    private static Step Tag(int number, int leg, Work from, Work to, LineUp lineUp, Movement? standard) => new(
        number, StepKind.Tag, from.Round, leg, from.Athlete, to.Athlete, "", 0, Unit.Reps, 0, 1, TagExpectedMs, TagEarliestMs,
        $"tag {lineUp.Athletes[to.Athlete - 1]}", standard?.Faults ?? ["no touch", "left too early"]) { MovementId = standard?.Id };

    private static Step Finish(int number, int leg, Work last, FinishKind kind) => new(
        number, StepKind.Finish, last.Round, leg, last.Athlete, 0, "", 0, Unit.Reps, 0, 1, FinishExpectedMs, FinishEarliestMs,
        kind == FinishKind.Line ? "across the line" : "all on the mat", []);

    private static string Label(PrescribedSet set, Movement movement) => movement.Unit switch
    {
        Unit.Cal => string.Create(CultureInfo.InvariantCulture, $"{set.Quantity} cal {movement.Name}"),
        Unit.M => string.Create(CultureInfo.InvariantCulture, $"{set.Quantity} m {movement.Name}"),
        Unit.Kg => movement.Name,
        _ => string.Create(CultureInfo.InvariantCulture, $"{set.Quantity} {movement.Name}"),
    };
}
