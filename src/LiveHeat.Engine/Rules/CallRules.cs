using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Rules;

/// <summary>Calling a heat, seats, readiness.</summary>
internal static class CallRules
{
    public static Verdict? Decide(HeatState heat, HeatCommand command, Asking asking)
    {
        var phase = heat.PhaseAt(asking.Now);
        return command switch
        {
            HeatCommand.Call when phase != Phase.Planned => HeatRules.WrongPhase(Refusals.CalledAlready),
            HeatCommand.Call => Snapshot(asking, snapshot => new HeatFact.HeatCalled { Id = command.Id, Instant = asking.Now, By = asking.By, Snapshot = snapshot }),
            HeatCommand.ReplaceCall when phase is not (Phase.Called or Phase.Armed) => HeatRules.WrongPhase(Refusals.ReplacedBeforeGo),
            HeatCommand.ReplaceCall => Snapshot(asking, snapshot => new HeatFact.CallReplaced { Id = command.Id, Instant = asking.Now, By = asking.By, Snapshot = snapshot }),
            HeatCommand.TakeSeat or HeatCommand.GiveUpSeat or HeatCommand.Ready when phase is Phase.Frozen or Phase.Certified =>
                HeatRules.WrongPhase(Refusals.SeatsClosed),
            HeatCommand.TakeSeat { Duty: Duty.Timekeeper } take when heat.Seats.Count(seat => seat.Lane == take.Lane && seat is { Duty: Duty.Timekeeper, Until: null } && seat.SignIn != asking.By.SignIn) >= Timing.Timekeepers.Most =>
                new Verdict.Refused("seat-taken", Refusals.TimekeepersFull(take.Lane, Timing.Timekeepers.Most)),
            HeatCommand.TakeSeat take => new Verdict.Accepted(new HeatFact.SeatTaken
            {
                Id = take.Id,
                Instant = asking.Now,
                By = asking.By,
                Lane = take.Lane,
                Duty = take.Duty,
                Seat = new SeatId(asking.NewId),
            }),
            HeatCommand.GiveUpSeat give => OwnSeat(heat, give.Lane, give.Seat, asking) ?? new Verdict.Accepted(new HeatFact.SeatGivenUp
            {
                Id = give.Id,
                Instant = asking.Now,
                By = asking.By,
                Lane = give.Lane,
                Seat = give.Seat,
                Reason = give.Reason,
            }),
            HeatCommand.Ready ready => OwnSeat(heat, ready.Lane, ready.Seat, asking) ?? new Verdict.Accepted(new HeatFact.LaneReady
            {
                Id = ready.Id,
                Instant = asking.Now,
                By = asking.By,
                Lane = ready.Lane,
                Seat = ready.Seat,
            }),
            HeatCommand.OverrideReady or HeatCommand.WithdrawLane when phase is not (Phase.Called or Phase.Armed) =>
                HeatRules.WrongPhase(Refusals.ReadyBeforeGo),
            HeatCommand.OverrideReady over => over.Lanes.Where(lane => heat.Find(lane) is null).ToList() is [var missing, ..]
                ? new Verdict.Refused("no-such-lane", Refusals.NoSuchLane(missing))
                : new Verdict.Accepted(new HeatFact.LanesOverridden
                {
                    Id = over.Id,
                    Instant = asking.Now,
                    By = asking.By,
                    Lanes = over.Lanes,
                    Reason = over.Reason,
                }),
            HeatCommand.WithdrawLane withdraw => new Verdict.Accepted(new HeatFact.LaneWithdrawn
            {
                Id = withdraw.Id,
                Instant = asking.Now,
                By = asking.By,
                Lane = withdraw.Lane,
                Reason = withdraw.Reason,
            }),
            _ => null,
        };
    }

    private static Verdict Snapshot(Asking asking, Func<HeatSnapshot, HeatFact> fact)
    {
        if (asking.Setup is not { } snapshot)
        {
            return new Verdict.Refused("no-such-heat", Refusals.NotInSetup);
        }

        if (snapshot.Lanes.Count == 0)
        {
            return new Verdict.Refused("bad-setup", Refusals.NoTeams);
        }

        if (snapshot.Lanes.CountBy(lane => lane.Lane).FirstOrDefault(lane => lane.Value > 1) is { Value: > 1, Key: var twice })
        {
            return new Verdict.Refused("bad-setup", Refusals.TwoTeams(twice));
        }

        var errors = snapshot.Lanes.Select(lane => PlanCompiler.Compile(snapshot.Workout, lane.LineUp())).OfType<Compiled.Impossible>()
            .SelectMany(impossible => impossible.Errors).ToList();
        return errors.Count == 0
            ? new Verdict.Accepted(fact(snapshot))
            : new Verdict.Refused("bad-setup", Telling.Several(errors.Select(error => error.Why).Distinct().Take(3)));
    }

    private static Verdict? OwnSeat(HeatState heat, LaneNumber lane, SeatId id, Asking asking) => heat.Seats.FirstOrDefault(seat => seat.Id == id) switch
    {
        null => new Verdict.Refused("seat-given-up", Refusals.UnknownSeat),
        { Until: not null } => new Verdict.Refused("seat-given-up", Refusals.SeatGone),
        var seat when asking.By.Role == Role.Judge && seat.SignIn != asking.By.SignIn => new Verdict.Refused("not-yours", Refusals.SeatOfAnother),
        var seat when seat.Lane != lane => new Verdict.Refused("seat-given-up", Refusals.SeatOnOtherLane(seat.Lane, lane)),
        _ => null,
    };
}
