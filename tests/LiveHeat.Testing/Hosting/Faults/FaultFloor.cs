using LiveHeat.Contracts.Frames;
using LiveHeat.Engine.Heats;
using LiveHeat.Rehearsal.Phones;
using LiveHeat.Testing.Hosting.Torture;

namespace LiveHeat.Testing.Hosting.Faults;

/// <summary>A heat on the real server in a process of its own; phones and screens reach it through networks that a test can spoil.</summary>
internal sealed class FaultFloor : IAsyncDisposable
{
    /// <summary>Only a broken server is waited for so long.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(45);

    private static readonly TimeSpan LookAgain = TimeSpan.FromMilliseconds(20);

    private readonly List<FaultProxy> links = [];
    private readonly List<SimulatedPhone> phones = [];
    private readonly List<FaultViewer> viewers = [];

    private FaultFloor(HubProcess hub) => Hub = hub;

    public static HeatId Heat => new(TortureDesk.Heat);

    public HubProcess Hub { get; }

    /// <summary>The organiser, on an undisturbed line.</summary>
    public TortureDesk Desk { get; private set; } = null!;

    public IReadOnlyList<SimulatedPhone> Phones => phones;

    /// <summary>Starts the server on a new folder and calls a heat.</summary>
    /// <param name="lanes">Teams.</param>
    /// <param name="rounds">Steps of each lane.</param>
    /// <param name="before">A program that starts the server; empty for none.</param>
    public static async Task<FaultFloor> Open(int lanes, int rounds = 24, params string[] before)
    {
        var floor = new FaultFloor(new HubProcess(Directory.CreateTempSubdirectory("faults-").FullName, before));
        try
        {
            await floor.Hub.Start();
            floor.Desk = await TortureDesk.Open(floor.Hub);
            await floor.Desk.Call(lanes, rounds);
            return floor;
        }
        catch
        {
            await floor.DisposeAsync();
            throw;
        }
    }

    /// <summary>One more network to the server.</summary>
    public FaultProxy Link()
    {
        var link = new FaultProxy(Hub.Address);
        links.Add(link);
        return link;
    }

    /// <summary>A phone that has joined and taken a seat of the lane.</summary>
    public async Task<SimulatedPhone> Phone(int lane, FaultProxy link, Duty duty = Duty.Primary, string? code = null)
    {
        using var late = new CancellationTokenSource(Patience);
        SimulatedPhone phone;
        int number;
        lock (phones)
        {
            number = phones.Count + 1;
            phones.Add(phone = new SimulatedPhone(new PhoneMake(link.Address, TimeProvider.System, new Random(number))));
        }

        await phone.Join(code ?? await Desk.Code(lane), $"Phone {number} lane {lane}", late.Token);
        await phone.Enter(Heat, late.Token);
        await phone.TakeSeat(duty, late.Token);
        return phone;
    }

    /// <summary>A screen on the hub.</summary>
    public FaultViewer Viewer(FaultProxy link)
    {
        var viewer = new FaultViewer(link.Address, seed: viewers.Count);
        viewers.Add(viewer);
        return viewer;
    }

    /// <summary>Waits for a state; a process and a screen have no signal for it, so they are asked.</summary>
    /// <returns>How long it took.</returns>
    public static async Task<TimeSpan> Until(Func<Task<bool>> isSo, string what)
    {
        var since = System.Diagnostics.Stopwatch.StartNew();
        while (!await isSo())
        {
            if (since.Elapsed > Patience)
            {
                throw new TimeoutException($"Not within {Patience.TotalSeconds} s: {what}");
            }

            await Task.Delay(LookAgain);
        }

        return since.Elapsed;
    }

    /// <summary>Waits until no simulated phone has a tap that is not on the ledger.</summary>
    public Task<TimeSpan> AllSafe() => Until(() => Task.FromResult(phones.TrueForAll(phone => phone.Outbox.Unsent == 0)), "every simulated phone has its receipts");

    /// <summary>What each simulated phone has kept, for <see cref="TapsOnce"/>.</summary>
    public Dictionary<string, IReadOnlyList<FactId>> OnPhones() =>
        phones.ToDictionary(phone => phone.Pad!.Judge, phone => (IReadOnlyList<FactId>)[.. phone.Outbox.TapsOf(Heat).Select(tap => tap.Fact.Id)]);

    public async ValueTask DisposeAsync()
    {
        foreach (var viewer in viewers)
        {
            await viewer.DisposeAsync();
        }

        foreach (var phone in phones)
        {
            await phone.DisposeAsync();
        }

        foreach (var link in links)
        {
            await link.DisposeAsync();
        }

        Desk?.Dispose();
        await Hub.DisposeAsync();
        Directory.Delete(Hub.Folder, recursive: true);
    }
}

/// <summary>A screen that watches the heat over the hub, and never gives up.</summary>
internal sealed class FaultViewer : IAsyncDisposable
{
    private readonly CancellationTokenSource off = new();
    private readonly SiteClient site;
    private readonly Task life;
    private volatile Frame? newest;

    public FaultViewer(Uri address, int seed)
    {
        var network = new PhoneNetwork();
        site = new SiteClient(address, network);
        var hub = new HubLink(site, network, TimeProvider.System, new Random(seed));
        hub.FrameCame += frame => newest = frame;
        life = hub.Run(off.Token);
    }

    /// <summary>What it shows; null before the first frame.</summary>
    public Frame? Newest => newest;

    public async ValueTask DisposeAsync()
    {
        await off.CancelAsync();
        await life.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        site.Dispose();
        off.Dispose();
    }
}
