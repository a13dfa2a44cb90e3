using LiveHeat.Engine.Timing;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats.Laws;

/// <summary>Turns throws of the dice into the facts of a heat.</summary>
internal sealed class HeatWriter(HeatSnapshot heat)
{
    private readonly List<Arrival> facts = [];
    private readonly Dictionary<string, long> counters = [];
    private readonly Dictionary<int, int> steps = [];
    private readonly Dictionary<int, string> primaries = [];
    private readonly HashSet<int> held = [];
    private Instant now = Some.Go + -60_000;
    private int starts;
    private bool halted;

    public IReadOnlyList<Arrival> Write(IEnumerable<Beat> beats)
    {
        Desk(id => new HeatFact.HeatCalled { Id = id, Instant = now, By = Some.Organiser, Snapshot = heat });
        foreach (var lane in heat.Lanes.Select(entry => entry.Lane))
        {
            Seat(lane, Duty.Primary);
            Desk(id => new HeatFact.SeatTaken { Id = id, Instant = now, By = new By($"in-w{lane}", "Witness", Role.Judge), Lane = lane, Seat = new($"w-{lane}"), Duty = Duty.Witness });
            Desk(id => new HeatFact.SeatTaken { Id = id, Instant = now, By = new By($"in-k{lane}", "Timekeeper", Role.Judge), Lane = lane, Seat = new($"k-{lane}"), Duty = Duty.Timekeeper });
            Desk(id => new HeatFact.LaneReady { Id = id, Instant = now, By = Some.Judge(lane.Value), Lane = lane, Seat = new(primaries[lane.Value]) });
        }

        now = Some.Go + -2000;
        Start();
        foreach (var beat in beats)
        {
            now += beat.GapMs;
            Play(beat with { Lane = (beat.Lane % heat.Lanes.Count) + 1 });
        }

        return facts;
    }

    private void Play(Beat beat)
    {
        var lane = new LaneNumber(beat.Lane);
        switch (beat.Kind)
        {
            case < 35: Tap(beat, (id, at) => new HeatFact.StepDone { Id = id, Instant = at, Lane = lane, Step = NextStep(beat), TimeKnown = beat.Pick % 7 != 0 }); break;
            case < 40: Tap(beat, (id, at) => new HeatFact.TagMade { Id = id, Instant = at, Lane = lane, Step = NextStep(beat) }); break;
            case < 50: Tap(beat, (id, at) => new HeatFact.CountReached { Id = id, Instant = at, Lane = lane, Step = steps.GetValueOrDefault(beat.Lane) + 1, Count = beat.Count }); break;
            case < 53: Tap(beat, (id, at) => new HeatFact.NoRep { Id = id, Instant = at, Lane = lane, Step = beat.Step }); break;
            case 53: Tap(beat, (id, at) => new HeatFact.TagFault { Id = id, Instant = at, Lane = lane, Step = 3 }); break;
            case 54: Tap(beat, (id, at) => new HeatFact.AthleteWorking { Id = id, Instant = at, Lane = lane, Step = beat.Step, Athlete = beat.Count }); break;
            case 55: Tap(beat, (id, at) => new HeatFact.RepsAtCap { Id = id, Instant = at, Lane = lane, Step = steps.GetValueOrDefault(beat.Lane) + 1, Count = beat.Count }); break;
            case 56: Tap(beat, (id, at) => new HeatFact.FinishTimed { Id = id, Instant = at, Lane = lane }, $"k-{lane}"); break;
            case 57: Tap(beat, (id, at) => new HeatFact.LaneStopped { Id = id, Instant = at, Lane = lane, Reason = StopReason.Medical }); break;
            case < 66 when PickFact(beat, fact => fact is HeatFact.Floor) is { } target: Tap(beat, (id, at) => new HeatFact.Undone { Id = id, Instant = at, Lane = lane, Target = target }); break;
            case < 67: Tap(beat, (id, at) => new HeatFact.HeadJudgeCalled { Id = id, Instant = at, Lane = lane }); break;
            case 67: Tap(beat, (id, at) => new HeatFact.ScoreReadBack { Id = id, Instant = at, Lane = lane, Agreed = beat.Pick % 2 == 0, Name = "Ann" }); break;
            case 68: Tap(beat, (id, at) => new HeatFact.ValueEntered { Id = id, Instant = at, Lane = lane, Step = beat.Step, Value = beat.Count }); break;
            default: Rule(beat, lane); break;
        }
    }

