using LiveHeat.Contracts;
using LiveHeat.Contracts.Language;
using LiveHeat.Engine;
using LiveHeat.Engine.Timing;
using LiveHeat.Ledger.Facts;

namespace LiveHeat.Server.Heats;

/// <summary>Knows whether the disk takes writes. While it refuses it is tried again and again, so that its return is told even if nobody has anything to write.</summary>
internal sealed class LedgerWatch(HeatLedger ledger) : BackgroundService
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(3);

    /// <summary>How it is now, with a sentence for the desk in the language now.</summary>
    public Health Health => ledger.Trouble is { } trouble
        ? new Health(Health.LedgerUnavailable, ledger.Epoch, HeatRefusals.DiskRefuses(Since(trouble.Since), trouble.Cause).Sentence())
        : new Health(Health.Well, ledger.Epoch);

    private static Part.TimeOfDay Since(DateTimeOffset since) =>
        new(new Instant(since.ToUnixTimeMilliseconds()), (int)since.ToLocalTime().Offset.TotalMinutes, Seconds: true);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var beat = new PeriodicTimer(Every);
        while (await beat.WaitForNextTickAsync(stoppingToken))
        {
            if (ledger.Trouble is not null)
            {
                await ledger.Try(stoppingToken);
            }
        }
    }
}
