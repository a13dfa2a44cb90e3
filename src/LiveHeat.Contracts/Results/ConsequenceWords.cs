using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Results;

/// <summary>What a workout's consequences came to on a lane, a sentence each: "Ranked below: took the work of Scaled from round 3".</summary>
public static class ConsequenceWords
{
    /// <summary>What is not a penalty: ranked below, void; and a variant that ranks like the prescribed work.</summary>
    public static Items<string> Of(LaneState lane, Workout workout)
    {
        var applied = lane.Applied.Where(one => one.Consequence is Consequence.RanksBelow or Consequence.Void)
            .Select(one => one.Consequence == Consequence.Void ? $"Result void: {Why(lane, workout, one)}" : $"Ranked below: {Why(lane, workout, one)}");
        return workout.Consequences?.Variant == Consequence.Allowed && lane.Plan.VariantFrom is { } step
            ? applied.Append($"Ranked with its division, as the workout allows: {Taken(lane, workout, step)}").ToItems()
            : applied.ToItems();
    }

    /// <summary>Penalties that a consequence made, each with its reason.</summary>
    public static IEnumerable<ResultPenalty> Penalties(LaneState lane, Workout workout) =>
        lane.Applied.Where(one => one.Consequence == Consequence.Penalty).Select(one => new ResultPenalty(one.AddMs, one.Reps, Why(lane, workout, one)));

    private static string Why(LaneState lane, Workout workout, Applied applied) => applied.Departure switch
    {
        Departure.WrongAthlete => WrongAthlete(lane, applied.Step),
        Departure.LineUpChange => $"changed the line-up from {Place(lane.Plan, applied.Step)}",
        _ => Taken(lane, workout, applied.Step),
    };

    private static string WrongAthlete(LaneState lane, int step)
    {
        var (plan, athlete) = (lane.Plan, lane.Substitutes.FirstOrDefault(pair => pair.Step == step).Athlete);
        var planned = Name(plan, plan.Find(step)?.Athlete ?? 0);
        return Name(plan, athlete) is { } worked && planned is not null
            ? $"{worked} worked in place of {planned} from {Place(plan, step)}"
            : $"another athlete than the one planned worked from {Place(plan, step)}";
    }

    private static string Taken(LaneState lane, Workout workout, int step)
    {
        var taken = workout.Prescriptions.FirstOrDefault(prescription => prescription.Division == lane.Plan.PrescribedBy);
        return taken is null || taken.Division == lane.Plan.Division ? $"did other work from {Place(lane.Plan, step)}" : $"took the work of {taken.DivisionName} from {Place(lane.Plan, step)}";
    }

    private static string Place(RelayPlan plan, int step) => plan.Find(step) switch
    {
        { Round: > 0 and var round } => $"round {round}",
        _ => $"step {step}",
    };

    private static string? Name(RelayPlan plan, int athlete) => athlete >= 1 && athlete <= plan.Athletes.Count ? plan.Athletes[athlete - 1] : null;
}
