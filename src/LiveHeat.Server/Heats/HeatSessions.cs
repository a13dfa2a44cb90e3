using System.Collections.Concurrent;
using LiveHeat.Engine.Heats;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Heats;

/// <summary>The heats in memory. A heat is read from the ledger when it is first asked for.</summary>
public sealed class HeatSessions(HeatLedger ledger, Timebase time) : IDisposable
{
    /// <summary>So long a result stays on the screens though the next heat is called, milliseconds of the timebase.</summary>
    private const long ResultHeld = 120_000;

    private readonly ConcurrentDictionary<HeatId, Lazy<Task<HeatSession>>> sessions = new();
    private volatile bool allRead;

    /// <summary>Raised for every change of any heat, on its writer's turn: do little.</summary>
    public event Action<HeatSession>? Changed;

    /// <summary>The ledger's id.</summary>
    public string Epoch => ledger.Epoch;

    /// <summary>The heat's session; an empty one for a heat without facts.</summary>
    public async Task<HeatSession> Of(HeatId heat)
    {
        var opening = sessions.GetOrAdd(heat, id => new Lazy<Task<HeatSession>>(() => Open(id)));
        try
        {
            return await opening.Value;
        }
        catch
        {
            // A heat that could not be read is tried again by the next who asks.
            sessions.TryRemove(new KeyValuePair<HeatId, Lazy<Task<HeatSession>>>(heat, opening));
            throw;
        }
    }

    /// <summary>Heats that have facts, opened.</summary>
    public async Task<IReadOnlyList<HeatSession>> Called()
    {
        // Once: this process alone writes the ledger, so every later heat begins in memory. A crowd of screens asks for the list at the same moment.
        if (!allRead)
        {
            foreach (var (heat, _) in await ledger.Heads())
            {
                await Of(heat);
            }

            allRead = true;
        }

        return [.. Open().Where(session => session.State.Snapshot is not null)];
    }

    /// <summary>Sessions in memory now.</summary>
    public IEnumerable<HeatSession> Open() =>
        sessions.Values.Where(opening => opening is { IsValueCreated: true, Value.IsCompletedSuccessfully: true }).Select(opening => opening.Value.Result);

    /// <summary>The heat that a board shows by itself: the live one, else the one called last; null when none was called.</summary>
    /// <remarks>
    /// The next heat's call takes no screen away from one that runs. Of two live heats it is the one called last, which went last too: the other may be one that
    /// nobody ended, and would keep the screens. A heat whose start was recalled is called again. A heat that ends while the next waits keeps the screens for a while:
    /// docs/decisions/0005-a-result-is-held.md.
    /// </remarks>
    public HeatSession? Current()
    {
        var called = Open().Where(session => session.State.Snapshot is not null).ToList();
        var next = called.MaxBy(session => (session.State.IsLive, session.State.StandsCalledAt));
        return next is { State.Told: Phase.Called } ? called.Where(session => IsHeld(session, next)).MaxBy(session => session.State.EndedAt) ?? next : next;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var session in Open())
        {
            session.Dispose();
        }
    }

    /// <summary>Whether it ended a moment ago while the other stood called. A call that comes after the end takes the screens: whoever calls then has seen the result.</summary>
    private bool IsHeld(HeatSession session, HeatSession next) =>
        session.State is { Told: Phase.Ended or Phase.Frozen or Phase.Certified, EndedAt: { } ended } && ended >= next.State.StandsCalledAt && time.Now - ended < ResultHeld;

    private async Task<HeatSession> Open(HeatId heat)
    {
        var session = await HeatSession.Open(heat, ledger, time, CancellationToken.None);
        session.Changed += changed => Changed?.Invoke(changed);
        return session;
    }
}
