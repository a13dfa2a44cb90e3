using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>One step as it stands on a card.</summary>
internal static class CardLines
{
    /// <summary>Longer sets have a box for every ten reps: nobody finds the ninetieth of two hundred boxes.</summary>
    public const int MostBoxes = 150;

    /// <param name="workout">That the plan was made of.</param>
    /// <param name="plan">The lane's plan.</param>
    /// <param name="step">The step.</param>
    /// <param name="named">The round says who does it.</param>
    /// <param name="load">As announced; null when there is none.</param>
    public static CardLine Of(Workout workout, RelayPlan plan, Step step, bool named, string? load)
    {
        var who = named || step.Kind is StepKind.Tag or StepKind.Finish ? "" : Who(plan, step);
        var (boxes, each) = step.Kind == StepKind.Set ? Boxes(step) : (step.Kind is StepKind.Value or StepKind.Attempt ? 0 : 1, 0);
        var field = step.Kind switch
        {
            StepKind.Tag or StepKind.Finish => CardWords.Time,
            StepKind.Value or StepKind.Attempt => CardWords.Of(step.Unit),
            _ => boxes == 1 && step.Quantity > 1 ? CardWords.Of(step.Unit) : null,
        };
        var notes = new[] { load, each > 1 ? CardWords.BoxIs(each, step.Unit) : null }.Where(note => !string.IsNullOrWhiteSpace(note));
        return new CardLine(step.Number, Kind(step.Kind), StepWords.Label(workout, plan, step), string.Join(" · ", notes), who, boxes, field)
        {
            Tallies = step.MinimumEach is { } least ? [.. plan.TeamOrder.Select(athlete => new CardTally(athlete, least > 0 ? CardKindWords.Least(least) : ""))] : [],
        };
    }

    /// <summary>All who work at the step; empty where the team works as one.</summary>
    public static string Who(RelayPlan plan, Step step) => string.Join(" + ", step.Workers().Select(number => plan.Athletes[number - 1]));

    /// <summary>A box for every rep, for every increment of what is measured, or one for a machine's whole amount; and what one stands for.</summary>
    private static (int Boxes, int Each) Boxes(Step step)
    {
        var each = step.Unit == Unit.Reps ? (step.Quantity > MostBoxes ? 10 : 1) : step.Increment > 1 ? step.Increment : step.Quantity;
        return ((step.Quantity + each - 1) / each, step.Unit != Unit.Reps && each == step.Quantity ? 1 : each);
    }

    private static string Kind(StepKind kind) => kind switch { StepKind.Tag => "tag", StepKind.Value => "value", StepKind.Attempt => "attempt", StepKind.Finish => "finish", _ => "set" };
}
