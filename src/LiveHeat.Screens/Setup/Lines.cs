using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Screens.Setup;

/// <summary>Lists typed one a line, some with an explanation behind an equals sign.</summary>
internal static class Lines
{
    private const string Means = " = ";

    public static string Join(IEnumerable<string> lines) => string.Join('\n', lines);

    public static Items<string> Of(string text) => text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToItems();

    public static string Explained(string name, string? how) => string.IsNullOrEmpty(how) ? name : $"{name}{Means}{how}";

    /// <summary>Name and explanation of each line; the explanation is empty where there is none.</summary>
    public static IEnumerable<NamedFault> Explanations(string text) => Of(text).Select(line =>
        line.IndexOf(Means, StringComparison.Ordinal) is >= 0 and var at ? new NamedFault(line[..at].Trim(), line[(at + Means.Length)..].Trim()) : new NamedFault(line, ""));
}
