using System.Buffers.Text;
using System.Net;
using System.Net.Http.Json;
using System.Security.Cryptography;
using System.Text.Json;
using LiveHeat.Contracts.Taps;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Testing.Hosting.Torture;

/// <summary>
/// A phone that does nothing but tap and send: every tap is kept until it has a receipt, sent in order, and now and then sent again although it has one.
/// </summary>
internal sealed class TorturePhone : IDisposable
{
    private const int MostInBatch = 40;
    private const int StepEvery = 12;
    private const int FewestForNext = 3;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private readonly HttpClient client;
    private readonly Random random;
    private readonly string outbox = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(16));
    private readonly List<HeatFact.Floor> taps = [];
    private readonly HashSet<FactId> receipted = [];
    private int step = 1;

    public TorturePhone(Uri address, CookieContainer cookies, int lane, int seed)
    {
        Lane = new LaneNumber(lane);
        random = new Random(seed);
        client = new HttpClient(new SocketsHttpHandler { CookieContainer = cookies, PooledConnectionLifetime = TimeSpan.FromSeconds(3) }) { BaseAddress = address, Timeout = Patience };
        client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
    }

    public LaneNumber Lane { get; }

    public SeatId Seat { get; set; }

    /// <summary>The last step of the lane's plan.</summary>
    public int LastStep { get; set; }

    /// <summary>All taps made, in counter order.</summary>
    public IReadOnlyList<HeatFact.Floor> Taps => taps;

    /// <summary>Taps that the server acknowledged.</summary>
    public IReadOnlySet<FactId> Receipted => receipted;

    /// <summary>Taps that the server refused or called a conflict: there should be none.</summary>
    public int Refused { get; private set; }

    public bool AllSafe => receipted.Count == taps.Count;

    /// <summary>Makes one tap: a no-rep, or the end of the open set.</summary>
    public void Tap()
    {
        var id = new FactId(outbox, taps.Count + 1);
        var now = new Instant(DateTimeOffset.UtcNow.ToUnixTimeMilliseconds());
        var done = step < LastStep && random.Next(StepEvery) == 0;
        taps.Add(done
            ? new HeatFact.StepDone { Id = id, Instant = now, Lane = Lane, Seat = Seat, UncertaintyMs = 5, Step = step }
            : new HeatFact.NoRep { Id = id, Instant = now, Lane = Lane, Seat = Seat, UncertaintyMs = 5, Step = step });
        step += done ? 1 : 0;
    }

    /// <summary>Sends what waits, once. False when the answer did not come: whether it was written is unknown.</summary>
    public async Task<bool> Send(string heat)
    {
        var waiting = taps.Where(tap => !receipted.Contains(tap.Id)).Take(MostInBatch).ToList();
        if (receipted.Count > FewestForNext && random.Next(8) == 0)
        {
            // A request that was answered is repeated: the answer was lost, or somebody pressed reload.
            waiting.InsertRange(0, taps.Where(tap => receipted.Contains(tap.Id)).TakeLast(FewestForNext));
        }

        if (waiting.Count == 0)
        {
            return true;
        }

        try
        {
            var batch = new { taps = waiting.Select(tap => JsonSerializer.SerializeToElement<HeatFact>(tap, WireJson.Options)) };
            using var answer = await client.PostAsJsonAsync($"api/heats/{heat}/taps", batch, WireJson.Options);
            if (!answer.IsSuccessStatusCode)
            {
                return false;
            }

            var receipts = await answer.Content.ReadFromJsonAsync<TapReceipts>(WireJson.Options);
            foreach (var receipt in receipts!.Receipts)
            {
                if (receipt.Outcome is TapOutcome.Accepted or TapOutcome.Known && FactId.TryParse(receipt.Id, out var id))
                {
                    receipted.Add(id);
                }
                else
                {
                    Refused++;
                }
            }

            return true;
        }
        catch (Exception lost) when (lost is HttpRequestException or OperationCanceledException or IOException or JsonException or System.Net.Sockets.SocketException)
        {
            return false;
        }
    }

    /// <summary>Taps and sends until told to stop, then sends until all is safe or patience ends.</summary>
    public async Task Judge(string heat, TimeSpan patience, CancellationToken stop)
    {
        while (!stop.IsCancellationRequested)
        {
            Tap();
            await Pause(await Send(heat));
        }

        using var ending = new CancellationTokenSource(patience);
        while (!AllSafe && !ending.IsCancellationRequested)
        {
            await Pause(await Send(heat));
        }
    }

    public void Dispose() => client.Dispose();

    /// <summary>Back-off with full jitter, short: a torture is in a hurry.</summary>
    private Task Pause(bool sent) => Task.Delay(sent ? 4 : random.Next(5, 60));
}
