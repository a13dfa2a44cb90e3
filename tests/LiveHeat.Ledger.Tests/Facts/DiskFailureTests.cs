using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Facts;

/// <summary>The disk is filled through SQLite's own limit of pages, and write-protected through its own switch: both give the errors a disk gives.</summary>
public class DiskFailureTests : LedgerTest
{
    private static readonly string Large = $$"""{"fact":"heat-called","snapshot":"{{new string('x', 200_000)}}"}""";

    [Fact]
    public async Task A_full_disk_keeps_nothing_of_an_append()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        await Fill();
        var failure = await Assert.ThrowsAsync<LedgerUnavailable>(() => Append(Some.Heat1, 1, Some.Line(2), Some.Line(3, body: Large), Some.Line(4)));
        Assert.Contains("Nothing was recorded", failure.Message, StringComparison.Ordinal);

        Assert.Equal([1], (await Read(Some.Heat1)).Select(line => line.Id.Counter));
        await AssertWhole(Ledger);
    }

    [Fact]
    public async Task A_full_disk_acknowledges_nothing_that_was_to_be_committed_with_it()
    {
        await Fill();
        var offers = await InOneBatch(
            () => Append(Some.Heat1, 0, Some.Line(1)),
            () => Append(Some.Heat2, 0, Some.Line(2, body: Large)),
            () => Append(Some.Heat1, 1, Some.Line(3)));
        foreach (var offer in offers)
        {
            await Assert.ThrowsAsync<LedgerUnavailable>(() => offer);
        }

        Assert.Empty(await Ledger.Heads());
    }

    [Fact]
    public async Task It_goes_on_by_itself_when_there_is_room_again()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        await Fill();
        await Assert.ThrowsAsync<LedgerUnavailable>(() => Append(Some.Heat1, 1, Some.Line(2, body: Large)));

        // The limit was the failed connection's own: the next one finds room, and what was remembered of the file is asked anew.
        Assert.IsType<Append.Done>(await Append(Some.Heat1, 1, Some.Line(2, body: Large)));
        await Reopen();
        Assert.Equal(2, (await Read(Some.Heat1)).Count);
        await AssertWhole(Ledger);
    }

    [Fact]
    public async Task A_write_protected_disk_keeps_nothing_and_can_still_be_read()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        await Ledger.OnWriter(context => context.Database.ExecuteSqlRaw("PRAGMA query_only = 1"));
        await Assert.ThrowsAsync<LedgerUnavailable>(() => Append(Some.Heat1, 1, Some.Line(2)));
        Assert.Equal([1], (await Read(Some.Heat1)).Select(line => line.Id.Counter));
        Assert.IsType<Append.Done>(await Append(Some.Heat1, 1, Some.Line(2)));
    }

    [Fact]
    public async Task A_file_that_is_gone_is_told_and_not_made_anew()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        await Fill();
        await Assert.ThrowsAsync<LedgerUnavailable>(() => Append(Some.Heat1, 1, Some.Line(2, body: Large)));
        File.Move(LedgerPath, LedgerPath + ".away");

        // A fresh empty file would acknowledge taps that belong to another ledger.
        await Assert.ThrowsAsync<LedgerUnavailable>(() => Append(Some.Heat1, 1, Some.Line(2)));
        Assert.False(File.Exists(LedgerPath));

        File.Move(LedgerPath + ".away", LedgerPath);
        Assert.IsType<Append.Done>(await Append(Some.Heat1, 1, Some.Line(2)));
    }

    private Task Fill() => Ledger.OnWriter(context => context.Database.ExecuteSqlRaw("PRAGMA max_page_count = 1"));
}
