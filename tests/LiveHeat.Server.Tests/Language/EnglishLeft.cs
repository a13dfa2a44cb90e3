using System.Collections;
using System.Globalization;
using System.Net;
using System.Reflection;
using System.Resources;
using System.Text.RegularExpressions;

namespace LiveHeat.Server.Language;

/// <summary>Finds English words of the resources on a page in another language.</summary>
internal static partial class EnglishLeft
{
    /// <summary>Two words and more of an English sentence that the language tells otherwise.</summary>
    public static IEnumerable<string> On(string page, string language, params Assembly[] assemblies)
    {
        var text = Plain(page);
        return assemblies.SelectMany(assembly => Otherwise(assembly, language)).Distinct().Where(phrase => Regex.IsMatch(text, $@"(?<!\p{{L}}){Regex.Escape(phrase)}(?!\p{{L}})"));
    }

    /// <summary>What a reader sees of a page.</summary>
    public static string Plain(string page) => Spaces().Replace(WebUtility.HtmlDecode(Tag().Replace(page, " ")), " ").Trim();

    private static IEnumerable<string> Otherwise(Assembly assembly, string language)
    {
        var satellite = assembly.GetSatelliteAssembly(CultureInfo.GetCultureInfo(language));
        foreach (var name in assembly.GetManifestResourceNames().Where(name => name.EndsWith(".resources", StringComparison.Ordinal)))
        {
            var translated = Read(satellite.GetManifestResourceStream($"{name[..^".resources".Length]}.{language}.resources")!);
            var phrases = Read(assembly.GetManifestResourceStream(name)!).Where(pair => translated[pair.Key] != pair.Value)
                .SelectMany(pair => Place().Split(pair.Value)).Select(piece => piece.Trim(' ', '.', ',', ':', ';', '(', ')')).Where(piece => TwoWords().IsMatch(piece));
            foreach (var phrase in phrases)
            {
                yield return phrase;
            }
        }
    }

    private static Dictionary<string, string> Read(Stream stream)
    {
        using var reader = new ResourceReader(stream);
        return reader.Cast<DictionaryEntry>().ToDictionary(entry => (string)entry.Key, entry => (string)entry.Value!);
    }

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"\p{L}{2,}[ -]\p{L}{2,}")]
    private static partial Regex TwoWords();

    [GeneratedRegex("<(style|script).*?</\\1>|<[^>]*>", RegexOptions.Singleline)]
    private static partial Regex Tag();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();
}
