using System.Diagnostics;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

public sealed partial record HeatState
{
    /// <summary>What a desk fact changes for the whole heat; what it changes on a lane is the lane fold's.</summary>
    private HeatState ApplyDesk(HeatFact.Desk fact, Entry entry) => fact switch
    {
        HeatFact.HeatCalled called => Call(called.Snapshot) with { CalledAt = CalledAt ?? called.Instant },
        HeatFact.CallReplaced replaced => Call(replaced.Snapshot),
        HeatFact.SeatTaken taken => Take(taken),
        HeatFact.SeatGivenUp given => this with { Seats = Seats.Select(seat => seat.Id == given.Seat && seat.Until is null ? seat with { Until = given.Instant } : seat).ToItems() },
        HeatFact.StartScheduled scheduled => this with
        {
            Told = Phase.CountingDown,
            Clock = new HeatClock(new Start(scheduled.Start, scheduled.GoAt, 0, Observed: false), []),
        },
        HeatFact.StartObserved observed => this with
        {
            Told = Told is Phase.Planned or Phase.Called or Phase.CountingDown ? Phase.Running : Told,
            Clock = new HeatClock(new Start(observed.Start, observed.GoAt, observed.UncertaintyMs, Observed: true), Clock.Halts),
        },
        HeatFact.StartRecalled or HeatFact.CallReturned => this with { Told = Phase.Called, Clock = HeatClock.Unset, ReturnedAt = fact.Instant },
        HeatFact.HeatHalted => this with { Told = Phase.Halted, Clock = Clock with { Halts = [.. Clock.Halts, new Standstill(fact.Instant, null)] } },
        HeatFact.HeatResumed => this with { Told = Phase.Running, Clock = Closed(fact.Instant) },
        HeatFact.HeatEnded => this with { Told = Phase.Ended, EndedAt = fact.Instant, Clock = Closed(fact.Instant) },
        HeatFact.Frozen frozen => this with { Told = Phase.Frozen, Freeze = frozen, Signatures = [] },
        HeatFact.Certified certified => Sign(certified),
        HeatFact.Reopened => this with { Told = Phase.Ended, Freeze = null, Signatures = [], Revision = Revision + 1 },
        HeatFact.LineUpChanged or HeatFact.VariantTaken => this with { SheetVersion = SheetVersion + 1 },
        HeatFact.Voided voided when Log.Subject(voided) is HeatFact.LineUpChanged or HeatFact.VariantTaken => this with { SheetVersion = SheetVersion + 1 },
        HeatFact.NearTieDecided decided => this with { Decided = [.. Decided, decided] },
        HeatFact.RerunOrdered rerun => this with { Decided = [.. Decided, rerun] },
        // An appeal's rerun is a rerun like any other; it falls with the decision.
        HeatFact.AppealDecided { Outcome: AppealOutcome.Rerun, InHeat: { } inHeat } again when Log.Subject(again) is HeatFact.AppealFiled { Lane: var lane } => this with
        {
            Decided = [.. Decided, new HeatFact.RerunOrdered { Id = again.Id, Instant = again.Instant, By = again.By, Reason = again.Reason, Lanes = [lane], InHeat = inHeat }],
        },
        HeatFact.About or HeatFact.LaneDesk or HeatFact.LanesOverridden or HeatFact.FactAdded => this,
        _ => throw new UnreachableException($"{fact.GetType().Name} (sequence {entry.Sequence}) has no fold."),
    };

    private HeatState Call(HeatSnapshot snapshot) => this with
    {
        Snapshot = snapshot,
        SheetVersion = SheetVersion + 1,
        Told = Told == Phase.Planned ? Phase.Called : Told,
    };

    private HeatState Take(HeatFact.SeatTaken taken)
    {
        var before = taken.Duty == Duty.Primary
            ? Seats.Select(seat => seat is { Duty: Duty.Primary, Until: null } && seat.Lane == taken.Lane ? seat with { Until = taken.Instant } : seat)
            : Seats;
        return this with { Seats = [.. before, new Seat(taken.Seat, taken.Lane, taken.Duty, taken.By.SignIn, taken.By.Name, taken.Instant, null)] };
    }

    private HeatState Sign(HeatFact.Certified certified)
    {
        Items<Signature> signatures = [.. Signatures.Where(signature => signature.By.Role != certified.By.Role && signature.Head == certified.Head), new Signature(certified.By, certified.Head)];
        var both = signatures.Any(signature => signature.By.Role == Role.Organiser) && signatures.Any(signature => signature.By.Role == Role.HeadJudge);
        return this with { Signatures = signatures, Told = both ? Phase.Certified : Told };
    }

    private HeatClock Closed(Instant at) => Clock with
    {
        Halts = Clock.Halts.Select(halt => halt.Until is null ? halt with { Until = at } : halt).ToItems(),
    };
}
