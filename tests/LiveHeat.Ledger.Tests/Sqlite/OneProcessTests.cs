using LiveHeat.Ledger.Crash;
using LiveHeat.Ledger.Facts;
using LiveHeat.Ledger.Registry;
using Microsoft.Extensions.Logging.Abstractions;

namespace LiveHeat.Ledger.Sqlite;

public sealed class OneProcessTests : IDisposable
{
    private readonly TempFolder folder = new();

    private string LedgerPath => folder.File("ledger.db");

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_second_process_is_refused_with_a_sentence_and_changes_nothing()
    {
        await using var ledger = await OpenLedger();
        using var second = ChildProcess.Start("open", LedgerPath);
        Assert.Equal(
            $"{LedgerPath} is in use by another LiveHeat server on this machine. Stop that one first, or give this one another data folder.",
            await second.StandardOutput.ReadLineAsync());
        await second.WaitForExitAsync();
        Assert.Equal(1, second.ExitCode);
        Assert.IsType<Append.Done>(await ledger.TryAppend(Some.Heat1, 0, [Some.Line(1)], CancellationToken.None));
    }

    [Fact]
    public async Task A_killed_process_holds_nothing()
    {
        using (var first = ChildProcess.Start("open", LedgerPath))
        {
            Assert.Equal("open", await first.StandardOutput.ReadLineAsync());
            await Assert.ThrowsAsync<FileInUse>(OpenLedger);
            first.Kill();
            await first.WaitForExitAsync();
        }

        await using var ledger = await OpenLedger();
        Assert.Empty(await ledger.Heads());
    }

    [Fact]
    public async Task The_registry_is_held_too_until_it_is_closed()
    {
        var path = folder.File("registry.db");
        await using (await HeatRegistry.Open(path, TimeProvider.System, CancellationToken.None))
        {
            await Assert.ThrowsAsync<FileInUse>(() => HeatRegistry.Open(path, TimeProvider.System, CancellationToken.None));
        }

        await using var again = await HeatRegistry.Open(path, TimeProvider.System, CancellationToken.None);
        Assert.NotNull(again);
    }

    [Fact]
    public async Task A_start_that_failed_holds_nothing()
    {
        await File.WriteAllTextAsync(LedgerPath, "This is no database, and long enough to be read as the head of one. ".PadRight(4096, '.'));
        await Assert.ThrowsAsync<FileDamaged>(OpenLedger);
        File.Delete(LedgerPath);
        await using var ledger = await OpenLedger();
        Assert.Empty(await ledger.Heads());
    }

    private Task<HeatLedger> OpenLedger() => HeatLedger.Open(LedgerPath, TimeProvider.System, NullLogger.Instance, CancellationToken.None);
}
