using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;
using LiveHeat.Engine.Timing;
using LiveHeat.Server.Access;
using LiveHeat.Server.Heats;

namespace LiveHeat.Testing.Simulation;

/// <summary>A judge's phone on the agenda: taps are stored, then sent in order until there is a receipt. What it does, it does when it is awake.</summary>
internal sealed class PlayedPhone
{
    private const int BurstMs = 120;
    private const int ExchangeEveryMs = 5_000;
    private const int Burst = 8;
    private const int LateReceiptMs = 2_000;
    private const int UnknownClockMs = 60_000;

    /// <summary>An instant is told in whole milliseconds.</summary>
    private const double RoundingMs = 0.5;

    private readonly PhonePlot plot;
    private readonly LaneNumber lane;
    private readonly Agenda agenda;
    private readonly Venue venue;
    private readonly Random chance;
    private readonly Link link;

    // On its disk.
    private readonly List<StoredTap> taps = [];
    private readonly string outbox;
    private long counter;
    private Bridge? bridge;
    private Frame? frame;

    // In its memory.
    private PlayedClock clock;
    private int life;
    private bool off = true;
    private bool sending;
    private int attempt;
    private int exchanges;

    public PlayedPhone(PhonePlot plot, int lane, Agenda agenda, Venue venue)
    {
        (this.plot, this.lane, this.agenda, this.venue) = (plot, new LaneNumber(lane), agenda, venue);
        outbox = Ids.Of(plot.Name);
        chance = new Random(plot.Name.Sum(letter => letter * 31));
        link = new Link(plot, agenda, venue);
        SignedIn = new SignedIn($"in-{plot.Name}", plot.Name, Role.Judge, this.lane);
        clock = NewClock();
        agenda.At(plot.OnMs, Boot);
        foreach (var reboot in plot.Reboots)
        {
            agenda.At(reboot.FromMs, SwitchOff);
            agenda.At(reboot.UntilMs, Boot);
        }

        foreach (var nap in plot.Naps)
        {
            agenda.At(nap.UntilMs, () => { exchanges = 0; });
        }
    }

    public SignedIn SignedIn { get; }

    /// <summary>Taps on its disk.</summary>
    public IReadOnlyList<StoredTap> Taps => taps;

    /// <summary>Taps that the server refused or calls a conflict: there must be none.</summary>
    public List<string> Trouble { get; } = [];

    /// <summary>The seat it took; null before.</summary>
    public SeatId? Seat { get; private set; }

    public bool AllSent => taps.TrueForAll(tap => !tap.Waits);

    /// <summary>From now on nothing is lost or late.</summary>
    public void Heal()
    {
        link.Healed = true;
        Kick();
    }

    /// <summary>Asks for the lane's seat until it has it.</summary>
    public void TakeSeat() => TakeSeat(new FactId(outbox, ++counter));

    /// <summary>The judge's finger, now.</summary>
    /// <param name="moment">What was seen.</param>
    /// <param name="idOf">The ids of the lane's moments so far: an undo names one.</param>
    public StoredTap Tap(Moment moment, Func<int, FactId> idOf)
    {
        var stamp = clock.Now();
        var wall = Wall();
        var instant = Math.Round(stamp?.ServerMs ?? wall);
        var fact = StoredTap.Make(moment, new FactId(outbox, ++counter), lane, idOf) with
        {
            Instant = new Instant((long)instant),
            UncertaintyMs = (int)Math.Ceiling((stamp?.UncertaintyMs ?? UnknownClockMs) + RoundingMs),
            Seat = Seat ?? new SeatId(""),
            Start = frame?.Start?.Id,
            Phone = new PhoneReadings(Math.Round(Mono(), 1), wall, Math.Round(instant - wall, 1)),
        };
        var tap = new StoredTap(fact, moment);
        taps.Add(tap);
        Kick();
        return tap;
    }

