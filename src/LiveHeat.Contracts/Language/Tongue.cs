using System.Globalization;

namespace LiveHeat.Contracts.Language;

/// <summary>The language that words are told in: that of <see cref="CultureInfo.CurrentUICulture"/>, where there is one of ours, else English.</summary>
public static class Tongue
{
    /// <summary>Languages with words of their own; the first stands for all others.</summary>
    public static readonly IReadOnlyList<string> All = ["en", "es", "fr", "de"];

    /// <summary>The language now.</summary>
    public static string Current => Of(CultureInfo.CurrentUICulture.Name);

    /// <summary>The culture whose words are told now.</summary>
    internal static CultureInfo Culture => CultureInfo.GetCultureInfo(Current);

    /// <summary>The language of ours for somebody's wish.</summary>
    /// <param name="wish">As a device or an address names it: "de", "fr-CA"; anything else is English.</param>
    public static string Of(string? wish) => Known(wish) ?? All[0];

    /// <summary>The language of ours for somebody's wish; null where it is none of ours.</summary>
    public static string? Known(string? wish) =>
        All.FirstOrDefault(one => string.Equals(one, wish?.Split('-', '_')[0], StringComparison.OrdinalIgnoreCase));

    /// <summary>Takes a language for all that follows in this flow of work.</summary>
    /// <param name="wish">As in <see cref="Of"/>.</param>
    public static void Speak(string? wish) => CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(Of(wish));

    /// <summary>What is made in a language whatever is spoken around it.</summary>
    /// <param name="language">One of <see cref="All"/>.</param>
    /// <param name="make">Makes it at once: nothing that is only counted out later.</param>
    public static T In<T>(string language, Func<T> make)
    {
        var before = CultureInfo.CurrentUICulture;
        Speak(language);
        try
        {
            return make();
        }
        finally
        {
            CultureInfo.CurrentUICulture = before;
        }
    }

    /// <summary>What must not depend on who asks: what is signed, and what programs read.</summary>
    public static T InEnglish<T>(Func<T> make) => In(All[0], make);
}
