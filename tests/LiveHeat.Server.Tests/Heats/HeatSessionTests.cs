using LiveHeat.Contracts.Taps;
using LiveHeat.Engine.Heats;
using LiveHeat.Engine.Rules;

namespace LiveHeat.Server.Heats;

public sealed class HeatSessionTests
{
    [Fact]
    public async Task A_server_that_lost_the_race_reads_the_tail_and_both_end_equal()
    {
        await using var bench = await SessionBench.Running();
        using var left = await bench.Server();
        using var right = await bench.Server();

        var first = await left.Take(new TapBatch([bench.NoRep(left, 1, 1)]), SessionBench.Judge(1), CancellationToken.None);
        var second = await right.Take(new TapBatch([bench.NoRep(right, 2, 1)]), SessionBench.Judge(2), CancellationToken.None);

        Assert.Equal((TapOutcome.Accepted, first.Head + 1), (second.Receipts[0].Outcome, second.Receipts[0].Sequence));
        Assert.Equal(second.Head, right.State.Head);
        Assert.Equal(first.Head, left.State.Head);
        // Behind by one now, it finds out with its next write.
        await left.Take(new TapBatch([bench.NoRep(left, 1, 2)]), SessionBench.Judge(1), CancellationToken.None);
        Assert.Equal([2, 1, 0, 0], left.State.Lanes.Select(lane => lane.NoReps[0]));
        await bench.WholeLedger();
    }

    [Fact]
    public async Task A_tap_that_another_server_took_is_known_here()
    {
        await using var bench = await SessionBench.Running();
        using var left = await bench.Server();
        using var right = await bench.Server();
        var tap = bench.NoRep(left, 1, 1);
        var taken = await left.Take(new TapBatch([tap]), SessionBench.Judge(1), CancellationToken.None);

        var again = await right.Take(new TapBatch([tap, bench.NoRep(right, 1, 2)]), SessionBench.Judge(1), CancellationToken.None);

        Assert.Equal([TapOutcome.Known, TapOutcome.Accepted], again.Receipts.Select(receipt => receipt.Outcome));
        Assert.Equal(taken.Receipts[0].Sequence, again.Receipts[0].Sequence);
        await bench.WholeLedger();
    }

