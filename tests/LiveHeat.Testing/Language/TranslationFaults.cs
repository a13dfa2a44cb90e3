using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Resources;
using System.Text.RegularExpressions;
using LiveHeat.Contracts.Language;

namespace LiveHeat.Testing.Language;

/// <summary>What a translator would find wrong with the resources of an assembly, in sentences.</summary>
public static partial class TranslationFaults
{
    /// <summary>Keys that a language lacks or has too many, places that differ, counts with one form only, sentences left in English, words that nothing tells.</summary>
    public static IEnumerable<string> Of(Assembly assembly) => assembly.GetManifestResourceNames()
        .Where(name => name.EndsWith(".resources", StringComparison.Ordinal))
        .SelectMany(name => InResources(assembly, name[..^".resources".Length]));

    /// <summary>How many words and sentences an assembly has in English: a check that looked at nothing would find nothing.</summary>
    public static int Looked(Assembly assembly) => assembly.GetManifestResourceNames()
        .Where(name => name.EndsWith(".resources", StringComparison.Ordinal)).Sum(name => Read(assembly.GetManifestResourceStream(name)!).Count);

    private static IEnumerable<string> InResources(Assembly assembly, string name)
    {
        var english = Read(assembly.GetManifestResourceStream($"{name}.resources")!);
        var members = assembly.GetType(name)?.GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance).Select(member => member.Name).ToHashSet();
        foreach (var key in english.Keys)
        {
            if (members is { Count: > 0 } && !members.Contains(key.Split('.')[0]) && !Keyed(assembly, name))
            {
                yield return $"{name}: nothing tells {key}.";
            }

            if (Counted(key) is { } other && !english.ContainsKey(other))
            {
                yield return $"{name}: {key} has no {other}.";
            }
        }

        foreach (var language in Tongue.All.Skip(1))
        {
            var translated = Read(assembly.GetSatelliteAssembly(CultureInfo.GetCultureInfo(language)).GetManifestResourceStream($"{name}.{language}.resources")
                ?? throw new MissingManifestResourceException($"{name} has no {language}."));
            foreach (var fault in Against(english, translated))
            {
                yield return $"{name}, {language}: {fault}";
            }
        }
    }

    private static IEnumerable<string> Against(Dictionary<string, string> english, Dictionary<string, string> translated)
    {
        foreach (var key in english.Keys.Except(translated.Keys))
        {
            yield return $"{key} is missing.";
        }

        foreach (var key in translated.Keys.Except(english.Keys))
        {
            yield return $"{key} is not in English.";
        }

        foreach (var (key, text) in translated.Where(pair => english.ContainsKey(pair.Key)))
        {
            var (wanted, had) = (Places(english[key]), Places(text));
            // "one rep" may leave its number out.
            if (key.EndsWith(".one", StringComparison.Ordinal) ? !wanted.Append("0").ToHashSet().IsSupersetOf(had) || !had.IsSupersetOf(wanted.Where(place => place != "0")) : !wanted.SetEquals(had))
            {
                yield return $"{key} has other places than \"{english[key]}\": \"{text}\".";
            }

            if (text == english[key] && Sentence().IsMatch(text))
            {
                yield return $"{key} is still English: \"{text}\".";
            }
        }
    }

    /// <summary>Resources whose keys are made by their readers: no member has their names.</summary>
    private static bool Keyed(Assembly assembly, string name) => assembly.GetType(name) is { IsAbstract: false, IsSealed: true };

    private static string? Counted(string key) =>
        key.EndsWith(".one", StringComparison.Ordinal) ? $"{key[..^3]}other" : key.EndsWith(".other", StringComparison.Ordinal) ? $"{key[..^5]}one" : null;

    private static HashSet<string> Places(string text) => [.. Place().Matches(text).Select(match => match.Groups[1].Value)];

    private static Dictionary<string, string> Read(Stream stream)
    {
        using var reader = new ResourceReader(stream);
        return reader.Cast<DictionaryEntry>().ToDictionary(entry => (string)entry.Key, entry => (string)entry.Value!);
    }

    [GeneratedRegex(@"\{(\d+)[^}]*\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"\p{L}{2,} \p{L}{2,} \p{L}{2,}")]
    private static partial Regex Sentence();
}
