using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace LiveHeat.Ledger.Facts;

/// <summary>A test with a ledger on a real file.</summary>
public abstract class LedgerTest : IAsyncLifetime
{
    protected TempFolder Folder { get; } = new();

    protected FakeTimeProvider Time { get; } = new(DateTimeOffset.FromUnixTimeMilliseconds(1_795_600_000_000));

    protected string LedgerPath => Folder.File("ledger.db");

    protected HeatLedger Ledger { get; private set; } = null!;

    public async Task InitializeAsync() => Ledger = await Open();

    public async Task DisposeAsync()
    {
        await Ledger.DisposeAsync();
        Folder.Dispose();
    }

    protected Task<HeatLedger> Open() => HeatLedger.Open(LedgerPath, Time, NullLogger.Instance, CancellationToken.None);

    protected async Task Reopen()
    {
        await Ledger.DisposeAsync();
        Ledger = await Open();
    }

    protected Task<Append> Append(HeatId heat, long after, params NewLine[] news) =>
        Ledger.TryAppend(heat, after, news, CancellationToken.None);

    protected Task<IReadOnlyList<LedgerLine>> Read(HeatId heat, long after = 0) => Ledger.Read(heat, after, CancellationToken.None);

    /// <summary>Keeps the writer busy until let go, so that what is offered meanwhile ends up in one batch.</summary>
    protected async Task<Task[]> InOneBatch(params Func<Task>[] offers)
    {
        using var letGo = new ManualResetEventSlim();
        var busy = new TaskCompletionSource();
        var blocked = Ledger.OnWriter(_ =>
        {
            busy.SetResult();
            letGo.Wait();
            return true;
        });
        await busy.Task;
        var offered = offers.Select(offer => offer()).ToArray();
        letGo.Set();
        await blocked;
        await Task.WhenAll(offered.Select(task => task.ContinueWith(_ => { }, TaskScheduler.Default)));
        return offered;
    }

    /// <summary>No gaps, every hash fits, no fact twice.</summary>
    internal static async Task AssertWhole(HeatLedger ledger)
    {
        var ids = new HashSet<FactId>();
        foreach (var (heat, head) in await ledger.Heads())
        {
            var lines = await ledger.Read(heat, 0, CancellationToken.None);
            Assert.Equal(head, lines.Count);
            Assert.Equal(Enumerable.Range(1, lines.Count).Select(n => (long)n), lines.Select(line => line.Sequence));
            Assert.Null(HashChain.Verify(lines.Select(line => line.Link)));
            Assert.All(lines, line => Assert.True(ids.Add(line.Id), $"{line.Id} stands twice."));
        }
    }
}
