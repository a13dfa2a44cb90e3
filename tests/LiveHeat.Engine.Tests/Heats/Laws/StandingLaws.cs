using CsCheck;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats.Laws;

/// <summary>Laws 3, 4 and 5: nothing is dropped, nothing is invented, witnesses confirm.</summary>
public class StandingLaws
{
    private const long Heats = 400;

    private static Items<LaneState> WithoutFlags(HeatState heat) => heat.Lanes.Select(lane => lane with { Flagged = [], Disagreements = [] }).ToItems();

    [Fact]
    public void Every_fact_stays_and_what_is_held_changes_nothing_but_the_list_of_what_is_held() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                var state = GeneratedHeat.Fold(heat.Facts);
                Assert.Equal(heat.Facts.Select(arrival => arrival.Fact), state.Entries.Select(entry => entry.Fact));

                var held = state.Lanes.SelectMany(lane => lane.Flagged).Where(flagged => flagged.Flags.HasFlag(FactFlags.Quarantined)).Select(flagged => flagged.Fact).ToHashSet();
                var without = GeneratedHeat.Fold(heat.Facts.Where(arrival => !held.Contains(arrival.Fact.Id) && !(arrival.Fact is HeatFact.FactAdded added && held.Contains(added.Tap.Id))));
                Assert.Equal(state.Lanes.Sum(lane => lane.Quarantined), held.Count);
                Assert.Equal(WithoutFlags(state), WithoutFlags(without));
            },
            iter: Heats);

    [Fact]
    public void A_tap_that_counts_for_nothing_says_why() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                // Without the tap, the lanes are the same though nothing flags it: then it was undone, voided, an undo of nothing, only confirmed
                // what another said, or a ruling has overtaken it. Anything else is a tap dropped in silence.
                var state = GeneratedHeat.Fold(heat.Facts);
                foreach (var arrival in heat.Facts.Where(arrival => arrival.Fact is HeatFact.StepDone or HeatFact.TagMade).Take(12))
                {
                    var tap = (HeatFact.Done)arrival.Fact;
                    var lane = state.Find(tap.Lane)!;
                    var said = lane.FlagsOf(tap.Id) != FactFlags.None || lane.Splits.Any(split => split?.Fact == tap.Id);
                    Assert.True(said || Explained(heat, tap), $"{tap} counts for nothing and nothing says why.");
                }
            },
            iter: Heats);

    [Fact]
    public void What_was_undone_is_as_if_it_had_not_been() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                var state = GeneratedHeat.Fold(heat.Facts);
                var pairs = heat.Facts.Select(arrival => arrival.Fact).OfType<HeatFact.Undone>()
                    .Where(undo => Undoes(heat, state, undo)).Select(undo => undo.Target).ToHashSet();
                var without = GeneratedHeat.Fold(heat.Facts.Where(arrival => !pairs.Contains(arrival.Fact.Id)));
                Assert.Equal(state.Lanes, without.Lanes);
            },
            iter: Heats);

    [Fact]
    public void What_is_voided_is_as_if_it_had_not_been() =>
        GeneratedHeat.WithWrongClocks.Sample(
            heat =>
            {
                // A ruling that changed the plan leaves its version number behind, so it is not left out here.
                var voided = Voided(heat);
                bool Gone(HeatFact fact) => fact is not (HeatFact.About or HeatFact.LineUpChanged or HeatFact.VariantTaken) && voided.Contains(fact.Id);
                var without = GeneratedHeat.Fold(heat.Facts.Where(arrival => !Gone(arrival.Fact)));
                Assert.Equal(GeneratedHeat.Fold(heat.Facts).Lanes, without.Lanes);
            },
            iter: Heats);

    [Fact]
    public void Splits_are_taps_that_stand_and_none_is_invented() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                var state = GeneratedHeat.Fold(heat.Facts);
                foreach (var lane in state.Lanes)
                {
                    for (var step = 1; step <= lane.Plan.LastStep; step++)
                    {
                        if (lane.Splits[step - 1] is not { } split)
                        {
                            continue;
                        }

                        var entry = state.Find(split.Fact)!;
                        var tap = (HeatFact.Done)(entry.Fact is HeatFact.FactAdded added ? added.Tap : entry.Fact);
                        Assert.True(step <= lane.DoneSteps && tap.Step == step && tap.TimeKnown && tap.Lane == lane.Lane);
                        Assert.InRange(split.LaneMs, 0, state.Clock.HeatMs(tap.Instant)!.Value);
                        Assert.False(lane.FlagsOf(tap.Id).HasFlag(FactFlags.Quarantined));
                    }

                    Assert.InRange(lane.Worth, 0, lane.Plan.WorthThrough(lane.Plan.LastStep));
                    Assert.InRange(lane.DoneSteps, 0, lane.Open - 1);
                    Assert.Equal(lane.Finished && (lane.Splits[^1] is not null || lane.TimedFinishes.Count > 0), lane.Finish is not null);
                }
            },
            iter: Heats);

    [Fact]
    public void Witnesses_change_nothing_but_flags() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                // What a head judge admits counts as the lane's own, whoever tapped it; and an undo takes back what its own phone said.
                var admitted = heat.Facts.Select(arrival => arrival.Fact).OfType<HeatFact.Admitted>().Select(fact => fact.Target).ToHashSet();
                bool Witness(Arrival arrival) => arrival.Fact is HeatFact.AtStep tap && tap.Seat.Value[0] == 'w' && !admitted.Contains(tap.Id);
                var without = GeneratedHeat.Fold(heat.Facts.Where(arrival => !Witness(arrival)));
                Assert.Equal(WithoutFlags(GeneratedHeat.Fold(heat.Facts)), WithoutFlags(without));
            },
            iter: Heats);

    [Fact]
    public void After_the_freeze_taps_are_late_and_change_nothing() =>
        Gen.Select(GeneratedHeat.InOrder, Gen.Int[0, 100]).Sample(
            (heat, part) =>
            {
                var script = new HeatScript(heat.Snapshot, called: false);
                var (before, after) = (heat.Facts.Take(heat.Facts.Count * part / 100), heat.Facts.Skip(heat.Facts.Count * part / 100).Where(arrival => arrival.Fact is HeatFact.Floor).ToList());
                foreach (var arrival in before)
                {
                    script.Append(arrival.Fact, arrival.Sender, arrival.ReceivedAt);
                }

                var frozen = script.Then("end\nfreeze").State;
                foreach (var arrival in after)
                {
                    script.Append(arrival.Fact, arrival.Sender, arrival.ReceivedAt);
                }

                var admitted = heat.Facts.Select(arrival => arrival.Fact).OfType<HeatFact.Admitted>().Select(fact => fact.Target).ToHashSet();
                if (after.Any(arrival => admitted.Contains(arrival.Fact.Id)))
                {
                    return;
                }

                Assert.Equal(WithoutFlags(frozen), WithoutFlags(script.State));
                Assert.All(after.Where(arrival => script.State.Find(arrival.Fact.AboutLane()!.Value) is not null), arrival =>
                    Assert.True(script.State.Find(arrival.Fact.AboutLane()!.Value)!.FlagsOf(arrival.Fact.Id).HasFlag(FactFlags.Late) || Voided(heat).Contains(arrival.Fact.Id)));
            },
            iter: Heats);

    /// <summary>Ids that a void names which no later void takes back.</summary>
    internal static HashSet<FactId> Voided(GeneratedHeat heat)
    {
        var voided = new HashSet<FactId>();
        foreach (var fact in heat.Facts.Select(arrival => arrival.Fact).OfType<HeatFact.Voided>().Reverse().Where(fact => !voided.Contains(fact.Id)))
        {
            voided.Add(fact.Target);
        }

        return voided;
    }

    internal static bool Undoes(GeneratedHeat heat, HeatState state, HeatFact.Undone undo)
    {
        var target = state.Find(undo.Target)!;
        return target.Fact is HeatFact.Floor and not HeatFact.Undone && target.Fact.AboutLane() == undo.Lane
            && !Voided(heat).Contains(undo.Id) && !state.Find(undo.Lane)!.FlagsOf(undo.Id).HasFlag(FactFlags.Quarantined)
            && (undo.Seat.Value[0] == 's' || state.Find(undo.Id)!.Sender == target.Sender || heat.Facts.Any(arrival => arrival.Fact is HeatFact.Admitted admitted && admitted.Target == undo.Id && !Voided(heat).Contains(admitted.Id)));
    }

    private static bool Explained(GeneratedHeat heat, HeatFact.Done tap)
    {
        var state = GeneratedHeat.Fold(heat.Facts);
        var facts = heat.Facts.Select(arrival => arrival.Fact).ToList();
        return Voided(heat).Contains(tap.Id)
            || facts.OfType<HeatFact.Undone>().Any(undo => undo.Target == tap.Id && Undoes(heat, state, undo))
            || tap.Seat.Value[0] == 'w'
            || (!tap.TimeKnown && tap.Step < state.Find(tap.Lane)!.Open)
            || facts.OfType<HeatFact.SentBack>().Any(back => back.Lane == tap.Lane && back.Instant >= tap.Instant && back.Step <= tap.Step);
    }
}