    private void Rule(Beat beat, LaneNumber lane)
    {
        switch (beat.Kind)
        {
            case < 72: Desk(id => new HeatFact.SentBack { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, Step = Math.Max(1, beat.Step) }); break;
            case < 75: Desk(id => new HeatFact.RepsOwed { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, Step = Math.Clamp(beat.Step, 1, 9), Reps = 1 + (beat.Count % 3) }); break;
            case < 78 when held.Add(beat.Lane): Desk(id => new HeatFact.LaneHeld { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, MovesCap = beat.Pick % 2 == 0 }); break;
            case < 78: held.Remove(beat.Lane); Desk(id => new HeatFact.LaneResumed { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane }); break;
            case 78: Desk(id => new HeatFact.TimeAdjusted { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, AdjustMs = (beat.Count - 6) * 1000, MovesCap = beat.Pick % 2 == 0 }); break;
            case 79: Desk(id => new HeatFact.LineUpChanged { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, FromStep = Math.Max(1, beat.Step), Athletes = ["Cy", "Max", "Ann"] }); break;
            case 80: Desk(id => new HeatFact.VariantTaken { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, FromStep = Math.Max(1, beat.Step), Prescription = "scaled" }); break;
            case < 86 when PickFact(beat, Voidable) is { } target: Desk(id => new HeatFact.Voided { Id = id, Instant = now, By = Some.HeadJudge, Target = target }); break;
            case < 89 when PickFact(beat, fact => fact is HeatFact.Floor) is { } target: Desk(id => new HeatFact.Admitted { Id = id, Instant = now, By = Some.HeadJudge, Target = target }); break;
            case < 91: Desk(id => new HeatFact.FactAdded { Id = id, Instant = now, By = Some.HeadJudge, Source = Source.Paper, Tap = new HeatFact.StepDone { Id = NextId("paper"), Instant = now + -(beat.GapMs / 2), Lane = lane, Step = NextStep(beat) } }); break;
            case 91 when beat.Pick % 2 == 0: Desk(id => new HeatFact.NearTieDecided { Id = id, Instant = now, By = Some.HeadJudge, Lanes = [new(1), new(2)], Tie = beat.Pick % 4 == 0 }); break;
            case 91 when beat.Pick % 3 == 0: Desk(id => new HeatFact.CapDecided { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, InTime = beat.Pick % 4 == 1, WithinMs = beat.Count * 10 }); break;
            case 91: Desk(id => new HeatFact.Warned { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane }); break;
            case 92 when beat.Pick % 5 == 0: Desk(id => new HeatFact.AppealFiled { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, Member = "Ann", Grounds = "a rep" }); break;
            case 92 when beat.Pick % 5 == 1 && PickFact(beat, fact => fact is HeatFact.AppealFiled) is { } appeal: Desk(id => new HeatFact.AppealDecided { Id = id, Instant = now, By = Some.HeadJudge, Target = appeal, Outcome = AppealOutcome.Seconds, AddMs = (beat.Count - 6) * 1000 }); break;
            case 92 when beat.Pick % 5 == 2: Desk(id => new HeatFact.Disqualified { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, Reason = "left the floor" }); break;
            case 92: Desk(id => new HeatFact.Penalised { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane, AddMs = beat.Count * 1000, Reps = beat.Step }); break;
            case 93: Desk(id => new HeatFact.CallAnswered { Id = id, Instant = now, By = Some.HeadJudge, Lane = lane }); break;
            case 94 when beat.Pick % 3 == 0 && !halted: Desk(id => new HeatFact.StartRecalled { Id = id, Instant = now, By = Some.Organiser, Start = $"start-{starts}" }); Start(); break;
            case 95 or 96: Desk(id => halted ? new HeatFact.HeatResumed { Id = id, Instant = now, By = Some.Organiser } : new HeatFact.HeatHalted { Id = id, Instant = now, By = Some.Organiser }); halted = !halted; break;
            case 97: Seat(lane, Duty.Primary); break;
            case 98: Desk(id => new HeatFact.StartObserved { Id = id, Instant = now, By = Some.Organiser, Start = $"start-{starts}", GoAt = Some.Go + (beat.Count * 100), UncertaintyMs = 200 }); break;
            case 99 when beat.Pick % 5 == 0: Desk(id => new HeatFact.HeatEnded { Id = id, Instant = now, By = Some.Organiser }); halted = false; break;
            default: break;
        }
    }

