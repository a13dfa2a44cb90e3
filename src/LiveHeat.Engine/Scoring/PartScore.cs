using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Scoring;

/// <summary>What a team made of a part that is scored apart.</summary>
/// <param name="Through">All its steps are done in time, and that time is the score; never where readings or rounds by the clock are.</param>
/// <param name="OfficialMs">From the end of the part before (GO for the first) to its end, rounded; null when not through or not known.</param>
/// <param name="Worth">Worth done within the part, in the plan's <see cref="RelayPlan.Score"/>, not negative.</param>
public readonly record struct PartScore(bool Through, long? OfficialMs, int Worth)
{
    /// <summary>
    /// The score of a lane. A ruling costs in the part that it names, otherwise in the one that the team was in when it was made, after the work in the last; a
    /// consequence in the part in which the team departed from the plan.
    /// </summary>
    public static PartScore Of(LaneState lane, PlanPart part, Rounding rounding)
    {
        var (plan, before) = (lane.Plan, part.First - 1);
        var (addMs, reps) = Cost(lane, part);
        var worth = Math.Max(0, Work(lane, part) + Readings(lane, part.Has) - (reps * plan.Score.Scale));
        if (plan.Measured || plan.Windows.Count > 0 || lane.DoneSteps < part.Last || (plan.Endless && part.Last == plan.LastStep))
        {
            return new PartScore(false, null, worth);
        }

        var end = part.Last == plan.LastStep ? lane.Finish ?? lane.Splits[^1] : lane.Splits[part.Last - 1];
        var from = before == 0 ? 0 : lane.Splits[before - 1]?.LaneMs;
        return new PartScore(true, end is { } known && from is { } fromMs ? rounding.Official(Math.Max(0, known.LaneMs - fromMs + addMs)) : null, worth);
    }

    /// <summary>The team has the part behind it at the lane time: by the clock when its last round is over.</summary>
    /// <param name="lane">The lane.</param>
    /// <param name="part">One of its plan's parts.</param>
    /// <param name="laneMs">Lane time; null for one that is not known, before anything is done.</param>
    public static bool IsPast(LaneState lane, PlanPart part, long? laneMs) => laneMs is { } at && (lane.Plan.Windows.Count > 0
        ? at >= lane.Plan.Windows.First(window => window.Last == part.Last).UntilMs
        : lane.DoneSteps >= part.Last && !(lane.Splits[part.Last - 1]?.LaneMs > at));

    /// <summary>What was worked in the part, readings aside: by the clock the worth of its rounds, otherwise what of the whole worth falls into it.</summary>
    private static int Work(LaneState lane, PlanPart part)
    {
        var plan = lane.Plan;
        if (plan.Windows.Count > 0)
        {
            return lane.RoundWorths.Where((_, i) => part.Has(plan.Windows[i].First)).Sum();
        }

        var (from, through) = (plan.WorthThrough(part.First - 1), plan.WorthThrough(part.Last));
        return Math.Clamp(lane.Worth - Readings(lane, _ => true), from, through) - from;
    }

    private static int Readings(LaneState lane, Func<int, bool> of) =>
        lane.Plan.Measured ? lane.Values.Where(value => of(value.Step)).Sum(value => lane.Plan.Score.WorthOf(value.Value)) : 0;

    private static (int AddMs, int Reps) Cost(LaneState lane, PlanPart part)
    {
        var before = lane.Plan.Parts.TakeWhile(other => other != part).ToList();
        var rulings = lane.Costs.Where(cost => cost.Part is { } named ? named == before.Count + 1 : In(cost.LaneMs)).ToList();
        var departures = lane.Applied.Where(applied => part.Has(applied.Step));
        return (rulings.Sum(cost => cost.AddMs) + departures.Sum(applied => applied.AddMs), rulings.Sum(cost => cost.Reps) + departures.Sum(applied => applied.Reps));

        bool In(long? laneMs) => (part.Last == lane.Plan.LastStep || !IsPast(lane, part, laneMs)) && before.All(other => IsPast(lane, other, laneMs));
    }
}
