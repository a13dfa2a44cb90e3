using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Engine.Paper;

/// <summary>A difference that is to be settled as the card says, and why.</summary>
public sealed record TakenFromPaper(CardDifference Difference, string Reason);

/// <summary>One command that takes something from a card. Its ids are made once, so that it is safe to repeat.</summary>
/// <param name="Step">The step it is about.</param>
/// <param name="Command">An adding, or a voiding.</param>
public sealed record CardWrite(int Step, HeatCommand Command);

/// <summary>What is to be written so that a lane's record says what its paper card says.</summary>
/// <remarks>What is added stands before what it replaces is voided: in between, no step is ever without its time.</remarks>
public sealed class CardWriting
{
    private readonly HeatState heat;
    private readonly LaneState lane;
    private readonly PaperCard card;
    private readonly Func<FactId> newId;
    private readonly IReadOnlyList<HeatFact.Floor> standing;
    private readonly Dictionary<int, long> times = [];
    private readonly IReadOnlyList<TakenFromPaper> taken;
    private readonly IReadOnlyList<CardStretch> stretches;
    private readonly long untilMs;
    private readonly List<CardWrite> writes = [];

    private CardWriting(HeatState heat, LaneState lane, PaperCard card, IReadOnlyList<TakenFromPaper> taken, Func<FactId> newId, Instant now)
    {
        (this.heat, this.lane, this.card, this.taken, this.newId) = (heat, lane, card, taken, newId);
        standing = heat.StandingTaps(lane.Lane);
        stretches = [.. CardStretch.Of(lane, card)];
        var end = heat.EndedAt is { } ended && ended < now ? ended : now;
        untilMs = Math.Max(0, Math.Min(lane.CapHeatMs ?? lane.Plan.CapMs, heat.Clock.HeatMs(end) ?? 0));
        for (var step = 1; step <= lane.Plan.LastStep; step++)
        {
            var written = card.Find(step)?.Time?.HeatMs;
            var replaced = IsTaken(step, DifferenceKind.Time) || IsTaken(step, DifferenceKind.TimeMissing);
            var more = stretches.Any(stretch => stretch.Has(step) && step > stretch.Phone && taken.Any(one => one.Difference.Kind == DifferenceKind.Reached && stretch.Has(one.Difference.Step)));
            if ((replaced || more ? written : CardDifferences.PhoneMs(heat, lane, step)) is { } ms)
            {
                times[step] = ms;
            }
        }
    }

    /// <summary>The commands, in the order in which they are to be given.</summary>
    /// <param name="heat">The heat as it stands.</param>
    /// <param name="number">The lane.</param>
    /// <param name="card">Its card.</param>
    /// <param name="taken">What is settled as the card says.</param>
    /// <param name="newId">Makes ids for commands and for what they add.</param>
    /// <param name="now">The server's instant: what has no time cannot have happened after it.</param>
    public static Items<CardWrite> Of(HeatState heat, LaneNumber number, PaperCard card, IReadOnlyList<TakenFromPaper> taken, Func<FactId> newId, Instant now)
    {
        if (heat.Clock.Start is null || heat.Find(number) is not { } lane)
        {
            return [];
        }

        var writing = new CardWriting(heat, lane, card, taken, newId, now);
        foreach (var one in taken)
        {
            writing.Take(one.Difference, one.Reason);
        }

        return writing.writes.ToItems();
    }

    /// <summary>The heat as it would be; or why the first refused one is.</summary>
    public static (HeatState Heat, Telling? Refused) Preview(HeatState heat, IEnumerable<CardWrite> writes, By by, Instant now)
    {
        foreach (var write in writes)
        {
            switch (HeatRules.Decide(heat, write.Command, new Asking(by, null, now, "", null, [])))
            {
                case Verdict.Accepted(var fact):
                    heat = heat.Apply(new Entry(heat.Head + 1, now, by.SignIn, fact));
                    break;
                case Verdict.Refused refused:
                    return (heat, refused.Why);
            }
        }

        return (heat, null);
    }

