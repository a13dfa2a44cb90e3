namespace LiveHeat.Testing.Simulation;

/// <summary>One thing that truly happened on a lane, and that its judge taps at that moment.</summary>
/// <param name="Number">From 0, in the lane's own order.</param>
/// <param name="AtMs">True time since GO, milliseconds with fraction.</param>
/// <param name="Fact">Its name on the wire.</param>
/// <param name="Step">The step it is about; 0 when it is about none.</param>
/// <param name="Count">With a count: how many.</param>
/// <param name="Undoes">With an undo: the number of the moment that was no such thing.</param>
internal sealed record Moment(int Number, double AtMs, string Fact, int Step, int? Count = null, int? Undoes = null);

/// <summary>A stretch of true time since GO, milliseconds.</summary>
internal readonly record struct Stretch(double FromMs, double UntilMs)
{
    public bool Holds(double atMs) => atMs >= FromMs && atMs < UntilMs;
}

/// <summary>What becomes of one request and its answer.</summary>
/// <param name="UpMs">On its way to the server.</param>
/// <param name="DownMs">The answer's way.</param>
/// <param name="LostUp">It never arrives.</param>
/// <param name="LostDown">It arrives and nobody hears of it.</param>
/// <param name="RepeatMs">It arrives once more so much later; null: it does not.</param>
internal sealed record Passage(double UpMs, double DownMs, bool LostUp = false, bool LostDown = false, double? RepeatMs = null)
{
    public static readonly Passage Fine = new(4, 4);
}

/// <summary>A phone and all that happens to it. Times are true time since GO, milliseconds.</summary>
/// <param name="Name">Unlike every other phone's in the competition.</param>
/// <param name="OnMs">It is switched on.</param>
/// <param name="DriftPpm">Its crystal runs so much too fast, parts in a million, at most 100 either way.</param>
/// <param name="WallErrorMs">How wrong its wall clock is.</param>
/// <param name="MonoMs">What its monotonic clock says when it is switched on.</param>
/// <param name="Naps">It sleeps: its monotonic clock stands, its wall clock goes on.</param>
/// <param name="Reboots">It is off: what was in memory is gone.</param>
/// <param name="Cuts">No network.</param>
/// <param name="Passages">What becomes of its requests, one after another, again from the first after the last.</param>
internal sealed record PhonePlot(
    string Name, double OnMs, double DriftPpm, double WallErrorMs, double MonoMs,
    IReadOnlyList<Stretch> Naps, IReadOnlyList<Stretch> Reboots, IReadOnlyList<Stretch> Cuts, IReadOnlyList<Passage> Passages)
{
    private double Rate => 1 + (DriftPpm / 1e6);

    /// <summary>performance.now() at a true time: since the phone was last switched on, less what it slept.</summary>
    public double Mono(double atMs)
    {
        var (since, shown) = (OnMs, MonoMs);
        foreach (var reboot in Reboots.Where(reboot => reboot.UntilMs <= atMs))
        {
            (since, shown) = (reboot.UntilMs, 0);
        }

        var sleptMs = Naps.Where(nap => nap.FromMs >= since).Sum(nap => Math.Max(0, Math.Min(atMs, nap.UntilMs) - nap.FromMs));
        return shown + ((atMs - since - sleptMs) * Rate);
    }

    /// <summary>Date.now() at a true time, as an error: whole milliseconds are left to whoever reads it.</summary>
    public double Wall(double goAtMs, double atMs) => Math.Floor(goAtMs + (atMs * Rate) + WallErrorMs);
}

/// <summary>A lane's judge and the phones used.</summary>
/// <param name="Lane">From 1.</param>
/// <param name="Story">What happened there.</param>
/// <param name="First">The phone at the start.</param>
/// <param name="Second">The phone that takes over; null when none does.</param>
/// <param name="TakeoverMs">When it asks for the seat.</param>
internal sealed record LanePlot(int Lane, IReadOnlyList<Moment> Story, PhonePlot First, PhonePlot? Second, double TakeoverMs);

/// <summary>A heat with all its faults, made from one number.</summary>
/// <param name="Seed">The number.</param>
/// <param name="CapMs">The time cap.</param>
/// <param name="Lanes">The lanes.</param>
/// <param name="ServerDown">The server restarts.</param>
/// <param name="HealedMs">All faults are over.</param>
internal sealed record Plot(int Seed, int CapMs, IReadOnlyList<LanePlot> Lanes, IReadOnlyList<Stretch> ServerDown, double HealedMs)
{
    /// <summary>The heat is called.</summary>
    public const double CallMs = -60_000;

    /// <summary>The judges take their seats.</summary>
    public const double SeatsMs = -50_000;

    /// <summary>The start is set: GO is at 0.</summary>
    public const int StartMs = -10_000;

    /// <summary>The same heat on perfect phones over a perfect network: same true times, nobody changes phones.</summary>
    public Plot Calm() => this with
    {
        ServerDown = [],
        Lanes =
        [
            .. Lanes.Select(lane => lane with
            {
                First = new PhonePlot($"{lane.First.Name}-calm", CallMs, 0, 0, 1_000, [], [], [], [Passage.Fine]),
                Second = null,
            }),
        ],
    };
}
