using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Heats;

/// <summary>How a team departed from what was prescribed.</summary>
public enum Departure
{
    /// <summary>Another athlete worked than the plan names.</summary>
    WrongAthlete,

    /// <summary>Others, or another order.</summary>
    LineUpChange,

    /// <summary>Another division's work.</summary>
    Variant,
}

/// <summary>A consequence that the workout has for a departure, and what it came to on a lane.</summary>
/// <param name="Departure">What the team did.</param>
/// <param name="Consequence">What follows; never <see cref="Consequence.Allowed"/>.</param>
/// <param name="Step">Where it began.</param>
/// <param name="AddMs">Onto the time, milliseconds; 0 unless it is a penalty.</param>
/// <param name="Reps">Off the worth; 0 unless it is a penalty.</param>
public sealed record Applied(Departure Departure, Consequence Consequence, int Step, int AddMs, int Reps);

/// <summary>Applies a workout's consequences to a lane: a pure function of its standing facts.</summary>
internal static class LaneConsequences
{
    /// <summary>What applies, in the order of the plan's steps within each kind of departure.</summary>
    /// <param name="workout">What follows from what.</param>
    /// <param name="lane">The lane as walked.</param>
    /// <param name="rulings">Rulings on the lane that stand.</param>
    /// <param name="clock">The start in force: before GO a line-up may change freely.</param>
    public static Items<Applied> Of(Workout workout, LaneState lane, IReadOnlyCollection<HeatFact> rulings, HeatClock clock)
    {
        if (workout.Consequences is not { } consequences)
        {
            return [];
        }

        var wrong = lane.Substitutes.Where(pair => lane.Plan.Find(pair.Step) is { Athlete: > 0 } step && step.Athlete != pair.Athlete)
            .GroupBy(pair => lane.Plan.Find(pair.Step)!.Leg).Select(leg => leg.First().Step);
        var changed = rulings.OfType<HeatFact.LineUpChanged>().Where(change => clock.Start is { } start && change.Instant >= start.GoAt).Select(change => change.FromStep);
        var taken = rulings.OfType<HeatFact.VariantTaken>().Select(variant => variant.FromStep);
        return All(Departure.WrongAthlete, consequences.WrongAthlete, wrong, workout.Penalty)
            .Concat(All(Departure.LineUpChange, consequences.LineUpChange, changed, workout.Penalty))
            .Concat(All(Departure.Variant, consequences.Variant ?? Consequence.Allowed, taken, workout.Penalty)).ToItems();
    }

    private static IEnumerable<Applied> All(Departure departure, Consequence consequence, IEnumerable<int> steps, PenaltyRule? cost) => consequence switch
    {
        Consequence.Allowed => [],
        Consequence.Penalty => steps.Select(step => new Applied(departure, consequence, step, cost?.AddMs ?? 0, cost?.Reps ?? 0)),
        _ => steps.Select(step => new Applied(departure, consequence, step, 0, 0)),
    };
}
