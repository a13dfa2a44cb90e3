using LiveHeat.Contracts.Setup;

namespace LiveHeat.Screens.Setup;

/// <summary>What is wrong with a form, to be shown where it belongs. Fields are paths as on the wire: <c>prescriptions[0].rounds</c>.</summary>
public sealed class FormErrors(IEnumerable<FieldProblem> errors)
{
    /// <summary>Nothing is wrong.</summary>
    public static readonly FormErrors None = new([]);

    /// <summary>All, in order.</summary>
    public IReadOnlyList<FieldProblem> All { get; } = [.. errors];

    /// <summary>What is wrong with a field; null when nothing is.</summary>
    public string? Of(string field) => All.Where(error => error.Field == field).Select(error => error.Message).Distinct().ToList() is { Count: > 0 } found ? string.Join(" ", found) : null;

    /// <summary>What is wrong with fields that begin so; null when nothing is.</summary>
    public string? Under(string path) => All.Where(error => error.Field.StartsWith(path, StringComparison.Ordinal)).Select(error => error.Message).Distinct().ToList() is { Count: > 0 } found ? string.Join(" ", found) : null;
}
