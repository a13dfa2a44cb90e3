using LiveHeat.Contracts.Access;
using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Phones;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>What a phone is made of.</summary>
/// <param name="Server">The server's address.</param>
/// <param name="Time">What it waits by; runs fast in a fast rehearsal.</param>
/// <param name="Random">Its chance, from a seed.</param>
public sealed record PhoneMake(Uri Server, TimeProvider Time, Random Random)
{
    /// <summary>The phone's own clock: real time, whatever <see cref="Time"/> does. Tests that stop the server's clock stop this one too.</summary>
    public TimeProvider Crystal { get; init; } = TimeProvider.System;

    /// <summary>How wrong its wall clock is, milliseconds.</summary>
    public double WallErrorMs { get; init; }
}

/// <summary>A judge's phone as an object: talks to a server as the pad in a browser does, over HTTP and the hub.</summary>
/// <remarks>
/// Taps answer at once and are safe later, see <see cref="UntilSafe"/>. Its loops run from <see cref="Join"/> to disposal; <see cref="Life"/>
/// fails when one of them does, which no network can bring about.
/// </remarks>
public sealed partial class SimulatedPhone : IAsyncDisposable
{
    private static readonly TimeSpan ReportEvery = TimeSpan.FromSeconds(5);

    private readonly PhoneMake make;
    private readonly SiteClient site;
    private readonly HubLink hub;
    private readonly CancellationTokenSource off = new();
    private readonly Pulse changed = new();
    private readonly Pulse programme = new();
    private Task life = Task.CompletedTask;

    public SimulatedPhone(PhoneMake make)
    {
        this.make = make;
        site = new SiteClient(make.Server, Network);
        hub = new HubLink(site, Network, make.Time, make.Random);
        Outbox = new Outbox(site, make.Time, make.Random);
        Clock = new PhoneClock(make.Crystal, make.WallErrorMs);
        hub.FrameCame += frame =>
        {
            // A restored ledger is told by its frames too: this phone may have nothing to send that would be answered.
            Outbox.Saw(frame.Epoch);
            reading?.Take(frame);
        };
        hub.ProgramChanged += programme.Beat;
        hub.Connected += () =>
        {
            Outbox.Hurry();
            programme.Beat();
            connected.Beat();
        };
    }

    /// <summary>Its WiFi, to be taken away and given back.</summary>
    public PhoneNetwork Network { get; } = new();

    /// <summary>Whether it is on the hub.</summary>
    public bool Online => hub.Online;

    public PhoneClock Clock { get; }

    public Outbox Outbox { get; }

    /// <summary>Beats when something changed that a judge would look up for: the heat's phase, the lane, the sheet, a ruling.</summary>
    public Pulse Changed => changed;

    /// <summary>Beats when the list of heats changed, and after each connect.</summary>
    public Pulse ProgramChanged => programme;

    /// <summary>What the server last said of this pad; null before joining.</summary>
    public PadState? Pad { get; private set; }

    /// <summary>The seat this phone took in the heat it is in; null before.</summary>
    public SeatId? Seat { get; private set; }

    /// <summary>The heat this phone is in; null between heats.</summary>
    public HeatId? Heat => reading?.Heat;

    /// <summary>The newest frame of it; null before the first.</summary>
    public Frame? Frame => reading?.Frame;

    /// <summary>The lane on the newest frame; null before the first.</summary>
    public LaneFrame? Told => Frame?.Lanes.FirstOrDefault(lane => lane.Lane == Lane);

    /// <summary>What is to be done; null before it is read.</summary>
    public Sheet? Sheet => reading?.Sheet;

    /// <summary>The lane's own part of the sheet; null before it is read.</summary>
    public SheetLane? Line => Sheet?.Lanes.FirstOrDefault(lane => lane.Lane == Lane);

    /// <summary>The lane this phone judges.</summary>
    public LaneNumber Lane => Pad?.Lane ?? throw new InvalidOperationException("This phone has not joined.");

    /// <summary>Somebody else's phone took the lane over.</summary>
    public bool SeatLost => Seat is { } mine && Told?.Seat is { } theirs && theirs != mine && reading!.Taken >= 0 && Frame!.Sequence >= reading.Taken;

