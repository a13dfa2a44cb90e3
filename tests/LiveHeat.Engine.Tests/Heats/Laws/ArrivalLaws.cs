using CsCheck;
using LiveHeat.Engine.Standings;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats.Laws;

/// <summary>Laws 1, 2 and 6: what arrives when does not matter, nothing is edited, a part of the facts is the state then.</summary>
public class ArrivalLaws
{
    private const long Heats = 500;

    [Fact]
    public void Any_order_in_which_taps_arrive_gives_the_same_heat() =>
        Gen.Select(GeneratedHeat.WithWrongClocks, Gen.Int).Sample(
            (heat, seed) =>
            {
                var (told, scattered) = (GeneratedHeat.Fold(heat.Facts), GeneratedHeat.Fold(heat.Scattered(seed)));
                Assert.Equal(told.Standing(), scattered.Standing());
                Assert.Equal(LiveOrder.Of(told), LiveOrder.Of(scattered));
            },
            iter: Heats);

    [Fact]
    public void What_is_sent_twice_counts_once() =>
        Gen.Select(GeneratedHeat.WithWrongClocks, Gen.Int).Sample(
            (heat, seed) =>
            {
                var random = new Random(seed);
                var state = HeatState.Empty(Some.Heat);
                var sent = heat.Scattered(seed).SelectMany((arrival, i) => Enumerable.Repeat(arrival, random.Next(1, 4))).ToList();
                foreach (var arrival in sent.Concat(sent.Where(_ => random.Next(5) == 0)))
                {
                    // As a session does: what the heat holds already is not appended again.
                    state = state.Find(arrival.Fact.Id) is null ? state.Apply(new Entry(state.Head + 1, arrival.ReceivedAt, arrival.Sender, arrival.Fact)) : state;
                }

                Assert.Equal(heat.Facts.Count, state.Head);
                Assert.Equal(GeneratedHeat.Fold(heat.Facts).Standing(), state.Standing());
            },
            iter: Heats);

    [Fact]
    public void One_fact_after_another_gives_what_all_at_once_give_and_no_state_before_changes() =>
        GeneratedHeat.WithWrongClocks.Sample(
            heat =>
            {
                var ledger = GeneratedHeat.Ledger(heat.Facts);
                var states = new List<HeatState> { HeatState.Empty(Some.Heat) };
                foreach (var entry in ledger)
                {
                    states.Add(states[^1].Apply(entry));
                }

                for (var head = 0; head < states.Count; head += 7)
                {
                    var then = HeatState.Fold(Some.Heat, ledger.Take(head));
                    Assert.Equal(then, states[head]);
                    Assert.Equal(then.GetHashCode(), states[head].GetHashCode());
                    Assert.Equal(ledger.Take(head), states[head].Entries);
                }
            },
            iter: Heats);

    [Fact]
    public void A_lane_folded_when_it_was_last_touched_is_the_lane_folded_now() =>
        GeneratedHeat.WithWrongClocks.Sample(
            heat =>
            {
                // To count no lane at all as ready changes nothing, and makes the heat fold every lane again.
                var state = GeneratedHeat.Fold(heat.Facts);
                var at = state.Entries[^1].Fact.Instant;
                var again = state.Apply(new Entry(state.Head + 1, at, "in-head", new HeatFact.LanesOverridden { Id = Some.Id("again", 1), Instant = at, By = Some.HeadJudge, Lanes = [] }));
                Assert.Equal(state.Standing(), again.Standing());
            },
            iter: Heats);

    [Fact]
    public void The_facts_up_to_an_instant_are_the_state_at_that_instant() =>
        Gen.Select(GeneratedHeat.InOrder, Gen.Int, Gen.Int[0, 100]).Sample(
            (heat, seed, part) =>
            {
                // In order, nothing is late: what the heat looked like then is the fold of a prefix. Scattered, the same facts tell it afterwards.
                var head = heat.Facts.Count * part / 100;
                var then = heat.Facts[Math.Max(0, head - 1)].Fact.Instant;
                var known = heat.Facts.Where(arrival => arrival.Fact.Instant <= then);
                var told = heat.Scattered(seed).Where(arrival => arrival.Fact.Instant <= then);

                Assert.Equal(GeneratedHeat.Fold(known).Standing(), GeneratedHeat.Fold(told).Standing());
            },
            iter: Heats);

    [Fact]
    public void Entries_come_in_sequence()
    {
        var heat = new HeatScript().Then("start").State;
        var entry = heat.Entries[^1];

        Assert.Throws<ArgumentException>(() => heat.Apply(entry));
    }
}
