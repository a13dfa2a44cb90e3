using System.Globalization;
using LiveHeat.Engine.Workouts;
using LiveHeat.Screens.Words;

namespace LiveHeat.Screens.Setup;

/// <summary>The sets of a prescription by their places, to choose one of them.</summary>
public static class SetPlaces
{
    /// <summary>More rounds than this are not offered one by one.</summary>
    private const int MostRounds = 30;

    /// <summary>Every set in the order it is done, with words for it.</summary>
    /// <param name="draft">The prescription as typed.</param>
    /// <param name="movements">The workout's movements.</param>
    public static IReadOnlyList<(TiebreakSet Place, string Words)> Of(PrescriptionDraft draft, IReadOnlyList<MovementDraft> movements)
    {
        var rounds = Count(draft);
        return
        [
            .. Sets(0, draft.Before, movements),
            .. Enumerable.Range(1, rounds).SelectMany(round => Sets(round, draft.Round, movements)),
            .. Sets(null, draft.After, movements),
        ];
    }

    /// <summary>The rounds by the clock: each by the last of its sets.</summary>
    /// <param name="draft">The prescription as typed.</param>
    public static IReadOnlyList<(TiebreakSet Place, string Words)> Rounds(PrescriptionDraft draft) =>
        [.. Enumerable.Range(1, Count(draft)).Select(round => (new TiebreakSet(round, draft.Round.Count(set => IsIn(set, round))), ShapeWords.RoundEnds(round)))];

    private static int Count(PrescriptionDraft draft) => int.TryParse(draft.Rounds, NumberStyles.None, CultureInfo.InvariantCulture, out var written) ? Math.Min(written, MostRounds) : 0;

    private static bool IsIn(SetDraft set, int round) => set.InRound.Trim() is var typed && (typed.Length == 0 || typed == WorkoutDraft.Text(round));

    private static IEnumerable<(TiebreakSet, string)> Sets(int? round, List<SetDraft> sets, IReadOnlyList<MovementDraft> movements) => sets.Select((set, i) =>
    {
        var place = new TiebreakSet(round, i + 1);
        return (place, ShapeWords.Place(place, $"{set.Quantity} {movements.FirstOrDefault(movement => movement.Id == set.Movement)?.Name}"));
    });
}