    private void Take(CardDifference difference, string reason)
    {
        var step = difference.Step;
        switch (difference.Kind)
        {
            case DifferenceKind.Reached when difference.Paper > difference.Phone:
                TakeMore((int)difference.Phone!.Value, (int)difference.Paper, reason);
                break;
            case DifferenceKind.Reached:
                TakeLess((int)difference.Paper, StretchOf(step), reason);
                break;
            case DifferenceKind.Time or DifferenceKind.TimeMissing:
                Replace(step, Done(step, Entered(step)), reason);
                break;
            case DifferenceKind.Value or DifferenceKind.Load or DifferenceKind.Lift:
                Replace(step, Done(step, Entered(step)), reason);
                break;
            case DifferenceKind.Shares:
                TakeShares(step, reason);
                break;
            case DifferenceKind.NoReps:
                TakeNoReps(step, (int)((difference.Phone ?? 0) - difference.Paper), reason);
                break;
            case DifferenceKind.AtCap:
                Add(new HeatFact.RepsAtCap { Id = newId(), Instant = At(EndOf(StretchOf(step))), Lane = lane.Lane, Step = step, Count = (int)difference.Paper, UncertaintyMs = PaperTime.SecondsMs }, reason);
                Void(standing.OfType<HeatFact.RepsAtCap>().Where(told => told.Step == step), reason);
                break;
        }
    }

    /// <summary>Steps that only the card has: those with a time, a reading or an attempt, and the last, which implies the others.</summary>
    private void TakeMore(int phone, int paper, string reason)
    {
        for (var step = phone + 1; step <= paper; step++)
        {
            if (step == paper || times.ContainsKey(step) || card.Find(step) is { Enters: true })
            {
                Add(Done(step, card.Find(step) ?? new PaperLine(step, true)), reason);
            }
        }
    }

    /// <summary>What the phone has too much goes; what only that implied is said by itself.</summary>
    private void TakeLess(int paper, CardStretch stretch, string reason)
    {
        if (paper >= stretch.First && !standing.OfType<HeatFact.Done>().Any(done => done.Step == paper))
        {
            Add(Done(paper, Entered(paper)), reason);
        }

        Void(standing.OfType<HeatFact.Done>().Where(done => done.Step > paper && done.Step <= stretch.Last), reason);
    }

    /// <summary>One athlete after the other, in the team's order, with what had been counted when each was through: a card does not say who worked when.</summary>
    private void TakeShares(int step, string reason)
    {
        var shares = card.Find(step)!.Shares.Where(share => share.Units > 0).OrderBy(share => share.Athlete).ToList();
        var (untilThen, counted) = ((times.TryGetValue(step, out var ms) ? ms : Latest(step)) - (2 * shares.Count), 0);
        foreach (var share in shares)
        {
            counted += share.Units;
            Add(new HeatFact.AthleteWorking { Id = newId(), Instant = At(untilThen++), Lane = lane.Lane, Step = step, Athlete = share.Athlete, UncertaintyMs = PaperTime.SecondsMs }, reason);
            Add(new HeatFact.CountReached { Id = newId(), Instant = At(untilThen++), Lane = lane.Lane, Step = step, Count = counted, UncertaintyMs = PaperTime.SecondsMs }, reason);
        }

        Void(standing.OfType<HeatFact.AtStep>().Where(told => told.Step == step && told is HeatFact.AthleteWorking or HeatFact.CountReached), reason);
    }

    /// <summary>The time and reading of a step that was done, by what stands for it afterwards.</summary>
    private void Replace(int step, HeatFact.Done done, string reason)
    {
        // Two differences of one step, its time and its reading, are put right together.
        if (writes.Any(write => write.Step == step && write.Command is HeatCommand.Add { Tap: HeatFact.Done }))
        {
            return;
        }

        Add(done, reason);
        Void(standing.OfType<HeatFact.Done>().Where(before => before.Step == step), reason);
    }

    private void TakeNoReps(int step, int tooMany, string reason)
    {
        for (var i = 0; i < -tooMany; i++)
        {
            Add(new HeatFact.NoRep { Id = newId(), Instant = At(Math.Min(times.GetValueOrDefault(step, long.MaxValue), Latest(step))), Lane = lane.Lane, Step = step, UncertaintyMs = PaperTime.SecondsMs }, reason);
        }

        Void(standing.OfType<HeatFact.NoRep>().Where(noRep => noRep.Step == step).Reverse().Take(tooMany), reason);
    }

