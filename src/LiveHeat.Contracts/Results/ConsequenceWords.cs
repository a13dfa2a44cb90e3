using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Results;

/// <summary>What a workout's consequences came to on a lane, a sentence each: "Ranked below: took the work of Scaled from round 3".</summary>
public static class ConsequenceWords
{
    private static readonly Wording Words = new(typeof(ConsequenceWords));

    /// <summary>What is not a penalty: ranked below, void; and a variant that ranks like the prescribed work.</summary>
    public static Items<string> Of(LaneState lane, Workout workout)
    {
        var applied = lane.Applied.Where(one => one.Consequence is Consequence.RanksBelow or Consequence.Void)
            .Select(one => one.Consequence == Consequence.Void ? Void(Why(lane, workout, one)) : Below(Why(lane, workout, one)));
        return workout.Consequences?.Variant == Consequence.Allowed && lane.Plan.VariantFrom is { } step
            ? applied.Append(Allowed(Taken(lane, workout, step))).ToItems()
            : applied.ToItems();
    }

    /// <summary>Penalties that a consequence made, each with its reason.</summary>
    public static IEnumerable<ResultPenalty> Penalties(LaneState lane, Workout workout) =>
        lane.Applied.Where(one => one.Consequence == Consequence.Penalty).Select(one => new ResultPenalty(one.AddMs, one.Reps, Why(lane, workout, one)));

    private static string Why(LaneState lane, Workout workout, Applied applied) => applied.Departure switch
    {
        Departure.WrongAthlete => WrongAthlete(lane, applied.Step),
        Departure.LineUpChange => LineUpChanged(From(lane.Plan, applied.Step)),
        _ => Taken(lane, workout, applied.Step),
    };

    private static string WrongAthlete(LaneState lane, int step)
    {
        var (plan, athlete) = (lane.Plan, lane.Substitutes.FirstOrDefault(pair => pair.Step == step).Athlete);
        var planned = Name(plan, plan.Find(step)?.Athlete ?? 0);
        return Name(plan, athlete) is { } worked && planned is not null
            ? Replaced(worked, planned, From(plan, step))
            : Another(From(plan, step));
    }

    private static string Taken(LaneState lane, Workout workout, int step)
    {
        var taken = workout.Prescriptions.FirstOrDefault(prescription => prescription.Division == lane.Plan.PrescribedBy);
        return taken is null || taken.Division == lane.Plan.Division ? OtherWork(From(lane.Plan, step)) : WorkOf(taken.DivisionName, From(lane.Plan, step));
    }

    private static string From(RelayPlan plan, int step) => plan.Find(step) switch
    {
        { Round: > 0 and var round } => FromRound(round),
        _ => FromStep(step),
    };

    private static string? Name(RelayPlan plan, int athlete) => athlete >= 1 && athlete <= plan.Athletes.Count ? plan.Athletes[athlete - 1] : null;

    private static string Void(string why) => Words.Say(nameof(Void), why);

    private static string Below(string why) => Words.Say(nameof(Below), why);

    private static string Allowed(string why) => Words.Say(nameof(Allowed), why);

    private static string LineUpChanged(string from) => Words.Say(nameof(LineUpChanged), from);

    private static string Replaced(string worked, string planned, string from) => Words.Say(nameof(Replaced), worked, planned, from);

    private static string Another(string from) => Words.Say(nameof(Another), from);

    private static string OtherWork(string from) => Words.Say(nameof(OtherWork), from);

    private static string WorkOf(string division, string from) => Words.Say(nameof(WorkOf), division, from);

    private static string FromRound(int round) => Words.Say(nameof(FromRound), round);

    private static string FromStep(int step) => Words.Say(nameof(FromStep), step);
}
