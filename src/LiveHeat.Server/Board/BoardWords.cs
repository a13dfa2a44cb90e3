using System.Text.Json;

namespace LiveHeat.Server.Board;

/// <summary>
/// The words of the screens that are plain JavaScript, from the files that translators edit (/floor/words/board.de.json). The page carries those of its language, so
/// that a screen asks for nothing more.
/// </summary>
internal sealed class BoardWords(IWebHostEnvironment environment)
{
    /// <summary>The words of a language: keys and sentences.</summary>
    public IReadOnlyDictionary<string, string> Read(string language)
    {
        using var file = environment.WebRootFileProvider.GetFileInfo($"/floor/words/board.{language}.json").CreateReadStream();
        return JsonSerializer.Deserialize<Dictionary<string, string>>(file) ?? throw new InvalidDataException($"The words of {language} cannot be read.");
    }
}
