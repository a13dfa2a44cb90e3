using System.Globalization;
using LiveHeat.Contracts;
using LiveHeat.Ledger.Facts;

namespace LiveHeat.Server.Heats;

/// <summary>Knows whether the disk takes writes. While it refuses it is tried again and again, so that its return is told even if nobody has anything to write.</summary>
internal sealed class LedgerWatch(HeatLedger ledger) : BackgroundService
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(3);

    /// <summary>How it is now, with a sentence for the desk.</summary>
    public Health Health => ledger.Trouble is { } trouble
        ? new Health(Health.LedgerUnavailable, ledger.Epoch, string.Create(
            CultureInfo.InvariantCulture,
            $"The disk takes no writes since {trouble.Since.ToLocalTime():HH:mm:ss} ({trouble.Cause}). Nothing new is recorded; the phones keep their taps and send them again by themselves. Free space on the disk, or make it writable; then it goes on by itself."))
        : new Health(Health.Well, ledger.Epoch);

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
