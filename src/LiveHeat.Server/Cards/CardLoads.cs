using LiveHeat.Engine.Workouts;

namespace LiveHeat.Server.Cards;

/// <summary>The loads as announced, by step: a plan's sets stand in the order of the prescription that is in force for them.</summary>
internal static class CardLoads
{
    public static IReadOnlyDictionary<int, string> Of(Workout workout, RelayPlan plan)
    {
        var loads = new Dictionary<int, string>();
        foreach (var round in plan.Steps.Where(step => step.Kind is StepKind.Set or StepKind.Value).GroupBy(step => step.Round))
        {
            foreach (var (step, i) in round.Select((step, i) => (step, i)))
            {
                var division = plan.VariantFrom is { } from && step.Number >= from ? plan.PrescribedBy : plan.Division;
                var prescription = workout.Prescriptions.FirstOrDefault(one => one.Division == division);
                var part = round.Key switch { 0 => prescription?.Before, null => prescription?.After, { } number => prescription?.SetsIn(number) };
                // A round by the clock may be repeated until it is over.
                var times = plan.Windows.Count > 0 && part is { Count: > 0 } ? part.Value.Count : int.MaxValue;
                if (part is { } sets && i % times < sets.Count && sets[i % times].Load is { Length: > 0 } load && sets[i % times].Movement == step.MovementId)
                {
                    loads[step.Number] = load;
                }
            }
        }

        return loads;
    }
}
