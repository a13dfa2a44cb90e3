using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>Makes the cards of a heat from what it was set up, or called, with.</summary>
internal static class CardMaking
{
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

        var loads = CardLoads.Of(workout, plan);
        var rounds = CardSteps.Printed(workout, plan).GroupBy(step => step.Round).Select(round => Round(workout, plan, [.. round], loads)).ToList();
        var (marks, endless) = (Marks(plan), plan.Endless && plan.Windows.Count == 0);
        return new LaneCard(entry.Lane.Value, entry.Name, plan.DivisionName, plan.TeamOrder, TimeText.Whole(plan.CapMs), endless, CardPaging.Pages(rounds, endless, marks.Count))
        {
            Marks = marks,
            Totals = Totals(plan),
        };
    }

    /// <summary>Only what this card needs.</summary>
    private static List<string> Marks(RelayPlan plan)
    {
        var marks = new List<string>();
        void When(bool needed, string mark) => marks.AddRange(needed ? [mark] : []);
        When(plan.Steps.Any(step => step.Kind == StepKind.Set), CardWords.Mark);
        When(plan.Steps.Any(step => step.Kind == StepKind.Attempt), CardKindWords.MarkAttempts);
        When(plan.Scoring is ScoringRule.MostReading, CardKindWords.MarkReadings);
        When(plan.Steps.Any(step => step.MinimumEach is not null), CardKindWords.MarkShares);
        When(plan.Windows.Count > 0, CardKindWords.MarkClock);
        return marks;
    }

    private static IReadOnlyList<string> Totals(RelayPlan plan) => plan.Scoring switch
    {
        ScoringRule.HeaviestLoad => [CardKindWords.Load(plan.Score.Unit)],
        ScoringRule.MostReading => [CardKindWords.AllReadings(plan.Score.Unit)],
        ScoringRule.MostWork when plan.Windows.Count > 0 => [CardKindWords.AllReps],
        ScoringRule.MostWork => [CardKindWords.RoundsDone, CardWords.DoneAtCap, CardWords.AtCap],
        _ => [CardWords.Finish, CardWords.DoneAtCap, CardWords.AtCap],
    };

    private static CardRound Round(Workout workout, RelayPlan plan, IReadOnlyList<Step> steps, IReadOnlyDictionary<int, string> loads)
    {
        var workers = steps.Where(step => step.Kind is not (StepKind.Tag or StepKind.Finish)).Select(step => CardLines.Who(plan, step)).Distinct().ToList();
        var one = workers.Count == 1 ? workers[0] : "";
        var heading = steps[0].Round switch
        {
            0 when plan.Steps.Any(step => step.Round > 0) => CardWords.Before,
            > 0 when plan.Scoring is ScoringRule.HeaviestLoad && workout.Order is not RelayOrder.EachMovement => CardKindWords.Attempts,
            > 0 and var number => CardWords.Round(number),
            null when plan.Steps.Any(step => step.Round > 0) => CardWords.After,
            _ => CardWords.Work,
        };
        var round = new CardRound(heading, one, [.. steps.Select(step => CardLines.Of(workout, plan, step, one.Length > 0, loads.GetValueOrDefault(step.Number)))]);
        var at = plan.Windows.Select((window, i) => (window, i)).FirstOrDefault(pair => steps[0].Number >= pair.window.First && steps[0].Number <= pair.window.Last);
        return at.window is not { } window ? round : round with
        {
            Times = CardKindWords.Times(TimeText.Whole(window.FromMs), TimeText.Whole(window.UntilMs)),
            End = new CardRoundEnd(plan.Scoring is ScoringRule.MostWork ? CardKindWords.OpenAtEnd(TimeText.Whole(window.UntilMs)) : "", at.i + 1 < plan.Windows.Count && plan.Windows[at.i + 1].FromMs is var next && next > window.UntilMs ? CardKindWords.RestUntil(TimeText.Whole(next)) : ""),
        };
    }
}