    [Fact]
    public async Task Two_servers_are_asked_for_go_at_once_and_there_is_one_start()
    {
        await using var bench = await SessionBench.Running();
        using var left = await bench.Server();
        await bench.Do(left, new HeatCommand.RecallStart { Id = bench.NewId() });
        using var right = await bench.Server();

        var answers = await Task.WhenAll(
            Task.Run(() => bench.Try(left, new HeatCommand.ObserveStart { Id = bench.NewId() })),
            Task.Run(() => bench.Try(right, new HeatCommand.ObserveStart { Id = bench.NewId() })));

        Assert.Single(answers.OfType<CommandResult.Done>());
        Assert.Equal("already-started", Assert.Single(answers.OfType<CommandResult.Refused>()).Why.Code);
        // The second of the whole heat: the first was recalled.
        Assert.Equal(2, (await bench.WholeLedger()).Count(line => line.Body.Contains("start-observed", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_command_is_decided_on_the_newest_facts_of_all_servers()
    {
        await using var bench = await SessionBench.Running();
        using var left = await bench.Server();
        using var right = await bench.Server();
        await bench.Do(left, new HeatCommand.End { Id = bench.NewId() });

        // Here the heat still runs, so it could be ended once more; the append finds out.
        var answer = await bench.Try(right, new HeatCommand.End { Id = bench.NewId() });

        Assert.Equal("wrong-phase", Assert.IsType<CommandResult.Refused>(answer).Why.Code);
        Assert.Equal(left.State, right.State);
        Assert.Single(await bench.WholeLedger(), line => line.Body.Contains("heat-ended", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Many_judges_on_two_servers_lose_nothing_and_double_nothing()
    {
        const int TapsEach = 40;
        await using var bench = await SessionBench.Running();
        using var left = await bench.Server();
        using var right = await bench.Server();
        var before = left.State.Head;

        // Each judge sends every tap to both servers, as a phone does that never heard the first answer.
        var receipts = await Task.WhenAll(
            from lane in Enumerable.Range(1, SessionBench.Lanes)
            from session in new[] { left, right }
            select Task.Run(async () =>
            {
                var told = new List<TapReceipt>();
                for (var counter = 1; counter <= TapsEach; counter++)
                {
                    told.AddRange((await session.Take(new TapBatch([bench.NoRep(session, lane, counter)]), SessionBench.Judge(lane), CancellationToken.None)).Receipts);
                }

                return told;
            }));

        var all = receipts.SelectMany(told => told).ToList();
        var lines = await bench.WholeLedger();
        Assert.Equal(SessionBench.Lanes * TapsEach, lines.Count(line => line.Sequence > before));
        Assert.Equal(SessionBench.Lanes * TapsEach, all.Count(receipt => receipt.Outcome == TapOutcome.Accepted));
        Assert.Equal(SessionBench.Lanes * TapsEach, all.Count(receipt => receipt.Outcome == TapOutcome.Known));
        Assert.All(all, receipt => Assert.Equal(receipt.Id, lines[(int)receipt.Sequence! - 1].Id.ToString()));
        using var rebuilt = await bench.Server();
        Assert.All(rebuilt.State.Lanes, lane => Assert.Equal(TapsEach, lane.NoReps[0]));
    }

    [Fact]
    public async Task A_session_rebuilt_from_the_ledger_equals_the_old_one()
    {
        await using var bench = await SessionBench.Running();
        using var old = await bench.Server();
        for (var counter = 1; counter <= 5; counter++)
        {
            bench.Time.Advance(TimeSpan.FromSeconds(1));
            await old.Take(new TapBatch([bench.NoRep(old, 1, counter), bench.NoRep(old, 2, counter)]), SessionBench.Judge(1), CancellationToken.None);
        }

        await bench.Do(old, new HeatCommand.Halt { Id = bench.NewId(), Reason = "a bar rolled into lane 3" });
        using var rebuilt = await bench.Server();

        Assert.Equal(old.State, rebuilt.State);
        Assert.Equal(old.HeadHash, rebuilt.HeadHash);
        Assert.Equal((await bench.WholeLedger())[^1].Hash, rebuilt.HeadHash);
        Assert.Equal(old.Frame(), rebuilt.Frame());
        Assert.Equal(old.Sheet(), rebuilt.Sheet());
    }

    [Fact]
    public async Task Each_change_is_told_once_it_is_on_disk()
    {
        await using var bench = await SessionBench.Running();
        using var session = await bench.Server();
        var told = new List<(long Head, long OnDisk)>();
        session.Changed += changed => told.Add((changed.State.Head, bench.Ledger.Heads().GetAwaiter().GetResult().Single().Head));

        await session.Take(new TapBatch([bench.NoRep(session, 1, 1), bench.NoRep(session, 1, 2)]), SessionBench.Judge(1), CancellationToken.None);
        await session.Take(new TapBatch([bench.NoRep(session, 1, 1)]), SessionBench.Judge(1), CancellationToken.None);

        var (head, onDisk) = Assert.Single(told);
        Assert.Equal((session.State.Head, session.State.Head), (head, onDisk));
    }

    [Fact]
    public async Task A_caller_who_gave_up_before_the_turn_came_writes_nothing()
    {
        await using var bench = await SessionBench.Running();
        using var session = await bench.Server();
        var before = session.State.Head;

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            session.Take(new TapBatch([bench.NoRep(session, 1, 1)]), SessionBench.Judge(1), new CancellationToken(canceled: true)));

        Assert.Equal(before, (await bench.WholeLedger()).Count);
        Assert.Equal(TapOutcome.Accepted, (await session.Take(new TapBatch([bench.NoRep(session, 1, 1)]), SessionBench.Judge(1), CancellationToken.None)).Receipts[0].Outcome);
    }
}
