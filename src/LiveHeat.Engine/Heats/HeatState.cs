using System.Collections.Immutable;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Engine.Heats;

/// <summary>A signature on a result.</summary>
/// <param name="By">Who signed.</param>
/// <param name="Head">The sequence they saw.</param>
public sealed record Signature(By By, long Head);

/// <summary>A heat as its facts have it: the fold. Immutable; the same facts give an equal state.</summary>
/// <remarks>
/// Desk facts apply in ledger order; taps play by instant, lane by lane, so only the lane that a tap is about is folded again.
/// It accepts all that is on a ledger; what a person may do is decided before, by the rules.
/// </remarks>
public sealed partial record HeatState
{
    /// <summary>No fact yet.</summary>
    public static HeatState Empty(HeatId heat) => new() { Heat = heat };

    /// <summary>Which heat.</summary>
    public required HeatId Heat { get; init; }

    /// <summary>Sequence of the last fact; 0 when there is none.</summary>
    public long Head { get; init; }

    /// <summary>Sequence of the last fact that is not a signature: what signatures name.</summary>
    public long SignedHead { get; init; }

    /// <summary>The heat as called; null before that.</summary>
    public HeatSnapshot? Snapshot { get; init; }

    /// <summary>Grows whenever what is to be done changes: call, line-up, variant.</summary>
    public int SheetVersion { get; init; }

    /// <summary>When the heat was first called; null before.</summary>
    public Instant? CalledAt { get; init; }

    /// <summary>When a start was last recalled, or a halt went back to the call; null when neither did.</summary>
    public Instant? ReturnedAt { get; init; }

    /// <summary>Since when it stands called: a recalled start, or a halt that went back, is a call again until the next start. Null before the call.</summary>
    public Instant? StandsCalledAt => Told == Phase.Called ? ReturnedAt ?? CalledAt : CalledAt;

    /// <summary>The work is over, whether or not it is reviewed and signed.</summary>
    public bool IsOver => Told is Phase.Ended or Phase.Frozen or Phase.Certified;

    /// <summary>Whether it is on the floor: counting down, running or halted.</summary>
    public bool IsLive => Told is Phase.CountingDown or Phase.Running or Phase.Halted;

    /// <summary>The start in force and the halts.</summary>
    public HeatClock Clock { get; init; } = HeatClock.Unset;

    /// <summary>The phase that facts alone tell; see <see cref="PhaseAt"/>.</summary>
    public Phase Told { get; init; } = Phase.Planned;

    /// <summary>When the heat ended; null before.</summary>
    public Instant? EndedAt { get; init; }

    /// <summary>The freeze in force; null when not frozen.</summary>
    public HeatFact.Frozen? Freeze { get; init; }

    /// <summary>Signatures on the freeze in force.</summary>
    public Items<Signature> Signatures { get; init; }

    /// <summary>From 1; grows when the heat is reopened.</summary>
    public int Revision { get; init; } = 1;

    /// <summary>Seats of all lanes in the order taken.</summary>
    public Items<Seat> Seats { get; init; }

    /// <summary>The lanes in floor order.</summary>
    public Items<LaneState> Lanes { get; init; }

    /// <summary>The phase at an instant: the count-down turns to running by itself, readiness arms.</summary>
    public Phase PhaseAt(Instant now) => Told switch
    {
        Phase.CountingDown when now >= Clock.Start!.GoAt => Phase.Running,
        Phase.Called when Lanes.Count > 0 && Lanes.All(lane => lane.Ready || lane.Out) => Phase.Armed,
        var told => told,
    };

    /// <summary>Standing decisions on near ties, newest last.</summary>
    public Items<HeatFact.NearTieDecided> NearTieDecisions => Decisions<HeatFact.NearTieDecided>();

    /// <summary>Standing orders to do the work again.</summary>
    public Items<HeatFact.RerunOrdered> Reruns => Decisions<HeatFact.RerunOrdered>();

    /// <summary>
    /// Until when an appeal may be filed: so long after the freeze, which posts the provisional result. Null while no result is posted: until then it may be.
    /// </summary>
    public Instant? AppealsUntil => Freeze is { } posted && Snapshot is { } snapshot ? posted.Instant + ((snapshot.AppealMinutes ?? HeatSnapshot.UsualAppealMinutes) * 60_000) : null;

    /// <summary>Lanes with an appeal that nobody has decided.</summary>
    public Items<LaneNumber> Pending => Lanes.Where(lane => lane.Pending).Select(lane => lane.Lane).ToItems();

    /// <summary>What was decided of two lanes; null when nothing was.</summary>
    public HeatFact.NearTieDecided? DecisionOn(LaneNumber one, LaneNumber other) =>
        NearTieDecisions.LastOrDefault(decided => decided.Lanes.Contains(one) && decided.Lanes.Contains(other));

