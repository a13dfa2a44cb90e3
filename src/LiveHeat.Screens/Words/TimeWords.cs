using System.Globalization;
using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>Times as a person reads and writes them: m:ss.t, in other languages m:ss,t.</summary>
public static class TimeWords
{
    private static readonly Wording Words = new(typeof(TimeWords));

    private const long Second = 1000;
    private const long Minute = 60 * Second;
    private const long Hour = 60 * Minute;

    /// <summary>A running clock: 7:02, hours only when there are any; cut off, not rounded. Not below 0:00.</summary>
    public static string Clock(long ms, int decimals = 0)
    {
        var shown = Math.Max(0, ms);
        var head = shown >= Hour ? $"{shown / Hour}:{shown % Hour / Minute:00}" : $"{shown / Minute}";
        var tail = decimals == 0 ? "" : Numbers.Format.NumberDecimalSeparator + $"{shown % Second:000}"[..decimals];
        return $"{head}:{shown % Minute / Second:00}{tail}";
    }

    /// <summary>A time as it was measured or made official: tenths, and more decimals only when there are any.</summary>
    public static string Exact(long ms) => Clock(ms, ms % 100 == 0 ? 1 : ms % 10 == 0 ? 2 : 3);

    /// <summary>A count-down: 0:01 until nothing is left.</summary>
    public static string Left(long ms) => Clock((Math.Max(0, ms) + Second - 1) / Second * Second);

    /// <summary>A difference with its unit and no more precision than a hand has: "8 s", "2 min".</summary>
    public static string Gap(long ms) => ms < 500 ? Words[nameof(Gap)] : ms < 180_000 ? $"{(ms + 500) / Second} s" : $"{(ms + 30_000) / Minute} min";

    /// <summary>How long ago: "4 s", "3 min".</summary>
    public static string Age(TimeSpan age) => age.TotalSeconds < 120 ? $"{(int)Math.Max(0, age.TotalSeconds)} s" : $"{(int)age.TotalMinutes} min";

    /// <summary>A time of day of an instant, on this device's own clock face.</summary>
    public static string TimeOfDay(long unixMs) => DateTimeOffset.FromUnixTimeMilliseconds(unixMs).ToLocalTime().ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Day and time: "Sun 29 Nov, 04:46".</summary>
    public static string DayAndTime(long unixMs) => DayAndTime(DateTimeOffset.FromUnixTimeMilliseconds(unixMs).ToLocalTime());

    /// <summary>Day and time, of a clock face that is given.</summary>
    public static string DayAndTime(DateTimeOffset at) =>
        Words.Say(nameof(DayAndTime), Weekday(at.DayOfWeek), at.Day, Month(at.Month), at.ToString("HH:mm", CultureInfo.InvariantCulture));

    /// <summary>Reads "7:02.4", "12:00", "1:02:03" or "45.5" (seconds). A point or a comma, in every language.</summary>
    /// <returns>Milliseconds; null when it is no time.</returns>
    public static int? Parse(string? text)
    {
        var parts = (text ?? "").Trim().Replace(',', '.').Split(':');
        if (parts.Length is 0 or > 3 || !decimal.TryParse(parts[^1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds))
        {
            return null;
        }

        if (parts.Length > 1 && seconds >= 60)
        {
            return null;
        }

        var minutes = 0L;
        foreach (var (part, i) in parts[..^1].Select((part, i) => (part, i)))
        {
            if (!int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number > 999 || (i > 0 && number >= 60))
            {
                return null;
            }

            minutes = (minutes * 60) + number;
        }

        var ms = (minutes * Minute) + (seconds * Second);
        return ms <= int.MaxValue && ms == decimal.Truncate(ms) ? (int)ms : null;
    }

    private static string Weekday(DayOfWeek day) => Words[$"{nameof(Weekday)}.{(int)day}"];

    private static string Month(int month) => Words[$"{nameof(Month)}.{month}"];
}
