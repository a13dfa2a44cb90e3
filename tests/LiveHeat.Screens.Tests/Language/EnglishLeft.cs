using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Resources;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Language;

/// <summary>Finds English of the screens' resources on a page that is told in another language.</summary>
internal sealed partial class EnglishLeft
{
    private static readonly ConcurrentDictionary<string, EnglishLeft> ByLanguage = new();
    private static readonly string[] Spoken = ["aria-label", "placeholder", "title", "alt", "data-label"];
    private readonly HashSet<string> english;
    private readonly HashSet<string> told;
    private readonly List<string> pieces;

    private EnglishLeft(string language)
    {
        told = [.. Values(CultureInfo.GetCultureInfo(language))];
        english = [.. Values(CultureInfo.InvariantCulture).Where(text => text.Any(char.IsLetter) && !told.Contains(text))];
        pieces = [.. english.SelectMany(text => Place().Split(text)).Select(piece => piece.Trim()).Where(piece => Sentence().IsMatch(piece) && !told.Any(text => text.Contains(piece, StringComparison.Ordinal))).Distinct()];
    }

    /// <summary>Against one of our other languages.</summary>
    public static EnglishLeft In(string language) => ByLanguage.GetOrAdd(language, one => new(one));

    /// <summary>Texts that are a word of the neutral resources, or hold a part of one of their sentences.</summary>
    public IEnumerable<string> On(INode page) => Texts(page).Where(text => english.Contains(text) || pieces.Any(piece => text.Contains(piece, StringComparison.Ordinal))).Distinct();

    /// <summary>How many texts are words of the language's own: a page that shows nothing has no English either.</summary>
    public int ToldOn(INode page) => Texts(page).Distinct().Count(told.Contains);

    private static IEnumerable<string> Texts(INode page) => page.GetDescendants().SelectMany(node => node switch
    {
        IText text => [text.Data.Trim()],
        IElement element => Spoken.Select(element.GetAttribute).OfType<string>(),
        _ => Enumerable.Empty<string>(),
    }).Where(text => text.Length > 0);

    private static IEnumerable<string> Values(CultureInfo culture) =>
        from assembly in new[] { typeof(App).Assembly, typeof(Tongue).Assembly }
        from name in assembly.GetManifestResourceNames()
        where name.EndsWith(".resources", StringComparison.Ordinal)
        from DictionaryEntry entry in new ResourceManager(name[..^".resources".Length], assembly).GetResourceSet(culture, true, false)!
        select ((string)entry.Value!).Trim();

    /// <summary>Where a sentence ends or has a place.</summary>
    [GeneratedRegex(@"\{\d+[^}]*\}|[.:;?!]")]
    private static partial Regex Place();

    [GeneratedRegex(@"\p{L}{2,} \p{L}+ \p{L}{2,}")]
    private static partial Regex Sentence();
}
