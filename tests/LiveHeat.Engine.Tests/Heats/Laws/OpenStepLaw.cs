using CsCheck;

namespace LiveHeat.Engine.Heats.Laws;

/// <summary>
/// The pad's one law told a second time, as a set and not as a walk, against generated heats: the open step follows the highest step with a
/// standing done-fact; a fact made before the team was sent back still says that all before the ruling's step is done.
/// </summary>
public class OpenStepLaw
{
    [Fact]
    public void The_open_step_its_count_and_what_is_owed_are_what_the_set_of_standing_facts_says() =>
        GeneratedHeat.InOrder.Sample(
            heat =>
            {
                var state = GeneratedHeat.Fold(heat.Facts);
                foreach (var lane in state.Lanes)
                {
                    var said = new Said(heat, state, lane);
                    Assert.Equal(said.Open, lane.Open);

                    // After the cap or after the team stopped the pad goes on and the score does not.
                    if (lane.Flagged.Any(flagged => (flagged.Flags & (FactFlags.AfterCap | FactFlags.AfterStop)) != FactFlags.None))
                    {
                        continue;
                    }

                    Assert.Equal(said.Open - 1, lane.DoneSteps);
                    Assert.Equal(said.Owed, lane.Owed);
                    if (state.Snapshot!.Workout.Counting == Workouts.Counting.Reps && !said.Has<HeatFact.RepsAtCap>())
                    {
                        Assert.Equal(said.Count, lane.Count);
                    }
                }
            },
            iter: 600);

    private sealed class Said
    {
        private readonly List<HeatFact.Floor> taps;
        private readonly List<HeatFact.SentBack> backs;
        private readonly List<HeatFact.RepsOwed> debts;

        public Said(GeneratedHeat heat, HeatState state, LaneState lane)
        {
            var voided = StandingLaws.Voided(heat);
            var facts = heat.Facts.Select(arrival => arrival.Fact).ToList();
            var admitted = facts.OfType<HeatFact.Admitted>().Where(fact => !voided.Contains(fact.Id)).Select(fact => fact.Target).ToHashSet();
            var undone = facts.OfType<HeatFact.Undone>().Where(undo => StandingLaws.Undoes(heat, state, undo)).Select(undo => undo.Target).ToHashSet();
            var restart = facts.FindLastIndex(fact => fact is HeatFact.StartRecalled);
            taps = [.. facts.Where(fact => !voided.Contains(fact.Id)).Select(fact => fact is HeatFact.FactAdded added ? added.Tap : fact).OfType<HeatFact.Floor>()
                .Where(tap => tap.Lane == lane.Lane && !undone.Contains(tap.Id) && !lane.FlagsOf(tap.Id).HasFlag(FactFlags.Quarantined))
                .Where(tap => !tap.Seat.Value.StartsWith('w') || admitted.Contains(tap.Id))];
            backs = [.. facts.Skip(restart + 1).OfType<HeatFact.SentBack>().Where(back => back.Lane == lane.Lane && !voided.Contains(back.Id))];
            debts = [.. facts.Skip(restart + 1).OfType<HeatFact.RepsOwed>().Where(debt => debt.Lane == lane.Lane && !voided.Contains(debt.Id))];
        }

        public int Open => OpenAt(new Timing.Instant(long.MaxValue));

        public int Owed => debts.Where(debt => OpenAt(debt.Instant) == Open).Sum(debt => debt.Reps);

        public int Count => taps.OfType<HeatFact.CountReached>().Where(count => count.Step == Open && Reach(count, new Timing.Instant(long.MaxValue)) == count.Step)
            .MaxBy(count => count.Instant)?.Count ?? 0;

        public bool Has<T>() => taps.OfType<T>().Any();

        private int OpenAt(Timing.Instant until) =>
            1 + taps.OfType<HeatFact.Done>().Where(done => done.Instant <= until).Select(done => Reach(done, until)).DefaultIfEmpty(0).Max();

        private int Reach(HeatFact.AtStep tap, Timing.Instant until) => backs
            .Where(back => tap.Step >= back.Step && tap.Instant <= back.Instant && back.Instant <= until)
            .Select(back => back.Step - 1).Append(tap.Step).Min();
    }
}
