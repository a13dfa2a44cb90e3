using CsCheck;
using LiveHeat.Engine.Heats.Laws;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class TapOrderTests
{
    private static Entry Tap(string outbox, long counter, int second, int uncertaintyMs = 10) => new(1, Some.Go + 900_000, "in-1", new HeatFact.StepDone
    {
        Id = Some.Id(outbox, counter),
        Instant = Some.Go + (second * 1000),
        Lane = Some.Lane(1),
        Step = 1,
        UncertaintyMs = uncertaintyMs,
    });

    private static string Order(params Entry[] entries) =>
        string.Join(' ', TapOrder.Arrange(entries).Select(tap => $"{tap.Tap.Id.Outbox[0]}{tap.Tap.Id.Counter}@{(tap.At - Some.Go) / 1000}"));

    [Fact]
    public void Taps_of_several_phones_sort_by_instant() => Assert.Equal("a1@10 b1@20 a2@30", Order(Tap("a", 2, 30), Tap("b", 1, 20), Tap("a", 1, 10)));

    [Fact]
    public void At_the_same_instant_the_id_decides_so_that_everybody_sorts_alike() => Assert.Equal("a1@10 b1@10", Order(Tap("b", 1, 10), Tap("a", 1, 10)));

    [Fact]
    public void A_phones_own_taps_keep_their_counter_order_and_the_more_uncertain_instant_yields()
    {
        Assert.Equal("a1@30 a2@30", Order(Tap("a", 1, 40, uncertaintyMs: 500), Tap("a", 2, 30, uncertaintyMs: 10)));
        Assert.Equal("a1@40 a2@40", Order(Tap("a", 1, 40, uncertaintyMs: 10), Tap("a", 2, 30, uncertaintyMs: 500)));
    }

    [Fact]
    public void A_wrong_instant_moves_only_as_far_as_its_neighbours_allow() =>
        Assert.Equal("a1@10 a2@20 a3@20 a4@30", Order(Tap("a", 1, 10), Tap("a", 2, 20), Tap("a", 3, 5, uncertaintyMs: 900), Tap("a", 4, 30)));

    [Fact]
    public void Of_two_equally_certain_instants_the_later_tap_yields() => Assert.Equal("a1@40 a2@40", Order(Tap("a", 1, 40), Tap("a", 2, 30)));

    [Fact]
    public void A_tap_from_the_future_yields_whatever_it_says_of_its_clock() =>
        // Received at 15:00, it cannot have been made at 60:00: the taps around it are not dragged along.
        Assert.Equal("a1@10 a2@30 a3@30", Order(Tap("a", 1, 10), Tap("a", 2, 3600, uncertaintyMs: 1), Tap("a", 3, 30, uncertaintyMs: 50)));

    [Fact]
    public void One_phones_order_says_nothing_about_another() => Assert.Equal("b5@10 a1@20", Order(Tap("a", 1, 20), Tap("b", 5, 10)));

    [Fact]
    public void Whatever_the_clocks_say_counters_ascend_instants_do_not_fall_and_consistent_phones_are_left_alone() =>
        GeneratedHeat.WithWrongClocks.Sample(heat =>
        {
            var taps = GeneratedHeat.Ledger(heat.Facts).Where(entry => entry.Fact is HeatFact.Floor or HeatFact.FactAdded).ToList();
            var placed = TapOrder.Arrange(taps);

            Assert.Equal(taps.Count, placed.Count);
            Assert.True(placed.Zip(placed.Skip(1)).All(pair => pair.First.At <= pair.Second.At));
            foreach (var phone in placed.Where(tap => tap.Entry.Fact is HeatFact.Floor).GroupBy(tap => tap.Tap.Id.Outbox))
            {
                Assert.True(phone.Zip(phone.Skip(1)).All(pair => pair.First.Tap.Id.Counter < pair.Second.Tap.Id.Counter));
                if (phone.Zip(phone.Skip(1)).All(pair => pair.First.Tap.Instant <= pair.Second.Tap.Instant))
                {
                    Assert.All(phone, tap => Assert.Equal(tap.Tap.Instant, tap.At));
                }
            }
        });
}
