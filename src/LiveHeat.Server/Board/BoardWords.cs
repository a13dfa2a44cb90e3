using System.Text.Json;
using Microsoft.Net.Http.Headers;

namespace LiveHeat.Server.Board;

/// <summary>
/// The words of the screens that are plain JavaScript, from the files that translators edit (/floor/words/board.de.json). The page carries those of its language, so
/// that a screen asks for nothing more.
/// </summary>
internal sealed class BoardWords(IWebHostEnvironment environment)
{
    private const string First = "en";
    private static readonly string[] Languages = [First, "es", "fr", "de"];

    /// <summary>The language of a page: the address's, else the first that the browser asks for and there is, else English.</summary>
    public static string LanguageOf(HttpRequest request)
    {
        var wishes = request.GetTypedHeaders().AcceptLanguage.Where(wish => wish.Quality is not 0).OrderByDescending(wish => wish.Quality ?? 1).Select(wish => wish.Value.Value);
        return wishes.Prepend(request.Query["lang"].ToString()).Select(Known).FirstOrDefault(known => known is not null) ?? First;
    }

    /// <summary>The words of a language: keys and sentences.</summary>
    public IReadOnlyDictionary<string, string> Read(string language)
    {
        using var file = environment.WebRootFileProvider.GetFileInfo($"/floor/words/board.{language}.json").CreateReadStream();
        return JsonSerializer.Deserialize<Dictionary<string, string>>(file) ?? throw new InvalidDataException($"The words of {language} cannot be read.");
    }

    private static string? Known(string? wish) => Array.Find(Languages, language => string.Equals(language, wish?.Split('-')[0], StringComparison.OrdinalIgnoreCase));
}