    private void Tap(Beat beat, Func<FactId, Instant, HeatFact.Floor> make, string? by = null)
    {
        var seat = by ?? (beat.Pick % 29, beat.Pick % 11) switch
        {
            (0, _) => "s-stranger",
            (_, 0) => $"w-{beat.Lane}",
            _ => primaries[beat.Lane],
        };
        var at = now + beat.WobbleMs;
        var tap = make(NextId(seat), at) with
        {
            Seat = new(seat),
            UncertaintyMs = beat.UncertaintyMs,
            Start = (beat.Pick % 31, beat.Pick % 37) switch { (0, _) => null, (_, 0) => "start-1", _ => $"start-{starts}" },
            Plan = 1 + (beat.Pick % 41 == 0 ? 1 : 0),
        };
        var sender = seat[0] is 'w' or 'k' ? $"in-{seat[0]}{beat.Lane}" : seat == "s-stranger" ? "in-stranger" : $"in-{seat}";
        facts.Add(new Arrival(tap, sender, beat.Pick % 43 == 0 ? at + -5000 : at + 150));
    }

    private int NextStep(Beat beat)
    {
        var next = beat.Pick % 5 == 0 ? beat.Step : Math.Min(9, steps.GetValueOrDefault(beat.Lane) + 1);
        steps[beat.Lane] = Math.Clamp(next, 0, 9);
        return next;
    }

    private void Seat(LaneNumber lane, Duty duty)
    {
        var seat = $"s-{lane}-{facts.Count}";
        primaries[lane.Value] = seat;
        Desk(id => new HeatFact.SeatTaken { Id = id, Instant = now, By = new By($"in-{seat}", "Judge", Role.Judge), Lane = lane, Seat = new(seat), Duty = duty });
    }

    private void Start()
    {
        starts++;
        var goAt = now + 2000;
        Desk(id => new HeatFact.StartScheduled { Id = id, Instant = now, By = Some.Organiser, Start = $"start-{starts}", GoAt = goAt });
    }

    private static bool Voidable(HeatFact fact) =>
        fact is HeatFact.Floor or HeatFact.FactAdded or HeatFact.About or (HeatFact.LaneDesk and not (HeatFact.SeatTaken or HeatFact.SeatGivenUp or HeatFact.LaneReady));

    private FactId? PickFact(Beat beat, Func<HeatFact, bool> fits)
    {
        var choice = facts.Select(arrival => arrival.Fact).Where(fits).TakeLast(8).ToList();
        return choice.Count == 0 ? null : choice[beat.Pick % choice.Count].Id;
    }

    private void Desk(Func<FactId, HeatFact.Desk> make)
    {
        var fact = make(NextId("desk"));
        facts.Add(new Arrival(fact, fact.By.SignIn, fact.Instant));
    }

    private FactId NextId(string outbox)
    {
        counters[outbox] = counters.GetValueOrDefault(outbox) + 1;
        return Some.Id(outbox, counters[outbox]);
    }
}
