using System.Globalization;

namespace LiveHeat.Engine.Workouts;

/// <summary>Something in a form that cannot be.</summary>
/// <param name="Field">Where: a path as in the JSON, such as <c>prescriptions[0].rounds</c>.</param>
/// <param name="Why">What is wrong and what to do.</param>
public sealed record FieldError(string Field, Telling Why);

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

    /// <summary>A rep of a synchronised set counts when all reach its end together (common practice, no source).</summary>
    public const string NotTogether = "not together";

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
        prescription = workout.Scoring switch
        {
            _ when prescription.Clock is { } clock => Workouts.Windows.LaidOut(workout.Order, prescription, clock, movements),
            ScoringRule.MostWork => prescription with { Rounds = EndlessRounds.Of(workout.Order, prescription, movements) },
            ScoringRule.HeaviestLoad rule => Attempts.LaidOut(workout.Order, prescription, rule.Attempts, lineUp.Athletes.Count),
            _ => prescription,
        };

        var steps = new List<Step>();
        Work? last = null;
        foreach (var work in RelayWork.Of(workout.Order, prescription, lineUp.Athletes.Count))
        {
            // Nobody hands over to a team that shares a set, or from it; and where the clock says who works, no tag does.
            if (last is { Athlete: > 0 } before && work.Athlete > 0 && before.Athlete != work.Athlete && (prescription.Clock is null || before.Round == work.Round))
            {
                steps.Add(Tag(steps.Count + 1, LegAfter(steps), before, work, lineUp, movements.GetValueOrDefault(Movement.TagId)));
            }

            var leg = LegAfter(steps);
            var (number, movement) = (steps.Count + 1, movements[work.Set.Movement]);
            steps.Add(workout.Scoring switch
            {
                ScoringRule.HeaviestLoad => AttemptStep(number, leg, work, movement, 1 + steps.Count(step => step.Kind == StepKind.Attempt && step.Athlete == work.Athlete)),
                ScoringRule.MostReading => ReadStep(SetStep(number, leg, work, movement), work.Set),
                _ => SetStep(number, leg, work, movement),
            });
            last = work;
        }

        if (workout.Finish != FinishKind.None)
        {
            steps.Add(Finish(steps.Count + 1, LegAfter(steps), last!, workout.Finish));
        }

        var windows = prescription.Clock is { } byClock ? Workouts.Windows.Of(byClock, steps) : [];
        return new Compiled.Plan(new RelayPlan(
            prescription.Division, prescription.Division, prescription.DivisionName, prescription.CapMs, lineUp.Athletes,
            [new Track(steps.ToItems())])
        {
            Scoring = workout.Scoring ?? ScoringRule.Usual,
            EqualWork = workout.EqualWork ?? EqualWork.EarlierAhead,
            TiebreakStep = prescription.Tiebreak is { } tiebreak ? Find(steps, tiebreak) : null,
            Parts = Parts(prescription, steps, windows),
            Windows = windows,
        });
    }

    private static int? Find(List<Step> steps, TiebreakSet set) =>
        steps.Where(step => step.Kind is not (StepKind.Tag or StepKind.Finish) && step.Round == set.Round).ElementAtOrDefault(set.Set - 1)?.Number;

    /// <summary>By the clock a part ends with a round, however often its sets were laid out.</summary>
    private static Items<PlanPart> Parts(Prescription prescription, List<Step> steps, Items<Window> windows)
    {
        var (parts, first) = (new List<PlanPart>(), 1);
        foreach (var part in prescription.Parts ?? [])
        {
            var last = part.Last is not { } set ? steps.Count : windows.Count > 0 ? windows[set.Round!.Value - 1].Last : Find(steps, set) ?? steps.Count;
            parts.Add(new PlanPart(part.Name, first, last));
            first = last + 1;
        }

        return parts.ToItems();
    }

    private static int LegAfter(List<Step> steps) => steps.Count == 0 ? 1 : steps[^1].Leg + (steps[^1].Kind == StepKind.Tag ? 1 : 0);

    private static Step SetStep(int number, int leg, Work work, Movement movement)
    {
        var (set, name) = (work.Set, work.Set.Together is null ? movement.Name : $"synchro {movement.Name}");
        return new Step(
            number, set.Reading ? StepKind.Value : StepKind.Set, work.Round, leg, work.Athlete, 0, name, set.Quantity, movement.Unit,
            set.Worth ?? set.Quantity, set.Increment,
            Math.Max(1, Ms(set.Quantity * movement.SecondsPerUnit)), Ms(set.Quantity * movement.FastestSecondsPerUnit),
            Label(set, movement.Unit, name), set.Together is null ? movement.Faults : movement.Faults.Prepend(NotTogether).ToItems())
        {
            MovementId = movement.Id,
            With = work.With,
            MinimumEach = set.MinimumEach,
        };
    }

    /// <summary>Where readings make the score, what is read is worth itself, and all else only what it says.</summary>
    private static Step ReadStep(Step step, PrescribedSet set) =>
        set.Reading ? step with { Worth = 0, Label = step.Movement } : step with { Worth = set.Worth ?? 0 };

    private static Step AttemptStep(int number, int leg, Work work, Movement movement, int attempt) => new(
        number, StepKind.Attempt, work.Round, leg, work.Athlete, 0, movement.Name, 0, movement.Unit, 0, 1,
        Math.Max(1, Ms(movement.SecondsPerUnit)), Ms(movement.FastestSecondsPerUnit),
        string.Create(CultureInfo.InvariantCulture, $"{movement.Name}, attempt {attempt}"), movement.Faults)
    { MovementId = movement.Id, Attempt = attempt };

    /// <summary>Whole milliseconds; the longest that a number holds where an expectation is absurd.</summary>
    private static int Ms(double seconds) => (int)Math.Min(int.MaxValue, Math.Round(seconds * 1000));

    private static Step Tag(int number, int leg, Work from, Work to, LineUp lineUp, Movement? standard) => new(
        number, StepKind.Tag, from.Round, leg, from.Athlete, to.Athlete, "", 0, Unit.Reps, 0, 1, TagExpectedMs, TagEarliestMs,
        $"tag {lineUp.Athletes[to.Athlete - 1]}", standard?.Faults ?? ["no touch", "left too early"])
    { MovementId = standard?.Id };

    private static Step Finish(int number, int leg, Work last, FinishKind kind) => new(
        number, StepKind.Finish, last.Round, leg, last.Athlete, 0, "", 0, Unit.Reps, 0, 1, FinishExpectedMs, FinishEarliestMs,
        kind == FinishKind.Line ? "across the line" : "all on the mat", []);

    private static string Label(PrescribedSet set, Unit unit, string name) => unit switch
    {
        Unit.Cal => string.Create(CultureInfo.InvariantCulture, $"{set.Quantity} cal {name}"),
        Unit.M => string.Create(CultureInfo.InvariantCulture, $"{set.Quantity} m {name}"),
        Unit.Kg or Unit.Lb => name,
        _ => string.Create(CultureInfo.InvariantCulture, $"{set.Quantity} {name}"),
    };
}
