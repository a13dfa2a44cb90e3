using CsCheck;
using LiveHeat.Engine.Heats.Laws;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class ReplayTests
{
    private static readonly HeatScript Late = new HeatScript().Then("""
        start
        lane 2 step 1 done at 0:45
        lane 1 seat s-new taken as primary at 1:00
        lane 1 step 2 done at 1:10 from seat s-new
        lane 2 step 2 done at 1:20
        lane 1 step 1 done at 0:40 arriving 2:00
        """);

    [Fact]
    public void As_it_happened_a_late_tap_stands_at_its_own_instant()
    {
        var moments = Replay.AsHappened(Late.State.Heat, Late.Entries).Where(moment => moment.Entry.Fact is HeatFact.Floor).ToList();

        Assert.Equal(["0:40", "0:45", "1:10", "1:20"], moments.Select(moment => Timing.TimeText.Whole(moment.At - Some.Go)));
        Assert.Equal(["1 2=3", "1 2 3", "1 2 3", "1 2 3"], moments.Select(moment => HeatScript.Board(moment.State)));
    }

    [Fact]
    public void As_it_was_known_it_stands_when_it_arrived()
    {
        var moments = Replay.AsKnown(Late.State.Heat, Late.Entries).Where(moment => moment.Entry.Fact is HeatFact.Floor).ToList();

        Assert.Equal(["2 1=3", "1 2 3", "1 2 3", "1 2 3"], moments.Select(moment => HeatScript.Board(moment.State)));
        Assert.Equal([null, null, null, 40_000L], moments.Select(moment => moment.State.Lanes[0].Splits[0]?.LaneMs));
        Assert.Equal(HeatScript.At("2:00"), moments[^1].At);
    }

    [Fact]
    public void What_was_added_from_paper_happened_when_it_says()
    {
        var heat = new HeatScript().Then("""
            start
            lane 2 step 1 done at 0:45
            add lane 1 step 1 done at 0:40
            """);

        Assert.Equal(["1 2=3", "1 2 3"], Replay.AsHappened(heat.State.Heat, heat.Entries).TakeLast(2).Select(moment => HeatScript.Board(moment.State)));
    }

    [Fact]
    public void Both_end_where_the_ledger_ends_with_what_came_after_the_freeze_held_all_the_same() =>
        Gen.Select(GeneratedHeat.InOrder, Gen.Int, Gen.Int[0, 100]).Sample(
            (heat, seed, part) =>
            {
                // Frozen over part of the taps, which arrive late in any order.
                var random = new Random(seed);
                var late = heat.Facts.Where(arrival => arrival.Fact is HeatFact.Floor && random.Next(100) < part).ToList();
                var script = new HeatScript(heat.Snapshot, called: false);
                foreach (var arrival in heat.Facts.Except(late))
                {
                    script.Append(arrival.Fact, arrival.Sender, arrival.ReceivedAt);
                }

                var over = heat.Facts[^1].Fact.Instant + 60_000;
                script.Append(new HeatFact.HeatEnded { Id = Some.Id("end", 1), Instant = over, By = Some.Organiser });
                script.Append(new HeatFact.Frozen { Id = Some.Id("end", 2), Instant = over + 1000, By = Some.Organiser, Head = script.State.Head });
                foreach (var arrival in late)
                {
                    script.Append(arrival.Fact, arrival.Sender, over + 2000);
                }

                Assert.Equal(script.State.Standing(), Replay.AsKnown(Some.Heat, script.Entries).Last().State.Standing());
                Assert.Equal(script.State.Standing(), Replay.AsHappened(Some.Heat, script.Entries).Last().State.Standing());
            },
            iter: 200);
}
