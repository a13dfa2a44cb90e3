using System.Globalization;
using LiveHeat.Engine.Timing;

namespace LiveHeat.Contracts.Language;

/// <summary>
/// Numbers, places and times as the language now writes them. The signs stand here and are not asked of the machine: a browser without language tables knows none, and
/// all screens of a hall shall agree.
/// </summary>
public static class Numbers
{
    private static readonly Dictionary<string, NumberFormatInfo> Formats = new()
    {
        ["en"] = Signs(".", ","),
        ["es"] = Signs(",", "\u00a0"),
        ["fr"] = Signs(",", "\u202f"),
        ["de"] = Signs(",", "."),
    };

    /// <summary>Decimal and group signs.</summary>
    public static NumberFormatInfo Format => Formats[Tongue.Current];

    /// <summary>A whole number, grouped from thousands on.</summary>
    public static string Whole(long number) => number.ToString("#,0", Format);

    /// <summary>A number with at most two decimals and none that it does not need.</summary>
    public static string Of(decimal number) => number.ToString("#,0.##", Format);

    /// <summary>A share of one in whole hundredths: "35%", in other languages than English with a space.</summary>
    public static string Percent(double share) => $"{Math.Round(share * 100).ToString("0", Format)}{(Tongue.Current == "en" ? "" : "\u00a0")}%";

    /// <summary>A place: 1st, 1.º, 1er, 1.</summary>
    public static string Place(long place) => Tongue.Current switch
    {
        "es" => $"{place}.º",
        "fr" => place == 1 ? "1er" : $"{place}e",
        "de" => $"{place}.",
        _ => place.ToString(CultureInfo.InvariantCulture) + (place % 100 is 11 or 12 or 13 ? "th" : (place % 10) switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" }),
    };

    /// <summary>A time that the engine wrote ("7:02.4") with the language's decimal sign.</summary>
    public static string Time(string engine) => engine.Replace(".", Format.NumberDecimalSeparator, StringComparison.Ordinal);

    /// <summary>A measured or official time: <see cref="TimeText.Of(long)"/> with the language's decimal sign.</summary>
    /// <param name="ms">Milliseconds.</param>
    public static string Time(long ms) => Time(TimeText.Of(ms));

    /// <summary>A day and its time, to the second, for what is printed.</summary>
    public static string Moment(DateTimeOffset at) => at.ToString(
        Tongue.Current switch { "de" => "dd.MM.yyyy, HH:mm:ss", "es" or "fr" => "dd/MM/yyyy HH:mm:ss", _ => "yyyy-MM-dd HH:mm:ss" }, CultureInfo.InvariantCulture);

    /// <summary>The plural form of a count, for our four languages: French says "0 rep" in the singular (Unicode CLDR, plural rules, from memory).</summary>
    public static string Form(long count) => Math.Abs(count) == 1 || (count == 0 && Tongue.Current == "fr") ? "one" : "other";

    /// <summary>The same of a number that need not be whole: French says "1,5 point", the others "1.5 points".</summary>
    public static string Form(decimal count) => decimal.IsInteger(count) ? Form((long)count) : Tongue.Current == "fr" && Math.Abs(count) < 2 ? "one" : "other";

    private static NumberFormatInfo Signs(string mark, string group) => NumberFormatInfo.ReadOnly(new NumberFormatInfo
    {
        NumberDecimalSeparator = mark,
        NumberGroupSeparator = group,
        PercentDecimalSeparator = mark,
        PercentGroupSeparator = group,
    });
}
