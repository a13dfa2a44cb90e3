using LiveHeat.Contracts.Library;

namespace LiveHeat.Screens.Setup;

/// <summary>A movement that can be chosen.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="IsOwn">The organiser's own, not the library's.</param>
public sealed record MovementChoice(LibraryMovement Movement, bool IsOwn);

/// <summary>Finds movements by parts of their names.</summary>
public static class MovementSearch
{
    /// <summary>Those that hold every typed word; what begins so first, then the organiser's own.</summary>
    public static IReadOnlyList<MovementChoice> Find(IEnumerable<MovementChoice> choices, string typed, int most = int.MaxValue)
    {
        var words = typed.Split(' ', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return [.. choices.Where(choice => words.All(word => Holds(choice, word)))
            .OrderByDescending(choice => words.Length > 0 && choice.Movement.Name.StartsWith(words[0], StringComparison.CurrentCultureIgnoreCase))
            .ThenByDescending(choice => choice.IsOwn)
            .Take(most)];
    }

    private static bool Holds(MovementChoice choice, string word) =>
        choice.Movement.Name.Contains(word, StringComparison.CurrentCultureIgnoreCase) || choice.Movement.Id.Contains(word, StringComparison.OrdinalIgnoreCase);
}
