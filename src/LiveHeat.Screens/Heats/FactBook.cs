using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Taps;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Heats;

/// <summary>A heat's facts as read from the ledger, with what later facts make of earlier ones.</summary>
public sealed class FactBook
{
    /// <summary>No facts.</summary>
    public static readonly FactBook Empty = new(0, []);

    private readonly Dictionary<FactId, FactLine> byId = [];
    private readonly Dictionary<FactId, HeatFact.Voided> voids = [];
    private readonly Dictionary<FactId, HeatFact.Admitted> admitted = [];
    private readonly Dictionary<FactId, string> reasons = [];
    private readonly HashSet<FactId> undone = [];
    private readonly Dictionary<SeatId, HeatFact.SeatTaken> seats = [];

    /// <summary>All facts in ledger order.</summary>
    public FactBook(long head, IEnumerable<FactLine> lines)
    {
        (Head, Lines) = (head, [.. lines]);
        foreach (var line in Lines)
        {
            byId[line.Fact.Id] = line;
            if (line.Fact is HeatFact.FactAdded added)
            {
                byId[added.Tap.Id] = line;
            }
            else if (line.Fact is HeatFact.SeatTaken taken)
            {
                seats[taken.Seat] = taken;
            }
        }

        // From the newest back: a void that a later one voids has no effect.
        foreach (var fact in Lines.Select(line => line.Fact).OfType<HeatFact.Voided>().Reverse().Where(fact => !voids.ContainsKey(fact.Id)))
        {
            voids[fact.Target] = fact;
        }

        foreach (var fact in Lines.Select(line => line.Fact).Where(fact => !voids.ContainsKey(fact.Id)))
        {
            Note(fact);
        }
    }

    /// <summary>The heat's newest sequence when these were read.</summary>
    public long Head { get; }

    /// <summary>All facts in ledger order.</summary>
    public IReadOnlyList<FactLine> Lines { get; }

    /// <summary>Facts about a lane and the rulings on them, newest first.</summary>
    public IEnumerable<FactLine> Of(LaneNumber lane) => Lines.Where(line => LaneOf(line.Fact) == lane || LanesOf(line.Fact).Contains(lane)).OrderByDescending(line => line.Sequence);

    /// <summary>Held taps that nobody has admitted, voided or undone; of one lane, or of all.</summary>
    public IEnumerable<FactLine> Held(LaneNumber? lane = null) => Lines.Where(line =>
        line.Flags.HasFlag(FactFlags.Quarantined) && line.Fact is HeatFact.Floor && (lane is null || LaneOf(line.Fact) == lane)
        && !admitted.ContainsKey(line.Fact.Id) && !IsVoided(line.Fact.Id) && !IsUndone(line.Fact.Id));

    /// <summary>The fact of an id; null when it is not here.</summary>
    public FactLine? Find(FactId id) => byId.GetValueOrDefault(id);

    /// <summary>Whether it was voided, and by which fact.</summary>
    public HeatFact.Voided? VoidOf(FactId id) => voids.GetValueOrDefault(id);

    /// <summary>Whether it does not count after all.</summary>
    public bool IsVoided(FactId id) => voids.ContainsKey(id);

    /// <summary>Whether its judge took it back.</summary>
    public bool IsUndone(FactId id) => undone.Contains(id);

    /// <summary>A tap that waits for the head judge.</summary>
    public bool IsHeld(FactLine line) => line.Flags.HasFlag(FactFlags.Quarantined) && line.Fact is HeatFact.Floor && !IsAdmitted(line.Fact.Id);

    /// <summary>Whether it was let count, and by which fact.</summary>
    public HeatFact.Admitted? AdmitOf(FactId id) => admitted.GetValueOrDefault(id);

    /// <summary>The seat a tap was made in; null when the phone had none that is known here.</summary>
    public HeatFact.SeatTaken? SeatOf(HeatFact fact) => fact is HeatFact.Floor floor ? seats.GetValueOrDefault(floor.Seat) : null;

    /// <summary>Whether the head judge let it count.</summary>
    public bool IsAdmitted(FactId id) => admitted.ContainsKey(id);

