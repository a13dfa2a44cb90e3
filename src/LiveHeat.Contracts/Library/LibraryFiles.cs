using System.Collections.Frozen;
using System.Reflection;
using System.Text.Json;
using LiveHeat.Contracts.Language;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Library;

/// <summary>
/// The libraries that are built into the program: movements.json in English, and translations beside it by their language, such as movements.es.json. A translation
/// holds words only, in the order of the English file; units, paces and which variant is which movement come from there.
/// </summary>
public static class LibraryFiles
{
    private static readonly Lazy<MovementLibrary> English = new(() => Read<MovementLibrary>(""));

    private static readonly FrozenDictionary<string, Lazy<(MovementLibrary Library, LibraryTranslation Words)>> Translations = Tongue.All.Skip(1).Where(IsThere).ToFrozenDictionary(
        language => language,
        language => new Lazy<(MovementLibrary, LibraryTranslation)>(() =>
        {
            var words = Read<LibraryTranslation>($".{language}");
            return (words.Of(English.Value), words);
        }));

    /// <summary>The library in a language, named as a device or an address does ("de", "fr-CA"); in English where there is no such translation, or none is asked for.</summary>
    public static MovementLibrary In(string? language) => Translations.TryGetValue(Tongue.Of(language), out var found) ? found.Value.Library : English.Value;

    /// <summary>What a language says to the faults that the program adds by itself, such as <see cref="PlanCompiler.NotTogether"/>.</summary>
    public static Items<string> Added(string language) => Translations.TryGetValue(language, out var found) ? found.Value.Words.Added : [PlanCompiler.NotTogether];

    private static bool IsThere(string language) => Assembly.GetExecutingAssembly().GetManifestResourceInfo(NameOf($".{language}")) is not null;

    private static string NameOf(string language) => $"movements{language}.json";

    private static T Read<T>(string language)
    {
        var name = NameOf(language);
        using var file = Assembly.GetExecutingAssembly().GetManifestResourceStream(name) ?? throw new JsonException($"{name} is not built in.");
        return JsonSerializer.Deserialize<T>(file, WireJson.Options) ?? throw new JsonException($"{name} is empty.");
    }
}
