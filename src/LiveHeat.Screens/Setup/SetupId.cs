using System.Globalization;
using System.Text;

namespace LiveHeat.Screens.Setup;

/// <summary>Ids for what is set up by hand, made of its name: small letters, digits and hyphens, at most 40.</summary>
public static class SetupId
{
    private const int Longest = 32;

    // A browser without language tables takes no letter apart, so the letters of Europe's Latin alphabets are told here.
    private static readonly Dictionary<char, string> Plainly = new (string Letters, string Plain)[]
    {
        ("àáâãåāăą", "a"), ("äæ", "ae"), ("çćč", "c"), ("ďđð", "d"), ("èéêëēęě", "e"), ("ğ", "g"), ("ìíîïıī", "i"), ("łľĺ", "l"), ("ñńň", "n"), ("òóôõő", "o"), ("öøœ", "oe"),
        ("ŕř", "r"), ("śšşș", "s"), ("ß", "ss"), ("ťțţ", "t"), ("þ", "th"), ("ùúûůűū", "u"), ("ü", "ue"), ("ýÿ", "y"), ("źžż", "z"),
    }.SelectMany(pair => pair.Letters.Select(letter => (letter, pair.Plain))).ToDictionary(pair => pair.letter, pair => pair.Plain);

    /// <summary>One that is not taken.</summary>
    /// <param name="name">As typed.</param>
    /// <param name="taken">Ids in use.</param>
    /// <param name="otherwise">When the name has no letter that an id may have.</param>
    public static string For(string name, IEnumerable<string> taken, string otherwise)
    {
        var used = taken.ToHashSet();
        var plain = Plain(name) is { Length: > 0 } slug ? slug : otherwise;
        return Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? plain : string.Create(CultureInfo.InvariantCulture, $"{plain}-{n}")).First(id => !used.Contains(id));
    }

    private static string Plain(string name)
    {
        var text = new StringBuilder();
        foreach (var c in name.Normalize(NormalizationForm.FormC).ToLowerInvariant())
        {
            if (char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))
            {
                text.Append(c);
            }
            else if (Plainly.TryGetValue(c, out var plain))
            {
                text.Append(plain);
            }
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark && text.Length > 0 && text[^1] != '-')
            {
                text.Append('-');
            }
        }

        return text.ToString(0, Math.Min(text.Length, Longest)).Trim('-');
    }
}
