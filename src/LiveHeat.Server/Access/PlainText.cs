using System.Globalization;
using LiveHeat.Engine;

namespace LiveHeat.Server.Access;

/// <summary>Names and other short text that people write and screens show.</summary>
internal static class PlainText
{
    /// <summary>Most characters of a name.</summary>
    public const int MostInName = 60;

    /// <summary>Why the text cannot stay; null when it can. Asks for it trimmed.</summary>
    /// <param name="what">What it is: "The team's name".</param>
    public static Telling? Wrong(Telling what, string? text, int most = MostInName)
    {
        if (text is null || !text.Any(IsSeen))
        {
            return AccessRefusals.Missing(what);
        }

        if (text.Length > most)
        {
            return AccessRefusals.TooLong(text.Length, what, most);
        }

        return text.Any(IsControl) ? AccessRefusals.HasControl(what) : null;
    }

    private static bool IsSeen(char c) => !char.IsWhiteSpace(c) && char.GetUnicodeCategory(c) is not (UnicodeCategory.Control or UnicodeCategory.Format);

    /// <summary>Controls, line separators, and the marks that turn the direction of the text after them and so of a whole line on a screen.</summary>
    private static bool IsControl(char c) =>
        char.IsControl(c) || c is '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