    /// <summary>Why a ruling was made, as told then or later; empty while nobody said.</summary>
    public string ReasonOf(HeatFact fact) => reasons.GetValueOrDefault(fact.Id) ?? Own(fact) ?? "";

    /// <summary>A standing ruling whose reason nobody has given yet.</summary>
    public bool ReasonMissing(HeatFact fact) => WantsReason(fact) && !IsVoided(fact.Id) && ReasonOf(fact).Length == 0;

    /// <summary>The lane a fact is about, also through the fact that it rules on.</summary>
    public LaneNumber? LaneOf(HeatFact fact) =>
        fact is HeatFact.About about ? Find(about.Target) is { Fact: not HeatFact.About and var target } ? target.AboutLane() : null : fact.AboutLane();

    /// <summary>The name behind a sign-in or device, as far as a seat or a ruling told it; null when nothing did.</summary>
    public string? NameOf(string sender) => Lines.Select(line => line.Fact).OfType<HeatFact.Desk>().LastOrDefault(desk => desk.By.SignIn == sender)?.By.Name;

    /// <summary>The workout as called last; null before the call is read.</summary>
    public Workout? Workout => Lines.Reverse().Select(line => line.Fact switch
    {
        HeatFact.HeatCalled called => called.Snapshot.Workout,
        HeatFact.CallReplaced replaced => replaced.Snapshot.Workout,
        _ => null,
    }).FirstOrDefault(workout => workout is not null);

    /// <summary>The start in force with its halts, to turn instants into heat time and back.</summary>
    public HeatClock ClockOf(Frame frame)
    {
        if (frame.Start is not { } start)
        {
            return HeatClock.Unset;
        }

        var halts = new List<Standstill>();
        foreach (var fact in Lines.Select(line => line.Fact).Where(fact => fact.Instant >= start.GoAt))
        {
            if (fact is HeatFact.HeatHalted)
            {
                halts.Add(new Standstill(fact.Instant, null));
            }
            else if (fact is HeatFact.HeatResumed && halts.Count > 0)
            {
                halts[^1] = halts[^1] with { Until = fact.Instant };
            }
        }

        return new HeatClock(new Start(start.Id, start.GoAt, start.UncertaintyMs, start.Observed), halts.ToItems());
    }

    /// <summary>The lanes of a fact that is about several.</summary>
    private static Items<LaneNumber> LanesOf(HeatFact fact) => fact switch
    {
        HeatFact.NearTieDecided decided => decided.Lanes,
        HeatFact.RerunOrdered rerun => rerun.Lanes,
        HeatFact.LanesOverridden over => over.Lanes,
        _ => [],
    };

    private static bool WantsReason(HeatFact fact) => fact is HeatFact.LaneDesk
        and not (HeatFact.SeatTaken or HeatFact.SeatGivenUp or HeatFact.LaneReady or HeatFact.LaneResumed or HeatFact.CallAnswered or HeatFact.AppealFiled)
        or HeatFact.FactAdded or HeatFact.Voided or HeatFact.Admitted or HeatFact.NearTieDecided or HeatFact.LanesOverridden or HeatFact.StartRecalled or HeatFact.HeatHalted;

    private static string? Own(HeatFact fact) => fact switch
    {
        HeatFact.LaneDesk desk => desk.Reason,
        HeatFact.About about => about.Reason,
        HeatFact.FactAdded added => added.Reason,
        HeatFact.Told told => told.Reason,
        HeatFact.LanesOverridden over => over.Reason,
        HeatFact.StartObserved observed => observed.Reason,
        _ => null,
    };

    private void Note(HeatFact fact)
    {
        switch (fact)
        {
            case HeatFact.Admitted admits:
                admitted[admits.Target] = admits;
                break;
            case HeatFact.ReasonGiven given:
                reasons[given.Target] = given.Reason;
                break;
            case HeatFact.Undone undo when Find(undo.Target)?.Fact is not HeatFact.Undone && !(Find(undo.Id)?.Flags.HasFlag(FactFlags.Quarantined) ?? false):
                undone.Add(undo.Target);
                break;
        }
    }
}