    /// <summary>The lane of that number; null when the heat has none.</summary>
    public LaneState? Find(LaneNumber lane) => Lanes.FirstOrDefault(state => state.Lane == lane);

    /// <summary>The entry of a fact that the heat holds; null when it holds none of that id.</summary>
    public Entry? Find(FactId fact) => Log.ById.GetValueOrDefault(fact);

    /// <summary>All entries about a lane in ledger order: its taps, the rulings on it, and what was ruled on any of those.</summary>
    public Items<Entry> EntriesOf(LaneNumber lane) => Log.ByLane.GetValueOrDefault(lane);

    /// <summary>Taps that play a part as the lane's judge's, in the order they happened: not voided, undone or held, and no witness's or timekeeper's.</summary>
    public IReadOnlyList<HeatFact.Floor> StandingTaps(LaneNumber lane) =>
        Find(lane) is { Plans: { } plans } state ? LaneFold.Standing(Context(state.Entry), EntriesOf(lane), plans) : [];

    /// <summary>All entries in ledger order.</summary>
    public IReadOnlyList<Entry> Entries => Log.All;

    /// <summary>The newest sequence of a fact about the lane; 0 when there is none.</summary>
    public long NewestAbout(LaneNumber lane) => EntriesOf(lane) is { Count: > 0 } entries ? entries[^1].Sequence : 0;

    /// <summary>Folds entries in ledger order.</summary>
    public static HeatState Fold(HeatId heat, IEnumerable<Entry> entries) => entries.Aggregate(Empty(heat), (state, entry) => state.Apply(entry));

    /// <summary>The state one fact later. Entries come in sequence.</summary>
    public HeatState Apply(Entry entry)
    {
        if (entry.Sequence <= Head)
        {
            throw new ArgumentException($"Entry {entry.Sequence} of heat {Heat} comes after {Head}.", nameof(entry));
        }

        var signs = entry.Fact is HeatFact.Certified;
        var told = entry.Fact is HeatFact.Desk desk ? ApplyDesk(desk, entry) : this;
        return (told with
        {
            Head = entry.Sequence,
            SignedHead = signs ? SignedHead : entry.Sequence,
            // One signature alone lapses with the next fact: the other would have to name the same head and no longer can.
            Signatures = signs || told.Told == Phase.Certified ? told.Signatures : [],
            Log = Log.With(entry),
        }).Refold(entry.Fact);
    }

    /// <inheritdoc/>
    public bool Equals(HeatState? other) => other is not null && Head == other.Head && Standing() == other.Standing() && Log.All.SequenceEqual(other.Log.All);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Heat, Head);

    /// <summary>All that the facts amount to, without their sequence numbers: what the laws compare.</summary>
    public (Phase, HeatClock, int, Items<Seat>, Items<LaneState>, Instant?) Standing() => (Told, Clock, Revision, Seats, Lanes, EndedAt);

    private HeatLog Log { get; init; } = HeatLog.Empty;

    /// <summary>Decisions about several lanes, voided ones too.</summary>
    private Items<HeatFact.Told> Decided { get; init; }

    private Items<T> Decisions<T>()
        where T : HeatFact.Told => Decided.Count == 0 ? [] : Decided.OfType<T>().Where(decision => !Log.Voided.Contains(decision.Id)).ToItems();

    private HeatState Refold(HeatFact fact)
    {
        if (Snapshot is null)
        {
            return this;
        }

        var lane = Log.Subject(fact)?.AboutLane();
        var tap = fact is HeatFact.Floor or HeatFact.FactAdded;
        return fact switch
        {
            HeatFact.ReasonGiven or HeatFact.Certified => this,
            _ when lane is { } only && Find(only) is not null => this with { Lanes = Lanes.Select(state => state.Lane == only ? Fold(state.Entry, tap ? state.Plans : null) : state).ToItems() },
            HeatFact.Floor => this,
            _ => this with { Lanes = Snapshot.Lanes.OrderBy(entry => entry.Lane).Select(entry => Fold(entry, null)).ToItems() },
        };
    }

    private LaneState Fold(LaneEntry entry, LanePlans? known) => LaneFold.Play(Context(entry), entry, EntriesOf(entry.Lane), known);

    private LaneContext Context(LaneEntry entry) => new(
        Snapshot!, Log.Bounds, Clock, Seats.Where(seat => seat.Lane == entry.Lane).ToItems(),
        Log.Overrides.Where(pair => pair.Lanes.Contains(entry.Lane)).Select(pair => pair.Sequence).ToItems(),
        Log.Voided, Log.Admitted, Freeze?.Head);
}
