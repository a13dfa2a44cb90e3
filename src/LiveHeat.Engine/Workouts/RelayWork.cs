namespace LiveHeat.Engine.Workouts;

/// <summary>One set and who does it, before it is a step.</summary>
/// <param name="Round">As in <see cref="Step"/>.</param>
/// <param name="Athlete">A number in the team, from 1; 0 when the team works as one.</param>
/// <param name="Set">What is done.</param>
public sealed record Work(int? Round, int Athlete, PrescribedSet Set)
{
    /// <summary>Who does every rep at the same moment as <see cref="Athlete"/>; empty for one alone.</summary>
    public Items<int> With { get; init; }
}

/// <summary>Lays a prescription out in the order it is done, by the relay order.</summary>
public static class RelayWork
{
    /// <summary>All sets of the relay in order. The order and prescription have been checked.</summary>
    public static IEnumerable<Work> Of(RelayOrder order, Prescription prescription, int athletes)
    {
        var setsDone = 0;
        int Athlete(int round) => order switch
        {
            RelayOrder.InTurn => (round % athletes) + 1,
            RelayOrder.Blocks blocks => (round / blocks.Size % athletes) + 1,
            RelayOrder.EachMovement => (setsDone % athletes) + 1,
            RelayOrder.Listed listed => listed.Athletes[round % listed.Athletes.Count],
            RelayOrder.Together => 0,
            _ => throw new ArgumentOutOfRangeException(nameof(order), order, "This relay order has no layout."),
        };

        Work Of(int? round, int athlete, PrescribedSet set) => set.MinimumEach is not null || athlete == 0
            ? new Work(round, 0, set)
            : new Work(round, athlete, set) { With = Beside(athlete, set.Together ?? 1, athletes) };

        var last = Athlete(0);
        foreach (var set in prescription.Before)
        {
            yield return Of(0, last, set);
        }

        for (var round = 0; round < prescription.Rounds; round++)
        {
            foreach (var set in prescription.SetsIn(round + 1))
            {
                last = Athlete(round);
                setsDone++;
                yield return Of(round + 1, last, set);
            }
        }

        foreach (var set in prescription.After)
        {
            yield return Of(null, last, set);
        }
    }

    /// <summary>Those who come next in the team's order, from its end to its beginning.</summary>
    private static Items<int> Beside(int athlete, int together, int athletes) =>
        Enumerable.Range(athlete, Math.Max(0, Math.Min(together, athletes) - 1)).Select(next => (next % athletes) + 1).ToItems();
}
