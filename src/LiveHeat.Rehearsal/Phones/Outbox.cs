using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text.Json;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Heats;

namespace LiveHeat.Rehearsal.Phones;

/// <summary>What the phone knows of one of its taps.</summary>
/// <param name="Heat">The heat it is for.</param>
/// <param name="Fact">The tap.</param>
/// <param name="Receipt">The server's answer; null while it waits to be sent.</param>
public sealed record KeptTap(HeatId Heat, HeatFact.Floor Fact, TapReceipt? Receipt)
{
    public bool Waits => Receipt is null;

    public bool Refused => Receipt is { Outcome: TapOutcome.Refused };
}

/// <summary>Taps on their way to the ledger: kept first, sent in order and in batches, kept until the heat is certified. It never gives up.</summary>
public sealed class Outbox(SiteClient site, TimeProvider time, Random random)
{
    private const int MostAtOnce = 200;
    private const int FirstWaitMs = 500;
    private const int LongestWaitMs = 8_000;

    private readonly Lock turn = new();
    private readonly List<KeptTap> taps = [];
    private readonly Pulse changed = new();
    private readonly Pulse hurry = new();
    private string outbox = NewId();
    private long counter;
    private string? epoch;

    /// <summary>Beats when a tap is kept or answered.</summary>
    public Pulse Changed => changed;

    /// <summary>Taps without a receipt.</summary>
    public int Unsent => Count(tap => tap.Waits);

    /// <summary>All taps on the phone.</summary>
    public int OnPhone => Count(_ => true);

    /// <summary>A new outbox id: 128 bits of chance, never of the seed, for it must be unlike every other for ever.</summary>
    public static string NewId() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));

    /// <summary>The next id, for a command: taken once, used for every repetition.</summary>
    public FactId NextId()
    {
        lock (turn)
        {
            return new FactId(outbox, ++counter);
        }
    }

    /// <summary>Keeps a tap; its counter is taken in the same turn.</summary>
    public HeatFact.Floor Add(HeatId heat, Func<FactId, HeatFact.Floor> make)
    {
        HeatFact.Floor tap;
        lock (turn)
        {
            tap = make(new FactId(outbox, ++counter));
            taps.Add(new KeptTap(heat, tap, null));
        }

        changed.Beat();
        return tap;
    }

    public IReadOnlyList<KeptTap> TapsOf(HeatId heat)
    {
        lock (turn)
        {
            return [.. taps.Where(tap => tap.Heat == heat)];
        }
    }

    /// <summary>Sends until stopped: at once when a tap comes, again with growing pauses when no answer comes.</summary>
    public async Task Run(CancellationToken stopping)
    {
        for (var attempt = 0; ;)
        {
            var more = changed.Next;
            if (Unsent == 0)
            {
                await more.WaitAsync(stopping).ConfigureAwait(false);
                continue;
            }

            try
            {
                await SendBatch(stopping).ConfigureAwait(false);
                attempt = 0;
            }
            catch (Exception trouble) when (trouble is SiteSilentException or SiteRefusedException { MayPass: true } or SiteRefusedException { Status: 401 })
            {
                var wait = TimeSpan.FromMilliseconds(random.NextDouble() * Math.Min(LongestWaitMs, FirstWaitMs * Math.Pow(2, attempt++)));
                var asked = (trouble as SiteRefusedException)?.RetryAfter ?? TimeSpan.Zero;
                var hurried = hurry.Next;
                await time.For(wait > asked ? wait : asked, asked > TimeSpan.Zero ? Task.Delay(Timeout.Infinite, stopping) : hurried, stopping).ConfigureAwait(false);
                attempt = hurried.IsCompleted ? 0 : attempt;
            }
        }
    }

    /// <summary>The network is back: what waits is sent now, not after the pause.</summary>
    public void Hurry() => hurry.Beat();

    /// <summary>The ledger's epoch as the server tells it. Another one is another ledger: all is sent again.</summary>
    public void Saw(string newEpoch)
    {
        lock (turn)
        {
            if (epoch == newEpoch)
            {
                return;
            }

            if (epoch is not null)
            {
                SendAgain(_ => true);
            }

            epoch = newEpoch;
        }

        changed.Beat();
    }

    /// <summary>Drops what is certified and has its receipt.</summary>
    public void Certified(Items<HeatId> heats)
    {
        lock (turn)
        {
            taps.RemoveAll(tap => !tap.Waits && heats.Contains(tap.Heat));
        }
    }

    private async Task SendBatch(CancellationToken stopping)
    {
        var batch = NextBatch();
        var body = new TapBatch([.. batch.Select(tap => JsonSerializer.SerializeToElement(tap.Fact, WireJson.Options))], epoch);
        var answer = await site.Post<TapBatch, TapReceipts>($"/api/heats/{batch[0].Heat}/taps", body, stopping).ConfigureAwait(false);
        Saw(answer.Epoch);
        lock (turn)
        {
            Take(answer, batch[0].Heat);
        }

        changed.Beat();
    }

    private void Take(TapReceipts answer, HeatId heat)
    {
        foreach (var receipt in answer.Receipts)
        {
            var i = taps.FindIndex(tap => tap.Waits && tap.Fact.Id.ToString() == receipt.Id);
            if (i >= 0 && receipt.Outcome != TapOutcome.Conflict)
            {
                taps[i] = taps[i] with { Receipt = receipt };
            }
        }

        if (answer.Receipts.Any(receipt => receipt.Outcome == TapOutcome.Conflict))
        {
            Renew();
        }

        // A head below what it gave receipts for is a restored ledger.
        SendAgain(tap => tap.Heat == heat && tap.Receipt!.Sequence > answer.Head);
    }

    private void SendAgain(Func<KeptTap, bool> which)
    {
        for (var i = 0; i < taps.Count; i++)
        {
            taps[i] = !taps[i].Waits && !taps[i].Refused && which(taps[i]) ? taps[i] with { Receipt = null } : taps[i];
        }
    }

    /// <summary>All that waits moves to a new outbox id, for the old counter is not ours alone.</summary>
    private void Renew()
    {
        (outbox, counter) = (NewId(), 0);
        var renamed = new Dictionary<FactId, FactId>();
        for (var i = 0; i < taps.Count; i++)
        {
            if (taps[i].Waits)
            {
                var id = new FactId(outbox, ++counter);
                renamed[taps[i].Fact.Id] = id;
                var fact = taps[i].Fact with { Id = id };
                taps[i] = taps[i] with { Fact = fact is HeatFact.Undone undone && renamed.TryGetValue(undone.Target, out var target) ? undone with { Target = target } : fact };
            }
        }
    }

    private List<KeptTap> NextBatch()
    {
        lock (turn)
        {
            var first = taps.First(tap => tap.Waits);
            return [.. taps.Where(tap => tap.Waits && tap.Heat == first.Heat).Take(MostAtOnce)];
        }
    }

    private int Count(Func<KeptTap, bool> which)
    {
        lock (turn)
        {
            return taps.Count(which);
        }
    }
}
