using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Integrity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Facts;

public class HeatLedgerTests : LedgerTest
{
    [Fact]
    public async Task A_line_is_read_back_as_it_was_given()
    {
        var given = Some.Line(1, body: """{"fact":"head-judge-called","note":"Grüße 😀 \"quoted\""}""");
        var done = Assert.IsType<Append.Done>(await Append(Some.Heat1, 0, given));

        var line = Assert.Single(await Read(Some.Heat1));
        Assert.Equal(Assert.Single(done.Lines), line);
        Assert.Equal(given, new NewLine(line.Id, line.Sender, line.ReceivedAt, line.BodyHash, line.Body));
        Assert.Equal((Some.Heat1, 1L, HashChain.Start), (line.Heat, line.Sequence, line.PreviousHash));
    }

    [Fact]
    public async Task Lines_follow_one_another_without_gaps_in_each_heat()
    {
        await Append(Some.Heat1, 0, Some.Lines(1, 3));
        await Append(Some.Heat2, 0, Some.Lines(4, 2));
        await Append(Some.Heat1, 3, Some.Lines(6, 2));

        Assert.Equal([1, 2, 3, 4, 5], (await Read(Some.Heat1)).Select(line => line.Sequence));
        Assert.Equal([1, 2, 3, 6, 7], (await Read(Some.Heat1)).Select(line => line.Id.Counter));
        Assert.Equal([4, 5], (await Read(Some.Heat2)).Select(line => line.Id.Counter));
        Assert.Equal([(Some.Heat1, 5L), (Some.Heat2, 2L)], await Ledger.Heads());
        await AssertWhole(Ledger);
    }

    [Fact]
    public async Task Reading_starts_after_the_sequence_asked_for()
    {
        await Append(Some.Heat1, 0, Some.Lines(1, 5));
        Assert.Equal([4, 5], (await Read(Some.Heat1, after: 3)).Select(line => line.Sequence));
        Assert.Empty(await Read(Some.Heat1, after: 5));
        Assert.Empty(await Read(new HeatId("no such heat")));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(4)]
    public async Task Who_is_not_at_the_head_is_told_where_it_is(long after)
    {
        await Append(Some.Heat1, 0, Some.Lines(1, 3));
        Assert.Equal(new Append.Behind(3), await Append(Some.Heat1, after, Some.Line(9)));
        Assert.Equal(3, (await Read(Some.Heat1)).Count);
    }

    [Fact]
    public async Task A_known_id_is_told_with_the_line_that_has_it()
    {
        await Append(Some.Heat1, 0, Some.Lines(1, 3));
        var taken = Assert.IsType<Append.IdTaken>(await Append(Some.Heat1, 3, Some.Line(7), Some.Line(2, body: "{}"), Some.Line(8)));
        Assert.Equal(Some.Line(2).Id, taken.Id);
        Assert.Equal((await Read(Some.Heat1))[1], taken.Existing);

        // All or nothing: 7 went with it.
        Assert.Equal(3, (await Read(Some.Heat1)).Count);
        Assert.IsType<Append.Done>(await Append(Some.Heat1, 3, Some.Line(7)));
        await AssertWhole(Ledger);
    }

    [Fact]
    public async Task An_id_is_taken_over_all_heats()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        var taken = Assert.IsType<Append.IdTaken>(await Append(Some.Heat2, 0, Some.Line(1)));
        Assert.Equal(Some.Heat1, taken.Existing.Heat);
        Assert.IsType<Append.Done>(await Append(Some.Heat2, 0, Some.Line(1, outbox: "another phone")));
    }

    [Fact]
    public async Task The_same_fact_twice_in_one_append_is_our_own_mistake() =>
        await Assert.ThrowsAsync<ArgumentException>(() => Append(Some.Heat1, 0, Some.Line(1), Some.Line(1)));

    [Fact]
    public async Task Nothing_to_append_is_done_or_behind()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        Assert.Empty(Assert.IsType<Append.Done>(await Append(Some.Heat1, 1)).Lines);
        Assert.Equal(new Append.Behind(1), await Append(Some.Heat1, 0));
    }

    [Fact]
    public async Task A_fact_is_found_by_its_id_in_whatever_heat()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        await Append(Some.Heat2, 0, Some.Line(2));
        Assert.Equal((await Read(Some.Heat2))[0], await Ledger.Find(Some.Line(2).Id));
        Assert.Null(await Ledger.Find(Some.Line(3).Id));
    }

    [Fact]
    public async Task Everything_is_there_after_it_was_closed_and_opened()
    {
        await Append(Some.Heat1, 0, Some.Lines(1, 3));
        var (lines, epoch) = (await Read(Some.Heat1), Ledger.Epoch);
        await Reopen();
        Assert.Equal(lines, await Read(Some.Heat1));
        Assert.Equal(epoch, Ledger.Epoch);
        Assert.Equal(new Append.Behind(3), await Append(Some.Heat1, 0, Some.Line(4)));
        Assert.IsType<Append.Done>(await Append(Some.Heat1, 3, Some.Line(4)));
        await AssertWhole(Ledger);
    }

    [Fact]
    public async Task The_epoch_is_128_bits_and_renewed_only_when_asked()
    {
        var first = Ledger.Epoch;
        Assert.True(FactId.TryParse($"{first}.1", out _), "An epoch has the form of an outbox id: 128 bits in base64url.");
        await Ledger.RenewEpoch();
        var second = Ledger.Epoch;
        Assert.NotEqual(first, second);
        await Reopen();
        Assert.Equal(second, Ledger.Epoch);
    }

    [Fact]
    public async Task What_waits_is_written_before_it_closes_and_nothing_is_taken_after()
    {
        var waiting = Enumerable.Range(1, 50).Select(n => Append(new HeatId($"h{n}"), 0, Some.Line(n))).ToList();
        await Ledger.DisposeAsync();
        Assert.All(await Task.WhenAll(waiting), append => Assert.IsType<Append.Done>(append));
        await Assert.ThrowsAsync<ObjectDisposedException>(() => Append(Some.Heat1, 0, Some.Line(99)));

        await Reopen();
        Assert.Equal(50, (await Ledger.Heads()).Count);
    }

    [Fact]
    public async Task Giving_up_while_waiting_leaves_nothing_behind()
    {
        using var giveUp = new CancellationTokenSource();
        var offers = await InOneBatch(
            () =>
            {
                var offered = Ledger.TryAppend(Some.Heat1, 0, [Some.Line(1)], giveUp.Token);
                giveUp.Cancel();
                return offered;
            },
            () => Append(Some.Heat1, 0, Some.Line(2)));
        Assert.True(offers[0].IsCanceled);
        Assert.Equal([2L], (await Read(Some.Heat1)).Select(line => line.Id.Counter));
    }

    [Theory]
    [InlineData("UPDATE facts SET body = ''")]
    [InlineData("DELETE FROM facts")]
    public async Task The_file_itself_refuses_to_change_a_line(string sql)
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        await using var context = new LedgerContext(Sqlite.SqliteFile.Options<LedgerContext>($"Data Source={LedgerPath};Pooling=False"));
        await Assert.ThrowsAsync<SqliteException>(() => context.Database.ExecuteSqlRawAsync(sql));
        Assert.Single(await Read(Some.Heat1));
    }
}
