using System.Globalization;

namespace LiveHeat.Screens.Words;

/// <summary>The language of words from resources: the device's own, where there is one of ours, else English.</summary>
public static class ScreenLanguage
{
    /// <summary>Languages with resources of their own; the first stands for all others.</summary>
    public static readonly IReadOnlyList<string> All = ["en", "es", "fr", "de"];

    /// <summary>Takes the language from now on.</summary>
    /// <param name="device">As the device names it: "de", "fr-CA"; anything else is English.</param>
    public static void Choose(string? device)
    {
        var culture = CultureInfo.GetCultureInfo(Of(device));
        (CultureInfo.CurrentUICulture, CultureInfo.DefaultThreadCurrentUICulture) = (culture, culture);
    }

    /// <summary>The language of ours for a device's.</summary>
    public static string Of(string? device) =>
        All.FirstOrDefault(one => string.Equals(one, device?.Split('-', '_')[0], StringComparison.OrdinalIgnoreCase)) ?? All[0];
}
