using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>A fact as a phone knows it: its own, or read from the server.</summary>
/// <param name="Fact">The fact; the tap inside, when the desk added it.</param>
/// <param name="Sequence">Its place on the ledger; null while it waits.</param>
/// <param name="Flags">How the server keeps it.</param>
/// <param name="Refused">The server did not take it.</param>
/// <param name="Outer">The desk's fact around an added tap; null otherwise.</param>
public sealed record KnownFact(HeatFact Fact, long? Sequence = null, FactFlags Flags = FactFlags.None, bool Refused = false, FactId? Outer = null)
{
    public static KnownFact Of(FactLine line) => line.Fact is HeatFact.FactAdded added
        ? new(added.Tap, line.Sequence, line.Flags, Outer: added.Id)
        : new(line.Fact, line.Sequence, line.Flags);

    public static KnownFact Of(KeptTap tap) => new(tap.Fact, tap.Receipt?.Sequence, tap.Receipt?.Flags ?? FactFlags.None, tap.Refused);
}

/// <summary>The start a phone knows to be in force.</summary>
/// <param name="Id">Null: none is.</param>
public sealed record StartInForce(string? Id);

/// <summary>Which facts of a lane stand: on the ledger or on their way, with authority, not taken back, of the start in force.</summary>
internal sealed class KnownFacts
{
    private readonly List<KnownFact> all;
    private readonly HashSet<FactId> voids = [];
    private readonly ILookup<FactId, KnownFact> about;
    private readonly Dictionary<SeatId, HeatFact.SeatTaken> seats;

    public KnownFacts(IEnumerable<KnownFact> facts)
    {
        // The one with a sequence knows more than the one that still waits.
        all = [.. facts.GroupBy(fact => fact.Fact.Id).Select(same => same.OrderBy(fact => fact.Sequence is null).First()).OrderBy(fact => fact.Sequence ?? long.MaxValue)];
        // Newest first: a void that was voided itself takes nothing away.
        foreach (var voided in all.Select(fact => fact.Fact).OfType<HeatFact.Voided>().Reverse().Where(voided => !voids.Contains(voided.Id)))
        {
            voids.Add(voided.Target);
        }

        about = all.Where(fact => TargetOf(fact.Fact) is not null && !IsVoided(fact)).ToLookup(fact => TargetOf(fact.Fact)!.Value);
        seats = all.Select(fact => fact.Fact).OfType<HeatFact.SeatTaken>().DistinctBy(taken => taken.Seat).ToDictionary(taken => taken.Seat);
    }

    /// <param name="lane">The lane.</param>
    /// <param name="start">The start in force; null when nobody said: then the facts themselves tell.</param>
    public List<KnownFact> Standing(LaneNumber lane, StartInForce? start)
    {
        var inForce = start ?? LastStart();
        var overAt = all.Where(fact => fact.Fact is HeatFact.StartRecalled or HeatFact.CallReturned).Select(fact => fact.Fact.Instant.UnixMs).DefaultIfEmpty(long.MinValue).Max();
        bool OfStart(HeatFact.Floor tap) => tap.Start is { } known ? inForce is null || known == inForce.Id : tap.Instant.UnixMs > overAt;
        return [.. all.Where(fact => fact.Fact.AboutLane() == lane && Valid(fact) && !Undone(fact) && (fact.Fact is not HeatFact.AtStep tap || (Decides(fact) && OfStart(tap))))];
    }

    private static FactId? TargetOf(HeatFact fact) => fact switch
    {
        HeatFact.Undone undone => undone.Target,
        HeatFact.About ruling => ruling.Target,
        _ => null,
    };

    private StartInForce? LastStart() => all.Select(fact => fact.Fact).Aggregate((StartInForce?)null, (last, fact) => fact switch
    {
        HeatFact.StartScheduled scheduled => new(scheduled.Start),
        HeatFact.StartObserved observed => new(observed.Start),
        HeatFact.StartRecalled or HeatFact.CallReturned => new((string?)null),
        _ => last,
    });

    private bool Valid(KnownFact fact) =>
        !fact.Refused && !IsVoided(fact) && !fact.Flags.HasFlag(FactFlags.OldStart) && (!fact.Flags.HasFlag(FactFlags.Quarantined) || Admitted(fact));

    private bool IsVoided(KnownFact fact) => voids.Contains(fact.Fact.Id) || (fact.Outer is { } outer && voids.Contains(outer));

    private bool Admitted(KnownFact fact) => about[fact.Fact.Id].Any(next => next.Fact is HeatFact.Admitted);

    /// <summary>Witnesses and timekeepers move no lane.</summary>
    private bool Decides(KnownFact fact) => fact.Outer is not null || Admitted(fact) || SeatOf(fact) is null or { Duty: Duty.Primary };

    private HeatFact.SeatTaken? SeatOf(KnownFact fact) => fact.Fact is HeatFact.Floor tap ? seats.GetValueOrDefault(tap.Seat) : null;

    /// <summary>Neither a ruling nor an undo can be undone; witnesses and timekeepers take back only what is their own.</summary>
    private bool Undone(KnownFact fact) => fact.Fact is HeatFact.Floor and not HeatFact.Undone
        && about[fact.Fact.Id].Any(next => next.Fact is HeatFact.Undone && next.Fact.AboutLane() == fact.Fact.AboutLane() && Valid(next)
            && (Decides(next) || SeatOf(next)?.By.SignIn == SeatOf(fact)?.By.SignIn));
}
