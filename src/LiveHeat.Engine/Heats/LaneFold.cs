using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>What the rest of the heat tells a lane's fold.</summary>
/// <param name="Snapshot">The heat as called.</param>
/// <param name="Bounds">From where on calls, readiness and rulings count.</param>
/// <param name="Clock">The start in force and the halts.</param>
/// <param name="Seats">The lane's seats.</param>
/// <param name="Overrides">Sequences of overrides that name the lane.</param>
/// <param name="Voided">Facts that do not count.</param>
/// <param name="Admitted">Held taps that count after all.</param>
/// <param name="FrozenHead">The sequence that the freeze in force closes; null when not frozen.</param>
public sealed record LaneContext(
    HeatSnapshot Snapshot, HeatBounds Bounds, HeatClock Clock, Items<Seat> Seats, Items<long> Overrides,
    IReadOnlySet<FactId> Voided, IReadOnlySet<FactId> Admitted, long? FrozenHead);

/// <summary>Folds the facts of one lane: a pure function of the set of taps and the list of rulings.</summary>
public static class LaneFold
{
    /// <summary>The lane's state.</summary>
    /// <param name="context">What the rest of the heat tells.</param>
    /// <param name="entry">Who stands on the lane.</param>
    /// <param name="facts">All ledger entries about the lane, in ledger order.</param>
    /// <param name="known">The lane's plans, where nothing that changes them is new: compiling takes as long as all the rest.</param>
    internal static LaneState Play(LaneContext context, LaneEntry entry, Items<Entry> facts, LanePlans? known)
    {
        var (inForce, tapped) = Sort(context, facts);
        var plans = known ?? LanePlans.Read(context.Snapshot.Workout, entry, inForce, context.Voided);
        var rulings = inForce.Where(ruling => !context.Voided.Contains(ruling.Id)).ToList();
        var clock = LaneClock.Read(context.Clock, plans.Newest.Plan.CapMs, rulings, plans.Newest.Plan.Windows.Count);
        var decisions = rulings.OfType<HeatFact.CapDecided>().Where(decided => decided.Round is not null).ToItems();
        var taps = TapOrder.Arrange(tapped);
        var standing = new TapStanding(context, plans, taps);
        var walk = new LaneWalk(plans.Newest.Plan, clock, context.Snapshot.Workout.Counting, context.Snapshot.Timekeepers, context.Snapshot.HandTimingMs, decisions);
        Walk(walk, taps, standing, rulings);
        var calls = rulings.OfType<HeatFact.CallAnswered>().Select(answered => answered.Instant).DefaultIfEmpty(new Instant(long.MinValue)).Max();
        var seat = context.Seats.LastOrDefault(seat => seat is { Duty: Duty.Primary, Until: null });

        var state = walk.Result(entry, plans.Newest, standing) with
        {
            Plans = plans,
            Seat = seat,
            Ready = seat is not null && facts.Any(fact => fact.Fact is HeatFact.LaneReady ready && ready.Seat == seat.Id && fact.Sequence > context.Bounds.Ready)
                || context.Overrides.Any(sequence => sequence > context.Bounds.Ready),
            Withdrawn = rulings.OfType<HeatFact.LaneWithdrawn>().Any(),
            HeldSince = clock.Holds.Count > 0 && clock.Holds[^1].Until is null ? clock.Holds[^1].From : null,
            HeldMs = clock.Holds.Where(hold => hold.Until is not null).Sum(hold => HeldBy(clock, hold)),
            AdjustMs = rulings.OfType<HeatFact.TimeAdjusted>().Sum(adjusted => adjusted.AdjustMs),
            CapHeatMs = clock.CapHeatMs,
            AtCapMs = plans.Newest.Plan.CapMs + rulings.OfType<HeatFact.TimeAdjusted>().Where(adjusted => !adjusted.MovesCap).Sum(adjusted => (long)adjusted.AdjustMs),
            Penalties = rulings.OfType<HeatFact.Penalised>()
                .Select(penalised => new Penalty(penalised.Id, penalised.AddMs, penalised.Reps, penalised.Reason) { Part = penalised.Part }).ToItems(),
            Costs = rulings.Select(ruling => ruling switch
            {
                HeatFact.Penalised penalised => new Cost(clock.LaneMs(ruling.Instant), penalised.AddMs, penalised.Reps, penalised.Part),
                HeatFact.TimeAdjusted adjusted => new Cost(clock.LaneMs(ruling.Instant), adjusted.AdjustMs, 0),
                HeatFact.AppealDecided decided when decided == rulings.OfType<HeatFact.AppealDecided>().Last(other => other.Target == decided.Target) => new Cost(clock.LaneMs(ruling.Instant), decided.AddMs, decided.Reps, decided.Part),
                _ => default,
            }).Where(cost => cost is not { AddMs: 0, Reps: 0 }).ToItems(),
            CapDecision = rulings.OfType<HeatFact.CapDecided>().LastOrDefault(decided => decided.Round is null),
            RoundDecisions = decisions,
            Warnings = rulings.OfType<HeatFact.Warned>().Count(),
            Calling = walk.LastCall > calls,
            Disqualified = rulings.OfType<HeatFact.Disqualified>().LastOrDefault(),
            Appeals = rulings.OfType<HeatFact.AppealFiled>()
                .Select(filed => new Appeal(filed, rulings.OfType<HeatFact.AppealDecided>().LastOrDefault(decided => decided.Target == filed.Id))).ToItems(),
        };
        return context.Snapshot.Workout.Consequences is null ? state : state with { Applied = LaneConsequences.Of(context.Snapshot.Workout, state, rulings, context.Clock) };
    }

