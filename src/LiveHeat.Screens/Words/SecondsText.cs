using System.Globalization;
using LiveHeat.Contracts.Language;

namespace LiveHeat.Screens.Words;

/// <summary>Seconds as a person writes them: "2", "1.5", "-0,5".</summary>
public static class SecondsText
{
    private const decimal Most = 3600;

    /// <summary>A short stretch with its unit, to the thousandth where there is one: "1.25 s", "0.09 s".</summary>
    public static string Of(long ms) => $"{(ms / 1000m).ToString("0.0##", Numbers.Format)} s";

    /// <summary>A length that a person chose, no more decimals than it has: "5 s", "1.5 s"; from a minute on "1:30.0".</summary>
    public static string Length(long ms) => ms < 60_000 ? $"{(ms / 1000m).ToString("0.###", Numbers.Format)} s" : TimeWords.Exact(ms);

    /// <summary>Milliseconds, within an hour either way; null when it is no number.</summary>
    public static int? Ms(string? text) =>
        decimal.TryParse((text ?? "").Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seconds) && Math.Abs(seconds) <= Most
            ? (int)Math.Round(seconds * 1000)
            : null;
}
