using LiveHeat.Contracts.Frames;
using LiveHeat.Contracts.Sheets;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using LiveHeat.Engine.Standings;
using LiveHeat.Ledger.Facts;
using LiveHeat.Server.Time;

namespace LiveHeat.Server.Heats;

/// <summary>
/// One heat in memory on one server: its facts, folded; one writer at a time. A cache of the ledger, thrown away at any moment and rebuilt.
/// It folds after the commit; when the ledger has moved without it, it reads the tail, folds it and tries again.
/// </summary>
public sealed partial class HeatSession : IDisposable
{
    /// <summary>What a frame tells of the latest; what is kept for callouts, which live half a minute and more.</summary>
    private const int NewsTold = 12, NewsKept = 60;

    private readonly HeatLedger ledger;
    private readonly Timebase time;
    private readonly SemaphoreSlim turn = new(1, 1);
    private readonly Dictionary<FactId, (string BodyHash, string Sender, long Sequence)> known = [];
    private readonly List<string> hashes = [];
    private long lastRead;
    private volatile Snapshot now;

    private HeatSession(HeatId heat, HeatLedger ledger, Timebase time)
    {
        Heat = heat;
        this.ledger = ledger;
        this.time = time;
        now = Snapshot.Of(HeatState.Empty(heat), HashChain.Start);
    }

    /// <summary>Raised after each change, on the writer's turn: do little.</summary>
    public event Action<HeatSession>? Changed;

    /// <summary>Which heat.</summary>
    public HeatId Heat { get; }

    /// <summary>The folded facts.</summary>
    public HeatState State => now.State;

    /// <summary>The ledger's hash at the head.</summary>
    public string HeadHash => now.HeadHash;

    /// <summary>The first entry that does not fit the hash chain or cannot be read; null when all is well. Such a heat cannot be certified.</summary>
    public long? BrokenAt { get; private set; }

    /// <summary>The ledger's hash at a sequence.</summary>
    public string HashAt(long sequence) => hashes[(int)sequence - 1];

    /// <summary>The newest frame.</summary>
    public Frame Frame()
    {
        var seen = now;
        return FrameMaking.Of(seen.State, seen.Placings, seen.News.TakeLast(NewsTold).ToItems(), ledger.Epoch, time.Now);
    }

    /// <summary>The folded facts, the order and the latest news of the same moment.</summary>
    internal (HeatState State, Items<Placing> Placings, Items<NewsItem> News) Seen
    {
        get
        {
            var seen = now;
            return (seen.State, seen.Placings, seen.News);
        }
    }

    /// <summary>What is to be done; null before the call.</summary>
    public Sheet? Sheet() => SheetMaking.Of(State, ledger.Epoch);

    /// <summary>The heat as the ledger has it.</summary>
    public static async Task<HeatSession> Open(HeatId heat, HeatLedger ledger, Timebase time, CancellationToken cancellation)
    {
        var session = new HeatSession(heat, ledger, time);
        await session.CatchUp(cancellation);
        return session;
    }

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    private async Task CatchUp(CancellationToken cancellation)
    {
        var tail = await ledger.Read(Heat, lastRead, cancellation);
        Fold(tail);
    }

    /// <summary>The ledger is shorter than what was folded: a backup was restored under us. Forget, and read all of it.</summary>
    private async Task StartOver(CancellationToken cancellation)
    {
        known.Clear();
        hashes.Clear();
        (lastRead, BrokenAt) = (0, null);
        now = Snapshot.Of(HeatState.Empty(Heat), HashChain.Start);
        await CatchUp(cancellation);
    }

    private void Fold(IReadOnlyList<LedgerLine> lines)
    {
        if (lines.Count == 0)
        {
            return;
        }

        var next = now;
        foreach (var line in lines)
        {
            known[line.Id] = (line.BodyHash, line.Sender, line.Sequence);
            Check(line);
            if (Read(line) is { } fact)
            {
                next = next.With(new Entry(line.Sequence, line.ReceivedAt, line.Sender, fact), line.Hash);
            }
        }

        now = next;
        Changed?.Invoke(this);
    }

    private void Check(LedgerLine line)
    {
        var previous = hashes.Count == 0 ? HashChain.Start : hashes[^1];
        if (line.Sequence != lastRead + 1 || line.PreviousHash != previous || line.Hash != HashChain.Next(previous, line.Link.Entry))
        {
            BrokenAt ??= line.Sequence;
        }

        hashes.Add(line.Hash);
        lastRead = line.Sequence;
    }

    /// <summary>A fact that was damaged on the disk is left out, so that the rest of the heat can still be seen.</summary>
    private HeatFact? Read(LedgerLine line)
    {
        try
        {
            return WireJson.ReadFact(line.Body);
        }
        catch (System.Text.Json.JsonException)
        {
            BrokenAt ??= line.Sequence;
            return null;
        }
    }

    /// <summary>What readers see: replaced whole, so that they never wait for a writer.</summary>
    private sealed record Snapshot(HeatState State, Items<Placing> Placings, Items<NewsItem> News, string HeadHash)
    {
        public static Snapshot Of(HeatState state, string hash) => new(state, LiveOrder.Of(state), [], hash);

        public Snapshot With(Entry entry, string hash)
        {
            var state = State.Apply(entry);
            var placings = LiveOrder.Of(state);
            var fresh = Engine.Standings.News.Between(State, Placings, state, placings, entry.Fact).ToList();
            return new Snapshot(state, placings, fresh.Count == 0 ? News : News.Concat(fresh).TakeLast(NewsKept).ToItems(), hash);
        }
    }
}
