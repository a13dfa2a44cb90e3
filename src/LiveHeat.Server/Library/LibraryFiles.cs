using System.Collections.Frozen;
using System.Reflection;
using System.Text.Json;
using LiveHeat.Contracts.Library;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;

namespace LiveHeat.Server.Library;

/// <summary>
/// The libraries that are built into the program: movements.json in English, and translations beside it by their language, such as movements.es.json.
/// A translation has the same ids; what it leaves out is told in English.
/// </summary>
internal static class LibraryFiles
{
    private const string English = "en";

    private static readonly FrozenDictionary<string, Lazy<MovementLibrary>> ByLanguage = Assembly.GetExecutingAssembly().GetManifestResourceNames()
        .Where(name => name.StartsWith("movements.", StringComparison.Ordinal) && name.EndsWith(".json", StringComparison.Ordinal))
        .ToFrozenDictionary(
            name => name.Split('.') is [_, var language, _] ? language : English,
            name => new Lazy<MovementLibrary>(() => Read(name) is { Language: not English } other ? Complete(other, In(English)) : Read(name)), StringComparer.OrdinalIgnoreCase);

    /// <summary>The library in a language; in English when there is no such translation, or none is asked for.</summary>
    public static MovementLibrary In(string? language) => (language is not null && ByLanguage.TryGetValue(language, out var found) ? found : ByLanguage[English]).Value;

    /// <summary>A translation with what it leaves out told in English, in the order of the English one.</summary>
    internal static MovementLibrary Complete(MovementLibrary translation, MovementLibrary english)
    {
        var translated = translation.Movements.ToDictionary(movement => movement.Id);
        return translation with { Movements = english.Movements.Select(movement => translated.GetValueOrDefault(movement.Id, movement)).ToItems() };
    }

    private static MovementLibrary Read(string name)
    {
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        return JsonSerializer.Deserialize<MovementLibrary>(file, WireJson.Options) ?? throw new JsonException($"{name} is empty.");
    }
}