    /// <summary>A frame was pushed; an older one than it has is dropped.</summary>
    public void Push(Frame pushed, double downMs, bool lost) => link.Push(
        downMs, lost,
        () => frame = frame is { } have && have.Sequence > pushed.Sequence ? have : pushed,
        InThisLife());

    private void Boot()
    {
        off = false;
        clock = NewClock();
        (sending, exchanges) = (false, 0);
        Exchange();
        Kick();
    }

    private void SwitchOff()
    {
        (life, off, bridge) = (life + 1, true, clock.Kept);
        // A receipt is kept without waiting for the disk.
        foreach (var tap in taps.Where(tap => !tap.Waits && agenda.NowMs - tap.ReceiptedMs < LateReceiptMs))
        {
            tap.Waits = true;
        }
    }

    private void TakeSeat(FactId id) => link.Ask(
        async () => (Result: await venue.Do(new HeatCommand.TakeSeat { Id = id, Lane = lane }, SignedIn), Seat: SeatOf(id)),
        answer =>
        {
            Seat = answer.Seat;
            if (answer.Result is not CommandResult.Done)
            {
                Trouble.Add($"{plot.Name} was refused its seat: {answer.Result}");
            }
        },
        () => TakeSeat(id),
        InThisLife());

    /// <summary>The seat's id as the server made it: it is told with the lane's facts.</summary>
    private SeatId? SeatOf(FactId command) => (venue.Session.State.Find(command)?.Fact as HeatFact.SeatTaken)?.Seat;

    private void Kick()
    {
        attempt = 0;
        if (!sending && !off)
        {
            sending = true;
            Send();
        }
    }

    private void Send()
    {
        var batch = taps.Where(tap => tap.Waits).Take(200).ToList();
        if (batch.Count == 0)
        {
            sending = false;
            return;
        }

        link.Ask(
            () => venue.Take([.. batch.Select(tap => tap.Json)], SignedIn),
            answer =>
            {
                Take(batch, answer);
                attempt = 0;
                Send();
            },
            () => Later(chance.NextDouble() * Math.Min(8_000, 500 * Math.Pow(2, attempt++)), Send),
            InThisLife());
    }

    private void Take(List<StoredTap> batch, TapReceipts answer)
    {
        foreach (var (tap, receipt) in batch.Zip(answer.Receipts))
        {
            if (receipt.Outcome is TapOutcome.Accepted or TapOutcome.Known)
            {
                (tap.Waits, tap.ReceiptedMs) = (false, agenda.NowMs);
            }
            else
            {
                tap.Waits = false;
                Trouble.Add($"{plot.Name}: {receipt}");
            }
        }
    }

    private void Exchange()
    {
        var sent = Mono();
        link.Ask(
            () => Task.FromResult(venue.Exchange()),
            answer =>
            {
                clock.Add(sent, answer.AtMs, answer.AtMs, answer.Process);
                Again();
            },
            Again,
            InThisLife());
        void Again() => Later(++exchanges < Burst ? BurstMs : ExchangeEveryMs, Exchange);
    }

    private void Later(double afterMs, Action what) => InThisLife()(afterMs, what);

    /// <summary>Does something after so long, when the phone is awake; never if it was switched off since this moment.</summary>
    private Action<double, Action> InThisLife()
    {
        var born = life;
        return (afterMs, what) => Later(born, afterMs, what);
    }

    private void Later(int born, double afterMs, Action what)
    {
        void Due()
        {
            if (born != life || off)
            {
                return;
            }

            foreach (var nap in plot.Naps.Where(nap => nap.Holds(agenda.NowMs)))
            {
                agenda.At(nap.UntilMs, Due);
                return;
            }

            what();
        }

        agenda.At(agenda.NowMs + afterMs, Due);
    }

    private PlayedClock NewClock() => new(Mono, Wall, bridge);

    private double Mono() => plot.Mono(agenda.NowMs);

    private double Wall() => plot.Wall(agenda.GoAt, agenda.NowMs);
}