    /// <summary>Where the lane is, by the facts this phone has.</summary>
    public LaneNow Now => reading is { } read && Line is { } line
        ? LaneLaw.Read(read.Facts.Concat(Outbox.TapsOf(read.Heat).Select(KnownFact.Of)), Lane, line.Steps.Count, Frame is { } frame ? new StartInForce(frame.Start?.Id) : null)
        : new LaneNow(1, 0, 0, []);

    /// <summary>Runs as long as the phone is on.</summary>
    public Task Life => life;

    /// <summary>Redeems a join code and switches the phone's loops on.</summary>
    /// <exception cref="SiteRefusedException">The code lets nobody in.</exception>
    public async Task Join(string code, string judge, CancellationToken stopping)
    {
        await site.Post<JoinRequest, Me?>("/api/join", new JoinRequest(code, judge), stopping).ConfigureAwait(false);
        await ReadPad(stopping).ConfigureAwait(false);
        life = Task.WhenAll(
            Task.Run(() => hub.Run(off.Token), CancellationToken.None),
            Task.Run(() => Outbox.Run(off.Token), CancellationToken.None),
            Task.Run(KeepClock, CancellationToken.None),
            Task.Run(KeepReporting, CancellationToken.None),
            Task.Run(KeepReading, CancellationToken.None));
    }

    /// <summary>Asks where the lane is now.</summary>
    public async Task<PadState> ReadPad(CancellationToken stopping)
    {
        var pad = await site.Get<PadState>("/api/pad", stopping).ConfigureAwait(false);
        Outbox.Saw(pad.Epoch);
        Outbox.Certified(pad.Certified);
        return Pad = pad;
    }

    /// <summary>Turns to a heat: reads its sheet, frame and facts, and follows it.</summary>
    public async Task Enter(HeatId heat, CancellationToken stopping)
    {
        reading = new HeatReading(site, heat, Lane, changed);
        Seat = Pad?.Heat?.Id == heat ? Pad.Seat : null;
        await Patiently(() => reading.CatchUp(stopping), stopping).ConfigureAwait(false);
        await hub.Watch(heat.Value, stopping).ConfigureAwait(false);
    }

    /// <summary>Takes the lane's seat; whoever had it has it no more.</summary>
    public async Task TakeSeat(Duty duty, CancellationToken stopping)
    {
        var heat = InHeat;
        var taken = await Ask(new HeatCommand.TakeSeat { Id = Outbox.NextId(), Lane = Lane, Duty = duty }, stopping).ConfigureAwait(false);
        await Patiently(() => heat.CatchUp(stopping), stopping).ConfigureAwait(false);
        Seat = heat.Facts.Where(fact => fact.Sequence == taken.Sequence).Select(fact => fact.Fact).OfType<HeatFact.SeatTaken>().Single().Seat;
        heat.Taken = taken.Sequence;
        changed.Beat();
    }

    /// <summary>Judge, phone and team are ready.</summary>
    public Task<CommandAnswer> Ready(CancellationToken stopping) => Ask(new HeatCommand.Ready { Id = Outbox.NextId(), Lane = Lane, Seat = OwnSeat }, stopping);

    /// <summary>Stops judging the lane.</summary>
    public async Task GiveUpSeat(CancellationToken stopping)
    {
        await Ask(new HeatCommand.GiveUpSeat { Id = Outbox.NextId(), Lane = Lane, Seat = OwnSeat }, stopping).ConfigureAwait(false);
        Seat = null;
    }

    /// <summary>Waits until every tap has its receipt.</summary>
    public async Task UntilSafe(CancellationToken stopping)
    {
        for (var next = Outbox.Changed.Next; Outbox.Unsent > 0; next = Outbox.Changed.Next)
        {
            await next.WaitAsync(stopping).ConfigureAwait(false);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await off.CancelAsync().ConfigureAwait(false);
        await life.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        site.Dispose();
        off.Dispose();
    }

    private SeatId OwnSeat => Seat ?? throw new InvalidOperationException("This phone has no seat.");

    private HeatReading InHeat => reading ?? throw new InvalidOperationException("This phone is in no heat.");

    private Task<CommandAnswer> Ask(HeatCommand command, CancellationToken stopping) =>
        Patiently(() => site.Command(InHeat.Heat, command, stopping), stopping);
}
