using System.Globalization;

namespace LiveHeat.Engine.Timing;

/// <summary>Times as the trade writes them: minutes, seconds and tenths, with hours only when there are any.</summary>
public static class TimeText
{
    /// <summary><c>8:32.4</c>; hundredths only when the time has them (<c>47.51</c> rules), never rounded: what is cut off was rounded before.</summary>
    public static string Of(long ms)
    {
        var sign = ms < 0 ? "−" : "";
        var (tenths, rest) = Math.DivRem(Math.Abs(ms), 100);
        var (seconds, tenth) = Math.DivRem(tenths, 10);
        var clock = Clock(seconds);
        var hundredth = rest / 10;
        return hundredth == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{clock}.{tenth}")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{clock}.{tenth}{hundredth}");
    }

    /// <summary>Minutes, seconds and tenths; anything finer is cut off.</summary>
    public static string Tenths(long ms) => Of(ms / 100 * 100);

    /// <summary>Minutes and seconds; anything finer is cut off.</summary>
    public static string Whole(long ms) => (ms < 0 ? "−" : "") + Clock(Math.Abs(ms) / 1000);

    private static string Clock(long seconds)
    {
        var (minutes, second) = Math.DivRem(seconds, 60);
        var (hours, minute) = Math.DivRem(minutes, 60);
        return hours == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{minute}:{second:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{hours}:{minute:00}:{second:00}");
    }
}
