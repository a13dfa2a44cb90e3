using System.Collections.Immutable;

namespace LiveHeat.Engine.Heats;

/// <summary>Sequences before which some facts no longer apply.</summary>
/// <param name="Call">The call in force: a line-up, a variant or a withdrawal before it was of another call.</param>
/// <param name="Ready">The call, or the return to it: readiness before it does not count.</param>
/// <param name="Start">The end of the last start that counts no more: what was ruled on the lane's way before it went with that start.</param>
public sealed record HeatBounds(long Call, long Ready, long Start);

/// <summary>A heat's entries, found again by id and by lane. Immutable; each version shares most of the one before.</summary>
internal sealed record HeatLog(
    ImmutableList<Entry> All,
    ImmutableDictionary<FactId, Entry> ById,
    ImmutableDictionary<LaneNumber, Items<Entry>> ByLane,
    ImmutableList<(long Sequence, Items<LaneNumber> Lanes)> Overrides,
    ImmutableHashSet<FactId> Admitted,
    ImmutableHashSet<FactId> Voided,
    HeatBounds Bounds)
{
    public static readonly HeatLog Empty = new(
        [], ImmutableDictionary<FactId, Entry>.Empty, ImmutableDictionary<LaneNumber, Items<Entry>>.Empty, [], [], [], new(0, 0, 0));

    /// <summary>What a fact is about in the end: a void of a void changes what the first one did. Null when nothing is known of it.</summary>
    public HeatFact? Subject(HeatFact fact)
    {
        var (about, before) = ((HeatFact?)fact, long.MaxValue);
        while (about is HeatFact.About next)
        {
            // Only backwards: a ledger on which voids name each other still has to open.
            var target = ById.GetValueOrDefault(next.Target);
            (about, before) = target?.Sequence < before ? (target.Fact, target.Sequence) : (null, 0);
        }

        return about;
    }

    public HeatLog With(Entry entry)
    {
        var byId = ById.SetItem(entry.Fact.Id, entry);
        if (entry.Fact is HeatFact.FactAdded added)
        {
            byId = byId.SetItem(added.Tap.Id, entry);
        }

        var next = this with { All = All.Add(entry), ById = byId };
        if (Subject(entry.Fact)?.AboutLane() is { } lane)
        {
            next = next with { ByLane = ByLane.SetItem(lane, ByLane.GetValueOrDefault(lane).With(entry)) };
        }

        return entry.Fact switch
        {
            HeatFact.HeatCalled or HeatFact.CallReplaced => next with { Bounds = Bounds with { Call = entry.Sequence, Ready = entry.Sequence } },
            HeatFact.StartRecalled => next with { Bounds = Bounds with { Start = entry.Sequence } },
            HeatFact.CallReturned => next with { Bounds = Bounds with { Start = entry.Sequence, Ready = entry.Sequence } },
            HeatFact.LanesOverridden overridden => next with { Overrides = Overrides.Add((entry.Sequence, overridden.Lanes)) },
            HeatFact.Admitted admitted => next with { Admitted = Admitted.Add(admitted.Target) },
            HeatFact.Voided => next.WithVoids(next.StandingVoids()),
            _ => next,
        };
    }

    private HeatLog WithVoids(ImmutableHashSet<FactId> voided) => this with
    {
        Voided = voided,
        Admitted = [.. All.Select(entry => entry.Fact).OfType<HeatFact.Admitted>().Where(fact => !voided.Contains(fact.Id)).Select(fact => fact.Target)],
    };

    /// <summary>A void that a later one voids has no effect: read from the newest back.</summary>
    private ImmutableHashSet<FactId> StandingVoids()
    {
        var voided = ImmutableHashSet.CreateBuilder<FactId>();
        foreach (var entry in All.Reverse())
        {
            if (entry.Fact is HeatFact.Voided fact && !voided.Contains(fact.Id))
            {
                voided.Add(fact.Target);
            }
        }

        return voided.ToImmutable();
    }
}
