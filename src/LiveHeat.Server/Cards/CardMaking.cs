using LiveHeat.Contracts.Sheets;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>Makes the cards of a heat from what it was set up, or called, with.</summary>
internal static class CardMaking
{
    /// <summary>Rounds on the paper beyond those that a team at the expected pace begins, where the rounds have no end.</summary>
    public const int SpareRounds = 2;

    /// <summary>Longer sets have a box for every ten reps: nobody finds the ninetieth of two hundred boxes.</summary>
    public const int MostBoxes = 150;

    /// <param name="heat">What is done and by whom.</param>
    /// <param name="called">The lanes as called, with what was ruled since; null before the call.</param>
    public static HeatCards Of(HeatSnapshot heat, HeatState? called) => new(
        heat.Competition, heat.Title, heat.Workout.Name,
        [.. heat.Lanes.OrderBy(entry => entry.Lane).Select(entry => Lane(heat.Workout, entry, called?.Find(entry.Lane)?.Plan ?? Compiled(heat.Workout, entry)))]);

    private static RelayPlan? Compiled(Workout workout, LaneEntry entry) => PlanCompiler.Compile(workout, entry.LineUp()) is Compiled.Plan(var plan) ? plan : null;

    private static LaneCard Lane(Workout workout, LaneEntry entry, RelayPlan? plan)
    {
        if (plan is null || plan.LastStep == 0)
        {
            return new LaneCard(entry.Lane.Value, entry.Name, entry.Division, entry.Athletes, "", false, []);
        }

        var loads = Loads(workout, plan);
        var rounds = plan.Steps.Take(Printed(plan)).GroupBy(step => step.Round).Select(round => Round(plan, [.. round], loads)).ToList();
        return new LaneCard(
            entry.Lane.Value, entry.Name, plan.DivisionName, plan.TeamOrder, TimeText.Whole(plan.CapMs), plan.Endless, CardPaging.Pages(rounds, plan.Endless));
    }

    /// <summary>How many steps stand on the card.</summary>
    private static int Printed(RelayPlan plan)
    {
        if (!plan.Endless)
        {
            return plan.LastStep;
        }

        var last = plan.Find(SheetMaking.ExpectedSteps(plan))!.Round + SpareRounds;
        return plan.Steps.Last(step => step.Round <= last).Number;
    }

    private static CardRound Round(RelayPlan plan, IReadOnlyList<Step> steps, IReadOnlyDictionary<int, string> loads)
    {
        var athletes = steps.Select(step => step.Athlete).Distinct().ToList();
        var one = athletes.Count == 1 && athletes[0] > 0 ? plan.Athletes[athletes[0] - 1] : "";
        var heading = steps[0].Round switch
        {
            0 when plan.Steps.Any(step => step.Round > 0) => CardWords.Before,
            > 0 and var number => CardWords.Round(number),
            null when plan.Steps.Any(step => step.Round > 0) => CardWords.After,
            _ => CardWords.Work,
        };
        return new CardRound(heading, one, [.. steps.Select(step => Line(plan, step, one.Length > 0, loads.GetValueOrDefault(step.Number)))]);
    }

    private static CardLine Line(RelayPlan plan, Step step, bool named, string? load)
    {
        var who = named || step.Athlete == 0 || step.Kind is StepKind.Tag or StepKind.Finish ? "" : plan.Athletes[step.Athlete - 1];
        var (boxes, each) = step.Kind == StepKind.Set ? Boxes(step) : (step.Kind == StepKind.Value ? 0 : 1, 0);
        var field = step.Kind switch
        {
            StepKind.Tag or StepKind.Finish => CardWords.Time,
            StepKind.Value => CardWords.Of(step.Unit),
            _ => boxes == 1 && step.Quantity > 1 ? CardWords.Of(step.Unit) : null,
        };
        var notes = new[] { load, each > 1 ? CardWords.BoxIs(each, step.Unit) : null }.Where(note => !string.IsNullOrWhiteSpace(note));
        return new CardLine(step.Number, Kind(step.Kind), step.Label, string.Join(" · ", notes), who, boxes, field);
    }

    /// <summary>A box for every rep, for every increment of what is measured, or one for a machine's whole amount; and what one stands for.</summary>
    private static (int Boxes, int Each) Boxes(Step step)
    {
        var each = step.Unit == Unit.Reps ? (step.Quantity > MostBoxes ? 10 : 1) : step.Increment > 1 ? step.Increment : step.Quantity;
        return ((step.Quantity + each - 1) / each, step.Unit != Unit.Reps && each == step.Quantity ? 1 : each);
    }

    private static string Kind(StepKind kind) => kind switch { StepKind.Tag => "tag", StepKind.Value => "value", StepKind.Finish => "finish", _ => "set" };

    /// <summary>The loads by step: a plan's sets stand in the order of the prescription that is in force for them.</summary>
    private static Dictionary<int, string> Loads(Workout workout, RelayPlan plan)
    {
        var loads = new Dictionary<int, string>();
        foreach (var round in plan.Steps.Where(step => step.Kind is StepKind.Set or StepKind.Value).GroupBy(step => step.Round))
        {
            foreach (var (step, i) in round.Select((step, i) => (step, i)))
            {
                var division = plan.VariantFrom is { } from && step.Number >= from ? plan.PrescribedBy : plan.Division;
                var prescription = workout.Prescriptions.FirstOrDefault(one => one.Division == division);
                var part = round.Key switch { 0 => prescription?.Before, null => prescription?.After, _ => prescription?.Round };
                if (part is { } sets && i < sets.Count && sets[i].Load is { Length: > 0 } load && sets[i].Movement == step.MovementId)
                {
                    loads[step.Number] = load;
                }
            }
        }

        return loads;
    }
}
