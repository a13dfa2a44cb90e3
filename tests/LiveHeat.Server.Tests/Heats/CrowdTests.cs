using LiveHeat.Contracts.Taps;
using LiveHeat.Testing.Hosting;

namespace LiveHeat.Server.Heats;

public sealed class CrowdTests(SharedFloor shared) : FloorTest(shared)
{
    [Fact]
    public async Task Judges_who_all_send_at_once_and_again_have_every_tap_on_the_ledger_once()
    {
        const int Batches = 12, TapsEach = 5;
        var heat = await Floor.Run(lanes: 4);
        var batches = (
            from lane in Enumerable.Range(1, 4)
            from _ in Enumerable.Range(0, Batches)
            select (Judge: heat[lane], Taps: Enumerable.Range(0, TapsEach).Select(_ => heat[lane].Tap("no-rep", ("step", 1))).ToList())).ToList();

        // Each batch twice, as from a phone that lost the first answer.
        var answers = await Task.WhenAll(batches.Concat(batches).Select(batch => batch.Judge.Send(batch.Taps)));

        var receipts = answers.SelectMany(answer => answer.Receipts).ToList();
        Assert.Equal(4 * Batches * TapsEach, receipts.Count(receipt => receipt.Outcome == TapOutcome.Accepted));
        Assert.Equal(4 * Batches * TapsEach, receipts.Count(receipt => receipt.Outcome == TapOutcome.Known));
        var facts = await heat.Facts();
        Assert.Equal(Enumerable.Range(1, facts.Count).Select(n => (long)n), facts.Select(line => line.Sequence));
        Assert.Equal(4 * Batches * TapsEach, (await heat.Taps()).Select(line => line.Fact.Id).Distinct().Count());
        Assert.Equal(4 * Batches * TapsEach, (await heat.Taps()).Count);
        Assert.All(receipts, receipt => Assert.Equal(receipt.Id, facts[(int)receipt.Sequence! - 1].Fact.Id.ToString()));
        Assert.All((await heat.Frame()).Lanes, lane => Assert.Equal(Batches * TapsEach, lane.NoReps));
    }
}