    /// <summary>Taps that stand as the judge's.</summary>
    internal static IReadOnlyList<HeatFact.Floor> Standing(LaneContext context, Items<Entry> facts, LanePlans plans)
    {
        var taps = TapOrder.Arrange(Sort(context, facts).Taps);
        var standing = new TapStanding(context, plans, taps);
        return [.. taps.Where(tap => standing.Stands(tap) && standing.DutyOf(tap) == Duty.Primary).Select(tap => tap.Tap)];
    }

    private static bool InForce(Entry ruling, HeatBounds bounds) => ruling.Fact switch
    {
        HeatFact.LineUpChanged or HeatFact.VariantTaken or HeatFact.LaneWithdrawn or HeatFact.Disqualified => ruling.Sequence > bounds.Call,
        HeatFact.SentBack or HeatFact.RepsOwed or HeatFact.LaneHeld or HeatFact.LaneResumed or HeatFact.CapDecided => ruling.Sequence > bounds.Start,
        _ => true,
    };

    /// <summary>Rulings in force, voided ones too, and taps that are not voided; both in ledger order. Every tap of the heat comes by here: no queries.</summary>
    private static (List<HeatFact> Rulings, List<Entry> Taps) Sort(LaneContext context, Items<Entry> facts)
    {
        var (rulings, taps) = (new List<HeatFact>(), new List<Entry>(facts.Count));
        foreach (var entry in facts.Span)
        {
            if (entry.Fact is HeatFact.Floor or HeatFact.FactAdded)
            {
                if (!Voided(entry.Fact, context.Voided))
                {
                    taps.Add(entry);
                }
            }
            else if (entry.Fact is HeatFact.LaneDesk or HeatFact.AppealDecided && InForce(entry, context.Bounds))
            {
                rulings.Add(entry.Fact);
            }
        }

        return (rulings, taps);
    }

    /// <summary>A fact that was added is found by its tap's id too.</summary>
    private static bool Voided(HeatFact fact, IReadOnlySet<FactId> voided) =>
        voided.Contains(fact.Id) || (fact is HeatFact.FactAdded added && voided.Contains(added.Tap.Id));

    private static long HeldBy(LaneClock clock, Standstill hold) =>
        (clock with { Holds = [hold] }).HeldMs(hold.Until ?? hold.From);

    private static void Walk(LaneWalk walk, List<PlacedTap> taps, TapStanding standing, List<HeatFact> rulings)
    {
        var backs = new Queue<HeatFact>(rulings.Where(ruling => ruling is HeatFact.SentBack or HeatFact.RepsOwed));
        foreach (var tap in taps)
        {
            while (backs.TryPeek(out var ruling) && ruling.Instant < tap.At)
            {
                walk.Rule(backs.Dequeue());
            }

            if (standing.Stands(tap))
            {
                walk.Take(tap, standing);
            }
        }

        while (backs.TryDequeue(out var ruling))
        {
            walk.Rule(ruling);
        }
    }
}