    /// <param name="step">The step.</param>
    /// <param name="entered">Its reading or attempt, as it is to stand.</param>
    private HeatFact.Done Done(int step, PaperLine entered)
    {
        var known = times.TryGetValue(step, out var ms);
        var within = card.Find(step)?.Time is { } time && known && time.HeatMs == ms ? time.WithinMs : lane.Splits[step - 1]?.UncertaintyMs ?? PaperTime.TenthsMs;
        var (id, at) = (newId(), At(known ? ms : Latest(step)));
        return lane.Plan.Find(step)!.Kind switch
        {
            StepKind.Tag => new HeatFact.TagMade { Id = id, Instant = at, Lane = lane.Lane, Step = step, TimeKnown = known, UncertaintyMs = within },
            StepKind.Attempt when entered is { Load: { } load, Good: { } good } => new HeatFact.AttemptJudged
            {
                Id = id,
                Instant = at,
                Lane = lane.Lane,
                Step = step,
                Load = load,
                Good = good,
                Fault = good ? null : CardDifferences.AttemptOf(lane, step)?.Fault,
                TimeKnown = known,
                UncertaintyMs = within,
            },
            StepKind.Value when entered.Value is { } reading => new HeatFact.ValueEntered { Id = id, Instant = at, Lane = lane.Lane, Step = step, Value = reading, TimeKnown = known, UncertaintyMs = within },
            _ => new HeatFact.StepDone { Id = id, Instant = at, Lane = lane.Lane, Step = step, TimeKnown = known, UncertaintyMs = within },
        };
    }

    /// <summary>What the step's reading or attempt will be: the card's where it is taken too, or where the phone has none; else the phone's.</summary>
    private PaperLine Entered(int step)
    {
        var (line, phone) = (card.Find(step) ?? new PaperLine(step, true), CardDifferences.AttemptOf(lane, step));
        return line with
        {
            Value = IsTaken(step, DifferenceKind.Value) ? line.Value : standing.OfType<HeatFact.ValueEntered>().LastOrDefault(entered => entered.Step == step)?.Value,
            Load = IsTaken(step, DifferenceKind.Load) || phone is null ? line.Load : phone.Value.Load,
            Good = IsTaken(step, DifferenceKind.Lift) || phone is null ? line.Good : phone.Value.Good,
        };
    }

    private bool IsTaken(int step, DifferenceKind kind) => taken.Any(one => one.Difference.Kind == kind && one.Difference.Step == step);

    private CardStretch StretchOf(int step) => stretches.First(stretch => stretch.Has(step));

    /// <summary>The latest that anything can have been done in it: its round's end, the cap, the heat's end, or now.</summary>
    private long EndOf(CardStretch stretch) => stretch.Window is { } window ? Math.Min(untilMs, lane.Clock!.HeatMsOf(window.UntilMs)) : untilMs;

    /// <summary>
    /// The latest that a step without a time can have been done: as many milliseconds before the next one whose time is known, or before the end, as there are steps
    /// between. So every step has an instant of its own, and one that is written later still lies before those after it.
    /// </summary>
    private long Latest(int step)
    {
        var stretch = StretchOf(step);
        return times.Where(time => time.Key > step && time.Key <= stretch.Last).Select(time => time.Value - (time.Key - step)).Append(EndOf(stretch) - (stretch.Last - step)).Min();
    }

    private Instant At(long heatMs) => heat.Clock.InstantOf(Math.Max(0, heatMs))!.Value;

    private void Add(HeatFact.AtStep tap, string reason) =>
        writes.Add(new CardWrite(tap.Step, new HeatCommand.Add { Id = newId(), Source = Source.Paper, Tap = tap with { Plan = lane.PlanVersion }, Reason = reason }));

    private void Void(IEnumerable<HeatFact.AtStep> taps, string reason) =>
        writes.AddRange(taps.Select(tap => new CardWrite(tap.Step, new HeatCommand.Void { Id = newId(), Target = tap.Id, Reason = reason })));
}
