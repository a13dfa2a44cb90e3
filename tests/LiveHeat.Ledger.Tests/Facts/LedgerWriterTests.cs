using CsCheck;
using LiveHeat.Engine.Heats;
using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Facts;

public class LedgerWriterTests : LedgerTest
{
    private int samples;

    [Fact]
    public async Task Hundreds_at_once_each_find_their_lines_once()
    {
        const int Writers = 300, Heats = 5, Rounds = 4;
        var acknowledged = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(async () =>
        {
            var heat = new HeatId($"h{writer % Heats}");
            var mine = new List<LedgerLine>();
            for (var round = 0; round < Rounds; round++)
            {
                mine.AddRange(await AppendUntilDone(heat, Some.Lines((round * 10) + 1, 1 + (writer % 3), $"phone {writer}")));
            }

            return mine;
        })));

        await AssertWhole(Ledger);
        var stored = new Dictionary<FactId, LedgerLine>();
        foreach (var (heat, _) in await Ledger.Heads())
        {
            foreach (var line in await Read(heat))
            {
                stored.Add(line.Id, line);
            }
        }

        var all = acknowledged.SelectMany(lines => lines).ToList();
        Assert.Equal(stored.Count, all.Count);
        Assert.All(all, line => Assert.Equal(line, stored[line.Id]));
    }

    [Fact]
    public async Task Nothing_is_acknowledged_before_the_commit_that_holds_it()
    {
        using var letGo = new ManualResetEventSlim();
        var reached = new TaskCompletionSource();
        Task<Append>? first = null;
        var batch = InOneBatch(
            () => first = Append(Some.Heat1, 0, Some.Line(1)),
            () => Ledger.OnWriter(_ =>
            {
                reached.SetResult();
                letGo.Wait();   // the batch's transaction is open all this time
                return true;
            }));
        await reached.Task;

        try
        {
            // The first is written but not committed: a reader does not see it, so nobody may be told.
            Assert.Empty(await Read(Some.Heat1));
            Assert.False(first!.IsCompleted);
        }
        finally
        {
            letGo.Set();
            await batch;
        }

        Assert.IsType<Append.Done>(await first);
        Assert.Single(await Read(Some.Heat1));
    }

    [Fact]
    public async Task One_bad_append_fails_alone_among_those_committed_with_it()
    {
        var offers = await InOneBatch(
            () => Append(Some.Heat1, 0, Some.Line(1)),
            () => Append(Some.Heat1, 1, Some.Line(2), Some.BadLine(3)),
            () => Append(Some.Heat1, 1, Some.Line(4), Some.Line(5)),
            () => Append(Some.Heat2, 0, Some.Line(6), Some.Line(5)),
            () => Append(Some.Heat2, 0, Some.Line(7)),
            () => Append(Some.Heat2, 0, Some.Line(8)));

        Assert.IsType<Append.Done>(await (Task<Append>)offers[0]);
        await Assert.ThrowsAsync<LineNotKept>(() => offers[1]);
        Assert.IsType<Append.Done>(await (Task<Append>)offers[2]);
        Assert.Equal(Some.Line(5).Id, Assert.IsType<Append.IdTaken>(await (Task<Append>)offers[3]).Id);
        Assert.IsType<Append.Done>(await (Task<Append>)offers[4]);
        Assert.Equal(new Append.Behind(1), await (Task<Append>)offers[5]);

        Assert.Equal([1, 4, 5], (await Read(Some.Heat1)).Select(line => line.Id.Counter));
        Assert.Equal([7], (await Read(Some.Heat2)).Select(line => line.Id.Counter));
        await AssertWhole(Ledger);
    }

    [Fact]
    public async Task A_text_that_is_no_text_fails_alone_too()
    {
        var offers = await InOneBatch(
            () => Append(Some.Heat1, 0, Some.Line(1), Some.Line(2, body: "\"\ud800\"")),
            () => Append(Some.Heat1, 0, Some.Line(3)));
        await Assert.ThrowsAsync<LineNotKept>(() => offers[0]);
        Assert.IsType<Append.Done>(await (Task<Append>)offers[1]);
        await AssertWhole(Ledger);
    }

    [Fact]
    public async Task When_somebody_else_wrote_the_key_decides_and_not_our_memory()
    {
        await Append(Some.Heat1, 0, Some.Line(1));
        var ours = (await Read(Some.Heat1))[0];
        await using (var stranger = new LedgerContext(Sqlite.SqliteFile.Options<LedgerContext>($"Data Source={LedgerPath};Pooling=False")))
        {
            var theirs = LedgerLine.After(new LedgerHead(1, ours.Hash), Some.Heat1, Some.Line(1, outbox: "theirs"));
            stranger.Facts.Add(new FactRow
            {
                Heat = theirs.Heat.Value,
                Sequence = theirs.Sequence,
                Outbox = theirs.Id.Outbox,
                Counter = theirs.Id.Counter,
                Sender = theirs.Sender,
                ReceivedAtMs = theirs.ReceivedAt.UnixMs,
                BodyHash = theirs.BodyHash,
                Body = theirs.Body,
                PreviousHash = theirs.PreviousHash,
                Hash = theirs.Hash,
            });
            await stranger.SaveChangesAsync();
        }

        Assert.Equal(new Append.Behind(2), await Append(Some.Heat1, 1, Some.Line(2)));
        Assert.IsType<Append.Done>(await Append(Some.Heat1, 2, Some.Line(2)));
        await AssertWhole(Ledger);
    }

    [Fact]
    public void It_answers_as_a_list_in_memory_would() =>
        Gen.Select(Gen.Int[0, 2], Gen.Int[-1, 1], Gen.Int[1, 30].HashSet[0, 4], (heat, off, counters) => (heat, off, counters))
            .Array[1, 30].Sample(
            offers =>
            {
                var sample = ++samples;
                var model = new Dictionary<FactId, LedgerLine>();
                foreach (var (number, off, counters) in offers)
                {
                    // Heats and phones of this sample's own, so that all samples share one file.
                    var heat = new HeatId($"{sample}-{number}");
                    var head = model.Values.Count(line => line.Heat == heat);
                    var news = counters.Select(counter => Some.Line(counter, $"{sample}")).ToArray();
                    var known = news.FirstOrDefault(line => model.ContainsKey(line.Id));

                    var answer = Append(heat, head + off, news).GetAwaiter().GetResult();

                    if (off != 0)
                    {
                        Assert.Equal(new Append.Behind(head), answer);
                    }
                    else if (known is not null)
                    {
                        Assert.Equal(new Append.IdTaken(known.Id, model[known.Id]), answer);
                    }
                    else
                    {
                        var lines = Assert.IsType<Append.Done>(answer).Lines;
                        Assert.Equal(news.Select((line, i) => (head + i + 1L, line.Id)), lines.Select(line => (line.Sequence, line.Id)));
                        foreach (var line in lines)
                        {
                            model.Add(line.Id, line);
                        }
                    }
                }

                foreach (var heat in model.Values.GroupBy(line => line.Heat))
                {
                    Assert.Equal(heat.OrderBy(line => line.Sequence), Read(heat.Key).GetAwaiter().GetResult());
                }
            },
            iter: 40,
            threads: 1);

    private async Task<IReadOnlyList<LedgerLine>> AppendUntilDone(HeatId heat, NewLine[] news)
    {
        var after = 0L;
        while (true)
        {
            switch (await Append(heat, after, news))
            {
                case Append.Done done:
                    return done.Lines;
                case Append.Behind behind:
                    after = behind.Head;
                    break;
                case var other:
                    Assert.Fail($"{other}");
                    break;
            }
        }
    }
}
